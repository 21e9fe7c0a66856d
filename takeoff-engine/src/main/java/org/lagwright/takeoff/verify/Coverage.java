package org.lagwright.takeoff.verify;

import java.util.Comparator;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import org.lagwright.ifc.model.ExistingInsulation;
import org.lagwright.ifc.model.Measured;
import org.lagwright.ifc.model.MepElement;
import org.lagwright.takeoff.TakenElement;
import org.lagwright.takeoff.Takeoff;
import org.lagwright.takeoff.TakeoffLine;
import org.lagwright.takeoff.measure.QuantityMeasurer;
import org.lagwright.takeoff.measure.Size;
import org.lagwright.takeoff.pack.PackInfo;
import org.lagwright.takeoff.service.Classification;
import org.lagwright.takeoff.thickness.ThicknessDecision;

/**
 * Required insulation against what the models show, element by element. Every element on a line is
 * in it, and every one that was left out: what is required there is not known, and that is said.
 *
 * @param elements in the order of the takeoff
 */
public record Coverage(List<ElementCoverage> elements) {

  /** Less is drawing accuracy; common practice, no source. */
  static final double THIN_TOLERANCE_M = 0.001;

  /** More than the next stock wall would be; common practice, no source. */
  static final double THICK_TOLERANCE_M = 0.005;

  /** What is insulated along less of its length is bare in part. */
  private static final double WHOLE_SHARE = 0.995;

  private static final MaterialWords MATERIALS = new MaterialWords();

  public Coverage {
    elements = List.copyOf(elements);
  }

  /** Compares what a takeoff requires with what its models show. */
  public static Coverage of(Takeoff takeoff) {
    Map<String, String> materials =
        takeoff.lines().stream()
            .collect(Collectors.toMap(TakeoffLine::id, TakeoffLine::materialId));
    return new Coverage(
        takeoff.elements().stream()
            .filter(taken -> taken.lineId() != null || taken.leftOutWith() != null)
            .map(taken -> of(taken, materials))
            .toList());
  }

  /** The words by which materials are told apart. */
  public static PackInfo materialWords() {
    return MATERIALS.info();
  }

  private static ElementCoverage of(TakenElement taken, Map<String, String> materials) {
    MepElement element = taken.element();
    ThicknessDecision decision = taken.lineId() == null ? null : taken.thickness();
    ExistingInsulation shown = element.existingInsulation();
    String wanted = materials.getOrDefault(Objects.requireNonNullElse(taken.lineId(), ""), "");
    double share = shown == null ? 0 : shown.share() < WHOLE_SHARE ? shown.share() : 1;
    return new ElementCoverage(
        element.key(),
        element.globalId(),
        element.name(),
        group(taken),
        ofShown(decision, shown, wanted),
        share,
        decision == null ? Double.NaN : decision.requiredM(),
        decision == null ? Double.NaN : decision.totalM(),
        shown == null ? null : shown.thicknessM(),
        wanted,
        shown == null ? null : shown.material(),
        lengthM(taken),
        taken.quantities().outerAreaM2(),
        shown == null ? "" : shown.evidence().toString());
  }

  /** Of straight pieces that were left out the length that was read counts all the same. */
  private static double lengthM(TakenElement taken) {
    Measured<Double> readM = taken.element().lengthM();
    boolean leftOut = taken.lineId() == null;
    return leftOut && readM != null && QuantityMeasurer.isMeasuredInMetres(taken.element())
        ? readM.value()
        : taken.quantities().lengthM();
  }

  private static CoverageGroup group(TakenElement taken) {
    Classification service = taken.service();
    String storey = taken.element().place().storey();
    return new CoverageGroup(
        service == null || !service.isKnown() ? "not known" : service.name(),
        Size.find(taken.element()).map(Size::words).orElse(""),
        taken.thickness() == null ? "" : taken.thickness().location(),
        storey == null ? "" : storey);
  }

