package org.lagwright.ifc.extract.measure;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.lagwright.ifc.extract.draft.Draft;
import org.lagwright.ifc.extract.text.InWords;
import org.lagwright.ifc.model.Candidate;
import org.lagwright.ifc.model.Effect;
import org.lagwright.ifc.model.Form;
import org.lagwright.ifc.model.How;
import org.lagwright.ifc.model.Kind;
import org.lagwright.ifc.model.Measured;
import org.lagwright.ifc.model.ReadFinding;
import org.lagwright.ifc.model.Section;

/** Notes sizes and lengths that rest on no body that could be measured. */
final class WeakSources {

  private WeakSources() {}

  /** One finding for size and length. */
  static void note(
      Draft draft, @Nullable Measured<Section> section, @Nullable Measured<Double> lengthM) {
    List<String> weak = new ArrayList<>();
    if (section != null && isWeak(section)) {
      weak.add("the size comes from " + section.evidence());
    }
    if (lengthM != null && isWeak(lengthM)) {
      weak.add("the length comes from " + lengthM.evidence());
    }
    if (!weak.isEmpty()) {
      draft.note(
          ReadFinding.NO_GEOMETRY,
          Effect.ESTIMATED,
          draft.shape().problems().isEmpty()
              ? "what is drawn does not show it"
              : String.join("; ", draft.shape().problems()),
          String.join(", ", weak));
    }
  }

  /** What went wrong where a body was measured and its figures stand, or gives none. */
  static void noteBody(Draft draft) {
    List<String> problems = new ArrayList<>(draft.shape().problems());
    boolean used = draft.section() == null || !isWeak(draft.section());
    if (isPipeNotRound(draft)) {
      problems.add("a pipe is drawn with flat sides or oval, which counts as a duct");
    }
    if (isTaperedSegment(draft)) {
      problems.add(
          "it is drawn with ends of different sizes, and counts as of one size throughout");
    }
    if (isDrawnWithOneEnd(draft)) {
      problems.add("only one end of the body is recognised");
    }
    boolean drawn = draft.shape().isDrawn() || draft.shape().isOnlyBoxed();
    if (!problems.isEmpty() && used && drawn) {
      draft.note(
          ReadFinding.GEOMETRY_ONLY_PARTLY_MEASURED, Effect.NONE, InWords.sentence(problems));
    }
  }

  /**
   * True for a box in the place of a pipe: a trench, a casing, or a body that stands for one; also
   * for circles of four corners, and for a pipe whose slanted cut is taken for its end.
   */
  static boolean isPipeNotRound(Draft draft) {
    Measured<Section> section = draft.section();
    Kind kind = draft.kind();
    return kind != null
        && kind.isOfPipe()
        && section != null
        && section.how().isDrawn()
        && !(section.value() instanceof Section.Round);
  }

  /** True for a straight piece that is drawn as a reducer, as programs without one write it. */
  private static boolean isTaperedSegment(Draft draft) {
    Form drawn = draft.shape().form();
    Kind kind = draft.kind();
    return kind != null && kind.isSegment() && (drawn == Form.REDUCER || drawn == Form.TRANSITION);
  }

  /** True of a segment, or of what joins two, of which the other end is not recognised. */
  private static boolean isDrawnWithOneEnd(Draft draft) {
    Kind kind = draft.kind();
    boolean segment = kind != null && kind.isSegment();
    return (segment || draft.form().ways() == 2) && draft.shape().form() == Form.CAP;
  }

  /** True if a value was written and nothing that is drawn gives another. */
  private static <T> boolean isWeak(Measured<T> measured) {
    if (!isWritten(measured.how())) {
      return false;
    }
    for (Candidate<T> other : measured.lost()) {
      if (other.how().isDrawn()) {
        return false;
      }
    }
    return true;
  }

  private static boolean isWritten(How how) {
    return how == How.PROPERTY || how == How.QUANTITY_SET || how == How.TEXT;
  }
}
