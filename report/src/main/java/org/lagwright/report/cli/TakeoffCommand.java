package org.lagwright.report.cli;

import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import org.lagwright.ifc.model.FindingCode.Severity;
import org.lagwright.report.app.TakeoffJob.Done;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** {@code lagwright takeoff}: the main job. */
@Command(
    name = "takeoff",
    description = "Takes insulation off IFC models; writes takeoff.xlsx and takeoff.json.",
    mixinStandardHelpOptions = true,
    versionProvider = VersionText.class)
final class TakeoffCommand implements Callable<Integer> {

  /** From which severity on the exit code says that there are findings. */
  enum FailOn {
    info(Severity.INFO),
    warning(Severity.WARNING),
    error(Severity.ERROR),
    never(null);

    private final @Nullable Severity from;

    FailOn(@Nullable Severity from) {
      this.from = from;
    }

    boolean isReachedBy(Severity severity) {
      return from != null && severity.compareTo(from) >= 0;
    }
  }

  private final Session session;

  @Mixin private JobArguments arguments = new JobArguments();

  @Option(
      names = "--fail-on",
      paramLabel = "LEVEL",
      defaultValue = "error",
      description =
          "return 1 if a finding is at or above: ${COMPLETION-CANDIDATES} (default:"
              + " ${DEFAULT-VALUE})")
  private FailOn failOn = FailOn.error;

  @Option(names = "--csv", description = "write the tables of the workbook as CSV too")
  private boolean csv;

  TakeoffCommand(Session session) {
    this.session = session;
  }

  @Override
  public Integer call() {
    Done done =
        session.with(
            job -> job.run(arguments.models(), arguments.settings(), arguments.out(), csv));
    session.print(SummaryText.of(done.takeoff(), done.files()));
    boolean reached =
        done.takeoff().findings().stream()
            .anyMatch(finding -> failOn.isReachedBy(finding.code().severity()));
    return reached ? ExitCode.FINDINGS : ExitCode.DONE;
  }
}
