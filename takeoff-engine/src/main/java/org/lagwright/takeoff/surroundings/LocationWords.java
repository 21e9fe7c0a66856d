package org.lagwright.takeoff.surroundings;

import java.util.HashMap;
import java.util.Map;
import java.util.Optional;
import org.lagwright.takeoff.pack.PackInfo;
import org.lagwright.takeoff.words.PhraseBook;

/** Reads location classes in the names of spaces and storeys. Remembers names. */
public final class LocationWords {

  /**
   * A location class told by a name.
   *
   * @param location location class
   * @param text the words that tell it
   */
  public record Found(String location, String text) {}

  /** Meaning of phrases that tell nothing. */
  private static final String NOWHERE = "";

  private final LocationPack pack = LocationPack.bundled();
  private final PhraseBook<String> book = new PhraseBook<>();
  private final Map<String, Optional<Found>> remembered = new HashMap<>();

  /** The words of the pack that belongs to the program. */
  public LocationWords() {
    pack.ignored().forEach(phrase -> book.add(phrase, NOWHERE, null));
    for (LocationPack.Meaning meaning : pack.locations()) {
      book.addAll(meaning.words(), meaning.location(), pack.compounding(), pack.shortestInside());
    }
  }

  /** The data pack it decides by. */
  public PackInfo info() {
    return pack.info();
  }

  /** The location class that the first telling words of a name mean, empty where none do. */
  public Optional<Found> find(String name) {
    return remembered.computeIfAbsent(name, this::read);
  }

  private Optional<Found> read(String name) {
    return book.find(name, meaning -> true).stream()
        .filter(match -> !match.meaning().equals(NOWHERE))
        .map(match -> new Found(match.meaning(), match.text()))
        .findFirst();
  }
}
