package org.lagwright.ifc.geometry.profile;

import java.util.List;
import org.jspecify.annotations.Nullable;
import org.lagwright.ifc.geometry.curve.Curves;
import org.lagwright.ifc.geometry.curve.Path;
import org.lagwright.ifc.geometry.frame.Coordinates;
import org.lagwright.ifc.geometry.frame.Frame;
import org.lagwright.ifc.geometry.frame.Item;
import org.lagwright.ifc.geometry.frame.Vec;
import org.lagwright.ifc.model.Section;
import org.lagwright.ifc.schema.IfcRecord;

/**
 * Reads the bores of hollow profiles and disks. They do not matter for the size of one item, only
 * for what fits into what where a body has several.
 */
public final class Bores {

  /** Derived profiles within each other that are followed. */
  private static final int MAX_NESTED = 20;

  private final Coordinates coordinates;
  private final Curves curves;
  private final Profiles profiles;

  /** Looks for bores in one file. */
  public Bores(Coordinates coordinates, Curves curves, Profiles profiles) {
    this.coordinates = coordinates;
    this.curves = curves;
    this.profiles = profiles;
  }

  /** The bore of an item, null if it has none, or several. */
  public @Nullable Section of(Item item) {
    IfcRecord solid = item.record();
    if (solid.is("IfcSweptDiskSolid")) {
      double radius = coordinates.length(solid, "InnerRadius");
      return section(Outline.inPlane(Outline.Kind.ROUND, radius, radius), item.frame());
    }
    Frame own = coordinates.position(solid, "Position");
    Outline bore = own == null ? null : of(solid.ref("SweptArea"), 0);
    return bore == null || own == null ? null : section(bore, item.frame().times(own));
  }

  private static @Nullable Section section(Outline bore, Frame frame) {
    Outline placed = bore.in(frame);
    return placed.isUsable() ? placed.section() : null;
  }

  /** The bore of a profile in its own plane. */
  public @Nullable Outline of(@Nullable IfcRecord profile) {
    return of(profile, 0);
  }

  private @Nullable Outline of(@Nullable IfcRecord profile, int nesting) {
    if (profile == null || nesting > MAX_NESTED) {
      return null;
    }
    if (profile.is("IfcDerivedProfileDef")) {
      Outline parent = of(profile.ref("ParentProfile"), nesting + 1);
      Frame operator = coordinates.profileOperator(profile);
      return parent == null || operator == null ? null : parent.in(operator);
    }
    if (profile.is("IfcArbitraryProfileDefWithVoids")) {
      List<IfcRecord> inner = profile.refs("InnerCurves");
      Path path = inner.size() == 1 ? curves.read(inner.get(0)) : null;
      return path == null ? null : Profiles.outline(path, path.points());
    }
    double wallM = coordinates.length(profile, "WallThickness");
    Profile outside = wallM > 0 ? profiles.read(profile) : null;
    return outside == null || outside.outline() == null ? null : within(outside.outline(), wallM);
  }

  private static @Nullable Outline within(Outline outside, double wallM) {
    Vec u = outside.u();
    Vec v = outside.v();
    boolean hollow = wallM < Math.min(u.norm(), v.norm());
    return hollow
        ? new Outline(
            outside.kind(),
            outside.centre(),
            u.minus(u.unit().times(wallM)),
            v.minus(v.unit().times(wallM)))
        : null;
  }
}
