package org.lagwright.ifc.extract.text;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;

/** What a pipe is made of, as far as its outside depends on that (pipe-materials.txt). */
public enum PipeMaterial {
  COPPER,
  THIN_PRESS,
  STAINLESS,
  DUCTILE_IRON,
  CAST_IRON,
  STEEL,
  PLASTIC_IN_PRESSURE,
  PLASTIC_DRAIN,
  PLASTIC;

  private static final Map<PipeMaterial, List<Word>> WORDS = read();
  private static final Remembered<Optional<PipeMaterial>> TOLD = new Remembered<>();

  private static Map<PipeMaterial, List<Word>> read() {
    Map<PipeMaterial, List<Word>> words = new EnumMap<>(PipeMaterial.class);
    for (String line : Resource.lines("pipe-materials.txt")) {
      int colon = line.indexOf(':');
      List<Word> ofOne = new ArrayList<>();
      for (String word : line.substring(colon + 1).split(",")) {
        ofOne.add(Word.of(word));
      }
      words.put(named(line.substring(0, colon)), ofOne);
    }
    return words;
  }

  /** True unless it is a plastic. */
  public boolean isMetal() {
    return this != PLASTIC_IN_PRESSURE && this != PLASTIC_DRAIN && this != PLASTIC;
  }

  /** The material that a file of this package calls so. */
  static PipeMaterial named(String name) {
    return valueOf(name.toUpperCase(Locale.ROOT).replace('-', '_'));
  }

  /** What a text tells; empty if it tells nothing, or speaks of insulation. */
  public static Optional<PipeMaterial> in(String text) {
    String name = Words.withoutNumber(text);
    Optional<PipeMaterial> known = TOLD.find(name);
    return known == null ? TOLD.keep(name, find(name)) : known;
  }

  private static Optional<PipeMaterial> find(String text) {
    if (Words.tellsOfInsulation(text)) {
      return Optional.empty();
    }
    String folded = Words.fold(text);
    for (Map.Entry<PipeMaterial, List<Word>> entry : WORDS.entrySet()) {
      for (Word word : entry.getValue()) {
        if (word.indexIn(folded) >= 0) {
          return Optional.of(entry.getKey());
        }
      }
    }
    return Optional.empty();
  }
}
