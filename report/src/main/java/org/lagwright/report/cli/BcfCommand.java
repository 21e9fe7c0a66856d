package org.lagwright.report.cli;

import java.time.Instant;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.concurrent.Callable;
import org.lagwright.report.Words;
import org.lagwright.report.app.BcfJob;
import org.lagwright.report.app.BcfJob.Done;
import org.lagwright.report.bcf.BcfVersion;
import picocli.CommandLine.Command;
import picocli.CommandLine.ITypeConverter;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.TypeConversionException;

/** {@code lagwright bcf}: what is to be settled, for the designers. */
@Command(
    name = "bcf",
    description = "Writes questions, findings and what is not covered as issues.bcf.",
    mixinStandardHelpOptions = true,
    versionProvider = VersionText.class)
final class BcfCommand implements Callable<Integer> {

  private final Session session;

  @Mixin private JobArguments arguments = new JobArguments();

  @Option(
      names = "--format",
      paramLabel = "VERSION",
      defaultValue = "2.1",
      converter = FormatConverter.class,
      description = "version of the format: 2.1 or 3.0 (default: ${DEFAULT-VALUE})")
  private BcfVersion version = BcfVersion.V2_1;

  BcfCommand(Session session) {
    this.session = session;
  }

  /** Reads a version as the format states it. */
  static final class FormatConverter implements ITypeConverter<BcfVersion> {
    @Override
    public BcfVersion convert(String value) {
      return Arrays.stream(BcfVersion.values())
          .filter(version -> version.id().equals(value))
          .findFirst()
          .orElseThrow(
              () -> new TypeConversionException("expected 2.1 or 3.0 but was '" + value + "'"));
    }
  }

  @Override
  public Integer call() {
    Done done =
        session.with(
            job ->
                new BcfJob(job)
                    .run(
                        arguments.models(session.servers()),
                        arguments.settings(),
                        arguments.out(),
                        version,
                        Instant.now()));
    List<String> lines = new ArrayList<>();
    lines.add(Words.counted(done.topics(), "topic") + ", one for each cause, BCF " + version.id());
    done.files().forEach(file -> lines.add("written: " + file));
    session.print(lines);
    return ExitCode.DONE;
  }
}
