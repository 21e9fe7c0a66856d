package org.lagwright.ifc.extract.measure;

import java.util.List;
import org.jspecify.annotations.Nullable;
import org.lagwright.ifc.extract.draft.Draft;
import org.lagwright.ifc.extract.text.PipeSizes;
import org.lagwright.ifc.extract.text.Tolerances;
import org.lagwright.ifc.model.Effect;
import org.lagwright.ifc.model.Form;
import org.lagwright.ifc.model.How;
import org.lagwright.ifc.model.Kind;
import org.lagwright.ifc.model.Measured;
import org.lagwright.ifc.model.ReadFinding;
import org.lagwright.ifc.model.Section;

/**
 * What makes the size that was chosen for a fitting, valve or inline item less than sure, though
 * nothing contradicts it.
 *
 * @param met the lines at its ends
 * @param nominals what tables give for the nominal sizes it is called
 * @param wide true if its body is wider than its pipe
 * @param ofSomeEnds true if its ends may differ and not all of them meet a line
 */
record SizeDoubts(
    Draft draft,
    List<Neighbours.Found> met,
    List<Nominal> nominals,
    boolean wide,
    boolean ofSomeEnds) {

  private static final String OF_BODY =
      "The size is that of the body, which may be wider than its pipe; nothing tells of the pipe";

  private static final String OF_BODY_NEXT_DOOR =
      "The size is that of a body it meets, which may be wider than the pipe in it";

  private static final String ONE_END =
      "Nothing is drawn, and the size is that of a line it meets; the other ends may be larger";

  private static final String ANY_EDGE =
      "Nothing tells along which of its edges the box runs; the longest is taken";

  /** Thickness over diameter of what is flatter than the caps of pipes: blind flanges, plates. */
  private static final double FLAT = 0.2;

  /** Tells of a body that is no size, so that a table gave it, or that had to be the size. */
  void note() {
    Measured<Section> chosen = draft.section();
    if (chosen == null || draft.shape().section() == null) {
      noteOneEnd(chosen);
      noteBodyNextDoor(chosen);
      return;
    }
    for (Nominal each : nominals) {
      if (chosen.how() == each.how()
          && chosen.evidence().equals(each.evidence())
          && Tolerances.sameSection(chosen.value(), each.section())) {
        each.noteFrom(draft);
        return;
      }
    }
    if (wide && isOfBodyOnly(chosen)) {
      draft.note(ReadFinding.GEOMETRY_ONLY_PARTLY_MEASURED, Effect.NONE, OF_BODY);
    } else if (mayRunOtherwise(chosen)) {
      draft.note(ReadFinding.GEOMETRY_ONLY_PARTLY_MEASURED, Effect.NONE, ANY_EDGE);
    }
  }

  /** Tells of what is not drawn and changes the size, if that of some of its ends is known only. */
  private void noteOneEnd(@Nullable Measured<Section> chosen) {
    if (chosen != null && chosen.how() == How.NEIGHBOUR && ofSomeEnds) {
      draft.note(ReadFinding.GEOMETRY_ONLY_PARTLY_MEASURED, Effect.ASSUMED, ONE_END);
    }
  }

  private void noteBodyNextDoor(@Nullable Measured<Section> chosen) {
    for (Neighbours.Found each : met) {
      if (chosen != null && chosen.evidence().equals(each.evidence())) {
        noteBodyNextDoor(draft, each);
        return;
      }
    }
  }

  /** Tells of a size that was taken from the body of a valve, flange or the like next door. */
  static void noteBodyNextDoor(Draft draft, Neighbours.Found size) {
    if (size.ofBody()) {
      draft.note(ReadFinding.GEOMETRY_ONLY_PARTLY_MEASURED, Effect.ASSUMED, OF_BODY_NEXT_DOOR);
    }
  }

  /** True for a closed box of faces that neither both ports, neighbours nor a stated size tell. */
  private boolean mayRunOtherwise(Measured<Section> chosen) {
    return chosen.how() == How.MESH
        && draft.ports().size() < 2
        && met.isEmpty()
        && draft.shape().mayLieOtherwise()
        && Options.firstAgreeing(chosen).isEmpty();
  }

  /**
   * True for a body in pipes where nothing else agrees with it: that of a valve or the like, of
   * which it is chance if a table has such a pipe, the disc of a flange, also one that closes a
   * pipe, and what is no pipe of any table.
   */
  private boolean isOfBodyOnly(Measured<Section> chosen) {
    return chosen.how().isDrawn()
        && PipeItems.sitsInPipes(draft)
        && chosen.value() instanceof Section.Round round
        && (draft.kind() != Kind.PIPE_FITTING
            || draft.form() == Form.FLANGE
            || isDisc(round)
            || !PipeSizes.isOutsideDiameter(round.outsideDiameterM()))
        && !isCalledSo(round)
        && Options.firstAgreeing(chosen).isEmpty();
  }

  private boolean isDisc(Section.Round body) {
    Measured<Double> lengthM = draft.shape().lengthM();
    return draft.form() == Form.CAP
        && lengthM != null
        && lengthM.value() < FLAT * body.outsideDiameterM();
  }

  private boolean isCalledSo(Section body) {
    for (Nominal each : nominals) {
      if (each.mayBe(body)) {
        return true;
      }
    }
    return false;
  }
}
