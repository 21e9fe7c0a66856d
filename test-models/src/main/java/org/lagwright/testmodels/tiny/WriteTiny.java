package org.lagwright.testmodels.tiny;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;

/** Writes the tiny models into the resource folder given as the only argument. */
public final class WriteTiny {

  private WriteTiny() {}

  /** Overwrites the generated files. */
  public static void main(String[] arguments) throws IOException {
    for (String name : TinyModels.list()) {
      Path folder = Path.of(arguments[0], name);
      Files.createDirectories(folder);
      Files.writeString(folder.resolve("model.ifc"), TinyModels.write(name));
    }
  }
}
