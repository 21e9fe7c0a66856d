package org.lagwright.takeoff;

import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;
import org.jspecify.annotations.Nullable;
import org.lagwright.ifc.model.MepElement;
import org.lagwright.takeoff.fitting.Making;
import org.lagwright.takeoff.scope.ScopeDecision;
import org.lagwright.takeoff.service.Classification;
import org.lagwright.takeoff.thickness.ThicknessDecision;

/**
 * One element of the model with everything the takeoff decided about it.
 *
 * @param element what was read
 * @param service which service, with votes; null for elements that carry none (trays, proxies)
 * @param scope in, out or ask, with the reason
 * @param thickness the demands and what is bought; of a flange under the box of another element
 *     those of that element; null unless in scope and measurable
 * @param making how it is covered, with its pieces; null unless on a line
 * @param quantities what it contributes; {@link Quantities#NONE} unless on a line
 * @param labourHours hours of work on it; 0 unless on a line whose norms are known
 * @param lineId the line it stands on; null unless on a line
 * @param leftOutWith code of the finding that left it out; null unless left out
 * @param trace how each number came about
 */
public record TakenElement(
    MepElement element,
    @Nullable Classification service,
    ScopeDecision scope,
    @Nullable ThicknessDecision thickness,
    @Nullable Making making,
    Quantities quantities,
    double labourHours,
    @Nullable String lineId,
    @Nullable String leftOutWith,
    Trace trace) {

  /** The line it stands on, if any. */
  public Optional<String> findLineId() {
    return Optional.ofNullable(lineId);
  }

  /** True for a flange that lies under the box of another element, and is counted there. */
  public boolean isUnderBox() {
    return scope.rule().equals(SharedBoxes.RULE);
  }

  /** The same with its hours, and how they were reckoned. */
  TakenElement withLabour(double hours, Supplier<List<Trace.Step>> steps) {
    return new TakenElement(
        element,
        service,
        scope,
        thickness,
        making,
        quantities,
        hours,
        lineId,
        leftOutWith,
        trace.plus(steps));
  }
}
