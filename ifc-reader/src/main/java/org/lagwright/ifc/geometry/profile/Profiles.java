package org.lagwright.ifc.geometry.profile;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import org.lagwright.ifc.geometry.curve.Curves;
import org.lagwright.ifc.geometry.curve.Leg;
import org.lagwright.ifc.geometry.curve.Path;
import org.lagwright.ifc.geometry.frame.Coordinates;
import org.lagwright.ifc.geometry.frame.Frame;
import org.lagwright.ifc.geometry.frame.Recent;
import org.lagwright.ifc.geometry.frame.Vec;
import org.lagwright.ifc.model.Evidence;
import org.lagwright.ifc.schema.IfcRecord;

/** Reads profile definitions; the outer outline only, bores do not matter for insulation. */
public final class Profiles {

  /** Derived and composite profiles within each other that are followed. */
  private static final int MAX_NESTED = 100;

  /** Profiles that are remembered: those of one size are often the same. */
  private static final int REMEMBERED = 1 << 8;

  private final Coordinates coordinates;
  private final Curves curves;
  private final Bores bores;
  private final Recent<Profile> plain = new Recent<>(REMEMBERED);

  /** Reads profiles of one file. */
  public Profiles(Coordinates coordinates, Curves curves) {
    this.coordinates = coordinates;
    this.curves = curves;
    this.bores = new Bores(coordinates, curves, this);
  }

  /** The profile that an attribute refers to, null if its record is missing or broken. */
  public @Nullable Profile read(IfcRecord owner, String attribute) {
    long id = owner.refId(attribute);
    Profile known = plain.find(id);
    if (known == null) {
      known = read(owner.ref(attribute));
      // a free one may have any number of points
      if (known != null && known.path() == null) {
        plain.keep(id, known);
      }
    }
    return known;
  }

  /** The profile, null if its record is missing or broken. */
  public @Nullable Profile read(@Nullable IfcRecord profile) {
    return read(profile, new HashSet<>());
  }

  /**
   * @param seen derived and composite profiles on the way, each of which is followed once
   */
  private @Nullable Profile read(@Nullable IfcRecord profile, Set<Long> seen) {
    if (profile == null) {
      return null;
    }
    boolean nests = profile.is("IfcDerivedProfileDef") || profile.is("IfcCompositeProfileDef");
    if (nests && (!seen.add(profile.id()) || seen.size() > MAX_NESTED)) {
      return null;
    }
    if (profile.is("IfcDerivedProfileDef")) {
      return derived(profile, seen);
    }
    if (profile.is("IfcCompositeProfileDef")) {
      return composite(profile, seen);
    }
    if (profile.is("IfcArbitraryClosedProfileDef")) {
      return free(profile);
    }
    return profile.is("IfcParameterizedProfileDef") ? withParameters(profile) : null;
  }

  /** The widest of its parts, with all of them. */
  private @Nullable Profile composite(IfcRecord profile, Set<Long> seen) {
    List<Profile> parts = new ArrayList<>();
    Profile widest = null;
    for (IfcRecord record : profile.refs("Profiles")) {
      Profile part = read(record, seen);
      if (part != null) {
        parts.add(part.withBore(bores.of(record)));
        widest = widest == null || size(part) > size(widest) ? part : widest;
      }
    }
    return widest == null ? null : widest.withParts(parts);
  }

  private static double size(Profile profile) {
    return profile.outline() == null ? 0 : profile.outline().largestHalfM();
  }

  private @Nullable Profile derived(IfcRecord profile, Set<Long> seen) {
    Profile parent = read(profile.ref("ParentProfile"), seen);
    Frame operator = coordinates.profileOperator(profile);
    return parent == null || operator == null ? null : parent.in(operator);
  }

  private @Nullable Profile free(IfcRecord profile) {
    IfcRecord curve = profile.ref("OuterCurve");
    Path path = curves.read(curve);
    if (curve == null || path == null) {
      return null;
    }
    List<Vec> points = path.points();
    Outline outline = outline(path, points);
    Evidence evidence =
        new Evidence(
            profile.id(),
            profile.entityName() + ".OuterCurve",
            curve.entityName() + " #" + curve.id() + " through " + points.size() + " points");
    return new Profile(outline, path, evidence);
  }

  /** The outline that a closed curve makes, null if it is neither circle, rectangle nor oval. */
  static @Nullable Outline outline(Path path, List<Vec> points) {
    return path.legs().size() == 1 && path.first() instanceof Leg.Arc arc
        ? new Outline(Outline.Kind.OVAL, arc.centre(), arc.u(), arc.v())
        : OutlineFit.fit(points);
  }

  private @Nullable Profile withParameters(IfcRecord profile) {
    Frame position = coordinates.position(profile, "Position");
    if (position == null) {
      return null;
    }
    Profile read;
    if (profile.is("IfcCircleProfileDef")) {
      double radius = coordinates.length(profile, "Radius");
      read = of(profile, Outline.inPlane(Outline.Kind.ROUND, radius, radius), "Radius");
    } else if (profile.is("IfcRectangleProfileDef")) {
      read = of(profile, rectangle(profile), "XDim", "YDim");
    } else if (profile.is("IfcEllipseProfileDef")) {
      double a = coordinates.length(profile, "SemiAxis1");
      double b = coordinates.length(profile, "SemiAxis2");
      read = of(profile, Outline.inPlane(Outline.Kind.OVAL, a, b), "SemiAxis1", "SemiAxis2");
    } else {
      return new Profile(null, null, new Evidence(profile.id(), profile.entityName(), ""));
    }
    return read.outline() != null && read.outline().isUsable() ? read.in(position) : null;
  }

  /** Corners rounded by half the shorter side make a flat oval. */
  private Outline rectangle(IfcRecord profile) {
    double halfX = coordinates.length(profile, "XDim") / 2;
    double halfY = coordinates.length(profile, "YDim") / 2;
    double rounding = coordinates.length(profile, "RoundingRadius");
    boolean oval = rounding > 0.98 * Math.min(halfX, halfY);
    return Outline.inPlane(oval ? Outline.Kind.OVAL : Outline.Kind.RECTANGULAR, halfX, halfY);
  }

  private static Profile of(IfcRecord profile, Outline outline, String... attributes) {
    StringBuilder raw = new StringBuilder();
    for (String attribute : attributes) {
      raw.append(raw.isEmpty() ? "" : " x ").append(profile.raw(attribute));
    }
    String member = attributes.length == 1 ? attributes[0] : String.join(",", attributes);
    Evidence evidence = new Evidence(profile.id(), profile.entityName(), member, raw.toString());
    return new Profile(outline, null, evidence);
  }
}
