package org.lagwright.ifc.model;

/**
 * The place in the file that a value comes from.
 *
 * @param step instance number of the IFC record (the 4711 of {@code #4711=})
 * @param path attribute name, {@code set.property}, or a short chain such as {@code
 *     IfcExtrudedAreaSolid.Depth}
 * @param raw the text as it stands in the file, or the figures that were combined
 */
public record Evidence(long step, String path, String raw) {

  @Override
  public String toString() {
    return "#" + step + " " + path + " = " + raw;
  }
}
