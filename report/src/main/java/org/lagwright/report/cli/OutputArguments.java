package org.lagwright.report.cli;

import java.nio.file.Path;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** How it is decided and where it goes, for every command that writes files. */
final class OutputArguments {

  @Mixin private SettingsArgument settings = new SettingsArgument();

  @Option(
      names = "--out",
      paramLabel = "DIR",
      defaultValue = "lagwright-out",
      description = "folder for the outputs, created if missing (default: ${DEFAULT-VALUE})")
  private Path out = Path.of("lagwright-out");

  /** The settings file, null for the defaults. */
  @Nullable Path settings() {
    return settings.file();
  }

  Path out() {
    return out;
  }
}
