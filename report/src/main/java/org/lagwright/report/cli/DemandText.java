package org.lagwright.report.cli;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.lagwright.ifc.model.Form;
import org.lagwright.ifc.model.MepElement;
import org.lagwright.ifc.model.Section;
import org.lagwright.report.Words;
import org.lagwright.takeoff.TakenElement;
import org.lagwright.takeoff.Trace.Step;
import org.lagwright.takeoff.measure.QuantityMeasurer;
import org.lagwright.takeoff.measure.Size;
import org.lagwright.takeoff.thickness.Demand;
import org.lagwright.takeoff.thickness.Proof;
import org.lagwright.takeoff.thickness.ThicknessDecision;

/** Demands with all their figures, and the formulas that lead from them to the results. */
final class DemandText {

  private static final String BELOW = "      ";

  private DemandText() {}

  /** Position of the first step about a demand; where there is none, behind the last step. */
  static int firstOf(List<Step> steps) {
    for (int i = 0; i < steps.size(); i++) {
      if (isDemand(steps.get(i))) {
        return i;
      }
    }
    return steps.size();
  }

  /** Position behind the last step about a demand; where there is none, behind the last step. */
  static int lastOf(List<Step> steps) {
    for (int i = steps.size(); i > 0; i--) {
      if (isDemand(steps.get(i - 1))) {
        return i;
      }
    }
    return steps.size();
  }

  /** Steps about demands repeat, in one line each, what {@link #lines} shows. */
  private static boolean isDemand(Step step) {
    for (Demand.Kind kind : Demand.Kind.values()) {
      if (step.what().startsWith(kind.label() + " demand")) {
        return true;
      }
    }
    return false;
  }

  /** Each demand: result, source, every figure, the formula. */
  static List<String> lines(MepElement element, ThicknessDecision thickness) {
    List<String> lines = new ArrayList<>();
    for (Demand demand : thickness.demands()) {
      String governs = demand.equals(thickness.governing()) ? ", governs" : "";
      lines.add("  " + Words.demand(demand.kind()) + ": " + needed(demand) + governs);
      lines.addAll(Wrapped.lines(BELOW + "rule    ", demand.rule()));
      lines.addAll(Wrapped.lines(BELOW + "source  ", demand.source()));
      formula(element, demand).ifPresent(f -> lines.addAll(Wrapped.lines(BELOW + "check   ", f)));
      TextTable table = new TextTable(BELOW + "  ", "ll").wrapped();
      demand.figures().forEach(table::row);
      lines.addAll(table.lines());
    }
    String layers = thickness.layers().isEmpty() ? "nothing" : thickness.layersInWords();
    lines.add("  bought: " + layers);
    Proof proof = thickness.proof();
    if (proof != null) {
      lines.addAll(ProofText.lines(BELOW, proof));
    }
    return lines;
  }

  private static String needed(Demand demand) {
    return demand.isReachable()
        ? Words.millimetres(demand.thicknessM()) + " mm"
        : "no thickness is enough";
  }

  /** How the figures lead to the thickness, in their own names. */
  private static Optional<String> formula(MepElement element, Demand demand) {
    if (demand.kind() != Demand.Kind.CONDENSATION || !(demand.thicknessM() > 0)) {
      return Optional.empty();
    }
    return Size.findDecidingSection(element).map(DemandText::balance);
  }

  private static String balance(Section section) {
    String heat = "coefficient x (air - lowest surface) x ";
    String through = " = conductivity x (lowest surface - medium)";
    return section instanceof Section.Round
        ? heat + "D/2 x ln(D/d)" + through + ", d bare, D = d + 2 x thickness needed"
        : heat + "thickness needed" + through + ", on the side that needs most";
  }

  /** How outer area and volume follow from section, thickness bought and centre line. */
  static List<String> outline(TakenElement taken) {
    ThicknessDecision thickness = taken.thickness();
    if (taken.lineId() == null || thickness == null || taken.quantities().outerAreaM2() == 0) {
      return List.of();
    }
    if (taken.making() != null
        && QuantityMeasurer.isMeasuredByPieces(taken.element(), taken.making())) {
      return List.of();
    }
    List<String> lines = new ArrayList<>();
    String t = "; t = " + Words.millimetres(thickness.totalM()) + " mm";
    for (Section section : measuredRound(taken.element())) {
      lines.addAll(Wrapped.lines(BELOW + "check   ", outline(section) + t));
    }
    if (changesSection(taken.element())) {
      lines.add(BELOW + "        of the two ends the mean counts");
    }
    return lines;
  }

  private static List<Section> measuredRound(MepElement element) {
    return changesSection(element)
        ? element.ends()
        : Size.findDecidingSection(element).stream().toList();
  }

  private static boolean changesSection(MepElement element) {
    boolean changes = element.form() == Form.REDUCER || element.form() == Form.TRANSITION;
    return changes && element.ends().size() == 2;
  }

  private static String outline(Section section) {
    if (section instanceof Section.Rectangular) {
      return "outer girth P + 8 t, cross-section P t + 4 t^2, " + girth(section);
    }
    return "outer girth P + 2 pi t, cross-section P t + pi t^2, " + girth(section);
  }

  private static String girth(Section section) {
    return "P = " + Words.millimetres(section.perimeterM()) + " mm round " + Words.section(section);
  }
}
