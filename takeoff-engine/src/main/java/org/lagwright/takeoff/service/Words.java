package org.lagwright.takeoff.service;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;
import org.lagwright.takeoff.words.PhraseBook;
import org.lagwright.takeoff.words.SharedEndings;

/** Understands names: which family and which direction do their words mean. Remembers texts. */
final class Words {

  /** What a word means; family, direction and circuit all null for words that are no hint. */
  record Meaning(
      @Nullable String family,
      @Nullable String direction,
      Otherwise otherwise,
      boolean hydronic,
      @Nullable String withHeat,
      @Nullable String notBeside,
      @Nullable HalfOfCircuit circuit,
      Carrier carrier) {

    /** The same words understood as another family. */
    Meaning as(String other) {
      return new Meaning(
          other, direction, Otherwise.NOTHING, hydronic, null, notBeside, null, carrier);
    }

    /** All families that it may mean. */
    List<String> families() {
      List<String> families = new ArrayList<>(otherwise.whereNamed());
      for (String each :
          new @Nullable String[] {
            family, withHeat, otherwise.withDirection(), otherwise.inCircuit()
          }) {
        if (each != null) {
          families.add(each);
        }
      }
      return families;
    }

    boolean isHint() {
      return family != null || direction != null || circuit != null;
    }
  }

  /** Litres per second behind a fraction or a range; the letters also stand for steam. */
  private static final Pattern FLOW_RATE =
      Pattern.compile("\\d+ ?[-.,] ?\\d+ ?lps\\b", Pattern.CASE_INSENSITIVE);

  private record Asked(String text, Carrier carrier) {}

  private final PhraseBook<Meaning> book = new PhraseBook<>();
  private final PhraseBook<String> stops = new PhraseBook<>();
  private final SharedEndings sharedEndings;
  private final Map<Asked, List<PhraseBook.Match<Meaning>>> remembered = new HashMap<>();
  private final Map<String, Boolean> rememberedStops = new HashMap<>();

  Words(WordPack pack, ServicePack services) {
    sharedEndings = new SharedEndings(pack.sharedEndings());
    Meaning noHint =
        new Meaning(null, null, Otherwise.NOTHING, false, null, null, null, Carrier.ANY);
    pack.ignored().forEach(text -> book.add(text, noHint, null));
    for (WordPack.Meaning row : pack.meanings()) {
      Meaning meaning =
          new Meaning(
              row.family(),
              row.direction(),
              row.otherwise(),
              Boolean.TRUE.equals(row.hydronic()),
              row.withHeat(),
              row.notBeside(),
              row.circuit(),
              carrier(row, services));
      book.addAll(row.words(), meaning, pack.compounding(), pack.shortestInside());
    }
    stops.addAll(pack.stops(), "stop", pack.compounding(), pack.shortestInside());
  }

  /** The hints in a text on an element of this carrier. */
  List<PhraseBook.Match<Meaning>> read(String text, Carrier carrier) {
    return remembered.computeIfAbsent(
        new Asked(text, carrier),
        asked ->
            book
                .find(
                    sharedEndings.spelledOut(withoutFlowRate(text)),
                    meaning -> meaning.carrier().fits(carrier))
                .stream()
                .filter(match -> match.meaning().isHint())
                .toList());
  }

  private static String withoutFlowRate(String text) {
    return FLOW_RATE.matcher(text).replaceAll(" ");
  }

  /** True if a text names something where more than one medium or temperature meets. */
  boolean isStop(String text) {
    return rememberedStops.computeIfAbsent(text, t -> !stops.find(t, meaning -> true).isEmpty());
  }

  private static Carrier carrier(WordPack.Meaning row, ServicePack services) {
    if (row.on() != null) {
      return Carrier.of(row.on());
    }
    return row.family() == null ? Carrier.ANY : services.family(row.family()).carriedIn();
  }
}
