package org.lagwright.report.cli;

import java.nio.file.Path;
import java.util.concurrent.Callable;
import org.lagwright.report.app.ComparisonJob;
import org.lagwright.report.app.ComparisonJob.Done;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** {@code lagwright compare}: what changed between two revisions. */
@Command(
    name = "compare",
    description =
        "Says what changed between two revisions of a model; writes comparison.xlsx and"
            + " comparison.json.",
    mixinStandardHelpOptions = true,
    versionProvider = VersionText.class)
final class CompareCommand implements Callable<Integer> {

  private final Session session;

  @Parameters(
      index = "0",
      paramLabel = "OLD",
      description = "earlier revision: a file, or one on a BIMserver")
  private String before = "";

  @Parameters(index = "1", paramLabel = "NEW", description = "later revision")
  private String now = "";

  @Mixin private OutputArguments outputs = new OutputArguments();

  @Option(names = "--csv", description = "write the tables of the workbook as CSV too")
  private boolean csv;

  CompareCommand(Session session) {
    this.session = session;
  }

  @Override
  public Integer call() {
    Path old = session.servers().file(before);
    Path young = session.servers().file(now);
    Done done =
        session.with(
            job -> new ComparisonJob(job).run(old, young, outputs.settings(), outputs.out(), csv));
    session.print(ComparisonText.of(done.comparison(), done.files()));
    return ExitCode.DONE;
  }
}
