package org.lagwright.takeoff;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import java.util.TreeMap;
import org.lagwright.ifc.model.Effect;
import org.lagwright.ifc.model.ElementKey;
import org.lagwright.ifc.model.Finding;
import org.lagwright.ifc.model.MepElement;
import org.lagwright.takeoff.labour.Labour;
import org.lagwright.takeoff.labour.LabourBook;
import org.lagwright.takeoff.labour.LabourFactor;
import org.lagwright.takeoff.labour.LabourItem;
import org.lagwright.takeoff.labour.LabourNorms;
import org.lagwright.takeoff.labour.LabourTask;
import org.lagwright.takeoff.labour.Neighbours;
import org.lagwright.takeoff.labour.Norm;
import org.lagwright.takeoff.order.LaggedElement;
import org.lagwright.takeoff.order.OrderList;
import org.lagwright.takeoff.order.OrderMaker;
import org.lagwright.takeoff.thickness.ThicknessDecision;

/** Reckons the labour of all elements on lines, and says where hours are missing. */
final class LabourRun {

  private final LaggedElements lagged;
  private final OrderMaker orders;
  private final OrderList order;
  private final LabourBook book;
  private final Map<String, TakeoffLine> lines = new HashMap<>();
  private final Map<ElementKey, List<Finding>> missing = new HashMap<>();
  private final Map<Integer, Integer> heightsUnknown = new TreeMap<>();

  LabourRun(
      LaggedElements lagged,
      OrderMaker orders,
      OrderList order,
      LabourNorms norms,
      List<MepElement> elements,
      List<TakeoffLine> lines) {
    this.lagged = lagged;
    this.orders = orders;
    this.order = order;
    lines.forEach(line -> this.lines.put(line.id(), line));
    this.book = new LabourBook(norms, new Neighbours(elements, norms.pack().reachM()));
  }

  /** The element with its hours in the trace; a missing norm becomes a finding. */
  TakenElement withHours(TakenElement taken) {
    LabourTask task = lagged.find(taken).map(found -> task(taken, found)).orElse(null);
    if (task == null) {
      return taken;
    }
    LabourBook.Work work = book.add(task);
    ElementKey key = taken.element().key();
    if (work.heightUnknown()) {
      heightsUnknown.merge(key.model(), 1, Integer::sum);
    }
    for (String what : work.missing()) {
      missing
          .computeIfAbsent(key, k -> new ArrayList<>())
          .add(Finding.about(key, TakeoffFinding.LABOUR_NORM_MISSING, Effect.NONE, what));
    }
    return taken.withLabour(
        work.items().stream().mapToDouble(LabourItem::hours).sum(),
        () -> work.items().stream().map(LabourRun::step).toList());
  }

  private LabourTask task(TakenElement taken, LaggedElement found) {
    TakeoffLine line = Objects.requireNonNull(lines.get(found.lineId()));
    ThicknessDecision thickness = Objects.requireNonNull(taken.thickness());
    return new LabourTask(
        found,
        line.serviceName(),
        line.size(),
        thickness.layers(),
        orders.wantsJacket(found),
        order.hangers().getOrDefault(found.key(), 0.0));
  }

  /** All hours. */
  Labour labour() {
    return book.labour();
  }

  /** Findings about one element. */
  List<Finding> findings(ElementKey element) {
    return missing.getOrDefault(element, List.of());
  }

  /** Once for each file: how many elements have no height that a factor could go by. */
  List<Finding> findings() {
    List<Finding> findings = new ArrayList<>();
    heightsUnknown.forEach(
        (model, count) ->
            findings.add(
                Finding.ofFile(
                    model, TakeoffFinding.HEIGHT_UNKNOWN, Effect.NONE, String.valueOf(count))));
    return findings;
  }

  private static Trace.Step step(LabourItem item) {
    StringBuilder formula = new StringBuilder();
    formula.append(figure(item.quantity())).append(' ').append(item.unit());
    Norm equivalent = item.equivalent();
    if (equivalent != null) {
      formula.append(" x ").append(norm(equivalent));
    }
    if (item.perMetre() != 1) {
      formula.append(" x ").append(figure(item.perMetre()));
    }
    formula.append(" x ").append(norm(item.norm()));
    for (LabourFactor factor : item.factors()) {
      formula.append(" x ").append(factor.id()).append(' ').append(figure(factor.value()));
    }
    return new Trace.Computed("labour", figure(item.hours()) + " h", formula.toString());
  }

  private static String norm(Norm norm) {
    return norm.inWords() + " (" + norm.id() + ", " + norm.status().shown() + ")";
  }

  private static String figure(double value) {
    return String.format(Locale.ROOT, "%.3f", value);
  }
}
