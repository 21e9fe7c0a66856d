package org.lagwright.report.cli;

import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.Callable;
import org.lagwright.takeoff.verify.Coverage;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** {@code lagwright verify}: is everything covered that should be? */
@Command(
    name = "verify",
    description = {
      "Holds the insulation that models show against what is required;",
      "returns 1 where less is covered than --least asks for. Writes nothing."
    },
    mixinStandardHelpOptions = true,
    versionProvider = VersionText.class)
final class VerifyCommand implements Callable<Integer> {

  private static final double WHOLE_PCT = 100;

  private final Session session;

  @Mixin private ModelArguments models = new ModelArguments();

  @Mixin private SettingsArgument settings = new SettingsArgument();

  @Option(
      names = "--least",
      paramLabel = "PERCENT",
      defaultValue = "100",
      converter = Percent.class,
      description =
          "share of the elements, and of their outer surface, that must be covered (default:"
              + " ${DEFAULT-VALUE})")
  private double leastPct = WHOLE_PCT;

  VerifyCommand(Session session) {
    this.session = session;
  }

  @Override
  public Integer call() {
    List<Path> files = models.in(session.servers());
    Coverage coverage = Coverage.of(session.with(job -> job.compute(files, settings.file())));
    session.print(CoverageText.of(coverage));
    return coverage.coveredPct() >= leastPct ? ExitCode.DONE : ExitCode.FINDINGS;
  }
}
