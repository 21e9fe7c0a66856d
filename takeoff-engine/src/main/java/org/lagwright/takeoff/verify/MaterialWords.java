package org.lagwright.takeoff.verify;

import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.lagwright.takeoff.pack.PackInfo;
import org.lagwright.takeoff.pack.PackReader;
import org.lagwright.takeoff.words.PhraseBook;

/** Reads generic material families in the names that models give to insulation. */
final class MaterialWords {

  /**
   * Words that tell material families, by language.
   *
   * @param compounding languages whose words are also found inside longer words
   * @param shortestInside letters a word must have to be found inside another
   */
  private record Pack(
      String id,
      String version,
      String source,
      String status,
      List<String> compounding,
      int shortestInside,
      List<Meaning> materials) {

    Pack {
      compounding = List.copyOf(compounding);
      materials = List.copyOf(materials);
    }
  }

  /** Material families that some words may mean; a general word means several. */
  private record Meaning(List<String> families, Map<String, List<String>> words) {
    Meaning {
      families = List.copyOf(families);
      words = Map.copyOf(words);
    }
  }

  private final Pack pack =
      PackReader.readBundled(MaterialWords.class, "materials.yaml", Pack.class);
  private final PhraseBook<List<String>> book = new PhraseBook<>();

  MaterialWords() {
    for (Meaning meaning : pack.materials) {
      book.addAll(meaning.words, meaning.families, pack.compounding, pack.shortestInside);
    }
  }

  PackInfo info() {
    return new PackInfo(pack.id, pack.version, pack.source, pack.status);
  }

  /** Every material family that some word means. */
  Set<String> knownFamilies() {
    Set<String> families = new HashSet<>();
    pack.materials.forEach(meaning -> families.addAll(meaning.families));
    return families;
  }

  /** Ids of the material families that a name may mean; empty where its words are not known. */
  Set<String> families(String name) {
    Set<String> families = new HashSet<>();
    book.find(name, meaning -> true).forEach(match -> families.addAll(match.meaning()));
    return families;
  }
}
