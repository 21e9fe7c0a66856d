package org.lagwright.ifc.geometry.solid;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.lagwright.ifc.geometry.curve.Leg;
import org.lagwright.ifc.geometry.curve.Path;
import org.lagwright.ifc.geometry.curve.Stations;
import org.lagwright.ifc.geometry.frame.Coordinates;
import org.lagwright.ifc.geometry.frame.Frame;
import org.lagwright.ifc.geometry.frame.Item;
import org.lagwright.ifc.geometry.frame.ShapeEnd;
import org.lagwright.ifc.geometry.frame.Vec;
import org.lagwright.ifc.geometry.mesh.Solid;
import org.lagwright.ifc.geometry.profile.Outline;
import org.lagwright.ifc.geometry.profile.ProfileArea;
import org.lagwright.ifc.geometry.shape.Ends;
import org.lagwright.ifc.geometry.shape.Parts;
import org.lagwright.ifc.geometry.shape.Prism;
import org.lagwright.ifc.geometry.shape.Shape;
import org.lagwright.ifc.geometry.shape.ShapeHints;
import org.lagwright.ifc.model.Evidence;
import org.lagwright.ifc.model.How;
import org.lagwright.ifc.schema.IfcRecord;

/** Reads CSG primitives: block, pyramid, cylinder, cone and sphere. */
public final class Primitives {

  /** What stands for the point of a cone, as a share of its base. */
  private static final double POINT = 1e-6;

  private final Coordinates coordinates;
  private final double stepRad;

  /** Reads primitives of one file; curves are drawn in steps of this angle. */
  public Primitives(Coordinates coordinates, double stepRad) {
    this.coordinates = coordinates;
    this.stepRad = stepRad;
  }

  /** The body in world coordinates, null if its sizes are impossible or its class is unknown. */
  @Nullable Solid read(IfcRecord primitive, Frame frame) {
    Frame own = coordinates.axes(primitive, "Position").frame();
    if (own == null) {
      return null;
    }
    Frame from = frame.times(own);
    return switch (primitive.entityName()) {
      case "IfcBlock" -> box(primitive, from, "ZLength", 1);
      case "IfcRectangularPyramid" -> box(primitive, from, "Height", 0);
      case "IfcRightCircularCylinder" -> cylinder(primitive, from, "Radius", 1);
      case "IfcRightCircularCone" -> cylinder(primitive, from, "BottomRadius", 0);
      case "IfcSphere" -> sphere(primitive, from);
      default -> null;
    };
  }

  /** Blocks and cylinders measured as straight pieces; the others have no section. */
  public Shape shape(Item item, ShapeHints hints) {
    IfcRecord primitive = item.record();
    Frame own = coordinates.axes(primitive, "Position").frame();
    boolean block = primitive.is("IfcBlock");
    if (own == null || !(block || primitive.is("IfcRightCircularCylinder"))) {
      return Shape.unmeasured(primitive + " has no section");
    }
    double x = coordinates.length(primitive, block ? "XLength" : "Radius") / (block ? 2 : 1);
    double y = block ? coordinates.length(primitive, "YLength") / 2 : x;
    String height = block ? "ZLength" : "Height";
    double z = coordinates.length(primitive, height);
    if (!isSize(x) || !isSize(y) || !isSize(z)) {
      return Shape.unmeasured(primitive + ": a size is missing or impossible");
    }
    Outline.Kind kind = block ? Outline.Kind.RECTANGULAR : Outline.Kind.ROUND;
    Outline base =
        new Outline(kind, block ? new Vec(x, y, 0) : Vec.ZERO, Vec.X.times(x), Vec.Y.times(y));
    Frame frame = item.frame().times(own);
    String name = primitive.entityName() + ".";
    Evidence section =
        block
            ? new Evidence(
                primitive.id(),
                name + "XLength,YLength",
                primitive.raw("XLength") + " x " + primitive.raw("YLength"))
            : new Evidence(primitive.id(), name + "Radius", primitive.raw("Radius"));
    Evidence length = new Evidence(primitive.id(), name + height, primitive.raw(height));
    Vec axis = frame.vector(Vec.Z.times(z));
    return new Prism(base.in(frame), axis, false, How.SOLID, section, length).measure(hints);
  }

