package org.lagwright.takeoff.service;

import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.lagwright.takeoff.pack.PackInfo;
import org.lagwright.takeoff.pack.PackReader;

/**
 * Words that name services, by language.
 *
 * @param compounding languages whose words are also found inside longer words
 * @param shortestInside letters a word must have to be found inside another
 * @param stops words of things where more than one medium or temperature meets
 * @param ignored words that are no hint although a part of them is one elsewhere
 */
record WordPack(
    String id,
    String version,
    String source,
    String status,
    List<String> compounding,
    int shortestInside,
    Map<String, List<String>> stops,
    List<String> ignored,
    List<Meaning> meanings) {

  WordPack {
    compounding = List.copyOf(compounding);
    stops = Map.copyOf(stops);
    ignored = List.copyOf(ignored);
    meanings = List.copyOf(meanings);
  }

  /**
   * What some words mean.
   *
   * @param on pipe or duct where the words count there only
   * @param withDirection family meant instead when flow or return is told as well
   */
  record Meaning(
      @Nullable String family,
      @Nullable String direction,
      @Nullable String on,
      @Nullable String withDirection,
      Map<String, List<String>> words) {

    Meaning {
      words = Map.copyOf(words);
      if (family == null && direction == null) {
        throw new IllegalArgumentException("a meaning needs a family or a direction.");
      }
    }
  }

  static WordPack bundled() {
    return PackReader.readBundled(WordPack.class, "words.yaml", WordPack.class);
  }

  PackInfo info() {
    return new PackInfo(id, version, source, status);
  }
}
