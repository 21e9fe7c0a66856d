package org.lagwright.ifc.extract;

import java.util.ArrayList;
import org.jspecify.annotations.Nullable;
import org.lagwright.ifc.geometry.Placements;
import org.lagwright.ifc.geometry.Shape;
import org.lagwright.ifc.geometry.ShapeMeasurer;
import org.lagwright.ifc.model.Kind;
import org.lagwright.ifc.model.MepElement;
import org.lagwright.ifc.model.OpenEnd;
import org.lagwright.ifc.model.Origin;
import org.lagwright.ifc.packed.Vocabulary;
import org.lagwright.ifc.schema.IfcFile;
import org.lagwright.ifc.schema.IfcRecord;

/**
 * Works out single elements of a file once more, after all of it was read: few are joined to those
 * of another file, and what they were worked out from would take much memory until then.
 */
final class Remeasurer implements Origin {

  private final IfcFile file;
  private final int model;
  private final Units units;
  private final Relations relations;
  private final PropertyReader properties;
  private final Placements placements;
  private final Placeholders placeholders;
  private @Nullable Reading reading;

  /** Made when the first element is asked for. */
  private record Reading(DraftReader elements, PortReader ports, Measurers measurers) {}

  /**
   * @param model position of the file among all read
   */
  Remeasurer(
      IfcFile file,
      int model,
      Units units,
      Relations relations,
      PropertyReader properties,
      Placements placements,
      Placeholders placeholders) {
    this.file = file;
    this.model = model;
    this.units = units;
    this.relations = relations;
    this.properties = properties;
    this.placements = placements;
    this.placeholders = placeholders;
  }

  private Reading reading() {
    Reading now = reading;
    if (now == null) {
      ShapeMeasurer shapes = new ShapeMeasurer(file, units.geometry(), placements);
      PortReader ports = new PortReader(file, relations, placements, model);
      double unitM = units.lengthM();
      now =
          new Reading(
              new DraftReader(
                  file, relations, properties, ports, shapes, unitM, new Vocabulary(model), false),
              ports,
              new Measurers(
                  placeholders,
                  new ProfileReader(file, relations, shapes, unitM),
                  properties,
                  unitM));
      reading = now;
    }
    return now;
  }

  Measurers measurers() {
    return reading().measurers;
  }

  /**
   * An element with the joints that it has by now. Straight pieces have their size; of all else
   * nothing is decided yet.
   *
   * @return null if the file has no such record any more
   */
  @Nullable Draft draft(MepElement element) {
    IfcRecord record = file.find(element.key().step());
    if (record == null) {
      return null;
    }
    Reading now = reading();
    Draft draft = now.elements.read(record, now.ports.again(element.ports()), new ArrayList<>());
    boolean settled = draft.kind == null || element.kind() == Kind.OTHER;
    draft.kind = settled ? element.kind() : draft.kind;
    draft.join(element.ports());
    if (draft.mayLieOtherwise) {
      lieAs(element, draft);
    }
    if (draft.isSegment()) {
      now.measurers.segments().measure(draft);
      draft.change().section = element.section();
    }
    draft.forgetFindings();
    return draft;
  }

  /** A box that its neighbours turned stays turned. */
  private static void lieAs(MepElement element, Draft box) {
    for (Shape other : box.shape().otherReadings()) {
      if (!endsWhere(element, box.shape()) && endsWhere(element, other)) {
        box.measured(other);
      }
    }
  }

  private static boolean endsWhere(MepElement element, Shape reading) {
    for (OpenEnd end : ReadEnds.of(element)) {
      if (!OpenEnds.isAnEnd(reading.ends(), end.positionM())) {
        return false;
      }
    }
    return true;
  }
}
