package org.lagwright.report.cli;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import org.lagwright.report.app.TemplatesJob;
import org.lagwright.report.app.TemplatesJob.Done;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** {@code lagwright templates}: cutting templates at full size. */
@Command(
    name = "templates",
    description = "Draws the pieces of fittings at full size: PDF on A4 and A3, SVG, DXF.",
    mixinStandardHelpOptions = true,
    versionProvider = VersionText.class)
final class TemplatesCommand implements Callable<Integer> {

  private final Session session;

  @Parameters(arity = "1..*", paramLabel = "MODEL", description = "IFC files: .ifc or .ifczip")
  private List<Path> models = List.of();

  @Option(names = "--settings", paramLabel = "FILE", description = "settings in YAML")
  private @Nullable Path settings;

  @Option(
      names = "--out",
      paramLabel = "DIR",
      defaultValue = "lagwright-out",
      description = "folder for the outputs, created if missing (default: ${DEFAULT-VALUE})")
  private Path out = Path.of("lagwright-out");

  TemplatesCommand(Session session) {
    this.session = session;
  }

  @Override
  public Integer call() {
    Done done = session.with(job -> new TemplatesJob(job).run(models, settings, out));
    List<String> lines = new ArrayList<>();
    lines.add(done.patterns() + " templates for " + done.pieces() + " pieces");
    lines.add("Print at 100 %, no fit to page, and measure both 100 mm bars before cutting.");
    done.files().forEach(file -> lines.add("written: " + file));
    session.print(lines);
    return ExitCode.DONE;
  }
}