  private static CoverageStatus ofShown(
      @Nullable ThicknessDecision decision, @Nullable ExistingInsulation shown, String wanted) {
    if (decision == null) {
      return CoverageStatus.UNKNOWN;
    }
    if (shown == null) {
      return CoverageStatus.BARE;
    }
    Double shownM = shown.thicknessM();
    if (shownM == null) {
      return CoverageStatus.UNKNOWN;
    }
    if (shownM < decision.requiredM() - THIN_TOLERANCE_M) {
      return CoverageStatus.TOO_THIN;
    }
    if (isOtherMaterial(shown.material(), wanted)) {
      return CoverageStatus.WRONG_MATERIAL;
    }
    return shownM > decision.totalM() + THICK_TOLERANCE_M
        ? CoverageStatus.TOO_THICK
        : CoverageStatus.COVERED;
  }

  /** Names whose words are not known say nothing. */
  private static boolean isOtherMaterial(@Nullable String shown, String wanted) {
    Set<String> families = shown == null ? Set.<String>of() : MATERIALS.families(shown);
    return !families.isEmpty() && !families.contains(wanted);
  }

  /** Sums by status; what is insulated in part counts as covered there and as bare elsewhere. */
  public Map<CoverageStatus, CoverageSum> byStatus() {
    return byStatus(elements);
  }

  /** Like {@link #byStatus()}, of some of the elements; every status has a sum. */
  public static Map<CoverageStatus, CoverageSum> byStatus(List<ElementCoverage> some) {
    Map<CoverageStatus, CoverageSum> sums = new EnumMap<>(CoverageStatus.class);
    for (CoverageStatus status : CoverageStatus.values()) {
      sums.put(status, CoverageSum.NONE);
    }
    for (ElementCoverage element : some) {
      double bare = 1 - element.share();
      sums.merge(element.status(), new CoverageSum(1, 0, 0), CoverageSum::plus);
      if (element.ofShown() == CoverageStatus.UNKNOWN) {
        sums.merge(element.ofShown(), part(element, 1), CoverageSum::plus);
      } else {
        sums.merge(element.ofShown(), part(element, element.share()), CoverageSum::plus);
        sums.merge(CoverageStatus.BARE, part(element, bare), CoverageSum::plus);
      }
    }
    return sums;
  }

  private static CoverageSum part(ElementCoverage element, double share) {
    return new CoverageSum(0, share * element.lengthM(), share * element.areaM2());
  }

  /**
   * How many elements have no outer surface that is known; shares of the surface are of the rest.
   */
  public long withoutArea() {
    return elements.stream().filter(element -> !(element.areaM2() > 0)).count();
  }

  /**
   * The smaller of two shares that are covered, or thicker than needed: of the elements and of
   * their outer surface as far as it is known; per cent, 100 where there is nothing to cover.
   */
  public double coveredPct() {
    CoverageSum all = sum(elements);
    CoverageSum covered = covered(elements);
    return Math.min(
        percent(covered.elements(), all.elements()), percent(covered.areaM2(), all.areaM2()));
  }

  /** Everything together. */
  public static CoverageSum sum(List<ElementCoverage> some) {
    return byStatus(some).values().stream().reduce(CoverageSum.NONE, CoverageSum::plus);
  }

  /** What is covered, or thicker than needed. */
  public static CoverageSum covered(List<ElementCoverage> some) {
    Map<CoverageStatus, CoverageSum> sums = byStatus(some);
    return sums.getOrDefault(CoverageStatus.COVERED, CoverageSum.NONE)
        .plus(sums.getOrDefault(CoverageStatus.TOO_THICK, CoverageSum.NONE));
  }

  private static double percent(double part, double whole) {
    return whole == 0 ? 100 : 100 * part / whole;
  }

  /** Elements that miss most insulation, the worst first; what is covered is not among them. */
  public List<ElementCoverage> worst() {
    Stream<ElementCoverage> missing = elements.stream().filter(e -> e.missingM2() > 0);
    return missing
        .sorted(
            Comparator.comparingDouble(ElementCoverage::missingM2)
                .reversed()
                .thenComparing(ElementCoverage::key))
        .toList();
  }
}
