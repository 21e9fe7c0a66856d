package org.lagwright.report.enrich;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import org.lagwright.ifc.append.IfcAppender;
import org.lagwright.ifc.append.IfcAppender.NewRecord;
import org.lagwright.ifc.append.StepValue;
import org.lagwright.ifc.geometry.frame.GeometryUnits;
import org.lagwright.ifc.model.Point;
import org.lagwright.takeoff.body.Body;
import org.lagwright.takeoff.body.Body.Facets;
import org.lagwright.takeoff.body.Body.Prism;
import org.lagwright.takeoff.body.Body.Taper;
import org.lagwright.takeoff.body.Body.Turn;
import org.lagwright.takeoff.body.Pose;
import org.lagwright.takeoff.body.Ring;
import org.lagwright.takeoff.fitting.Direction;

/** Writes bodies of insulation, each by what the schema has for its shape. */
final class BodyWriter {

  private static final String TAPERED = "IfcExtrudedAreaSolidTapered";
  private static final String FACE_SET = "IfcPolygonalFaceSet";
  private static final Point ALONG = new Point(0, 0, 1);

  private final IfcAppender to;
  private final SharedRecords shared;
  private final GeometryUnits units;
  private final ProfileWriter profiles;
  private final FacetedShapes facetedShapes;

  BodyWriter(IfcAppender to, SharedRecords shared, GeometryUnits units) {
    this.to = to;
    this.shared = shared;
    this.units = units;
    this.profiles = new ProfileWriter(to, shared, units.lengthM());
    this.facetedShapes = new FacetedShapes(to, shared);
  }

  /** Some point of the bodies, near all of them. */
  static Point first(List<Body> bodies) {
    Body body = bodies.get(0);
    if (body instanceof Prism prism) {
      return prism.pose().at();
    }
    if (body instanceof Turn turn) {
      return turn.pose().at();
    }
    return body instanceof Taper taper ? taper.pose().at() : ((Facets) body).corners().get(0);
  }

  /** Instance number of the shape that the bodies make together. */
  long shape(List<Body> bodies, LocalFrame local, long context) {
    long representation =
        FacetedShapes.areFaceted(bodies)
            ? representation(
                List.of(
                    facetedShapes.item(
                        bodies, local, context, () -> drawn(bodies, local, context))),
                "MappedRepresentation",
                context)
            : drawn(bodies, local, context);
    return to.record("IfcProductDefinitionShape")
        .refs("Representations", List.of(representation))
        .add();
  }

  private long drawn(List<Body> bodies, LocalFrame local, long context) {
    List<Long> items = new ArrayList<>();
    Set<Type> types = new HashSet<>();
    for (Body body : bodies) {
      items.add(item(body, local, types));
    }
    return representation(items, Type.together(types), context);
  }

  private long representation(List<Long> items, String type, long context) {
    return to.record("IfcShapeRepresentation")
        .ref("ContextOfItems", shared.context(context))
        .text("RepresentationIdentifier", "Body")
        .text("RepresentationType", type)
        .refs("Items", items)
        .add();
  }

  /** What a representation may be called by its items. */
  private enum Type {
    SWEPT("SweptSolid"),
    TAPERED("AdvancedSweptSolid"),
    BREP("Brep"),
    FACES("Tessellation");

    private final String word;

    Type(String word) {
      this.word = word;
    }

    static String together(Set<Type> types) {
      if (types.size() == 1) {
        return types.iterator().next().word;
      }
      return types.contains(FACES) ? "SurfaceOrSolidModel" : "SolidModel";
    }
  }

  private long item(Body body, LocalFrame local, Set<Type> types) {
    if (body instanceof Prism prism) {
      types.add(Type.SWEPT);
      return extruded("IfcExtrudedAreaSolid", prism.ring(), prism.pose(), prism.lengthM(), local)
          .add();
    }
    if (body instanceof Turn turn) {
      types.add(Type.SWEPT);
      return turned(turn, local);
    }
    if (body instanceof Taper taper) {
      if (to.knows(TAPERED) && taper.isConcentric() && taper.ring().isEven()) {
        types.add(Type.TAPERED);
        return extruded(TAPERED, taper.ring(), taper.pose(), taper.lengthM(), local)
            .ref("EndSweptArea", profiles.profile(taper.end()))
            .add();
      }
      return faceted(taper.faceted(), local, types);
    }
    return faceted((Facets) body, local, types);
  }

