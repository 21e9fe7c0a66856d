package org.lagwright.report.cli;

import java.io.PrintWriter;
import java.util.Map;
import org.lagwright.ifc.source.ModelException;
import org.lagwright.report.PlainText;
import org.lagwright.report.app.OutputException;
import org.lagwright.takeoff.pack.PackException;
import picocli.CommandLine;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.ParseResult;
import picocli.CommandLine.UnmatchedArgumentException;

/** One line for each thing that can go wrong, and its exit code. */
final class Complaints {

  /** Exceptions whose message is the line to show. */
  private static final Map<Class<? extends Exception>, Integer> EXPECTED =
      Map.of(
          ModelException.class, ExitCode.INPUT,
          PackException.class, ExitCode.SETTINGS,
          OutputException.class, ExitCode.OUTPUT);

  private final PrintWriter err;

  Complaints(PrintWriter err) {
    this.err = err;
  }

  /** The user typed something that is not understood. */
  int usage(ParameterException e, String[] args) {
    String command = e.getCommandLine().getCommandSpec().qualifiedName();
    line(what(e) + " Run '" + command + " --help' for what is possible.");
    return ExitCode.USAGE;
  }

  private static String what(ParameterException e) {
    if (e instanceof UnmatchedArgumentException unmatched && !unmatched.getUnmatched().isEmpty()) {
      String first = unmatched.getUnmatched().get(0);
      String what = unmatched.isUnknownOption() ? "unknown option '" : "unknown argument '";
      return what + first + "'." + suggestion(unmatched);
    }
    String message = String.valueOf(e.getMessage());
    return message.endsWith(".") || message.endsWith("?") ? message : message + ".";
  }

  private static String suggestion(UnmatchedArgumentException unmatched) {
    return unmatched.getSuggestions().isEmpty()
        ? ""
        : " Did you mean " + unmatched.getSuggestions().get(0).replaceAll("=.*", "") + "?";
  }

  /** Something failed while a command was at work. */
  int failure(Exception e, CommandLine command, ParseResult parsed) {
    Integer code = EXPECTED.get(e.getClass());
    if (code == null) {
      return bug(e);
    }
    line(String.valueOf(e.getMessage()));
    return code;
  }

  /** A mistake of this program stays loud. */
  int bug(Throwable e) {
    line("this is a mistake in Lagwright (" + e + "). Please report it with the lines below.");
    e.printStackTrace(err);
    err.flush();
    return ExitCode.BUG;
  }

  /** Not a mistake, but nothing more can be done. */
  int outOfMemory() {
    line("not enough memory for these models. Give Java more: java -Xmx4g -jar lagwright.jar ...");
    return ExitCode.BUG;
  }

  private void line(String text) {
    err.println("lagwright: " + PlainText.oneLine(text));
    err.flush();
  }
}
