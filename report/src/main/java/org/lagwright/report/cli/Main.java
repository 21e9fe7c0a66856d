package org.lagwright.report.cli;

import java.io.Console;
import java.io.PrintWriter;
import java.nio.charset.StandardCharsets;
import java.util.Map;
import org.lagwright.report.app.ModelPipeline;
import org.lagwright.report.app.Pipeline;
import org.lagwright.report.app.ServerModels;
import org.lagwright.report.bimserver.ServerAccess;
import org.lagwright.report.bimserver.ServerLimits;
import picocli.CommandLine;
import picocli.CommandLine.Command;

/** The program as the user starts it. */
public final class Main {

  private final Session session;

  /**
   * A program that reads, computes and writes by what it is given.
   *
   * @param out standard output
   * @param err standard error
   * @param terminal true if {@code err} is a terminal and may show progress
   */
  public Main(Pipeline pipeline, PrintWriter out, PrintWriter err, boolean terminal) {
    this(pipeline, new ServerAccess(Map.of(), ServerLimits.DEFAULT), out, err, terminal);
  }

  /**
   * The same with a way to models on servers.
   *
   * @param access where the credentials are, and how long to wait
   */
  public Main(
      Pipeline pipeline, ServerAccess access, PrintWriter out, PrintWriter err, boolean terminal) {
    session = new Session(pipeline, new ServerModels(access), out, err, terminal);
  }

  /** Starts the program and ends the virtual machine with its exit code. */
  public static void main(String[] args) {
    PrintWriter out = new PrintWriter(System.out, false, StandardCharsets.UTF_8);
    PrintWriter err = new PrintWriter(System.err, true, StandardCharsets.UTF_8);
    ServerAccess access = new ServerAccess(System.getenv(), ServerLimits.DEFAULT);
    int code = new Main(new ModelPipeline(), access, out, err, isTerminal()).run(args);
    out.flush();
    err.flush();
    System.exit(code);
  }

  /** From JDK 22 on a console may be no terminal; it tells by a method that JDK 17 lacks. */
  @SuppressWarnings("SystemConsoleNull")
  private static boolean isTerminal() {
    Console console = System.console();
    if (console == null) {
      return false;
    }
    try {
      return Boolean.TRUE.equals(Console.class.getMethod("isTerminal").invoke(console));
    } catch (NoSuchMethodException e) {
      return true;
    } catch (ReflectiveOperationException e) {
      return false;
    }
  }

  /**
   * Runs one command.
   *
   * @return the exit code: 0 done; 1 done but findings at or above {@code --fail-on}; 2 usage; 3
   *     input; 4 settings or pack; 5 output; 70 a mistake of this program
   */
  public int run(String... args) {
    Complaints complaints = new Complaints(session.err());
    CommandLine line =
        new CommandLine(new Lagwright())
            .addSubcommand(new TakeoffCommand(session))
            .addSubcommand(new TemplatesCommand(session))
            .addSubcommand(new SiteSheetsCommand(session))
            .addSubcommand(new CheckCommand(session))
            .addSubcommand(new VerifyCommand(session))
            .addSubcommand(new CompareCommand(session))
            .addSubcommand(new BcfCommand(session))
            .addSubcommand(new ExplainCommand(session))
            .addSubcommand(new PacksCommand(session))
            .setOut(session.out())
            .setErr(session.err())
            .setColorScheme(CommandLine.Help.defaultColorScheme(CommandLine.Help.Ansi.OFF))
            .setCaseInsensitiveEnumValuesAllowed(true)
            .setUsageHelpWidth(TextTable.WIDTH)
            .setParameterExceptionHandler(complaints::usage)
            .setExecutionExceptionHandler(complaints::failure);
    try {
      return line.execute(args);
    } catch (OutOfMemoryError e) {
      return complaints.outOfMemory();
    } catch (StackOverflowError | AssertionError e) {
      return complaints.bug(e);
    } finally {
      session.servers().close();
    }
  }

  /** The command above the commands. */
  @Command(
      name = "lagwright",
      description = "Insulation takeoff from IFC models.",
      mixinStandardHelpOptions = true,
      versionProvider = VersionText.class,
      synopsisSubcommandLabel = "COMMAND",
      footer = {
        "",
        "Exit codes: 0 done; 1 done, but findings at or above --fail-on; 2 usage; 3 input;",
        "4 settings or pack; 5 output; 70 a mistake in Lagwright."
      })
  private static final class Lagwright {}
}
