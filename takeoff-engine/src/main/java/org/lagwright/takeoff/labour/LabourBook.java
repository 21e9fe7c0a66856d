package org.lagwright.takeoff.labour;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import org.lagwright.ifc.model.MepElement;
import org.lagwright.takeoff.fitting.Making.LayerMaking;
import org.lagwright.takeoff.measure.QuantityMeasurer;
import org.lagwright.takeoff.thickness.Layer;

/** Reckons the hours of each element and adds up what is equal. */
public final class LabourBook {

  private final LabourNorms norms;
  private final Neighbours neighbours;
  private final Map<LabourItem, Sum> sums = new LinkedHashMap<>();

  /** Quantity, and the same in the unit of the norm: sizes of one line may differ by noise. */
  private record Sum(double quantity, double measure) {

    Sum plus(Sum other) {
      return new Sum(quantity + other.quantity, measure + other.measure);
    }
  }

  /**
   * An empty book.
   *
   * @param neighbours of all elements of the models
   */
  public LabourBook(LabourNorms norms, Neighbours neighbours) {
    this.norms = norms;
    this.neighbours = neighbours;
  }

  /**
   * The work on one element.
   *
   * @param items one for each layer that has a norm
   * @param missing work without a norm, in words
   * @param heightUnknown true where the height above the floor is not known
   */
  public record Work(List<LabourItem> items, List<String> missing, boolean heightUnknown) {
    public Work {
      items = List.copyOf(items);
      missing = List.copyOf(missing);
    }
  }

  /** Reckons the work on one element and books it. */
  public Work add(LabourTask task) {
    List<LabourItem> items = new ArrayList<>();
    List<String> missing = new ArrayList<>();
    List<LabourFactor> factors = factors(task);
    double belowM = 0;
    for (int i = 0; i < task.layers().size(); i++) {
      Layer layer = task.layers().get(i);
      Optional<LabourItem> item = item(task, i, belowM, i == 0 ? factors : furtherLayer(factors));
      item.ifPresentOrElse(items::add, () -> missing.add(inWords(task, layer)));
      belowM += layer.thicknessM();
    }
    if (task.hangers() > 0) {
      hangers(task, factors).ifPresent(items::add);
    }
    if (task.jacket() && items.stream().noneMatch(item -> item.norm().withJacket())) {
      jacket(task, factors)
          .ifPresentOrElse(items::add, () -> missing.add("the jacket over " + task.size()));
    }
    for (LabourItem item : items) {
      Sum sum = new Sum(item.quantity(), item.quantity() * item.perMetre());
      sums.merge(item.with(1, 1), sum, Sum::plus);
    }
    return new Work(items, missing, task.element().place().heightAboveFloorM() == null);
  }

  /** Everything booked. */
  public Labour labour() {
    return new Labour(
        sums.entrySet().stream()
            .map(entry -> of(entry.getKey(), entry.getValue()))
            .sorted(LabourItem.ORDER)
            .toList(),
        norms);
  }

  private static LabourItem of(LabourItem equal, Sum sum) {
    return equal.with(sum.quantity(), sum.measure() / sum.quantity());
  }

  private List<LabourFactor> factors(LabourTask task) {
    Double heightM = task.element().place().heightAboveFloorM();
    int runs = neighbours.count(task.element().key());
    return Stream.of(
            Stream.ofNullable(
                heightM == null ? null : norms.pack().band(LabourFactor.HEIGHT, heightM)),
            Stream.ofNullable(norms.pack().band(LabourFactor.NEIGHBOURS, runs)),
            norms.pack().of(LabourFactor.LOCATION).stream()
                .filter(factor -> task.lagged().location().equals(factor.location())),
            norms.pack().of(LabourFactor.COLD).stream().filter(factor -> task.lagged().cold()),
            norms.pack().of(LabourFactor.ALWAYS).stream())
        .flatMap(stream -> stream)
        .toList();
  }

  private List<LabourFactor> furtherLayer(List<LabourFactor> factors) {
    return Stream.concat(factors.stream(), norms.pack().of(LabourFactor.LAYER).stream()).toList();
  }

  private Optional<LabourItem> item(
      LabourTask task, int index, double belowM, List<LabourFactor> factors) {
    Layer layer = task.layers().get(index);
    double sizeM = task.section().largestSideM();
    Optional<Norm> straight =
        norms.findStraight(
            layer.form().label(), task.duct(), layer.materialId(), sizeM, layer.thicknessM());
    MepElement element = task.element();
    if (QuantityMeasurer.isMeasuredInMetres(element)) {
      double lengthM = element.lengthM() == null ? 0 : element.lengthM().value();
      return straight
          .filter(norm -> lengthM > 0)
          .map(norm -> straightItem(task, index, norm, belowM, factors).with(lengthM));
    }
    return norms
        .findFitting(element.form(), task.duct(), layer.materialId(), sizeM, layer.thicknessM())
        .flatMap(fitting -> fittingItem(task, index, fitting, straight, belowM, factors));
  }

