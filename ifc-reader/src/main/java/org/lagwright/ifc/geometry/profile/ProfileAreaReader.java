package org.lagwright.ifc.geometry.profile;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.lagwright.ifc.geometry.curve.Curves;
import org.lagwright.ifc.geometry.curve.Leg;
import org.lagwright.ifc.geometry.curve.Path;
import org.lagwright.ifc.geometry.frame.Coordinates;
import org.lagwright.ifc.geometry.frame.Frame;
import org.lagwright.ifc.geometry.frame.Vec;
import org.lagwright.ifc.schema.IfcRecord;

/** Reads the whole area of profiles, with bores and voids. */
public final class ProfileAreaReader {

  /** Derived and composite profiles within each other that are followed. */
  private static final int MAX_NESTING = 20;

  /** Parts of composite profiles; repeated ones can come to billions. */
  private static final int MAX_PARTS = 1000;

  private final Coordinates coordinates;
  private final Curves curves;
  private final double stepRad;

  /**
   * @param stepRad arcs are cut into steps of at most this
   */
  public ProfileAreaReader(Coordinates coordinates, Curves curves, double stepRad) {
    this.coordinates = coordinates;
    this.curves = curves;
    this.stepRad = stepRad;
  }

  /** The regions of a profile; empty if it is broken or of a kind not read here. */
  public List<ProfileArea> read(@Nullable IfcRecord profile) {
    List<ProfileArea> regions = new ArrayList<>();
    boolean whole = profile != null && add(profile, Frame.WORLD, 0, regions);
    return whole ? regions : List.of();
  }

  private boolean add(IfcRecord profile, Frame frame, int nesting, List<ProfileArea> into) {
    if (nesting > MAX_NESTING || into.size() > MAX_PARTS) {
      return false;
    }
    if (profile.is("IfcDerivedProfileDef")) {
      IfcRecord parent = profile.ref("ParentProfile");
      Frame operator = coordinates.profileOperator(profile);
      return parent != null
          && operator != null
          && add(parent, frame.times(operator), nesting + 1, into);
    }
    if (profile.is("IfcCompositeProfileDef")) {
      List<IfcRecord> parts = profile.refs("Profiles");
      boolean whole = !parts.isEmpty();
      for (IfcRecord part : parts) {
        whole = whole && add(part, frame, nesting + 1, into);
      }
      return whole;
    }
    return profile.is("IfcArbitraryClosedProfileDef")
        ? free(profile, frame, into)
        : withParameters(profile, frame, into);
  }

  private boolean free(IfcRecord profile, Frame frame, List<ProfileArea> into) {
    Path outer = curves.read(profile.ref("OuterCurve"));
    if (outer == null) {
      return false;
    }
    List<List<Vec>> holes = new ArrayList<>();
    for (IfcRecord curve : profile.refs("InnerCurves")) {
      Path hole = curves.read(curve);
      if (hole == null) {
        return false;
      }
      holes.add(hole.points(stepRad));
    }
    into.add(ProfileArea.of(outer.points(stepRad), holes).in(frame));
    return true;
  }

  private boolean withParameters(IfcRecord profile, Frame frame, List<ProfileArea> into) {
    Frame position = coordinates.position(profile, "Position");
    List<Vec> outer = outer(profile);
    if (position == null || outer.isEmpty()) {
      return false;
    }
    List<Vec> bore = bore(profile);
    ProfileArea region = ProfileArea.of(outer, bore.isEmpty() ? List.of() : List.of(bore));
    into.add(region.in(frame.times(position)));
    return true;
  }

  private List<Vec> outer(IfcRecord profile) {
    if (profile.is("IfcCircleProfileDef")) {
      double radius = coordinates.length(profile, "Radius");
      return ellipse(radius, radius);
    }
    if (profile.is("IfcEllipseProfileDef")) {
      return ellipse(
          coordinates.length(profile, "SemiAxis1"), coordinates.length(profile, "SemiAxis2"));
    }
    if (profile.is("IfcRectangleProfileDef")) {
      double rounding =
          Math.max(
              orZero(coordinates.length(profile, "RoundingRadius")),
              orZero(coordinates.length(profile, "OuterFilletRadius")));
      return rectangle(
          coordinates.length(profile, "XDim") / 2,
          coordinates.length(profile, "YDim") / 2,
          rounding);
    }
    return profile.is("IfcTrapeziumProfileDef") ? trapezium(profile) : List.of();
  }

  /** The bore of hollow profiles; empty for solid ones and where the wall leaves none. */
  private List<Vec> bore(IfcRecord profile) {
    double wall = coordinates.length(profile, "WallThickness");
    if (!(wall > 0)) {
      return List.of();
    }
    if (profile.is("IfcCircleProfileDef")) {
      double radius = coordinates.length(profile, "Radius") - wall;
      return ellipse(radius, radius);
    }
    return rectangle(
        coordinates.length(profile, "XDim") / 2 - wall,
        coordinates.length(profile, "YDim") / 2 - wall,
        orZero(coordinates.length(profile, "InnerFilletRadius")));
  }

  private static double orZero(double length) {
    return length > 0 ? length : 0;
  }

  private List<Vec> ellipse(double a, double b) {
    return isSize(a) && isSize(b)
        ? new Path(List.of(new Leg.Arc(Vec.ZERO, Vec.X.times(a), Vec.Y.times(b), 2 * Math.PI)))
            .points(stepRad)
        : List.of();
  }

  private static boolean isSize(double length) {
    return length > 0 && Double.isFinite(length);
  }

  private List<Vec> rectangle(double halfX, double halfY, double rounding) {
    if (!isSize(halfX) || !isSize(halfY)) {
      return List.of();
    }
    double r = Math.min(rounding, Math.min(halfX, halfY));
    double[][] signs = {{1, 1}, {-1, 1}, {-1, -1}, {1, -1}};
    List<Vec> points = new ArrayList<>();
    for (int i = 0; i < 4; i++) {
      Vec centre = new Vec(signs[i][0] * (halfX - r), signs[i][1] * (halfY - r), 0);
      Vec u = (i % 2 == 0 ? Vec.X : Vec.Y).times(i < 2 ? r : -r);
      Vec v = Vec.Z.cross(u);
      points.addAll(
          r > 0 ? new Leg.Arc(centre, u, v, Math.PI / 2).points(stepRad) : List.of(centre));
    }
    return points;
  }

  private List<Vec> trapezium(IfcRecord profile) {
    double bottom = coordinates.length(profile, "BottomXDim");
    double top = coordinates.length(profile, "TopXDim");
    double half = coordinates.length(profile, "YDim") / 2;
    double offset = coordinates.length(profile, "TopXOffset") - bottom / 2;
    return isSize(bottom) && isSize(top) && isSize(half) && Double.isFinite(offset)
        ? List.of(
            new Vec(-bottom / 2, -half, 0),
            new Vec(bottom / 2, -half, 0),
            new Vec(offset + top, half, 0),
            new Vec(offset, half, 0))
        : List.of();
  }
}
