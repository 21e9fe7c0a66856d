package org.lagwright.report.json;

import org.jspecify.annotations.Nullable;
import org.lagwright.takeoff.verify.ElementCoverage;

/** What the model shows on one element against what is required. */
record CoverageView(
    String globalId,
    String service,
    String size,
    String location,
    String storey,
    String status,
    double share,
    @Nullable Double requiredM,
    @Nullable Double boughtM,
    @Nullable Double shownM,
    @Nullable String shownMaterial,
    double lengthM,
    double outerAreaM2,
    double missingAreaM2,
    String evidence) {

  static CoverageView of(ElementCoverage element) {
    return new CoverageView(
        element.globalId(),
        element.group().service(),
        element.group().size(),
        element.group().location(),
        element.group().storey(),
        element.status().label(),
        element.share(),
        finite(element.requiredM()),
        finite(element.boughtM()),
        element.shownM(),
        element.shownMaterial(),
        Finite.number(element.lengthM()),
        Finite.number(element.areaM2()),
        Finite.number(element.missingM2()),
        element.evidence());
  }

  private static @Nullable Double finite(double metres) {
    return Double.isFinite(metres) ? metres : null;
  }
}
