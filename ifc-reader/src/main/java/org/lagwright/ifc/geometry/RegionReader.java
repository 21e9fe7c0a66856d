package org.lagwright.ifc.geometry;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import org.lagwright.ifc.geometry.curve.Curves;
import org.lagwright.ifc.geometry.curve.Path;
import org.lagwright.ifc.geometry.frame.Bodies;
import org.lagwright.ifc.geometry.frame.Box;
import org.lagwright.ifc.geometry.frame.Coordinates;
import org.lagwright.ifc.geometry.frame.Frame;
import org.lagwright.ifc.geometry.frame.GeometryUnits;
import org.lagwright.ifc.geometry.frame.Item;
import org.lagwright.ifc.geometry.frame.Placements;
import org.lagwright.ifc.geometry.frame.Vec;
import org.lagwright.ifc.geometry.mesh.Mesh;
import org.lagwright.ifc.geometry.profile.Outline;
import org.lagwright.ifc.geometry.profile.Profile;
import org.lagwright.ifc.geometry.profile.Profiles;
import org.lagwright.ifc.geometry.solid.MeshReader;
import org.lagwright.ifc.model.Point;
import org.lagwright.ifc.schema.IfcFile;
import org.lagwright.ifc.schema.IfcRecord;

/**
 * Reads the bodies of spaces as regions: extruded footprints with their holes, meshes, what half
 * spaces and other bodies leave of them, and bounding boxes where there is no body.
 */
public final class RegionReader {

  private final Placements placements;
  private final Coordinates coordinates;
  private final Bodies bodies;
  private final Curves curves;
  private final Profiles profiles;
  private final MeshReader meshes;
  private final HalfSpaceRegions halfSpaces;
  private final int maxDepth;

  /**
   * @param units units of the file
   * @param placements frames of the products of the same file, in metres
   */
  public RegionReader(IfcFile file, GeometryUnits units, Placements placements) {
    this.placements = placements;
    this.coordinates = new Coordinates(units);
    this.bodies = new Bodies(coordinates);
    this.curves = new Curves(coordinates);
    this.profiles = new Profiles(coordinates, curves);
    this.meshes = new MeshReader(coordinates, curves);
    this.halfSpaces = new HalfSpaceRegions(coordinates, curves);
    this.maxDepth = file.step().limits().maxReferenceDepth();
  }

  /** The parts of a space; empty where it has no body that is read here, or no place. */
  public List<Region> regionsOf(IfcRecord space) {
    Frame frame = placements.of(space);
    if (frame == null) {
      return List.of();
    }
    for (List<Item> items : bodies.candidates(space, frame)) {
      List<Region> regions =
          items.stream().flatMap(item -> Stream.ofNullable(region(item, 0))).toList();
      if (!regions.isEmpty()) {
        return regions;
      }
    }
    return boxOf(space, frame).stream().toList();
  }

  private @Nullable Region region(Item item, int depth) {
    IfcRecord record = item.record();
    if (record.is("IfcBooleanResult")) {
      return combined(item, depth);
    }
    if (record.is("IfcExtrudedAreaSolid")) {
      return extruded(item);
    }
    Mesh mesh = meshes.read(item);
    return mesh == null ? null : new MeshRegion(mesh);
  }

  private @Nullable Region extruded(Item item) {
    IfcRecord solid = item.record();
    Frame own = coordinates.position(solid, "Position");
    Vec direction = coordinates.direction(solid.ref("ExtrudedDirection"));
    double depth = coordinates.length(solid, "Depth");
    Profile profile = profiles.read(solid, "SweptArea");
    if (own == null || direction == null || profile == null || !(depth > 0)) {
      return null;
    }
    Frame frame = item.frame().times(own);
    Vec axis = frame.vector(direction.times(depth));
    return PrismRegion.of(frame, axis, corners(profile), holes(solid.ref("SweptArea")));
  }

  private List<List<Vec>> holes(@Nullable IfcRecord profile) {
    List<List<Vec>> holes = new ArrayList<>();
    if (profile != null && profile.is("IfcArbitraryProfileDefWithVoids")) {
      for (IfcRecord curve : profile.refs("InnerCurves")) {
        Path path = curves.read(curve);
        holes.add(path == null ? List.of() : path.points());
      }
    }
    return holes;
  }

  private static List<Vec> corners(Profile profile) {
    Path path = profile.path();
    Outline outline = profile.outline();
    if (path != null) {
      return path.points();
    }
    return outline == null || !outline.isUsable() ? List.of() : outline.corners();
  }

  /**
   * What sloping ceilings and columns leave, and niches beside a room. What cuts is no combination
   * itself, so that no file asks for more steps than it has records.
   */
  private @Nullable Region combined(Item item, int depth) {
    Region first = operand(item, "FirstOperand", depth);
    IfcRecord tool = item.record().ref("SecondOperand");
    if (first == null || tool == null) {
      return first;
    }
    Region second = tool.is("IfcBooleanResult") ? null : operand(item, "SecondOperand", depth);
    Predicate<Point> within =
        second == null ? halfSpaces.holding(tool, item.frame()) : second::holds;
    String operator = item.record().enumeration("Operator");
    if (within == null || operator == null) {
      return first;
    }
    return switch (operator) {
      case "DIFFERENCE" -> new Part(first, within.negate());
      case "INTERSECTION" -> new Part(first, within);
      default -> second == null ? first : new Either(first, second);
    };
  }

  private @Nullable Region operand(Item item, String attribute, int depth) {
    IfcRecord operand = item.record().ref(attribute);
    return operand == null || operand.is("IfcHalfSpaceSolid") || depth >= maxDepth
        ? null
        : region(new Item(operand, item.frame()), depth + 1);
  }

  /** What of a region fulfils a condition. */
  private record Part(Region whole, Predicate<Point> kept) implements Region {

    @Override
    public Box box() {
      return whole.box();
    }

    @Override
    public boolean holds(Point worldM) {
      return whole.holds(worldM) && kept.test(worldM);
    }
  }

  /** Two regions as one. */
  private record Either(Region one, Region other) implements Region {

    @Override
    public Box box() {
      return one.box().and(other.box());
    }

    @Override
    public boolean holds(Point worldM) {
      return one.holds(worldM) || other.holds(worldM);
    }
  }

  private Optional<Region> boxOf(IfcRecord space, Frame frame) {
    IfcRecord shape = space.ref("Representation");
    return (shape == null ? List.<IfcRecord>of() : shape.refs("Representations"))
        .stream()
            .flatMap(representation -> representation.refs("Items").stream())
            .filter(item -> item.is("IfcBoundingBox"))
            .flatMap(box -> Stream.ofNullable(box(box, frame)))
            .findFirst();
  }

  private @Nullable Region box(IfcRecord box, Frame frame) {
    Vec corner = coordinates.point(box.ref("Corner"));
    double x = coordinates.length(box, "XDim");
    double y = coordinates.length(box, "YDim");
    double z = coordinates.length(box, "ZDim");
    if (corner == null || !(x > 0 && y > 0 && z > 0)) {
      return null;
    }
    Frame at = frame.times(Frame.of(corner, Vec.X, Vec.Y, Vec.Z));
    List<Vec> corners = List.of(Vec.ZERO, Vec.X.times(x), new Vec(x, y, 0), Vec.Y.times(y));
    return PrismRegion.of(at, at.vector(Vec.Z.times(z)), corners);
  }
}
