package org.lagwright.report.cli;

import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.Callable;
import org.lagwright.report.app.TemplatesJob;
import org.lagwright.report.app.TemplatesJob.Done;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;

/** {@code lagwright templates}: cutting templates at full size. */
@Command(
    name = "templates",
    description = "Draws the pieces of fittings at full size: PDF on A4 and A3, SVG, DXF.",
    mixinStandardHelpOptions = true,
    versionProvider = VersionText.class)
final class TemplatesCommand implements Callable<Integer> {

  private final Session session;

  @Mixin private JobArguments arguments = new JobArguments();

  TemplatesCommand(Session session) {
    this.session = session;
  }

  @Override
  public Integer call() {
    Done done =
        session.with(
            job ->
                new TemplatesJob(job)
                    .run(
                        arguments.models(session.servers()),
                        arguments.settings(),
                        arguments.out()));
    List<String> lines = new ArrayList<>();
    lines.add(done.patterns() + " templates for " + done.pieces() + " pieces");
    lines.add("Print at 100 %, no fit to page, and measure both 100 mm bars before cutting.");
    done.files().forEach(file -> lines.add("written: " + file));
    session.print(lines);
    return ExitCode.DONE;
  }
}
