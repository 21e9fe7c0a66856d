package org.lagwright.testmodels.demo;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.Map;
import org.lagwright.testmodels.ifc.Schema;

/** Writes the demo files into the folder given as the only argument. */
public final class WriteDemo {

  private WriteDemo() {}

  /** File name to content of everything that is generated. */
  static Map<String, String> files() {
    Map<String, String> files = new LinkedHashMap<>();
    for (Schema schema : Schema.values()) {
      files.put("alder-quay-" + schema.label() + ".ifc", AlderQuay.write(schema));
    }
    files.put("quantities.csv", DemoQuantity.csv(AlderQuay.quantities()));
    return files;
  }

  /** Overwrites the generated files. */
  public static void main(String[] arguments) throws IOException {
    Path folder = Path.of(arguments[0]);
    Files.createDirectories(folder);
    for (Map.Entry<String, String> file : files().entrySet()) {
      Files.writeString(folder.resolve(file.getKey()), file.getValue());
    }
  }
}
