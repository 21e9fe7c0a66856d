package org.lagwright.report.cli;

import java.nio.file.Path;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Option;

/** How it is decided, for every command that takes off. */
final class SettingsArgument {

  @Option(names = "--settings", paramLabel = "FILE", description = "settings in YAML")
  private @Nullable Path file;

  /** The settings file, null for the defaults. */
  @Nullable Path file() {
    return file;
  }
}