  private Optional<LabourItem> fittingItem(
      LabourTask task,
      int index,
      Norm fitting,
      Optional<Norm> straight,
      double belowM,
      List<LabourFactor> factors) {
    if (fitting.unit() == Norm.Unit.HOURS_PER_PIECE) {
      return Optional.of(item(task, index, fitting, "pcs", 1, null, factors));
    } else if (fitting.unit() == Norm.Unit.METRES_PER_PIECE) {
      return straight.map(
          norm -> {
            double perMetre = perMetre(task, norm, belowM, task.layers().get(index));
            return item(task, index, norm, "pcs", perMetre, fitting, factors);
          });
    }
    double areaM2 = task.lagged().making().layers().get(index).cover().outerAreaM2();
    return straight
        .filter(norm -> norm.unit() == Norm.Unit.HOURS_PER_M2 && areaM2 > 0)
        .map(norm -> item(task, index, norm, "m2", 1, fitting, factors).with(areaM2));
  }

  /** Work at hangers; where the straight work has no norm, they have none either. */
  private Optional<LabourItem> hangers(LabourTask task, List<LabourFactor> factors) {
    Layer layer = task.layers().get(0);
    double sizeM = task.section().largestSideM();
    Optional<Norm> straight =
        norms.findStraight(
            layer.form().label(), task.duct(), layer.materialId(), sizeM, layer.thicknessM());
    return norms
        .findStraight(NormTable.HANGER, task.duct(), layer.materialId(), sizeM, layer.thicknessM())
        .flatMap(hanger -> fittingItem(task, 0, hanger, straight, 0, factors))
        .map(item -> item.with(task.hangers()));
  }

  /** What the jacket over something else than a straight piece costs in jackets of straights. */
  private Optional<Norm> jacketFactor(LabourTask task, Layer outermost) {
    if (QuantityMeasurer.isMeasuredInMetres(task.element())) {
      return Optional.empty();
    }
    List<LayerMaking> made = task.lagged().making().layers();
    boolean box = made.get(made.size() - 1).method().isBox();
    return norms.findStraight(
        box ? NormTable.JACKET_BOX : NormTable.JACKET_FITTING,
        task.duct(),
        outermost.materialId(),
        task.section().largestSideM(),
        outermost.thicknessM());
  }

  /** The jacket over all layers. */
  private Optional<LabourItem> jacket(LabourTask task, List<LabourFactor> factors) {
    Layer outermost = task.layers().get(task.layers().size() - 1);
    double areaM2 = task.lagged().outerAreaM2();
    return norms
        .findStraight(
            NormTable.JACKET,
            task.duct(),
            outermost.materialId(),
            task.section().largestSideM(),
            outermost.thicknessM())
        .filter(norm -> norm.unit() == Norm.Unit.HOURS_PER_M2 && areaM2 > 0)
        .map(
            norm ->
                item(
                        task,
                        task.layers().size() - 1,
                        norm,
                        "m2",
                        1,
                        jacketFactor(task, outermost).orElse(null),
                        factors)
                    .with(areaM2));
  }

  private LabourItem straightItem(
      LabourTask task, int index, Norm norm, double belowM, List<LabourFactor> factors) {
    double perMetre = perMetre(task, norm, belowM, task.layers().get(index));
    return item(task, index, norm, "m", perMetre, null, factors);
  }

  private static double perMetre(LabourTask task, Norm norm, double belowM, Layer layer) {
    return norm.perMetre(task.section(), belowM, layer.thicknessM());
  }

  private LabourItem item(
      LabourTask task,
      int index,
      Norm norm,
      String unit,
      double perMetre,
      @Nullable Norm equivalent,
      List<LabourFactor> factors) {
    MepElement element = task.element();
    Layer layer = task.layers().get(index);
    boolean straight = QuantityMeasurer.isMeasuredInMetres(element);
    return new LabourItem(
        WorkArea.of(element.place()),
        task.lagged().lineId(),
        task.lagged().serviceId(),
        task.serviceName(),
        element.kind(),
        element.form(),
        task.size(),
        index + 1,
        layer,
        1,
        unit,
        norm,
        perMetre,
        equivalent,
        factors,
        norm.item().equals(NormTable.JACKET)
            ? null
            : norms
                .pack()
                .sharesOf(
                    straight && equivalent == null ? layer.form().label() : NormTable.FITTING));
  }

  private static String inWords(LabourTask task, Layer layer) {
    String form = task.element().form().label();
    String what = QuantityMeasurer.isMeasuredInMetres(task.element()) ? "straight" : form;
    return what
        + " "
        + task.size()
        + ", "
        + Math.round(layer.thicknessM() * 1000)
        + " mm "
        + layer.form().label()
        + " of "
        + layer.materialId();
  }
}
