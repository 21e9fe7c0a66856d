package org.lagwright.takeoff.compare;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.TreeMap;
import org.jspecify.annotations.Nullable;
import org.lagwright.ifc.model.Measured;
import org.lagwright.ifc.model.MepElement;
import org.lagwright.ifc.model.Point;
import org.lagwright.takeoff.TakenElement;
import org.lagwright.takeoff.Takeoff;
import org.lagwright.takeoff.TakeoffLine;
import org.lagwright.takeoff.measure.Size;
import org.lagwright.takeoff.price.Price;
import org.lagwright.takeoff.service.Classification;
import org.lagwright.takeoff.thickness.ThicknessDecision;

/**
 * Two revisions of a model, both taken off. Every element of either revision is in exactly one
 * change, so the differences of all changes add up to the difference of both takeoffs.
 *
 * @param changes in the order of the new revision, what was removed behind it
 * @param price the prices of both; null where the user gives no prices
 */
public record Comparison(List<ElementChange> changes, @Nullable PriceChange price) {

  /** A piece that lies further off was moved. */
  private static final double MOVED_M = 0.01;

  /** Lengths that differ by less are the same. */
  private static final double SAME_LENGTH_M = 0.001;

  private static final double SAME_THICKNESS_M = 0.0005;

  public Comparison {
    changes = List.copyOf(changes);
  }

  /** Compares two takeoffs; both should have been made with the same settings. */
  public static Comparison of(Takeoff before, Takeoff now) {
    Matching matching = new Matching(before.elements(), now.elements());
    Materials materials = new Materials(before, now);
    ElementMoney old = ElementMoney.of(before);
    ElementMoney young = ElementMoney.of(now);
    List<ElementChange> changes = new ArrayList<>();
    for (Matching.Pair pair : matching.pairs()) {
      changes.add(
          new ElementChange(
              pair.before(),
              pair.now(),
              old.of(pair.before()),
              young.of(pair.now()),
              changes(pair, materials)));
    }
    for (TakenElement added : matching.added()) {
      changes.add(new ElementChange(null, added, 0, young.of(added), Set.of(Change.ADDED)));
    }
    for (TakenElement removed : matching.removed()) {
      changes.add(new ElementChange(removed, null, old.of(removed), 0, Set.of(Change.REMOVED)));
    }
    Price priceBefore = before.price();
    Price priceNow = now.price();
    PriceChange price =
        priceBefore == null || priceNow == null
            ? null
            : new PriceChange(priceBefore, priceNow, old.ofTheJob(), young.ofTheJob());
    return new Comparison(changes, price);
  }

  /** Material families by line, of both revisions. */
  private record Materials(Map<String, String> before, Map<String, String> now) {
    Materials(Takeoff before, Takeoff now) {
      this(byLine(before), byLine(now));
    }

    private static Map<String, String> byLine(Takeoff takeoff) {
      Map<String, String> materials = new TreeMap<>();
      for (TakeoffLine line : takeoff.lines()) {
        materials.put(line.id(), line.materialId());
      }
      return materials;
    }

    boolean differ(TakenElement old, TakenElement young) {
      return old.lineId() != null
          && young.lineId() != null
          && !Objects.equals(before.get(old.lineId()), now.get(young.lineId()));
    }
  }

  private static Set<Change> changes(Matching.Pair pair, Materials materials) {
    TakenElement old = pair.before();
    TakenElement young = pair.now();
    Set<Change> changes = EnumSet.noneOf(Change.class);
    note(changes, Change.REISSUED, !pair.sameId());
    note(changes, Change.MOVED, isMoved(old.element(), young.element()));
    note(changes, Change.RESIZED, !size(old).equals(size(young)));
    note(changes, Change.LENGTH_CHANGED, differ(lengthM(old), lengthM(young), SAME_LENGTH_M));
    note(changes, Change.FORM_CHANGED, old.element().form() != young.element().form());
    note(changes, Change.RESERVICED, !service(old).equals(service(young)));
    note(
        changes,
        Change.THICKNESS_CHANGED,
        differ(thicknessM(old), thicknessM(young), SAME_THICKNESS_M));
    note(changes, Change.MATERIAL_CHANGED, materials.differ(old, young));
    note(changes, Change.SCOPE_CHANGED, (old.lineId() == null) != (young.lineId() == null));
    return changes;
  }

  private static void note(Set<Change> changes, Change change, boolean holds) {
    if (holds) {
      changes.add(change);
    }
  }

  private static boolean isMoved(MepElement old, MepElement young) {
    Point from = old.place().positionM();
    Point to = young.place().positionM();
    return from != null && to != null && from.distanceM(to) > MOVED_M;
  }

  private static String size(TakenElement taken) {
    return Size.find(taken.element()).map(Size::words).orElse("");
  }

  private static double lengthM(TakenElement taken) {
    Measured<Double> lengthM = taken.element().lengthM();
    return lengthM == null ? 0 : lengthM.value();
  }

  private static String service(TakenElement taken) {
    Classification service = taken.service();
    return service == null ? "" : service.serviceId();
  }

  private static double thicknessM(TakenElement taken) {
    ThicknessDecision thickness = taken.lineId() == null ? null : taken.thickness();
    return thickness == null ? 0 : thickness.totalM();
  }

  private static boolean differ(double one, double other, double tolerance) {
    return Math.abs(one - other) > tolerance;
  }

  /** What changed in a way that counts, without those that are as they were. */
  public List<ElementChange> changed() {
    return changes.stream().filter(change -> !change.changes().isEmpty()).toList();
  }

  /** What the elements that are as they were differ by: rounding, and goods shared by surface. */
  public Amount differenceOfUnchanged() {
    return changes.stream()
        .filter(change -> change.changes().isEmpty())
        .map(ElementChange::difference)
        .reduce(Amount.NONE, Amount::plus);
  }

  /** How many elements each change holds for; an element may count several times. */
  public Map<Change, Integer> counts() {
    Map<Change, Integer> counts = new EnumMap<>(Change.class);
    for (ElementChange change : changes) {
      change.changes().forEach(what -> counts.merge(what, 1, Integer::sum));
    }
    return counts;
  }

  /** The difference of all together. */
  public Amount difference() {
    return changes.stream().map(ElementChange::difference).reduce(Amount.NONE, Amount::plus);
  }

  /**
   * Amounts before and now by service in words; what changes its service leaves one and joins
   * another.
   */
  public Map<String, Amounts> byService() {
    Map<String, Amounts> sums = new TreeMap<>();
    for (ElementChange change : changes) {
      add(sums, change.before(), new Amounts(change.amountBefore(), Amount.NONE));
      add(sums, change.now(), new Amounts(Amount.NONE, change.amountNow()));
    }
    return sums;
  }

  /** What something amounted to before, and amounts to now. */
  public record Amounts(Amount before, Amount now) {
    /** Sum of two. */
    public Amounts plus(Amounts other) {
      return new Amounts(before.plus(other.before), now.plus(other.now));
    }
  }

  private static void add(
      Map<String, Amounts> sums, @Nullable TakenElement taken, Amounts amounts) {
    if (taken != null && taken.lineId() != null) {
      Classification service = taken.service();
      sums.merge(service == null ? "not known" : service.name(), amounts, Amounts::plus);
    }
  }
}
