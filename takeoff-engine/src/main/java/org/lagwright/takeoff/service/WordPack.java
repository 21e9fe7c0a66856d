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
 * @param sharedEndings endings that a word may share with the one before it
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
    List<String> sharedEndings,
    Map<String, List<String>> stops,
    List<String> ignored,
    List<Meaning> meanings) {

  WordPack {
    compounding = List.copyOf(compounding);
    sharedEndings = List.copyOf(sharedEndings);
    stops = Map.copyOf(stops);
    ignored = List.copyOf(ignored);
    meanings = List.copyOf(meanings);
  }

  /**
   * What some words mean.
   *
   * @param on pipe or duct where the words count there only
   * @param withDirection family meant instead when flow or return is told as well, by a word or by
   *     a pair of temperatures, or when that family is named
   * @param whereNamed families of which the first that other words name is meant instead
   * @param inCircuit family meant instead in a circuit that heats or cools rooms
   * @param hydronic true for words that tell such a circuit
   * @param withHeat family meant instead when a temperature beside the words is hot
   * @param notBeside kind of service beside whose words alone these are no vote
   * @param circuit the circuit that they may be a half of
   */
  record Meaning(
      @Nullable String family,
      @Nullable String direction,
      @Nullable String on,
      @Nullable String withDirection,
      @Nullable List<String> whereNamed,
      @Nullable String inCircuit,
      @Nullable Boolean hydronic,
      @Nullable String withHeat,
      @Nullable String notBeside,
      @Nullable HalfOfCircuit circuit,
      Map<String, List<String>> words) {

    Meaning {
      words = Map.copyOf(words);
      whereNamed = whereNamed == null ? null : List.copyOf(whereNamed);
      if (family == null && direction == null && circuit == null) {
        throw new IllegalArgumentException("a meaning needs a family, a direction or a circuit.");
      }
    }

    /** What the words mean where further words tell more. */
    Otherwise otherwise() {
      return new Otherwise(withDirection, inCircuit, whereNamed == null ? List.of() : whereNamed);
    }
  }

  static WordPack bundled() {
    return PackReader.readBundled(WordPack.class, "words.yaml", WordPack.class);
  }

  PackInfo info() {
    return new PackInfo(id, version, source, status);
  }
}
