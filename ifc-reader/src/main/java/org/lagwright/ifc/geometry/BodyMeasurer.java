package org.lagwright.ifc.geometry;

import java.util.ArrayList;
import java.util.List;
import org.lagwright.ifc.geometry.frame.Bodies;
import org.lagwright.ifc.geometry.frame.Box;
import org.lagwright.ifc.geometry.frame.Coordinates;
import org.lagwright.ifc.geometry.frame.Frame;
import org.lagwright.ifc.geometry.frame.GeometryUnits;
import org.lagwright.ifc.geometry.frame.Item;
import org.lagwright.ifc.geometry.frame.Placements;
import org.lagwright.ifc.geometry.frame.ShapeEnd;
import org.lagwright.ifc.geometry.frame.Vec;
import org.lagwright.ifc.geometry.mesh.Solid;
import org.lagwright.ifc.geometry.shape.ShapeHints;
import org.lagwright.ifc.geometry.solid.SolidReader;
import org.lagwright.ifc.geometry.surface.Facet;
import org.lagwright.ifc.geometry.surface.Facet.Role;
import org.lagwright.ifc.model.Section;
import org.lagwright.ifc.schema.IfcFile;
import org.lagwright.ifc.schema.IfcRecord;

/**
 * Box, volume and surface of a product's body, computed from its facets. Slower than {@link
 * ShapeMeasurer}, which measures pipes and ducts; for checks against other geometry engines.
 */
public final class BodyMeasurer {

  private static final double STEP_RAD = Math.toRadians(1);

  /** A facet lies in an end if it is this parallel to it (cosine) and this near, over its size. */
  private static final double PARALLEL = 0.9999;

  private static final double NEAR = 1e-3;

  private final Placements placements;
  private final Bodies bodies;
  private final SolidReader solids;
  private final ShapeMeasurer shapes;

  /**
   * @param units units of the file
   * @param placements frames of the products of the same file, in metres
   */
  public BodyMeasurer(IfcFile file, GeometryUnits units, Placements placements) {
    Coordinates coordinates = new Coordinates(units);
    this.placements = placements;
    this.bodies = new Bodies(coordinates);
    this.solids = new SolidReader(coordinates, STEP_RAD);
    this.shapes = new ShapeMeasurer(file, units, placements);
  }

  /**
   * The figures of the first body representation that can be read; several items are added up and
   * may overlap. Never throws for bad geometry.
   *
   * @param hints what else is known, to tell which sides of a box are its ends
   */
  public BodyFigures figures(IfcRecord product, ShapeHints hints) {
    Frame frame = placements.of(product);
    for (List<Item> items : bodies.candidates(product, frame == null ? Frame.WORLD : frame)) {
      List<Solid> read = new ArrayList<>();
      List<String> problems = new ArrayList<>();
      for (Item item : items) {
        Solid solid = solids.read(item);
        if (solid == null) {
          problems.add(item.record() + " is not read");
        } else {
          read.add(solid);
        }
      }
      if (!read.isEmpty()) {
        return figures(read, shapes.measure(product, hints).ends(), problems);
      }
    }
    return BodyFigures.none("no body that can be read");
  }

  private static BodyFigures figures(List<Solid> read, List<ShapeEnd> ends, List<String> problems) {
    if (read.size() > 1) {
      problems.add(read.size() + " items added up, they may overlap");
    }
    boolean closed = read.stream().allMatch(Solid::closed);
    if (!closed) {
      problems.add("body is open, no volume");
    }
    if (read.stream().flatMap(Solid::facets).anyMatch(facet -> facet.role() == Role.EDGES)) {
      problems.add("curved faces of a kind that is not read, no surface");
      return new BodyFigures(box(read), null, null, null, problems);
    }
    double surface = 0;
    double lateral = 0;
    for (Facet facet : read.stream().flatMap(Solid::facets).toList()) {
      double area = facet.areaM2();
      surface += facet.role() == Role.SEAM ? 0 : area;
      lateral += facet.role() == Role.OUTER && !isEnd(facet, ends) ? area : 0;
    }
    double volume = read.stream().mapToDouble(Solid::volumeM3).sum();
    return new BodyFigures(box(read), closed ? volume : null, surface, lateral, problems);
  }

  private static boolean isEnd(Facet facet, List<ShapeEnd> ends) {
    Vec normal = facet.areaNormal().unit();
    for (ShapeEnd end : ends) {
      Section section = end.section();
      double size = section.largestSideM();
      Vec off = facet.loops().get(0).get(0).minus(end.centre());
      boolean inPlane =
          Math.abs(normal.dot(end.out())) > PARALLEL && Math.abs(off.dot(end.out())) < NEAR * size;
      if (inPlane && off.norm() < size) {
        return true;
      }
    }
    return false;
  }

  private static Box box(List<Solid> read) {
    return Box.around(
        read.stream()
            .flatMap(Solid::facets)
            .flatMap(facet -> facet.loops().stream())
            .flatMap(List::stream)
            .map(Vec::point)
            .toList());
  }
}
