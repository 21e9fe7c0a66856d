package org.lagwright.ifc.model;

import org.jspecify.annotations.Nullable;

/**
 * One property or quantity that applies to an element, after merging type and occurrence.
 *
 * @param set name of the property or quantity set
 * @param name name of the property
 * @param text value as text, decoded
 * @param number value in SI units (temperatures in degC, angles in radians), null if not a number
 * @param measure IFC type of the value ({@code IFCPOSITIVELENGTHMEASURE}), null if untyped
 * @param quantity true for members of quantity sets
 * @param fromType true if it comes from the type object
 * @param step instance number of the property record
 */
public record Property(
    String set,
    String name,
    String text,
    @Nullable Double number,
    @Nullable String measure,
    boolean quantity,
    boolean fromType,
    long step) {

  /**
   * The name without a code in square brackets in front of it, as in {@code [MED] Medium}, and
   * without a unit of temperature behind it.
   */
  public String plainName() {
    int end = name.startsWith("[") ? name.indexOf(']') : -1;
    String plain = end < 0 ? "" : name.substring(end + 1).strip();
    return DegreesInName.without(plain.isEmpty() ? name : plain);
  }

  /** Where it stands, for {@link Measured}. */
  public Evidence evidence() {
    return new Evidence(step, set, name, text);
  }
}
