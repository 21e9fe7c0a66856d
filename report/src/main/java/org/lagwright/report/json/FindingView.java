package org.lagwright.report.json;

import org.jspecify.annotations.Nullable;
import org.lagwright.ifc.model.ElementKey;
import org.lagwright.ifc.model.Finding;

/** Something noticed. */
record FindingView(
    String code,
    String severity,
    String effect,
    int model,
    @Nullable String globalId,
    @Nullable Long step,
    String message) {

  /**
   * The view of one finding.
   *
   * @param globalId of the element concerned, null for findings about a file
   */
  static FindingView of(Finding finding, @Nullable String globalId) {
    ElementKey key = finding.element();
    return new FindingView(
        finding.code().name(),
        finding.code().severity().name(),
        finding.effect().name(),
        finding.model(),
        globalId,
        key == null ? null : key.step(),
        finding.message());
  }
}
