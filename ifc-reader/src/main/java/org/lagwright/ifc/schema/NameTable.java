package org.lagwright.ifc.schema;

import java.util.Collection;

/** Where each of a few names stands. A table of our own, as every record asks all the time. */
final class NameTable {

  /** Each at the place its hash says or at the next free one. */
  private final String[] slots;

  /** Number of the name at each place, in the order in which they were given. */
  private final short[] numbers;

  NameTable(Collection<String> names) {
    int size = Math.max(2, Integer.highestOneBit(Math.max(1, names.size())) * 4);
    this.slots = new String[size];
    this.numbers = new short[size];
    short number = 0;
    for (String name : names) {
      int slot = slot(name);
      slots[slot] = name.intern();
      numbers[slot] = number++;
    }
  }

  /** The place that holds a name, or the free one where it would stand. */
  private int slot(String name) {
    int slot = name.hashCode() & (slots.length - 1);
    while (slots[slot] != null && !slots[slot].equals(name)) {
      slot = (slot + 1) & (slots.length - 1);
    }
    return slot;
  }

  /** Number of a name, -1 if it is not there. */
  int number(String name) {
    int slot = slot(name);
    return slots[slot] == null ? -1 : numbers[slot];
  }
}
