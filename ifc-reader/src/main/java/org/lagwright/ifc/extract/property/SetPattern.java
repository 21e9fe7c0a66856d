package org.lagwright.ifc.extract.property;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.lagwright.ifc.schema.IfcGlance;

/**
 * The members that sets of one name and size have in common, as exporters write the same set for
 * thousands of elements: which names in which order, each once. Only for properties of a single
 * value. Safe for several threads.
 */
final class SetPattern {

  /** Sets in a row that are unlike before another pattern is learnt. */
  private static final int WORN = 8;

  /**
   * What the sets of a pattern have in common to begin with.
   *
   * @param members how many
   */
  record Key(String set, int members) {
    /** Spelled out: the compiler's own is put together when first asked, which takes long. */
    @Override
    public boolean equals(@Nullable Object other) {
      return other instanceof Key o && set.equals(o.set) && members == o.members;
    }

    @Override
    public int hashCode() {
      return set.hashCode() * 31 + members;
    }
  }

  /** A pattern while its first set is gone through. */
  static final class Learner {
    private final List<byte[]> beginnings = new ArrayList<>();
    private final List<Integer> wanted = new ArrayList<>(0);
    private boolean fails;

    /** Learns from the member that is looked at. */
    void learn(IfcGlance glance, boolean isWanted) {
      byte[] beginning = fails ? null : glance.beginningOfSingleValue();
      if (beginning == null) {
        fails = true;
      } else {
        if (isWanted) {
          wanted.add(beginnings.size());
        }
        beginnings.add(beginning);
      }
    }

    /** What was learnt, null if not all members were properties of a single value. */
    @Nullable SetPattern pattern(int members) {
      return fails || beginnings.size() != members ? null : new SetPattern(beginnings, wanted);
    }
  }

  private final byte[][] beginnings;
  private final int[] wanted;

  /** Only a guess where several threads count; it decides about nothing but speed. */
  private int unlike;

  private SetPattern(List<byte[]> beginnings, List<Integer> wanted) {
    this.beginnings = beginnings.toArray(new byte[0][]);
    this.wanted = new int[wanted.size()];
    for (int i = 0; i < this.wanted.length; i++) {
      this.wanted[i] = wanted.get(i);
    }
  }

  /** How many of the members have a value; -1 if one of them is none of this pattern. */
  int valuesIn(long[] members, IfcGlance glance) {
    int values = 0;
    for (int i = 0; i < beginnings.length; i++) {
      if (!glance.isLike(members[i], beginnings[i])) {
        unlike++;
        return -1;
      }
      values += glance.hasSingleValue() ? 1 : 0;
    }
    unlike = 0;
    return values;
  }

  /** Places of the members that answer some question. */
  int[] wanted() {
    return wanted;
  }

  boolean isWorn() {
    return unlike >= WORN;
  }
}
