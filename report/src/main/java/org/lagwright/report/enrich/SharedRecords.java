package org.lagwright.report.enrich;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Supplier;
import org.lagwright.ifc.append.IfcAppender;
import org.lagwright.ifc.append.StepValue;
import org.lagwright.ifc.model.Point;

/** Small records that many others refer to: points, directions, placements, the context. */
final class SharedRecords {

  /** Of a length unit; finer than any drawing. */
  private static final double LENGTH_STEPS = 1e7;

  private static final double DIRECTION_STEPS = 1e10;

  private static final int DIMENSIONS = 3;

  private static final Point ORIGIN = new Point(0, 0, 0);

  private final IfcAppender to;
  private final Map<List<Double>, Long> directions = new HashMap<>();
  private final Map<String, Long> single = new HashMap<>();

  SharedRecords(IfcAppender to) {
    this.to = to;
  }

  /** Lengths in units of the file without the noise of computing. */
  static double length(double lengthM, double unitM) {
    return Math.rint(lengthM / unitM * LENGTH_STEPS) / LENGTH_STEPS;
  }

  /** A point in space or, for its first two coordinates, in a plane. */
  long point(double unitM, double... coordinatesM) {
    double[] written = new double[coordinatesM.length];
    for (int i = 0; i < written.length; i++) {
      written[i] = length(coordinatesM[i], unitM);
    }
    return to.record("IfcCartesianPoint").set("Coordinates", StepValue.reals(written)).add();
  }

  long direction(Point way) {
    List<Double> ratios = List.of(rounded(way.x()), rounded(way.y()), rounded(way.z()));
    return directions.computeIfAbsent(
        ratios,
        r ->
            to.record("IfcDirection")
                .set("DirectionRatios", StepValue.reals(r.get(0), r.get(1), r.get(2)))
                .add());
  }

  private static double rounded(double ratio) {
    return Math.rint(ratio * DIRECTION_STEPS) / DIRECTION_STEPS + 0.0;
  }

  /** A record that is needed once at most. */
  private long once(String name, Supplier<Long> made) {
    Long known = single.get(name);
    if (known == null) {
      known = made.get();
      single.put(name, known);
    }
    return known;
  }

  /** The placement of profiles, which lie around their axis. */
  long planeOrigin() {
    return once(
        "plane", () -> to.record("IfcAxis2Placement2D").ref("Location", point(1, 0, 0)).add());
  }

  /** Where a covering is. */
  long placement(LocalFrame local, double unitM) {
    return to.record("IfcLocalPlacement")
        .ref("PlacementRelTo", local.placement())
        .ref("RelativePlacement", axes(local.origin(), unitM))
        .add();
  }

  private long axes(Point at, double unitM) {
    return to.record("IfcAxis2Placement3D")
        .ref("Location", point(unitM, at.x(), at.y(), at.z()))
        .add();
  }

  /** The axes of coordinates. */
  long origin() {
    return once("origin", () -> axes(ORIGIN, 1));
  }

  /** Where a copy shows a shape as it is drawn. */
  long unmoved() {
    return once(
        "unmoved",
        () ->
            to.record("IfcCartesianTransformationOperator3D")
                .ref("LocalOrigin", point(1, 0, 0, 0))
                .add());
  }

  /** The context of bodies: the one given, or one of our own where a file has none. */
  long context(long found) {
    return found != 0
        ? found
        : once(
            "context",
            () ->
                to.record("IfcGeometricRepresentationContext")
                    .text("ContextType", "Model")
                    .set("CoordinateSpaceDimension", StepValue.integer(DIMENSIONS))
                    .ref("WorldCoordinateSystem", origin())
                    .add());
  }

  /** The owner history of the project, or one of our own where a file has none. */
  long ownerHistory(long found, String origin) {
    return found != 0 ? found : once("history", () -> newHistory(origin));
  }

  private long newHistory(String origin) {
    long organization = to.record("IfcOrganization").text("Name", "Lagwright").add();
    long person = to.record("IfcPerson").text("FamilyName", "Lagwright").add();
    long user =
        to.record("IfcPersonAndOrganization")
            .ref("ThePerson", person)
            .ref("TheOrganization", organization)
            .add();
    long application =
        to.record("IfcApplication")
            .ref("ApplicationDeveloper", organization)
            .text("Version", origin)
            .text("ApplicationFullName", "Lagwright")
            .text("ApplicationIdentifier", "Lagwright")
            .add();
    return to.record("IfcOwnerHistory")
        .ref("OwningUser", user)
        .ref("OwningApplication", application)
        .set("ChangeAction", StepValue.enumeration("ADDED"))
        .set("CreationDate", StepValue.integer(0))
        .add();
  }
}
