package org.lagwright.takeoff.measure;

import java.nio.file.Path;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import org.lagwright.takeoff.pack.PackInfo;
import org.lagwright.takeoff.pack.PackReader;

/** Methods of measurement that can be chosen. */
public record MeasurementPack(
    String id, String version, String source, String status, List<MeasurementMethod> methods) {

  public MeasurementPack {
    methods = List.copyOf(methods);
    Set<String> seen = new HashSet<>();
    for (MeasurementMethod method : methods) {
      if (!seen.add(method.id())) {
        throw new IllegalArgumentException("method '" + method.id() + "' is listed twice.");
      }
    }
    if (methods.isEmpty()) {
      throw new IllegalArgumentException("a pack of methods needs one.");
    }
  }

  /** The pack that belongs to the program. */
  public static MeasurementPack bundled() {
    return PackReader.readBundled(MeasurementPack.class, "measurement.yaml", MeasurementPack.class);
  }

  /**
   * A pack of the user.
   *
   * @throws org.lagwright.takeoff.pack.PackException if it is wrong; the message names file, line
   *     and column
   */
  public static MeasurementPack read(Path file) {
    return PackReader.readFile(file, MeasurementPack.class);
  }

  /** Names the pack in the results. */
  public PackInfo info() {
    return new PackInfo(id, version, source, status);
  }
}
