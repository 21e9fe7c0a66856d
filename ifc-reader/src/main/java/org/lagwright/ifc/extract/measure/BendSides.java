package org.lagwright.ifc.extract.measure;

import java.util.List;
import org.lagwright.ifc.extract.draft.Draft;
import org.lagwright.ifc.extract.text.Tolerances;
import org.lagwright.ifc.model.Form;
import org.lagwright.ifc.model.Measured;
import org.lagwright.ifc.model.Section;

/**
 * Calls the sides of a bend the same at both of its ends. The width of a duct is its level side,
 * but of a riser its longer one; so a bend that turns a riser over its longer side would seem to
 * end in another size than it begins.
 */
final class BendSides {

  private BendSides() {}

  /** Renames what is decided; to be called when the ends are. */
  static void align(Draft draft) {
    Measured<List<Section>> ends = draft.ends();
    if (draft.form() != Form.BEND || ends == null || ends.value().size() != 2) {
      return;
    }
    Section one = ends.value().get(0);
    Section other = ends.value().get(1);
    if (!Tolerances.sameSection(one, other) || lyingM(one) * lyingM(other) >= 0) {
      return;
    }
    // the riser lies; the other end tells which side is level
    Section sides = lyingM(one) < 0 ? one : other;
    draft
        .change()
        .setEnds(new Measured<>(List.of(sides, sides), ends.how(), ends.evidence(), ends.lost()));
    Measured<Section> section = draft.section();
    if (section != null && Tolerances.sameSection(section.value(), sides)) {
      draft
          .change()
          .setSection(new Measured<>(sides, section.how(), section.evidence(), section.lost()));
    }
  }

  /** How much wider than high, metres; 0 for what is round. */
  private static double lyingM(Section section) {
    if (section instanceof Section.Rectangular r) {
      return r.widthM() - r.heightM();
    }
    return section instanceof Section.Oval o ? o.widthM() - o.heightM() : 0;
  }
}
