package org.lagwright.ifc.extract.measure;

import org.jspecify.annotations.Nullable;
import org.lagwright.ifc.model.Evidence;
import org.lagwright.ifc.model.How;
import org.lagwright.ifc.model.Section;

/**
 * A size that was stated.
 *
 * @param ruledOut why it must not be used, null if it may
 * @param plain true for a diameter that does not say which of the diameters of a pipe it is
 * @param beatsBody true if the body is drawn with another one of the diameters of the pipe
 */
record Stated(
    Section section,
    How how,
    Evidence evidence,
    @Nullable String ruledOut,
    boolean plain,
    boolean beatsBody) {

  /** As a candidate; a plain figure may be the nominal size of what leads so far. */
  void addTo(Options<Section> options) {
    Section leading = plain ? options.leading() : null;
    if (ruledOut != null) {
      options.rule(section, how, evidence, ruledOut);
    } else if (leading != null && isNominalOf(leading)) {
      options.rule(section, how, evidence, StatedSections.NOMINAL);
    } else {
      options.add(section, how, evidence);
    }
  }

  Stated asNominal() {
    return new Stated(section, how, evidence, StatedSections.NOMINAL, plain, beatsBody);
  }

  /** True if this is a nominal size, and the other an outside diameter of that size. */
  boolean isNominalOf(Section other) {
    return section instanceof Section.Round round
        && other instanceof Section.Round outside
        && NominalSizes.isNominalOf(round.outsideDiameterM(), outside.outsideDiameterM());
  }
}
