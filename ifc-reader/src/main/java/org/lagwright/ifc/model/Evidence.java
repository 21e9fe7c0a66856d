package org.lagwright.ifc.model;

import org.jspecify.annotations.Nullable;

/**
 * The place in the file that a value comes from.
 *
 * @param step instance number of the IFC record (the 4711 of {@code #4711=})
 * @param owner what {@link #path} begins with: name of a set or an entity
 * @param member name of the property or attribute; empty if the owner is the whole path
 * @param raw the text as it stands in the file, or the figures that were combined
 */
public record Evidence(long step, String owner, String member, String raw) {

  /** Evidence whose place is told in one phrase. */
  public Evidence(long step, String path, String raw) {
    this(step, path, "", raw);
  }

  /**
   * Attribute name, {@code set.property}, or a short chain such as {@code
   * IfcExtrudedAreaSolid.Depth}.
   */
  public String path() {
    // put together only when shown: a large model holds hundreds of thousands
    return member.isEmpty() ? owner : owner + "." + member;
  }

  @Override
  public String toString() {
    return "#" + step + " " + path() + " = " + raw;
  }

  /** Spelled out: the compiler's own is put together when first asked, which takes long. */
  @Override
  public boolean equals(@Nullable Object other) {
    return other instanceof Evidence o
        && step == o.step
        && owner.equals(o.owner)
        && member.equals(o.member)
        && raw.equals(o.raw);
  }

  @Override
  public int hashCode() {
    return ((Long.hashCode(step) * 31 + owner.hashCode()) * 31 + member.hashCode()) * 31
        + raw.hashCode();
  }
}
