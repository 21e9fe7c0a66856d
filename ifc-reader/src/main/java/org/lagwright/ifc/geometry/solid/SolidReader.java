package org.lagwright.ifc.geometry.solid;

import java.util.ArrayList;
import java.util.Collections;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import org.lagwright.ifc.geometry.Solids;
import org.lagwright.ifc.geometry.curve.Curves;
import org.lagwright.ifc.geometry.curve.Leg;
import org.lagwright.ifc.geometry.curve.Path;
import org.lagwright.ifc.geometry.curve.Stations;
import org.lagwright.ifc.geometry.frame.Coordinates;
import org.lagwright.ifc.geometry.frame.Frame;
import org.lagwright.ifc.geometry.frame.Item;
import org.lagwright.ifc.geometry.frame.Vec;
import org.lagwright.ifc.geometry.mesh.Mesh;
import org.lagwright.ifc.geometry.mesh.MeshSolid;
import org.lagwright.ifc.geometry.mesh.Solid;
import org.lagwright.ifc.geometry.mesh.Tool;
import org.lagwright.ifc.geometry.profile.Outline;
import org.lagwright.ifc.geometry.profile.Profile;
import org.lagwright.ifc.geometry.profile.ProfileArea;
import org.lagwright.ifc.geometry.profile.ProfileAreaReader;
import org.lagwright.ifc.geometry.profile.Profiles;
import org.lagwright.ifc.geometry.surface.Facet;
import org.lagwright.ifc.schema.IfcRecord;

/**
 * Reads body items as what they enclose, for volumes, surfaces and boxes. {@link Solids} measures
 * them as pipes and ducts.
 */
public final class SolidReader {

  /** Operands of boolean results within each other that are read for one body. */
  private static final int MAX_OPERANDS = 500;

  private static final double FULL_TURN_RAD = Math.toRadians(359.99);

  private final Coordinates coordinates;
  private final double stepRad;
  private final ProfileAreaReader regions;
  private final Profiles profiles;
  private final Sweeps sweeps;
  private final Primitives primitives;
  private final HalfSpaces halfSpaces;
  private final MeshReader meshes;

  /**
   * @param stepRad circles and arcs are cut into steps of at most this
   */
  public SolidReader(Coordinates coordinates, double stepRad) {
    Curves curves = new Curves(coordinates);
    this.coordinates = coordinates;
    this.stepRad = stepRad;
    this.regions = new ProfileAreaReader(coordinates, curves, stepRad);
    this.profiles = new Profiles(coordinates, curves);
    this.sweeps = new Sweeps(coordinates, curves, profiles);
    this.primitives = new Primitives(coordinates, stepRad);
    this.halfSpaces = new HalfSpaces(coordinates, curves, stepRad);
    this.meshes = new MeshReader(coordinates, curves, stepRad);
  }

  /** The body in world coordinates, null if it is broken or of a kind that is not read. */
  public @Nullable Solid read(Item item) {
    return read(item.record(), item.frame(), new Visits());
  }

  /**
   * What was read of one body. A result that another one uses twice, or that uses itself, would
   * take for ever where there are many above it.
   */
  private static final class Visits {
    private final Set<Long> results = new HashSet<>();
    private int operands;

    boolean areTooMany() {
      return ++operands > MAX_OPERANDS;
    }

    boolean isFirst(IfcRecord result) {
      return results.add(result.id());
    }
  }

  /**
   * The second operand of a boolean result as something to cut with, null if it cannot be.
   *
   * @param cut what a polygonal half space is to reach beyond
   */
  @Nullable Tool tool(IfcRecord operand, Frame frame, List<Vec> cut) {
    Solid solid =
        operand.is("IfcHalfSpaceSolid")
            ? halfSpaces.read(operand, frame, cut)
            : read(operand, frame, new Visits());
    return solid == null ? null : solid.tool();
  }

  private @Nullable Solid read(IfcRecord record, Frame frame, Visits visits) {
    if (visits.areTooMany()) {
      return null;
    }
    if (record.is("IfcCsgSolid")) {
      IfcRecord root = record.ref("TreeRootExpression");
      return root == null ? null : read(root, frame, visits);
    }
    if (record.is("IfcBooleanResult")) {
      return visits.isFirst(record) ? combined(record, frame, visits) : null;
    }
    if (record.is("IfcExtrudedAreaSolid")) {
      return extruded(record, frame);
    }
    if (record.is("IfcRevolvedAreaSolid")) {
      return revolved(record, frame);
    }
    if (record.is("IfcSweptDiskSolid")) {
      return disk(record, frame);
    }
    if (record.is("IfcSweptAreaSolid")) {
      return profile(record, frame);
    }
    if (record.is("IfcCsgPrimitive3D")) {
      return primitives.read(record, frame);
    }
    return mesh(record, frame);
  }

  private @Nullable Solid combined(IfcRecord result, Frame frame, Visits visits) {
    IfcRecord first = result.ref("FirstOperand");
    IfcRecord second = result.ref("SecondOperand");
    Solid left = first == null || second == null ? null : read(first, frame, visits);
    if (left == null || second == null) {
      return null;
    }
    Solid right =
        second.is("IfcHalfSpaceSolid")
            ? halfSpaces.read(second, frame, left.corners())
            : read(second, frame, visits);
    if (right == null) {
      return null;
    }
    return switch (String.valueOf(result.enumeration("Operator"))) {
      case "DIFFERENCE" -> left.minus(right);
      case "INTERSECTION" -> left.and(right);
      case "UNION" -> left.plus(right);
      default -> null;
    };
  }

