package org.lagwright.ifc.extract;

/** What decides the figures of the elements of one file. */
final class Measurers {

  private final Placeholders placeholders;
  private final PortSizes ports;
  private final FittingSections sizes;
  private final StatedEnds ends;
  private final SegmentMeasurer segments;
  private final double lengthUnitM;

  Measurers(Placeholders placeholders, ProfileReader profiles, OpenedFile opened) {
    double lengthUnitM = opened.lengthUnitM();
    NominalSizes nominals = new NominalSizes(placeholders, lengthUnitM);
    StatedSections stated = new StatedSections(placeholders, nominals, profiles, lengthUnitM);
    this.placeholders = placeholders;
    this.ports = new PortSizes(opened.properties(), lengthUnitM);
    SegmentSections sections = new SegmentSections(stated, profiles, ports, lengthUnitM);
    this.sizes = new FittingSections(stated, nominals, profiles, lengthUnitM);
    this.ends = new StatedEnds(placeholders, profiles, lengthUnitM);
    this.segments = new SegmentMeasurer(placeholders, nominals, sections, lengthUnitM);
    this.lengthUnitM = lengthUnitM;
  }

  SegmentMeasurer segments() {
    return segments;
  }

  /**
   * What the elements of this file meet.
   *
   * @param drafts what they may be joined to
   */
  Neighbours neighbours(DraftLookup drafts) {
    return new Neighbours(drafts, ports);
  }

  FittingMeasurer fittings(Neighbours neighbours) {
    return new FittingMeasurer(neighbours, placeholders, sizes, ends, lengthUnitM);
  }
}
