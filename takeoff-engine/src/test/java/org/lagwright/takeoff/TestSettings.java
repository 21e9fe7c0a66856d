package org.lagwright.takeoff;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.lagwright.takeoff.settings.Settings;
import org.lagwright.takeoff.settings.SettingsReader;

/** Settings for tests, written as a user writes them. */
public final class TestSettings {

  private TestSettings() {}

  /** The settings of a file with this text. */
  public static Settings of(String yaml) {
    try {
      Path file = Files.createTempFile("settings", ".yaml");
      try {
        return SettingsReader.read(Files.writeString(file, yaml));
      } finally {
        Files.delete(file);
      }
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
