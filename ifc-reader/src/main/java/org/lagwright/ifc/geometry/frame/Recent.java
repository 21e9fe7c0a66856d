package org.lagwright.ifc.geometry.frame;

import org.jspecify.annotations.Nullable;

/**
 * What was made of records that many others refer to. Keeps a limited number, of which a later one
 * takes the place of an earlier one; safe for several threads.
 */
public final class Recent<T> {

  private record Entry<T>(long id, T value) {}

  private final @Nullable Entry<T>[] entries;

  /**
   * @param size how many are kept, a power of two
   */
  @SuppressWarnings({"unchecked", "rawtypes"})
  public Recent(int size) {
    entries = new Entry[size];
  }

  /** What was made of a record, null if that is not known any more. */
  public @Nullable T find(long id) {
    Entry<T> entry = entries[slot(id)];
    return entry == null || entry.id != id ? null : entry.value;
  }

  /** Keeps what was made of a record. */
  public void keep(long id, T value) {
    entries[slot(id)] = new Entry<>(id, value);
  }

  private int slot(long id) {
    return (int) id & (entries.length - 1);
  }
}