  /** A cone from its base to its point, which something must cut off. */
  public Shape cone(Item item) {
    IfcRecord cone = item.record();
    Frame own = coordinates.axes(cone, "Position").frame();
    double r = coordinates.length(cone, "BottomRadius");
    double z = coordinates.length(cone, "Height");
    if (own == null || !isSize(r) || !isSize(z)) {
      return Shape.unmeasured(cone + ": a size is missing or impossible");
    }
    Frame frame = item.frame().times(own);
    Outline base = Outline.circle(Vec.ZERO, Vec.Z, r);
    Outline point = Outline.circle(Vec.Z.times(z), Vec.Z, r * POINT);
    Vec up = frame.vector(Vec.Z).unit();
    String name = cone.entityName() + ".";
    return Parts.fromEnds(
        Ends.known(base.in(frame).end(up.times(-1)), point.in(frame).end(up)),
        How.SOLID,
        new Evidence(cone.id(), name + "BottomRadius", cone.raw("BottomRadius")),
        new Evidence(cone.id(), name + "Height", cone.raw("Height")),
        List.of());
  }

  /** True if an end is the point of a cone. */
  public static boolean isPointed(Shape shape) {
    for (ShapeEnd end : shape.ends()) {
      if (end.section().largestSideM() < Vec.WELD_M) {
        return true;
      }
    }
    return false;
  }

  /** The base lies in the positive quarter; at the top it is scaled about its middle. */
  private @Nullable Solid box(IfcRecord primitive, Frame frame, String height, double top) {
    double x = coordinates.length(primitive, "XLength");
    double y = coordinates.length(primitive, "YLength");
    double z = coordinates.length(primitive, height);
    if (!isSize(x) || !isSize(y) || !isSize(z)) {
      return null;
    }
    Vec middle = new Vec(x / 2, y / 2, 0);
    List<Vec> base = new ArrayList<>();
    List<Vec> far = new ArrayList<>();
    for (double[] s : new double[][] {{-1, -1}, {1, -1}, {1, 1}, {-1, 1}}) {
      Vec off = new Vec(s[0] * x / 2, s[1] * y / 2, 0);
      base.add(middle.plus(off));
      far.add(middle.plus(off.times(top)));
    }
    return upright(base, far, frame, z);
  }

  private @Nullable Solid cylinder(IfcRecord primitive, Frame frame, String radius, double top) {
    double r = coordinates.length(primitive, radius);
    double z = coordinates.length(primitive, "Height");
    if (!isSize(r) || !isSize(z)) {
      return null;
    }
    List<Vec> base = circle(r);
    return upright(base, base.stream().map(p -> p.times(top)).toList(), frame, z);
  }

  private List<Vec> circle(double radius) {
    Leg arc = new Leg.Arc(Vec.ZERO, Vec.X.times(radius), Vec.Y.times(radius), 2 * Math.PI);
    return new Path(List.of(arc)).points(stepRad);
  }

  private static Solid upright(List<Vec> base, List<Vec> far, Frame frame, double height) {
    Frame top = new Frame(frame.point(0, 0, height), frame.ex(), frame.ey(), frame.ez());
    return SweptFacets.sweep(
        List.of(ProfileArea.of(base, List.of())),
        List.of(new ProfileArea(far, List.of())),
        List.of(frame, top),
        false);
  }

  /** Half a disk turned about the z axis. */
  private @Nullable Solid sphere(IfcRecord primitive, Frame frame) {
    double r = coordinates.length(primitive, "Radius");
    if (!isSize(r)) {
      return null;
    }
    Leg.Arc arc = new Leg.Arc(Vec.ZERO, Vec.Y.times(-r), Vec.X.times(r), Math.PI);
    ProfileArea half = ProfileArea.of(arc.points(stepRad), List.of());
    Frame upright = Frame.of(Vec.ZERO, Vec.X, Vec.Z, Vec.Y.times(-1));
    List<Frame> stations = new ArrayList<>();
    for (Frame at : Stations.about(Vec.ZERO, Vec.Z, 2 * Math.PI, stepRad)) {
      stations.add(frame.times(at).times(upright));
    }
    return SweptFacets.sweep(List.of(half), List.of(half), stations, true);
  }

  private static boolean isSize(double length) {
    return length > 0 && Double.isFinite(length);
  }
}
