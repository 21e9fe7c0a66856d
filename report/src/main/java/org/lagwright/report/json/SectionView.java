package org.lagwright.report.json;

import org.jspecify.annotations.Nullable;
import org.lagwright.ifc.model.Section;

/** A section, its figures in metres. */
record SectionView(
    String shape,
    @Nullable Double outsideDiameterM,
    @Nullable Double widthM,
    @Nullable Double heightM,
    @Nullable String nominal) {

  static SectionView of(Section section, @Nullable String nominal) {
    if (section instanceof Section.Round round) {
      return new SectionView("round", round.outsideDiameterM(), null, null, nominal);
    }
    if (section instanceof Section.Oval oval) {
      return new SectionView("oval", null, oval.widthM(), oval.heightM(), nominal);
    }
    Section.Rectangular rectangular = (Section.Rectangular) section;
    return new SectionView(
        "rectangular", null, rectangular.widthM(), rectangular.heightM(), nominal);
  }
}
