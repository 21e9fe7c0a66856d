package org.lagwright.ifc.extract;

import org.lagwright.ifc.extract.text.Units;
import org.lagwright.ifc.geometry.frame.GeometryUnits;
import org.lagwright.ifc.schema.IfcFile;

/** The units of a file, for tests that measure bodies by themselves. */
public final class FileUnits {

  private FileUnits() {}

  /** Units as the extraction takes them. */
  public static GeometryUnits of(IfcFile file) {
    return new Units(file, 0).geometry();
  }
}
