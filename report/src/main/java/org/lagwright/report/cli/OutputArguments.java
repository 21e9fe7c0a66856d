package org.lagwright.report.cli;

import java.nio.file.Path;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Option;

/** How it is decided and where it goes, for every command that writes files. */
final class OutputArguments {

  @Option(names = "--settings", paramLabel = "FILE", description = "settings in YAML")
  private @Nullable Path settings;

  @Option(
      names = "--out",
      paramLabel = "DIR",
      defaultValue = "lagwright-out",
      description = "folder for the outputs, created if missing (default: ${DEFAULT-VALUE})")
  private Path out = Path.of("lagwright-out");

  /** The settings file, null for the defaults. */
  @Nullable Path settings() {
    return settings;
  }

  Path out() {
    return out;
  }
}
