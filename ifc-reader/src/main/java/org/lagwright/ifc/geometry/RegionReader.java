package org.lagwright.ifc.geometry;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import org.lagwright.ifc.model.Point;
import org.lagwright.ifc.schema.IfcFile;
import org.lagwright.ifc.schema.IfcRecord;

/**
 * Reads the bodies of spaces as regions: extruded footprints, meshes, what half spaces leave of
 * them, and bounding boxes where there is no body. Holes in a footprint are not left out: whoever
 * asks takes the smallest region that holds a point.
 */
public final class RegionReader {

  private final Placements placements;
  private final Coordinates coordinates;
  private final Bodies bodies;
  private final Profiles profiles;
  private final MeshReader meshes;
  private final int maxDepth;

  /**
   * @param units units of the file
   * @param placements frames of the products of the same file, in metres
   */
  public RegionReader(IfcFile file, GeometryUnits units, Placements placements) {
    this.placements = placements;
    this.coordinates = new Coordinates(units);
    this.bodies = new Bodies(coordinates);
    Curves curves = new Curves(coordinates);
    this.profiles = new Profiles(coordinates, curves);
    this.meshes = new MeshReader(coordinates, curves);
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
      IfcRecord first = record.ref("FirstOperand");
      Region uncut =
          first == null || depth >= maxDepth
              ? null
              : region(new Item(first, item.frame()), depth + 1);
      return uncut == null ? null : cut(record, uncut, item.frame());
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
    return PrismRegion.of(frame, frame.vector(direction.times(depth)), corners(profile));
  }

  private static List<Vec> corners(Profile profile) {
    Path path = profile.path();
    Outline outline = profile.outline();
    if (path != null) {
      return path.points();
    }
    return outline == null || !outline.isUsable() ? List.of() : outline.corners();
  }

  /** Sloping ceilings; other cuts change little of a room. */
  private Region cut(IfcRecord result, Region uncut, Frame frame) {
    IfcRecord tool = result.ref("SecondOperand");
    IfcRecord plane =
        tool == null || !tool.keyword().equals("IFCHALFSPACESOLID")
            ? null
            : tool.ref("BaseSurface");
    Frame position = plane == null ? null : coordinates.axes(plane, "Position").frame();
    if (tool == null || position == null || !"DIFFERENCE".equals(result.enumeration("Operator"))) {
      return uncut;
    }
    boolean removesBehind = !"F".equals(tool.enumeration("AgreementFlag"));
    Vec kept = frame.vector(Vec.of(position.ez()).times(removesBehind ? 1 : -1));
    return new Cut(uncut, frame.point(Vec.of(position.origin())), kept);
  }

  /** What lies on the side of a plane that its normal points to. */
  private record Cut(Region uncut, Vec on, Vec normal) implements Region {

    @Override
    public Box box() {
      return uncut.box();
    }

    @Override
    public boolean holds(Point worldM) {
      return Vec.of(worldM).minus(on).dot(normal) >= 0 && uncut.holds(worldM);
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
