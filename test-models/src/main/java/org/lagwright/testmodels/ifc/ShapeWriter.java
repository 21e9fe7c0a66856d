package org.lagwright.testmodels.ifc;

import static org.lagwright.testmodels.step.Value.TRUE;
import static org.lagwright.testmodels.step.Value.token;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.lagwright.testmodels.step.Ref;
import org.lagwright.testmodels.step.StepWriter;

/** Writes points, placements, profiles, solids and representations. */
public final class ShapeWriter {

  private final IfcWriter ifc;
  private final StepWriter step;

  public ShapeWriter(IfcWriter ifc) {
    this.ifc = ifc;
    this.step = ifc.step();
  }

  /** A placement relative to another one, or to the world where that is null. */
  public Ref placement(@Nullable Ref parent, Frame frame) {
    return step.add("IfcLocalPlacement", parent, axis3(frame));
  }

  /** A Body shape of one or several solids. */
  public Ref shape(List<Body.Placed> bodies) {
    return product(representation(bodies));
  }

  /** A representation map with identity origin, for use by {@link #mapped}. */
  public Ref map(List<Body.Placed> bodies) {
    return step.add("IfcRepresentationMap", axis3(Frame.WORLD), representation(bodies));
  }

  /** A Body shape that repeats a map in place. */
  public Ref mapped(Ref map) {
    Ref origin = point(Vec.ORIGIN);
    Ref operator =
        step.share("IfcCartesianTransformationOperator3D", null, null, origin, null, null);
    Ref item = step.add("IfcMappedItem", map, operator);
    return product(
        step.add(
            "IfcShapeRepresentation",
            ifc.bodyContext(),
            "Body",
            "MappedRepresentation",
            List.of(item)));
  }

  private Ref product(Ref representation) {
    return step.add("IfcProductDefinitionShape", null, null, List.of(representation));
  }

  private Ref representation(List<Body.Placed> bodies) {
    List<Ref> items = bodies.stream().map(this::solid).toList();
    List<String> types = bodies.stream().map(b -> representationType(b.body())).distinct().toList();
    String type = types.size() == 1 ? types.get(0) : "SolidModel";
    return step.add("IfcShapeRepresentation", ifc.bodyContext(), "Body", type, items);
  }

  private String representationType(Body body) {
    if (body instanceof Body.Taper && !ifc.schema().isOld()) {
      return "AdvancedSweptSolid";
    }
    if (body instanceof Body.Taper || body instanceof Body.Faceted) {
      return "Brep";
    }
    return body instanceof Body.Union ? "CSG" : "SweptSolid";
  }

  private Ref solid(Body.Placed placed) {
    Body body = placed.body();
    if (body instanceof Body.Extrusion extrusion) {
      return step.add(
          "IfcExtrudedAreaSolid",
          profile(extrusion.profile()),
          axis3(placed.frame()),
          direction(Vec.UP),
          length(extrusion.depth()));
    }
    if (body instanceof Body.Revolution revolution) {
      return revolution(revolution, placed.frame());
    }
    if (body instanceof Body.Taper taper) {
      return taper(taper, placed.frame());
    }
    if (body instanceof Body.Faceted faceted) {
      return faceted(faceted, placed.frame());
    }
    Body.Union union = (Body.Union) body;
    return step.add(
        "IfcBooleanResult", token("UNION"), solid(union.first()), solid(union.second()));
  }

  private Ref revolution(Body.Revolution revolution, Frame frame) {
    Ref centre = point(new Vec(revolution.radius(), 0, 0));
    Ref axis = step.add("IfcAxis1Placement", centre, direction(Vec.NORTH));
    return step.add(
        "IfcRevolvedAreaSolid",
        profile(revolution.profile()),
        axis3(frame),
        axis,
        ifc.units().angle(revolution.degrees()));
  }

  private Ref taper(Body.Taper taper, Frame frame) {
    if (ifc.schema().isOld()) {
      return faceted(Faces.frustum(taper.from(), taper.to(), taper.depth()), frame);
    }
    return step.add(
        "IfcExtrudedAreaSolidTapered",
        profile(taper.from()),
        axis3(frame),
        direction(Vec.UP),
        length(taper.depth()),
        profile(taper.to()));
  }

  private Ref faceted(Body.Faceted body, Frame frame) {
    if (!frame.equals(Frame.WORLD)) {
      throw new IllegalArgumentException("faces are written in the frame of their element");
    }
    List<Ref> faces = new ArrayList<>();
    for (List<Vec> corners : body.faces()) {
      Ref loop = step.add("IfcPolyLoop", corners.stream().map(this::point).toList());
      Ref bound = step.add("IfcFaceOuterBound", loop, TRUE);
      faces.add(step.add("IfcFace", List.of(bound)));
    }
    return step.add("IfcFacetedBrep", step.add("IfcClosedShell", faces));
  }

  private Ref profile(Profile profile) {
    if (profile instanceof Profile.Circle circle) {
      return parametric("IfcCircleProfileDef", circle.diameter() / 2);
    }
    if (profile instanceof Profile.Ring ring) {
      return parametric("IfcCircleHollowProfileDef", ring.diameter() / 2, ring.wall());
    }
    if (profile instanceof Profile.Rectangle rectangle) {
      return parametric("IfcRectangleProfileDef", rectangle.x(), rectangle.y());
    }
    List<Ref> points = new ArrayList<>();
    for (Vec corner : ((Profile.Polygon) profile).points()) {
      points.add(point2(corner));
    }
    points.add(points.get(0));
    Ref curve = step.add("IfcPolyline", points);
    return step.add("IfcArbitraryClosedProfileDef", token("AREA"), null, curve);
  }

  /** Position is mandatory in IFC2X3 and optional later; we leave it out in IFC4X3 only. */
  private Ref parametric(String entity, double... millimetres) {
    List<@Nullable Object> arguments = new ArrayList<>();
    arguments.add(token("AREA"));
    arguments.add(null);
    arguments.add(
        ifc.schema() == Schema.IFC4X3
            ? null
            : step.share("IfcAxis2Placement2D", point2(Vec.ORIGIN), null));
    for (double mm : millimetres) {
      arguments.add(length(mm));
    }
    return step.share(entity, arguments.toArray());
  }

  private Ref axis3(Frame frame) {
    return step.share(
        "IfcAxis2Placement3D", point(frame.origin()), direction(frame.z()), direction(frame.x()));
  }

  private Ref point(Vec at) {
    return step.share("IfcCartesianPoint", List.of(length(at.x()), length(at.y()), length(at.z())));
  }

  private Ref point2(Vec at) {
    return step.share("IfcCartesianPoint", List.of(length(at.x()), length(at.y())));
  }

  private Ref direction(Vec to) {
    return step.share("IfcDirection", List.of(to.x(), to.y(), to.z()));
  }

  private double length(double mm) {
    return ifc.units().length(mm);
  }
}
