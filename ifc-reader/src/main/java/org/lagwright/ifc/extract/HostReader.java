package org.lagwright.ifc.extract;

import java.util.List;
import org.jspecify.annotations.Nullable;
import org.lagwright.ifc.extract.property.Relations;
import org.lagwright.ifc.extract.text.Units;
import org.lagwright.ifc.geometry.frame.Frame;
import org.lagwright.ifc.geometry.frame.GeometryUnits;
import org.lagwright.ifc.geometry.frame.Placements;
import org.lagwright.ifc.schema.IfcFile;
import org.lagwright.ifc.schema.IfcRecord;
import org.lagwright.ifc.threads.Workers;

/**
 * Which records something new has to refer to when it joins an element that is in a file: its
 * placement, its geometric context, the part of the building it is in.
 */
public final class HostReader {

  /** Wholes within wholes that are climbed to find where a part is contained. */
  private static final int MOST_WHOLES = 20;

  private static final int DIMENSIONS_OF_BODIES = 3;

  private final IfcFile file;
  private final Units units;
  private final Placements placements;
  private final long ownerHistory;
  private final long context;
  private @Nullable Relations relations;

  /**
   * An element that something is added to.
   *
   * @param placement instance number of its placement, 0 if it has none
   * @param frame of that placement in the world, null if it has none or a broken one
   * @param within instance number of the placement that its own one is relative to, 0 if none
   * @param frameWithin of that one in the world; the world itself if there is none
   * @param context instance number of the geometric context of bodies, 0 if the file has none
   */
  public record Host(
      long placement,
      @Nullable Frame frame,
      long within,
      @Nullable Frame frameWithin,
      long context) {}

  /** Looks for what all elements share. */
  public HostReader(IfcFile file) {
    this.file = file;
    this.units = new Units(file, 0);
    this.placements = new Placements(file, units.geometry());
    List<IfcRecord> projects = file.all("IfcProject");
    long history = 0;
    long bodies = 0;
    for (IfcRecord project : projects) {
      history = history == 0 ? project.refId("OwnerHistory") : history;
      bodies = bodies == 0 ? context(project) : bodies;
    }
    this.ownerHistory = history;
    this.context = bodies;
  }

  private static long context(IfcRecord project) {
    for (IfcRecord context : project.refs("RepresentationContexts")) {
      if (context.is("IfcGeometricRepresentationContext")
          && context.number("CoordinateSpaceDimension") == DIMENSIONS_OF_BODIES) {
        return context.id();
      }
    }
    return 0;
  }

  /** The units of lengths and angles that geometry of the file is in. */
  public GeometryUnits units() {
    return units.geometry();
  }

  /** Square metres in one area unit of the file. */
  public double areaUnitM2() {
    return units.areaM2();
  }

  /** Cubic metres in one volume unit of the file. */
  public double volumeUnitM3() {
    return units.volumeM3();
  }

  /** Instance number of the owner history of the project, 0 if it has none. */
  public long ownerHistory() {
    return ownerHistory;
  }

  /** An element of the file. */
  public Host host(long element) {
    IfcRecord record = file.find(element);
    IfcRecord placement = record == null ? null : record.ref("ObjectPlacement");
    long its = record == null ? 0 : contextOfBody(record);
    if (placement == null) {
      return new Host(0, null, 0, Frame.WORLD, its);
    }
    IfcRecord within = placement.ref("PlacementRelTo");
    return new Host(
        placement.id(),
        placements.world(placement),
        within == null ? 0 : within.id(),
        within == null ? Frame.WORLD : placements.world(within),
        its);
  }

  private long contextOfBody(IfcRecord product) {
    IfcRecord shape = product.ref("Representation");
    List<IfcRecord> all = shape == null ? List.of() : shape.refs("Representations");
    for (IfcRecord representation : all) {
      if ("Body".equals(representation.text("RepresentationIdentifier"))
          && representation.refId("ContextOfItems") != 0) {
        return representation.refId("ContextOfItems");
      }
    }
    return context;
  }

  /**
   * Instance number of the storey, space or other part of the building that contains an element, or
   * the whole that it is a part of; 0 if none does.
   */
  public long containerOf(long element) {
    Relations known = relations();
    long at = element;
    for (int i = 0; i < MOST_WHOLES && at != 0; i++) {
      if (known.containerOf(at) != 0) {
        return known.containerOf(at);
      }
      at = known.wholeOf(at);
    }
    return 0;
  }

  /** Only asked for where it is needed, as it goes through all relations of the file. */
  private Relations relations() {
    Relations known = relations;
    if (known == null) {
      try (Workers workers = Workers.forThisMachine()) {
        known = new Relations(file, workers);
      }
      relations = known;
    }
    return known;
  }
}
