package org.lagwright.takeoff.surroundings;

import java.util.List;
import java.util.Map;
import org.lagwright.takeoff.pack.PackInfo;
import org.lagwright.takeoff.pack.PackReader;

/**
 * Words that tell a location class, by language.
 *
 * @param compounding languages whose words are also found inside longer words
 * @param shortestInside letters a word must have to be found inside another
 * @param ignored phrases that tell no location although a part of them does elsewhere
 */
record LocationPack(
    String id,
    String version,
    String source,
    String status,
    List<String> compounding,
    int shortestInside,
    List<String> ignored,
    List<Meaning> locations) {

  LocationPack {
    compounding = List.copyOf(compounding);
    ignored = List.copyOf(ignored);
    locations = List.copyOf(locations);
  }

  /**
   * The words of one location class.
   *
   * @param location location class, a key of {@code air} in the settings
   */
  record Meaning(String location, Map<String, List<String>> words) {
    Meaning {
      words = Map.copyOf(words);
    }
  }

  static LocationPack bundled() {
    return PackReader.readBundled(LocationPack.class, "locations.yaml", LocationPack.class);
  }

  PackInfo info() {
    return new PackInfo(id, version, source, status);
  }
}
