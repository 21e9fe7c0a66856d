package org.lagwright.ifc.step;

import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;
import java.util.Map;
import java.util.TreeMap;
import java.util.function.Predicate;
import org.jspecify.annotations.Nullable;

/**
 * Counts instances by keyword while the index is made, and lists those of the keywords asked for. A
 * hash of the bytes finds the entry and a comparison confirms it, so no text is made per instance.
 */
final class StepTypes {

  private static final class Entry {
    final byte[] name;
    final StepIndex.@Nullable Ids ids;
    int count;

    Entry(byte[] name, boolean listed) {
      this.name = name;
      this.ids = listed ? new StepIndex.Ids() : null;
    }
  }

  private final Predicate<String> listed;
  private final TreeMap<String, Entry> byName = new TreeMap<>();
  private @Nullable Entry[] table = new Entry[4096];

  StepTypes(Predicate<String> listed) {
    this.listed = listed;
  }

  /** Notes an instance whose keyword stands in {@code [from, to)}. */
  void add(ByteBuffer bytes, int from, int to, long id) {
    int hash = 17;
    for (int i = from; i < to; i++) {
      hash = hash * 31 + upper(bytes.get(i));
    }
    int slot = (hash ^ (hash >>> 15)) & (table.length - 1);
    Entry entry = table[slot];
    while (entry != null && !same(entry.name, bytes, from, to)) {
      slot = (slot + 1) & (table.length - 1);
      entry = table[slot];
    }
    if (entry == null) {
      entry = newEntry(bytes, from, to);
      table[slot] = entry;
      growIfCrowded();
    }
    entry.count++;
    if (entry.ids != null) {
      entry.ids.add(id);
    }
  }

  private static int upper(int b) {
    return b >= 'a' && b <= 'z' ? b - 32 : b;
  }

  private static boolean same(byte[] name, ByteBuffer bytes, int from, int to) {
    if (name.length != to - from) {
      return false;
    }
    for (int i = 0; i < name.length; i++) {
      if (name[i] != upper(bytes.get(from + i))) {
        return false;
      }
    }
    return true;
  }

  private Entry newEntry(ByteBuffer bytes, int from, int to) {
    byte[] name = new byte[to - from];
    for (int i = 0; i < name.length; i++) {
      name[i] = (byte) upper(bytes.get(from + i));
    }
    String text = new String(name, StandardCharsets.ISO_8859_1);
    Entry entry = new Entry(name, listed.test(text));
    byName.put(text, entry);
    return entry;
  }

  private void growIfCrowded() {
    if (byName.size() * 2 < table.length) {
      return;
    }
    @Nullable Entry[] larger = new Entry[table.length * 2];
    for (Entry entry : byName.values()) {
      int hash = 17;
      for (byte b : entry.name) {
        hash = hash * 31 + b;
      }
      int slot = (hash ^ (hash >>> 15)) & (larger.length - 1);
      while (larger[slot] != null) {
        slot = (slot + 1) & (larger.length - 1);
      }
      larger[slot] = entry;
    }
    table = larger;
  }

  /**
   * Instance numbers of one keyword in file order; empty if it was not listed or does not occur.
   */
  long[] ids(String keyword) {
    Entry entry = byName.get(keyword);
    return entry == null || entry.ids == null ? new long[0] : entry.ids.toArray();
  }

  /** How many instances of each keyword. */
  Map<String, Integer> counts() {
    Map<String, Integer> counts = new TreeMap<>();
    byName.forEach((name, entry) -> counts.put(name, entry.count));
    return counts;
  }
}
