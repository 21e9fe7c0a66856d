package org.lagwright.ifc.geometry;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.lagwright.ifc.geometry.frame.Bodies;
import org.lagwright.ifc.geometry.frame.Coordinates;
import org.lagwright.ifc.geometry.frame.Frame;
import org.lagwright.ifc.geometry.frame.GeometryUnits;
import org.lagwright.ifc.geometry.frame.Item;
import org.lagwright.ifc.geometry.frame.Placements;
import org.lagwright.ifc.geometry.frame.Vec;
import org.lagwright.ifc.geometry.mesh.Solid;
import org.lagwright.ifc.geometry.solid.SolidReader;
import org.lagwright.ifc.schema.IfcRecord;

/**
 * Reads the corners of bodies, circles and arcs as polygons. Cuts by half spaces and other bodies
 * count where they can be read; openings are no part of a body.
 */
public final class CornerReader {

  /** Round bodies fall short of their box by 0.1 per cent of their radius. */
  private static final double STEP_RAD = Math.toRadians(5);

  private final Placements placements;
  private final Bodies bodies;
  private final SolidReader solids;

  /**
   * @param units units of the file
   * @param placements frames of the products of the same file, in metres
   */
  public CornerReader(GeometryUnits units, Placements placements) {
    Coordinates coordinates = new Coordinates(units);
    this.placements = placements;
    this.bodies = new Bodies(coordinates);
    this.solids = new SolidReader(coordinates, STEP_RAD);
  }

  /** The corners of a product; empty where it has no place or no body that is read here. */
  public Optional<BodyCorners> cornersOf(IfcRecord product) {
    Frame frame = placements.of(product);
    if (frame == null) {
      return Optional.empty();
    }
    for (List<Item> items : bodies.candidates(product, frame)) {
      List<List<Vec>> corners = new ArrayList<>();
      for (Item item : items) {
        List<Vec> ofItem = corners(item);
        if (!ofItem.isEmpty()) {
          corners.add(ofItem);
        }
      }
      if (!corners.isEmpty()) {
        BodyCorners body = new BodyCorners(corners);
        return body.areFinite() ? Optional.of(body) : Optional.empty();
      }
    }
    return Optional.empty();
  }

  /** Of a cut that cannot be read the body before it. */
  private List<Vec> corners(Item item) {
    Solid solid = solids.read(item);
    IfcRecord uncut = item.record().ref("FirstOperand");
    if (solid == null && uncut != null && !uncut.is("IfcBooleanResult")) {
      solid = solids.read(new Item(uncut, item.frame()));
    }
    return solid == null ? List.of() : solid.corners();
  }
}
