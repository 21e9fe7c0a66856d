package org.lagwright.ifc.geometry;

import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.lagwright.ifc.schema.IfcFile;
import org.lagwright.ifc.step.StepBytes;
import org.lagwright.ifc.step.StepLimits;

/**
 * Public models that are not part of this repository. The folder is named by the system property
 * {@code lagwright.models} or the environment variable {@code LAGWRIGHT_MODELS}, else looked for
 * beside the checkout; tests that need a model are left out, with a message, where it is missing.
 */
final class SharedModels {

  private SharedModels() {}

  static IfcFile open(String name) {
    Path file = folder().resolve(name);
    assumeTrue(
        Files.isRegularFile(file),
        () -> "model " + name + " not found; set -Dlagwright.models or LAGWRIGHT_MODELS");
    try {
      return IfcFile.open(StepBytes.map(file), StepLimits.DEFAULT, read -> {});
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private static Path folder() {
    String property = System.getProperty("lagwright.models");
    String variable = System.getenv("LAGWRIGHT_MODELS");
    if (property != null) {
      return Path.of(property);
    }
    return Path.of(variable == null ? "../../shared/models" : variable);
  }
}
