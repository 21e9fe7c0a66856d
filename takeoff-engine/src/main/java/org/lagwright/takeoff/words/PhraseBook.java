package org.lagwright.takeoff.words;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.function.Predicate;
import org.jspecify.annotations.Nullable;

/** Finds listed phrases in names; of several at one place the longest wins. */
public final class PhraseBook<T> {

  /** A phrase found; {@code text} as it stands in the name. */
  public record Match<T>(T meaning, String text) {}

  private record Entry<T>(Phrase phrase, T meaning) {}

  private static final int STEM_LETTERS = 2;

  private final Map<String, List<Entry<T>>> byFirst = new HashMap<>();
  private final Map<String, List<Entry<T>>> stems = new HashMap<>();
  private final List<Entry<T>> inside = new ArrayList<>();
  private final Map<String, List<Entry<T>>> insideByToken = new HashMap<>();

  /**
   * Adds a phrase.
   *
   * @param insideFrom letters from which on it is found inside longer words, null for never
   */
  public void add(String written, T meaning, @Nullable Integer insideFrom) {
    for (Phrase phrase : Phrase.listOf(written)) {
      Entry<T> entry = new Entry<>(phrase, meaning);
      if (phrase.stem() && phrase.tokens().size() == 1) {
        insert(stems, phrase.first().substring(0, STEM_LETTERS), entry);
      } else {
        insert(byFirst, phrase.first(), entry);
      }
      if (insideFrom != null && phrase.fitsInside(insideFrom)) {
        inside.add(entry);
        inside.sort(longestFirst());
        insideByToken.clear();
      }
    }
  }

  /**
   * Adds the words of several languages.
   *
   * @param written words by language
   * @param compounding languages whose words are also found inside longer words
   * @param shortestInside letters a word must have for that
   */
  public void addAll(
      Map<String, List<String>> written, T meaning, List<String> compounding, int shortestInside) {
    new TreeMap<>(written)
        .forEach(
            (language, words) -> {
              Integer inside = compounding.contains(language) ? shortestInside : null;
              words.forEach(word -> add(word, meaning, inside));
            });
  }

  /** All matches whose meaning applies, from left to right. */
  public List<Match<T>> find(String text, Predicate<T> applies) {
    String composed = Token.composed(text);
    List<Token> tokens = Token.listIn(composed);
    List<Match<T>> matches = new ArrayList<>();
    int at = 0;
    while (at < tokens.size()) {
      List<Entry<T>> here = longestAt(tokens, at, applies);
      if (here.isEmpty()) {
        matches.addAll(findInside(tokens.get(at), composed, applies));
        at++;
      } else {
        int after = at + here.get(0).phrase().tokens().size();
        String raw = composed.substring(tokens.get(at).start(), tokens.get(after - 1).end());
        here.forEach(entry -> matches.add(new Match<>(entry.meaning(), raw)));
        at = after;
      }
    }
    return matches;
  }

  /** The longest entry here, with its twins that mean something else. */
  private List<Entry<T>> longestAt(List<Token> tokens, int at, Predicate<T> applies) {
    String first = tokens.get(at).folded();
    List<Entry<T>> candidates = new ArrayList<>(byFirst.getOrDefault(first, List.of()));
    if (first.length() >= STEM_LETTERS) {
      candidates.addAll(stems.getOrDefault(first.substring(0, STEM_LETTERS), List.of()));
    }
    List<Entry<T>> found =
        candidates.stream()
            .filter(e -> applies.test(e.meaning()) && e.phrase().standsAt(tokens, at))
            .sorted(longestFirst())
            .toList();
    return found.stream()
        .filter(e -> e.phrase().size() == found.get(0).phrase().size())
        .filter(e -> e.phrase().tokens().size() == found.get(0).phrase().tokens().size())
        .toList();
  }

  private List<Match<T>> findInside(Token token, String composed, Predicate<T> applies) {
    List<Match<T>> matches = new ArrayList<>();
    String rest = token.folded();
    String raw = composed.substring(token.start(), token.end());
    for (Entry<T> entry : insideByToken.computeIfAbsent(rest, this::listInside)) {
      String word = entry.phrase().first();
      if (rest.contains(word) && applies.test(entry.meaning())) {
        matches.add(new Match<>(entry.meaning(), raw));
        rest = rest.replace(word, " ".repeat(word.length()));
      }
    }
    return matches;
  }

  /** What stands inside a token, whatever it applies to; names repeat their tokens. */
  private List<Entry<T>> listInside(String token) {
    return inside.stream()
        .filter(entry -> entry.phrase().first().length() < token.length())
        .filter(entry -> token.contains(entry.phrase().first()))
        .toList();
  }

  private static <T> Comparator<Entry<T>> longestFirst() {
    return Comparator.<Entry<T>>comparingInt(e -> e.phrase().tokens().size())
        .thenComparingInt(e -> e.phrase().size())
        .reversed();
  }

  private static <T> void insert(Map<String, List<Entry<T>>> map, String key, Entry<T> entry) {
    map.computeIfAbsent(key, k -> new ArrayList<>()).add(entry);
  }
}
