package org.lagwright.ifc.step;

import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.function.Predicate;
import org.jspecify.annotations.Nullable;

/**
 * The keywords of a file, each once. A hash of the raw bytes finds an entry and a comparison
 * confirms it, so no text is made per instance. Safe for several threads.
 */
final class StepKeywords {

  /** Names of entities are far shorter; what is longer is no keyword. */
  static final int MAX_BYTES = 128;

  /** How far behind the start of a keyword {@link #find} may read. */
  static final int REACH = MAX_BYTES + 16;

  private static final long BRACKETS = StepScanner.LOW * '(';
  private static final long MULTIPLIER = 0x9E3779B97F4A7C15L;
  private static final int SPELLINGS_PER_KEYWORD = 4;

  /** One way to write a keyword; upper and lower case may be mixed. */
  private static final class Spelling {
    final long hash;
    final long[] words;
    final StepKeyword keyword;

    Spelling(long hash, long[] words, StepKeyword keyword) {
      this.hash = hash;
      this.words = words;
      this.keyword = keyword;
    }

    /** All words before the last one are compared with the bytes, the last one as it is cut off. */
    boolean matches(byte[] bytes, int from, int last, long lastWord) {
      int count = (last - from) >>> 3;
      if (words.length != count + 1 || words[count] != lastWord) {
        return false;
      }
      for (int i = 0; i < count; i++) {
        if (StepScanner.word(bytes, from + 8 * i) != words[i]) {
          return false;
        }
      }
      return true;
    }
  }

  private final Predicate<String> listed;
  private final int maxKeywords;
  private final List<StepKeyword> keywords = new ArrayList<>();
  private final Map<String, StepKeyword> byName = new HashMap<>();
  private volatile @Nullable Spelling[] table = new Spelling[1024];
  private int spellings;

  StepKeywords(Predicate<String> listed, int maxKeywords) {
    this.listed = listed;
    this.maxKeywords = maxKeywords;
  }

  /**
   * The keyword that starts at a position and ends before the next opening bracket.
   *
   * @param from at least {@link #REACH} bytes before the end of the bytes
   * @return null if what stands there is anything but one keyword, or one keyword too many
   */
  @Nullable StepKeyword find(byte[] bytes, int from) {
    long hash = 0;
    int at = from;
    long word = StepScanner.word(bytes, at);
    long bracket = StepScanner.zeroBytes(word ^ BRACKETS);
    while (bracket == 0) {
      hash = (hash ^ word) * MULTIPLIER;
      at += 8;
      if (at - from > MAX_BYTES) {
        return null;
      }
      word = StepScanner.word(bytes, at);
      bracket = StepScanner.zeroBytes(word ^ BRACKETS);
    }
    word &= ((bracket & -bracket) >>> 7) - 1;
    hash = (hash ^ word) * MULTIPLIER;
    @Nullable Spelling[] entries = table;
    int slot = slot(hash, entries.length);
    for (Spelling entry = entries[slot]; entry != null; entry = entries[slot]) {
      if (entry.hash == hash && entry.matches(bytes, from, at, word)) {
        return entry.keyword;
      }
      slot = (slot + 1) & (entries.length - 1);
    }
    int length = at - from + StepScanner.firstByte(bracket);
    return newSpelling(bytes, from, length, hash);
  }

  /** The keyword in {@code [from, to)}, wherever that lies; null as in {@link #find}. */
  @Nullable StepKeyword of(byte[] bytes, int from, int to) {
    if (to - from > MAX_BYTES) {
      return null;
    }
    byte[] padded = new byte[to - from + 1 + REACH];
    System.arraycopy(bytes, from, padded, 0, to - from);
    padded[to - from] = '(';
    return find(padded, 0);
  }

  private static int slot(long hash, int tableLength) {
    return (int) (hash >>> 40) & (tableLength - 1);
  }

  private synchronized @Nullable StepKeyword newSpelling(
      byte[] bytes, int from, int length, long hash) {
    byte[] raw = Arrays.copyOfRange(bytes, from, from + length);
    for (byte b : raw) {
      if (!StepScanner.isKeywordByte(b)) {
        return null;
      }
    }
    StepKeyword keyword =
        byName(new String(raw, StandardCharsets.US_ASCII).toUpperCase(Locale.ROOT));
    if (keyword != null && spellings < SPELLINGS_PER_KEYWORD * maxKeywords) {
      insert(new Spelling(hash, words(raw), keyword));
    }
    return keyword;
  }

  private @Nullable StepKeyword byName(String name) {
    StepKeyword known = byName.get(name);
    if (known == null && keywords.size() < maxKeywords) {
      known = new StepKeyword(name, keywords.size(), listed.test(name));
      keywords.add(known);
      byName.put(name, known);
    }
    return known;
  }

  private static long[] words(byte[] raw) {
    long[] words = new long[raw.length / 8 + 1];
    byte[] padded = Arrays.copyOf(raw, words.length * 8);
    for (int i = 0; i < words.length; i++) {
      words[i] = StepScanner.word(padded, 8 * i);
    }
    return words;
  }

  /** Readers see the old or the new table; an entry they miss they look for again in here. */
  private void insert(Spelling spelling) {
    @Nullable Spelling[] entries = table;
    if (2 * ++spellings > entries.length) {
      @Nullable Spelling[] larger = new Spelling[entries.length * 2];
      for (Spelling entry : entries) {
        if (entry != null) {
          put(larger, entry);
        }
      }
      put(larger, spelling);
      table = larger;
    } else {
      put(entries, spelling);
    }
  }

  private static void put(@Nullable Spelling[] entries, Spelling spelling) {
    int slot = slot(spelling.hash, entries.length);
    for (Spelling entry = entries[slot]; entry != null; entry = entries[slot]) {
      if (entry.hash == spelling.hash && Arrays.equals(entry.words, spelling.words)) {
        return;
      }
      slot = (slot + 1) & (entries.length - 1);
    }
    entries[slot] = spelling;
  }

  /** The keyword of a name in upper case, null if the file has none. */
  synchronized @Nullable StepKeyword named(String name) {
    return byName.get(name);
  }

  /** All keywords by number. */
  synchronized List<StepKeyword> all() {
    return List.copyOf(keywords);
  }
}