  private NewRecord swept(String entity, Ring ring, Pose pose, LocalFrame local) {
    return to.record(entity)
        .ref("SweptArea", profiles.profile(ring))
        .ref("Position", position(pose, local));
  }

  private long position(Pose pose, LocalFrame local) {
    return to.record("IfcAxis2Placement3D")
        .ref("Location", point(local.local(pose.at())))
        .ref("Axis", shared.direction(local.direction(pose.frame().axis())))
        .ref("RefDirection", shared.direction(local.direction(pose.frame().u())))
        .add();
  }

  private long point(Point at) {
    return shared.point(units.lengthM(), at.x(), at.y(), at.z());
  }

  private NewRecord extruded(
      String entity, Ring ring, Pose pose, double lengthM, LocalFrame local) {
    return swept(entity, ring, pose, local)
        .ref("ExtrudedDirection", shared.direction(ALONG))
        .real("Depth", SharedRecords.length(lengthM, units.lengthM()));
  }

  /** The axis lies in the plane of the profile; right-handed round it goes forward. */
  private long turned(Turn turn, LocalFrame local) {
    double u = Direction.dot(turn.toCentre(), turn.pose().frame().u());
    double v = Direction.dot(turn.toCentre(), turn.pose().frame().v());
    long axis =
        to.record("IfcAxis1Placement")
            .ref("Location", point(new Point(turn.radiusM() * u, turn.radiusM() * v, 0)))
            .ref("Axis", shared.direction(new Point(-v, u, 0)))
            .add();
    return swept("IfcRevolvedAreaSolid", turn.ring(), turn.pose(), local)
        .ref("Axis", axis)
        .real("Angle", turn.angleRad() / units.angleRad())
        .add();
  }

  private long faceted(Facets facets, LocalFrame local, Set<Type> types) {
    List<Point> corners = facets.corners().stream().map(local::local).toList();
    boolean faceSet = to.knows(FACE_SET);
    types.add(faceSet ? Type.FACES : Type.BREP);
    return faceSet ? faceSet(corners, facets.faces()) : brep(corners, facets.faces());
  }

  private long faceSet(List<Point> corners, List<List<Integer>> faces) {
    List<StepValue> rows = new ArrayList<>();
    for (Point corner : corners) {
      rows.add(StepValue.reals(length(corner.x()), length(corner.y()), length(corner.z())));
    }
    long points = to.record("IfcCartesianPointList3D").set("CoordList", StepValue.list(rows)).add();
    List<Long> written = new ArrayList<>();
    for (List<Integer> face : faces) {
      List<StepValue> indices = face.stream().map(i -> StepValue.integer(i + 1)).toList();
      written.add(
          to.record("IfcIndexedPolygonalFace").set("CoordIndex", StepValue.list(indices)).add());
    }
    return to.record(FACE_SET)
        .ref("Coordinates", points)
        .set("Closed", StepValue.bool(true))
        .refs("Faces", written)
        .add();
  }

  private double length(double lengthM) {
    return SharedRecords.length(lengthM, units.lengthM());
  }

  private long brep(List<Point> corners, List<List<Integer>> faces) {
    List<Long> points = corners.stream().map(this::point).toList();
    List<Long> written = new ArrayList<>();
    for (List<Integer> face : faces) {
      long loop =
          to.record("IfcPolyLoop").refs("Polygon", face.stream().map(points::get).toList()).add();
      long bound =
          to.record("IfcFaceOuterBound")
              .ref("Bound", loop)
              .set("Orientation", StepValue.bool(true))
              .add();
      written.add(to.record("IfcFace").refs("Bounds", List.of(bound)).add());
    }
    long shell = to.record("IfcClosedShell").refs("CfsFaces", written).add();
    return to.record("IfcFacetedBrep").ref("Outer", shell).add();
  }
}
