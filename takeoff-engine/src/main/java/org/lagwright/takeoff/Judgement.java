package org.lagwright.takeoff;

import java.util.List;
import org.jspecify.annotations.Nullable;
import org.lagwright.ifc.model.Finding;
import org.lagwright.ifc.model.MepElement;
import org.lagwright.takeoff.fitting.Making;
import org.lagwright.takeoff.scope.ScopeDecision;
import org.lagwright.takeoff.service.Classification;
import org.lagwright.takeoff.thickness.ThicknessDecision;

/**
 * Everything decided about one element, before it is put on a line.
 *
 * @param making how it is covered, null unless it goes on a line
 * @param lineKey the line it belongs to, null unless it goes on one
 * @param leftOutWith code of the finding that leaves it out, null unless left out
 */
record Judgement(
    MepElement element,
    @Nullable Classification service,
    ScopeDecision scope,
    @Nullable ThicknessDecision thickness,
    @Nullable Making making,
    Quantities quantities,
    @Nullable LineKey lineKey,
    @Nullable TakeoffFinding leftOutWith,
    List<Finding> findings,
    Trace trace) {

  Judgement {
    findings = List.copyOf(findings);
  }

  TakenElement taken(@Nullable String lineId) {
    return new TakenElement(
        element,
        service,
        scope,
        thickness,
        making,
        quantities,
        0,
        lineId,
        leftOutWith == null ? null : leftOutWith.name(),
        trace);
  }
}
