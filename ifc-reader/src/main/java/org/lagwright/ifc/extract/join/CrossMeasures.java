package org.lagwright.ifc.extract.join;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Deque;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import org.jspecify.annotations.Nullable;
import org.lagwright.ifc.extract.ElementMaker;
import org.lagwright.ifc.extract.Measurers;
import org.lagwright.ifc.extract.ModelMeasurer;
import org.lagwright.ifc.extract.draft.Draft;
import org.lagwright.ifc.extract.join.ModelJoiner.Joining;
import org.lagwright.ifc.extract.measure.FittingMeasurer;
import org.lagwright.ifc.extract.measure.SectionWidth;
import org.lagwright.ifc.model.ElementKey;
import org.lagwright.ifc.model.ExistingInsulation;
import org.lagwright.ifc.model.Form;
import org.lagwright.ifc.model.MepElement;
import org.lagwright.ifc.model.Port;
import org.lagwright.ifc.model.ReadFinding;

/**
 * Measures once more what was joined to an element of another file, and what lies in one line with
 * it: its size and form may be those that the line there tells, as in one file.
 */
final class CrossMeasures {

  /** What measuring may find; all else that was found about an element stays. */
  static final Set<ReadFinding> MEASURED =
      EnumSet.of(
          ReadFinding.FORM_CONFLICT,
          ReadFinding.SECTION_CONFLICT,
          ReadFinding.LENGTH_CONFLICT,
          ReadFinding.RADIUS_CONFLICT,
          ReadFinding.ANGLE_CONFLICT,
          ReadFinding.ANGLE_UNKNOWN,
          ReadFinding.NO_GEOMETRY,
          ReadFinding.GEOMETRY_ONLY_PARTLY_MEASURED,
          ReadFinding.SIZE_FROM_NOMINAL,
          ReadFinding.INSULATION_IN_BODY);

  private final Joining joining;
  private final Redrafts drafts;

  /** In the order of the files. */
  private final Map<ElementKey, Draft> items = new TreeMap<>();

  private final Map<Integer, FittingMeasurer> fittings = new TreeMap<>();

  private CrossMeasures(Joining joining, Redrafts drafts) {
    this.joining = joining;
    this.drafts = drafts;
  }

  /**
   * @param joined elements that were given joints across files
   */
  static void measure(Joining joining, Redrafts drafts, Collection<ElementKey> joined) {
    if (!joined.isEmpty()) {
      CrossMeasures measures = new CrossMeasures(joining, drafts);
      measures.collect(joined);
      measures.measure();
    }
  }

  /** Those that are joined, and what hangs on them as far as the next piece that has its size. */
  private void collect(Collection<ElementKey> joined) {
    Deque<ElementKey> next = new ArrayDeque<>(joined);
    for (ElementKey key : joined) {
      Draft draft = drafts.find(key);
      MepElement element = joining.find(key);
      if (draft != null && element != null) {
        draft.join(element.ports());
      }
    }
    while (!next.isEmpty()) {
      Draft draft = drafts.find(next.remove());
      if (draft != null && dependsOnOthers(draft) && items.put(draft.key(), draft) == null) {
        for (Port joint : draft.joints()) {
          if (joint.connectedTo() != null) {
            next.add(joint.connectedTo());
          }
        }
      }
    }
  }

  private static boolean dependsOnOthers(Draft draft) {
    return draft.isLaggedItem() || (draft.isSegment() && draft.section() == null);
  }

  private void measure() {
    List<Form> forms = new ArrayList<>(items.size());
    for (Draft draft : items.values()) {
      if (draft.isSegment()) {
        Measurers own = drafts.measurersOf(draft);
        own.segments().takeOver(draft, own.neighbours(drafts));
      }
    }
    for (Draft draft : items.values()) {
      forms.add(draft.isSegment() ? draft.form() : fittingsOf(draft).formOf(draft));
    }
    int at = 0;
    for (Draft draft : items.values()) {
      Form form = forms.get(at++);
      if (!draft.isSegment()) {
        ModelMeasurer.settle(draft, form);
      }
    }
    for (Draft draft : items.values()) {
      if (draft.isLaggedItem()) {
        fittingsOf(draft).measure(draft);
      }
      change(draft);
    }
  }

  private FittingMeasurer fittingsOf(Draft draft) {
    FittingMeasurer own = fittings.get(draft.key().model());
    if (own == null) {
      Measurers measurers = drafts.measurersOf(draft);
      own = measurers.fittings(measurers.neighbours(drafts));
      fittings.put(draft.key().model(), own);
    }
    return own;
  }

  private void change(Draft draft) {
    MepElement before = joining.find(draft.key());
    if (before == null) {
      return;
    }
    if (draft.isSegment()) {
      joining.change(
          before.toBuilder().section(draft.section()).width(SectionWidth.of(draft)).build());
    } else {
      joining.change(
          ElementMaker.measured(before.toBuilder(), draft)
              .is(draft.kind() == null ? before.kind() : draft.kind(), draft.form())
              .existingInsulation(insulation(before, draft))
              .build());
      joining.forget(draft.key(), MEASURED);
    }
    draft.findings().forEach(joining::note);
  }

  private static @Nullable ExistingInsulation insulation(MepElement before, Draft draft) {
    ExistingInsulation shown = before.existingInsulation();
    return shown == null ? draft.drawnInsulation() : shown;
  }
}
