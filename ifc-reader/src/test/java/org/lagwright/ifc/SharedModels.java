package org.lagwright.ifc;

import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Objects;
import org.jspecify.annotations.Nullable;
import org.lagwright.ifc.schema.IfcFile;
import org.lagwright.ifc.step.StepBytes;
import org.lagwright.ifc.step.StepLimits;

/**
 * The folder of public models that is not part of the repository. Named by the system property
 * {@code lagwright.models}, else by the environment variable {@code LAGWRIGHT_MODELS}, else looked
 * for beside the checkout. Tests that need it are skipped where it is absent.
 */
public final class SharedModels {

  private SharedModels() {}

  /** The folder; skips the calling test with a message if there is none. */
  public static Path folder() {
    Path folder = find();
    assumeTrue(
        folder != null,
        "skipped: no folder of public models; name one with -Dlagwright.models=FOLDER");
    return Objects.requireNonNull(folder);
  }

  /** A file in the folder; skips the calling test if the folder is absent. */
  public static Path file(String name) {
    return folder().resolve(name);
  }

  /** A file in the folder, indexed. */
  public static IfcFile open(String name) {
    try {
      return IfcFile.open(StepBytes.map(file(name)), StepLimits.DEFAULT, read -> {});
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private static @Nullable Path find() {
    String named =
        System.getProperty(
            "lagwright.models", System.getenv().getOrDefault("LAGWRIGHT_MODELS", ""));
    if (!named.isEmpty()) {
      return Path.of(named);
    }
    Path beside = Path.of("").toAbsolutePath().resolve("../../shared/models").normalize();
    return Files.isDirectory(beside) ? beside : null;
  }
}
