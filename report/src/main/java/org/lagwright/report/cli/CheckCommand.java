package org.lagwright.report.cli;

import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import org.lagwright.report.app.ReadinessJob;
import org.lagwright.report.app.ReadinessJob.Done;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** {@code lagwright check}: do models carry what a takeoff needs? */
@Command(
    name = "check",
    description = {
      "Says how ready models are for a takeoff and what to ask the designers; writes",
      "readiness.json and readiness.csv; returns 1 where less is ready than --least asks for."
    },
    mixinStandardHelpOptions = true,
    versionProvider = VersionText.class)
final class CheckCommand implements Callable<Integer> {

  private static final double WHOLE_PCT = 100;

  private final Session session;

  @Parameters(
      arity = "0..*",
      paramLabel = "MODEL",
      description = "IFC files, .ifc or .ifczip, or revisions on a BIMserver")
  private List<String> models = List.of();

  @Mixin private OutputArguments outputs = new OutputArguments();

  @Option(
      names = "--least",
      paramLabel = "PERCENT",
      defaultValue = "100",
      converter = Percent.class,
      description =
          "share of the elements that must miss nothing that is needed (default: ${DEFAULT-VALUE})")
  private double leastPct = WHOLE_PCT;

  @Option(
      names = "--ids",
      paramLabel = "FILE",
      description = "write what a model must carry as IDS 1.0 for designers; needs no MODEL")
  private @Nullable Path ids;

  @Spec private @Nullable CommandSpec spec;

  CheckCommand(Session session) {
    this.session = session;
  }

  @Override
  public Integer call() {
    if (models.isEmpty() && ids == null && spec != null) {
      throw new ParameterException(spec.commandLine(), "Give a MODEL, or --ids FILE.");
    }
    int code = models.isEmpty() ? ExitCode.DONE : check();
    if (ids != null) {
      session.print(List.of("written: " + ReadinessJob.writeIds(ids)));
    }
    return code;
  }

  private int check() {
    List<Path> files = session.servers().files(models);
    Done done =
        session.with(job -> new ReadinessJob(job).run(files, outputs.settings(), outputs.out()));
    session.print(ReadinessText.of(done.readiness(), done.files()));
    return done.readiness().readyPct() >= leastPct ? ExitCode.DONE : ExitCode.FINDINGS;
  }
}
