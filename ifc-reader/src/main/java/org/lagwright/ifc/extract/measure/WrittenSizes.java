package org.lagwright.ifc.extract.measure;

import java.util.List;
import java.util.Optional;
import org.lagwright.ifc.extract.draft.BareSizes;
import org.lagwright.ifc.extract.draft.Draft;
import org.lagwright.ifc.extract.draft.DuctShapes;
import org.lagwright.ifc.extract.draft.SizeTexts;
import org.lagwright.ifc.extract.text.FigureCursor;
import org.lagwright.ifc.extract.text.InchSizes;
import org.lagwright.ifc.extract.text.PipeMaterial;
import org.lagwright.ifc.extract.text.PipeSizes;
import org.lagwright.ifc.extract.text.Sizes;
import org.lagwright.ifc.extract.text.Words;
import org.lagwright.ifc.model.How;
import org.lagwright.ifc.model.Section;

/** Sizes that names and texts of an element give, which may be those of its outside. */
record WrittenSizes(Placeholders placeholders, NominalSizes nominals, BareSizes bare) {

  private static final String NO_DUCT = "no duct is so narrow";

  /** Adds what the texts of an element say. */
  void addTo(Draft draft, List<Stated> stated) {
    for (SizeTexts.Text text : SizeTexts.of(draft)) {
      if (draft.isDuct()) {
        duct(draft, text, stated);
      } else {
        pipe(draft, text, stated);
      }
    }
  }

  /** Adds the nominal sizes of a round duct, which are its diameter. */
  void addNominal(Draft draft, List<Stated> stated) {
    for (SizeTexts.Text text : SizeTexts.of(draft)) {
      Optional<Integer> dn = Sizes.dn(text.value());
      if (dn.isPresent() && dn.get() >= 1000 * Sizes.SMALLEST_SIDE_M) {
        stated.add(stated(draft, text, new Section.Round(dn.get() / 1000.0)));
      }
    }
  }

  /** A size that a text gives. */
  Stated stated(Draft draft, SizeTexts.Text text, Section section) {
    String narrow = BareSizes.isTooNarrow(draft, section) ? NO_DUCT : null;
    String ruledOut =
        placeholders.contains(draft, text.value()) ? StatedSections.PLACEHOLDER : narrow;
    return new Stated(section, How.TEXT, text.evidence(), ruledOut, false, false);
  }

  private void duct(Draft draft, SizeTexts.Text text, List<Stated> stated) {
    Optional<Section> sides = bare.sides(draft, text.value());
    if (sides.isPresent()) {
      stated.add(stated(draft, text, DuctShapes.shaped(draft, sides.get())));
    }
    Optional<Section> round = bare.diameter(draft, text.value());
    if (round.isPresent()) {
      stated.add(stated(draft, text, round.get()));
    }
  }

  private void pipe(Draft draft, SizeTexts.Text text, List<Stated> stated) {
    Optional<Section> round = Sizes.diameter(text.value());
    if (round.isPresent()) {
      diameter(draft, text, round.get(), stated);
    } else {
      whole(draft, text, stated);
    }
  }

  /** A text that is but a diameter, which only as an outside is one: 22 mm, not 50 mm. */
  private void whole(Draft draft, SizeTexts.Text text, List<Stated> stated) {
    boolean undrawn = draft.isSegment() && draft.shape().section() == null;
    double wholeM = text.value().endsWith("mm") ? FigureCursor.wholeM(text.value()) : Double.NaN;
    double diameterM = undrawn && !(wholeM > 0) ? onlyM(draft, text.value()) : wholeM;
    boolean outside =
        diameterM > 0
            && PipeSizes.isOutsideDiameter(diameterM)
            && !NominalSizes.isTabulated(diameterM);
    if (outside) {
      stated.add(stated(draft, text, new Section.Round(diameterM)));
    }
  }

  /**
   * The only figure in the name of a pipe, if it is in millimetres, or of copper in the name of its
   * type: tubes of copper are called by their outside. Another one may be of its insulation.
   */
  private static double onlyM(Draft pipe, String text) {
    if (Words.tellsOfInsulation(text)) {
      return Double.NaN;
    }
    boolean copper = PipeMaterial.in(text).orElse(null) == PipeMaterial.COPPER;
    boolean mayBeNumber = text.equals(pipe.names().own());
    return FigureCursor.onlyMm(text, copper && !mayBeNumber);
  }

  /**
   * Inches of a pipe are its nominal size, and so is what a property calls so; what but a word
   * calls a diameter may be.
   */
  private void diameter(Draft draft, SizeTexts.Text text, Section round, List<Stated> stated) {
    double diameterM = round.largestSideM();
    boolean nominal =
        !InchSizes.in(text.value()).isEmpty()
            || nominals.isNominal(draft, null, diameterM)
            || bare.nominal(draft, text.value()) > 0
            || (Sizes.isPlainDiameter(text.value()) && NominalSizes.isTabulated(diameterM));
    if (nominal || PipeSizes.isOutsideDiameter(diameterM)) {
      String ruledOut = nominal ? StatedSections.NOMINAL : stated(draft, text, round).ruledOut();
      stated.add(new Stated(round, How.TEXT, text.evidence(), ruledOut, true, false));
    }
  }
}
