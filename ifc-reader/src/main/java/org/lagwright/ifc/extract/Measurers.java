package org.lagwright.ifc.extract;

import org.lagwright.ifc.extract.draft.DraftLookup;
import org.lagwright.ifc.extract.measure.FittingMeasurer;
import org.lagwright.ifc.extract.measure.FittingSections;
import org.lagwright.ifc.extract.measure.Neighbours;
import org.lagwright.ifc.extract.measure.NominalSizes;
import org.lagwright.ifc.extract.measure.PipeMaterials;
import org.lagwright.ifc.extract.measure.Placeholders;
import org.lagwright.ifc.extract.measure.PortSizes;
import org.lagwright.ifc.extract.measure.ProfileReader;
import org.lagwright.ifc.extract.measure.SegmentMeasurer;
import org.lagwright.ifc.extract.measure.SegmentSections;
import org.lagwright.ifc.extract.measure.StatedEnds;
import org.lagwright.ifc.extract.measure.StatedSections;
import org.lagwright.ifc.extract.property.OpenedFile;

/** What decides the figures of the elements of one file. */
public final class Measurers {

  private final Placeholders placeholders;
  private final PortSizes ports;
  private final FittingSections sizes;
  private final StatedEnds ends;
  private final SegmentMeasurer segments;
  private final double lengthUnitM;

  Measurers(Placeholders placeholders, ElementReaders readers, OpenedFile opened) {
    double lengthUnitM = opened.lengthUnitM();
    ProfileReader profiles = readers.profiles;
    PipeMaterials materials = new PipeMaterials(readers.belongings);
    NominalSizes nominals = new NominalSizes(placeholders, materials, lengthUnitM);
    StatedSections stated = new StatedSections(placeholders, nominals, profiles, lengthUnitM);
    this.placeholders = placeholders;
    this.ports = new PortSizes(opened.properties(), lengthUnitM);
    SegmentSections sections = new SegmentSections(stated, profiles, ports, lengthUnitM);
    this.sizes = new FittingSections(stated, nominals, profiles, lengthUnitM);
    this.ends = new StatedEnds(placeholders, nominals, profiles, lengthUnitM);
    this.segments = new SegmentMeasurer(placeholders, nominals, sections, lengthUnitM);
    this.lengthUnitM = lengthUnitM;
  }

  /** What measures straight pieces. */
  public SegmentMeasurer segments() {
    return segments;
  }

  /**
   * What the elements of this file meet.
   *
   * @param drafts what they may be joined to
   */
  public Neighbours neighbours(DraftLookup drafts) {
    return new Neighbours(drafts, ports);
  }

  /** What measures fittings, valves and inline parts beside these neighbours. */
  public FittingMeasurer fittings(Neighbours neighbours) {
    return new FittingMeasurer(neighbours, placeholders, sizes, ends, lengthUnitM);
  }
}
