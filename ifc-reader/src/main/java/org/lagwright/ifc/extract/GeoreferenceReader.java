package org.lagwright.ifc.extract;

import java.util.List;
import org.jspecify.annotations.Nullable;
import org.lagwright.ifc.extract.text.Units;
import org.lagwright.ifc.geometry.frame.Coordinates;
import org.lagwright.ifc.geometry.frame.Frame;
import org.lagwright.ifc.geometry.frame.Placements;
import org.lagwright.ifc.model.Georeference;
import org.lagwright.ifc.model.Georeference.MapConversion;
import org.lagwright.ifc.model.Georeference.WorldSystem;
import org.lagwright.ifc.schema.IfcFile;
import org.lagwright.ifc.schema.IfcRecord;

/**
 * Reads where the site lies, the world coordinate system and the first map conversion of a file.
 */
final class GeoreferenceReader {

  private GeoreferenceReader() {}

  static Georeference read(IfcFile file, Placements placements, Units units) {
    IfcRecord site = first(file, "IfcSite");
    IfcRecord conversion = first(file, "IfcMapConversion");
    Frame frame = site == null ? null : placements.of(site);
    return new Georeference(
        site == null ? null : site.text("Name"),
        frame == null ? null : frame.origin(),
        world(file, new Coordinates(units.geometry())),
        conversion == null ? null : conversion(conversion, units.lengthM()));
  }

  /** Of the first context of three dimensions; those below a context have its. */
  private static WorldSystem world(IfcFile file, Coordinates coordinates) {
    IfcRecord project = first(file, "IfcProject");
    for (IfcRecord context :
        project == null ? List.<IfcRecord>of() : project.refs("RepresentationContexts")) {
      boolean drawn = context.number("CoordinateSpaceDimension") == 3;
      Frame frame = drawn ? coordinates.axes(context, "WorldCoordinateSystem").frame() : null;
      if (frame != null) {
        double turned = Math.toDegrees(Math.atan2(frame.ex().y(), frame.ex().x()));
        return new WorldSystem(frame.origin(), turned);
      }
    }
    return WorldSystem.ZERO;
  }

  private static @Nullable IfcRecord first(IfcFile file, String entity) {
    List<IfcRecord> all = file.all(entity);
    return all.isEmpty() ? null : all.get(0);
  }

  private static @Nullable MapConversion conversion(IfcRecord record, double fileUnitM) {
    IfcRecord crs = record.ref("TargetCRS");
    IfcRecord unit = crs == null ? null : crs.ref("MapUnit");
    double unitM = unit == null ? Double.NaN : Units.factor(unit);
    boolean told = unitM > 0 && Double.isFinite(unitM);
    double east = record.number("Eastings");
    double north = record.number("Northings");
    if (!Double.isFinite(east) || !Double.isFinite(north)) {
      return null;
    }
    double x = orElse(record.number("XAxisAbscissa"), 1);
    double y = orElse(record.number("XAxisOrdinate"), 0);
    return new MapConversion(
        crs == null ? null : crs.text("Name"),
        east,
        north,
        orElse(record.number("OrthogonalHeight"), 0),
        Math.toDegrees(Math.atan2(y, x)),
        orElse(record.number("Scale"), 1),
        told ? unitM : fileUnitM,
        told);
  }

  private static double orElse(double number, double absent) {
    return Double.isFinite(number) ? number : absent;
  }
}
