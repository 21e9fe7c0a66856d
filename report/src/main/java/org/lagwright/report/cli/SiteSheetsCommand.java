package org.lagwright.report.cli;

import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.Callable;
import org.lagwright.report.Words;
import org.lagwright.report.app.SiteSheetsJob;
import org.lagwright.report.app.SiteSheetsJob.Done;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;

/** {@code lagwright sitesheets}: what to cut, bring and do, for those on site. */
@Command(
    name = "sitesheets",
    description =
        "Writes sheets for the site by storey and service: pieces, material, order of work.",
    mixinStandardHelpOptions = true,
    versionProvider = VersionText.class)
final class SiteSheetsCommand implements Callable<Integer> {

  private final Session session;

  @Mixin private JobArguments arguments = new JobArguments();

  SiteSheetsCommand(Session session) {
    this.session = session;
  }

  @Override
  public Integer call() {
    Done done =
        session.with(
            job ->
                new SiteSheetsJob(job)
                    .run(
                        arguments.models(session.servers()),
                        arguments.settings(),
                        arguments.out()));
    List<String> lines = new ArrayList<>();
    lines.add(Words.counted(done.sheets(), "site sheet") + ", one for each service on each storey");
    lines.add(
        "Their numbers are those of 'lagwright templates' with the same models and settings.");
    done.files().forEach(file -> lines.add("written: " + file));
    session.print(lines);
    return ExitCode.DONE;
  }
}
