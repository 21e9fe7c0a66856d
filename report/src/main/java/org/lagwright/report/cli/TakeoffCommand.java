package org.lagwright.report.cli;

import java.nio.file.Path;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import org.lagwright.ifc.model.FindingCode.Severity;
import org.lagwright.report.app.TakeoffJob;
import org.lagwright.report.app.TakeoffJob.Done;
import org.lagwright.report.app.TakeoffJob.Extra;
import org.lagwright.report.bimserver.CheckIn;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Spec;

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

  @Option(
      names = "--ifc",
      description =
          "write each model once more as MODEL-insulated.ifc, with a covering for each layer of"
              + " insulation")
  private boolean ifc;

  @Option(
      names = "--attach",
      description = "attach both files to the revision on the BIMserver that the model is from")
  private boolean attach;

  @Option(
      names = "--check-in",
      paramLabel = "WHERE",
      description =
          "check each model with its insulation in on the BIMserver that it is from: as the next"
              + " revision of its project (same), or in its sub-project Insulation (sub); means"
              + " --ifc too")
  private @Nullable CheckIn checkIn;

  @Spec private @Nullable CommandSpec spec;

  TakeoffCommand(Session session) {
    this.session = session;
  }

  @Override
  public Integer call() {
    List<Path> models = arguments.models(session.servers());
    refuseWithoutServer(attach, "--attach");
    refuseWithoutServer(checkIn != null, "--check-in");
    Done done =
        session.with(job -> job.run(models, arguments.settings(), arguments.out(), extras()));
    session.print(SummaryText.of(done));
    if (attach) {
      List<Path> both =
          done.files().stream()
              .filter(f -> f.endsWith(TakeoffJob.WORKBOOK) || f.endsWith(TakeoffJob.JSON))
              .toList();
      session.print(session.servers().attach(both));
    }
    CheckIn where = checkIn;
    if (where != null) {
      session.print(
          session.watched(line -> session.servers().checkIn(done.enrichedFiles(), where, line)));
    }
    return exitCode(done);
  }

  private void refuseWithoutServer(boolean asked, String option) {
    if (asked && session.servers().isEmpty() && spec != null) {
      throw new ParameterException(
          spec.commandLine(), option + " needs a model that is on a BIMserver.");
    }
  }

  private Set<Extra> extras() {
    Set<Extra> extras = EnumSet.noneOf(Extra.class);
    if (csv) {
      extras.add(Extra.CSV);
    }
    if (ifc || checkIn != null) {
      extras.add(Extra.IFC);
    }
    return extras;
  }

  private int exitCode(Done done) {
    boolean reached =
        done.takeoff().findings().stream()
            .anyMatch(finding -> failOn.isReachedBy(finding.code().severity()));
    return reached ? ExitCode.FINDINGS : ExitCode.DONE;
  }
}
