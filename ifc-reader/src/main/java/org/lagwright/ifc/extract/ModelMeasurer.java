package org.lagwright.ifc.extract;

import java.util.ArrayList;
import java.util.List;
import org.lagwright.ifc.extract.draft.Draft;
import org.lagwright.ifc.extract.draft.Drafts;
import org.lagwright.ifc.extract.graph.BoxAxes;
import org.lagwright.ifc.extract.graph.SidePorts;
import org.lagwright.ifc.extract.graph.Taps;
import org.lagwright.ifc.extract.graph.TouchingEnds;
import org.lagwright.ifc.extract.measure.FittingMeasurer;
import org.lagwright.ifc.extract.measure.Neighbours;
import org.lagwright.ifc.extract.measure.SegmentMeasurer;
import org.lagwright.ifc.model.Form;
import org.lagwright.ifc.model.Kind;
import org.lagwright.ifc.threads.Workers;

/** Decides the figures of all elements: segments first, as fittings take over their sizes. */
public final class ModelMeasurer {

  private final Drafts drafts;
  private final SegmentMeasurer segments;
  private final Neighbours neighbours;
  private final FittingMeasurer fittings;
  private final Workers workers;

  ModelMeasurer(Drafts drafts, Measurers measurers, Workers workers) {
    this.drafts = drafts;
    this.segments = measurers.segments();
    this.neighbours = measurers.neighbours(drafts);
    this.fittings = measurers.fittings(neighbours);
    this.workers = workers;
  }

  /**
   * Measures everything.
   *
   * @param joinToleranceM how far ends without ports may lie apart to be joined, metres
   * @return how many ends were joined
   */
  int measure(double joinToleranceM) {
    BoxAxes.choose(drafts.all(), joinToleranceM, workers);
    SegmentWork segmentWork = new SegmentWork(drafts.all(), segments, new ArrayList<>());
    workers.inOrder(drafts.all().size(), Drafts.RUN, segmentWork);
    SidePorts.markBranches(drafts, segmentWork.tapped);
    int joined =
        TouchingEnds.join(drafts.all(), joinToleranceM, workers)
            + Taps.join(drafts.all(), joinToleranceM, workers);
    List<Draft> items = new ArrayList<>();
    for (Draft draft : drafts.all()) {
      if (draft.isSegment()) {
        segments.takeOver(draft, neighbours);
      }
      if (draft.isLaggedItem()) {
        items.add(draft);
      }
    }
    measureItems(items);
    return joined;
  }

  /**
   * Measures segments.
   *
   * @param tapped given those that have ports at their side
   */
  private record SegmentWork(List<Draft> drafts, SegmentMeasurer segments, List<Draft> tapped)
      implements Workers.Work<List<Draft>> {

    @Override
    public List<Draft> on(int from, int to) {
      List<Draft> here = new ArrayList<>(0);
      for (Draft draft : drafts.subList(from, to)) {
        if (draft.kind() == null || draft.isSegment()) {
          measure(draft, here);
        }
      }
      return here;
    }

    @Override
    public void take(List<Draft> done) {
      tapped.addAll(done);
    }

    private void measure(Draft draft, List<Draft> here) {
      draft.open();
      if (draft.isSegment()) {
        segments.measure(draft);
        if (SidePorts.mark(draft)) {
          here.add(draft);
        }
      }
      segments.settleKind(draft);
      if (draft.isLaggedItem()) {
        draft.fold();
      } else {
        draft.foldMeasured();
      }
    }
  }

  /** First the forms of all, as the size of one is taken through others; then all sizes. */
  private void measureItems(List<Draft> items) {
    List<Form> forms = workers.gather(items, Drafts.RUN, new FormWork(fittings));
    for (int i = 0; i < items.size(); i++) {
      settle(items.get(i), forms.get(i));
    }
    workers.inOrder(items.size(), Drafts.RUN, new ItemWork(items, fittings));
  }

  /** Sets the form of an item, which may tell that it is something else than its class says. */
  public static void settle(Draft item, Form form) {
    item.setForm(form);
    if (form == Form.APPARATUS) {
      item.setKind(Kind.EQUIPMENT);
    } else if (form == Form.DAMPER && item.kind() == Kind.VALVE) {
      item.setKind(Kind.INLINE);
    }
  }

  private record FormWork(FittingMeasurer fittings) implements Workers.Search<Draft, Form> {

    @Override
    public void look(Draft item, List<Form> into) {
      item.open();
      into.add(fittings.formOf(item));
      item.close();
    }
  }

  private record ItemWork(List<Draft> items, FittingMeasurer fittings)
      implements Workers.Work<Integer> {

    @Override
    public Integer on(int from, int to) {
      for (Draft item : items.subList(from, to)) {
        item.open();
        if (item.isLaggedItem()) {
          fittings.measure(item);
        }
        item.foldMeasured();
      }
      return to;
    }
  }
}
