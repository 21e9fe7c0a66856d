package org.lagwright.report.workbook;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.lagwright.ifc.model.ElementKey;
import org.lagwright.ifc.model.Finding;
import org.lagwright.ifc.model.MepElement;
import org.lagwright.report.Words;
import org.lagwright.takeoff.Takeoff;

/** The sheet {@code Findings}: each thing noticed, with its effect on the quantities. */
final class FindingsSheet {

  static final String NAME = "Findings";
  static final String SEVERITY = "Severity";
  static final String CODE = "Code";
  static final String EFFECT = "Effect on quantities";

  private final Takeoff takeoff;
  private final Map<ElementKey, MepElement> elements = new HashMap<>();

  FindingsSheet(Takeoff takeoff) {
    this.takeoff = takeoff;
    takeoff.elements().forEach(t -> elements.put(t.element().key(), t.element()));
  }

  /** The table, at its place. */
  Table<Finding> table() {
    return new Table<>(
        NAME,
        0,
        List.of(
            Column.text(SEVERITY, 10, f -> Words.severity(f.code().severity())),
            Column.text(CODE, 32, f -> f.code().name()),
            Column.text(EFFECT, 14, f -> Words.effect(f.effect())),
            Column.text("Model file", 40, f -> takeoff.models().get(f.model()).name()),
            Column.text("GlobalId", 28, f -> globalId(f)),
            Column.number("Step id", 9, Look.PLAIN, FindingsSheet::step),
            Column.text("Element name", 40, f -> name(f)),
            Column.wrapped("Message", 90, Finding::message)),
        takeoff.findings());
  }

  private @Nullable MepElement element(Finding finding) {
    return finding.element() == null ? null : elements.get(finding.element());
  }

  private @Nullable String globalId(Finding finding) {
    MepElement element = element(finding);
    return element == null ? null : element.globalId();
  }

  private @Nullable String name(Finding finding) {
    MepElement element = element(finding);
    return element == null ? null : element.name();
  }

  private static @Nullable Double step(Finding finding) {
    ElementKey key = finding.element();
    return key == null ? null : (double) key.step();
  }
}