  private @Nullable Solid extruded(IfcRecord solid, Frame frame) {
    Frame own = coordinates.position(solid, "Position");
    Vec direction = coordinates.direction(solid.ref("ExtrudedDirection"));
    double depth = coordinates.length(solid, "Depth");
    List<ProfileArea> start = regions.read(solid.ref("SweptArea"));
    List<ProfileArea> end = end(solid, start);
    boolean possible = depth > 0 && Double.isFinite(depth) && !start.isEmpty();
    if (own == null || direction == null || end == null || !possible) {
      return null;
    }
    Frame from = frame.times(own);
    Vec far = from.point(direction.times(depth));
    Frame to = new Frame(far.point(), from.ex(), from.ey(), from.ez());
    return SweptFacets.sweep(start, end, List.of(from, to), false);
  }

  /** The regions at the end of tapered solids; null if they do not match those at the start. */
  private @Nullable List<ProfileArea> end(IfcRecord solid, List<ProfileArea> start) {
    if (!solid.has("EndSweptArea")) {
      return start;
    }
    List<ProfileArea> end = regions.read(solid.ref("EndSweptArea"));
    return SweptFacets.alike(start, end) ? end : null;
  }

  private @Nullable Solid revolved(IfcRecord solid, Frame frame) {
    Frame own = coordinates.position(solid, "Position");
    Frame axis = coordinates.axes(solid, "Axis").frame();
    double angle = solid.number("Angle") * coordinates.units().angleRad();
    List<ProfileArea> start = regions.read(solid.ref("SweptArea"));
    List<ProfileArea> end = end(solid, start);
    boolean possible = Double.isFinite(angle) && angle != 0 && !start.isEmpty();
    if (own == null || axis == null || end == null || !possible) {
      return null;
    }
    boolean ring = Math.abs(angle) > FULL_TURN_RAD;
    double turn = ring ? 2 * Math.PI : angle;
    List<Frame> stations = new ArrayList<>();
    Frame outer = frame.times(own);
    for (Frame at : Stations.about(Vec.of(axis.origin()), Vec.of(axis.ez()), turn, stepRad)) {
      stations.add(outer.times(at));
    }
    return SweptFacets.sweep(start, end, stations, ring);
  }

  private @Nullable Solid disk(IfcRecord solid, Frame frame) {
    double radius = coordinates.length(solid, "Radius");
    double bore = coordinates.length(solid, "InnerRadius");
    Path path = sweeps.directrix(solid);
    if (path == null || !(radius > 0 && Double.isFinite(radius))) {
      return null;
    }
    List<Vec> outer = circle(radius);
    ProfileArea region =
        ProfileArea.of(outer, bore > 0 && bore < radius ? List.of(circle(bore)) : List.of());
    Vec tangent = path.first().startTangent();
    Vec across = tangent.anyNormal();
    Frame start = Frame.of(path.first().start(), across, tangent.cross(across), tangent);
    return along(List.of(region), path, start, frame);
  }

  private List<Vec> circle(double radius) {
    return new Path(
            List.of(new Leg.Arc(Vec.ZERO, Vec.X.times(radius), Vec.Y.times(radius), 2 * Math.PI)))
        .points(stepRad);
  }

  private @Nullable Solid profile(IfcRecord solid, Frame frame) {
    Frame own = coordinates.position(solid, "Position");
    Path path = sweeps.directrix(solid);
    Profile profile = profiles.read(solid, "SweptArea");
    List<ProfileArea> area = regions.read(solid.ref("SweptArea"));
    Outline outline = profile == null ? null : profile.outline();
    if (own == null || path == null || outline == null || area.isEmpty()) {
      return null;
    }
    return along(area, path, sweeps.start(solid, path, outline), frame.times(own));
  }

  private Solid along(List<ProfileArea> area, Path path, Frame start, Frame frame) {
    List<Frame> stations = new ArrayList<>();
    for (Frame at : Stations.along(path, start, stepRad)) {
      stations.add(frame.times(at));
    }
    boolean ring =
        path.first().start().distanceTo(path.last().end()) < Path.SAME_POINT_M
            && path.first().startTangent().angleTo(path.last().endTangent()) < 1e-6;
    return SweptFacets.sweep(area, area, stations, ring);
  }

  private @Nullable Solid mesh(IfcRecord record, Frame frame) {
    Mesh mesh = meshes.read(new Item(record, frame));
    if (mesh == null) {
      return null;
    }
    boolean saidClosed =
        record.is("IfcManifoldSolidBrep") || "T".equals(record.enumeration("Closed"));
    Solid outer = MeshSolid.of(mesh, saidClosed);
    List<Facet> voids = new ArrayList<>();
    for (IfcRecord shell : record.refs("Voids")) {
      Mesh hole = meshes.read(new Item(shell, frame));
      if (hole != null) {
        MeshSolid.of(hole, true)
            .facets()
            .forEach(facet -> voids.add(facet.reversed().as(Facet.Role.INNER)));
      }
    }
    if (voids.isEmpty()) {
      return outer;
    }
    List<List<Facet>> pieces = new ArrayList<>(outer.pieces());
    List<Facet> first = new ArrayList<>(pieces.get(0));
    first.addAll(voids);
    pieces.set(0, first);
    return new Solid(Collections.unmodifiableList(pieces), null, outer.closed());
  }
}
