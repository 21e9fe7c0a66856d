package org.lagwright.ifc.extract.draft;

import java.util.List;
import org.jspecify.annotations.Nullable;
import org.lagwright.ifc.model.ElementKey;

/** All elements of one file while they are being worked out, in its order. */
public final class Drafts implements DraftLookup {

  /** Elements that one thread works on before it hands them on. */
  public static final int RUN = 32;

  private final List<Draft> all;

  /** Places in the list, from 1 on, by instance number; 0 is none. A third at least are. */
  private final int[] places;

  /** Those of one file, in its order. */
  public Drafts(List<Draft> all) {
    this.all = List.copyOf(all);
    this.places = new int[2 * Integer.highestOneBit(1 + all.size() * 3 / 2)];
    for (int i = 0; i < all.size(); i++) {
      int slot = slot(all.get(i).step());
      while (places[slot] != 0) {
        slot = next(slot);
      }
      places[slot] = i + 1;
    }
  }

  private int slot(long step) {
    return (int) ((step * 0x9E3779B97F4A7C15L) >>> 32) & (places.length - 1);
  }

  private int next(int slot) {
    return slot + 1 & (places.length - 1);
  }

  /** In the order of the file. */
  public List<Draft> all() {
    return all;
  }

  @Override
  public @Nullable Draft find(ElementKey key) {
    return find(key.step());
  }

  /** An element by its instance number, null if it is none of these. */
  public @Nullable Draft find(long step) {
    for (int slot = slot(step); places[slot] != 0; slot = next(slot)) {
      Draft draft = all.get(places[slot] - 1);
      if (draft.step() == step) {
        return draft;
      }
    }
    return null;
  }
}
