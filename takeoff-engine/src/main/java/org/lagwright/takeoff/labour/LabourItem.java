package org.lagwright.takeoff.labour;

import java.util.Comparator;
import java.util.List;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import org.lagwright.ifc.model.Form;
import org.lagwright.ifc.model.Kind;
import org.lagwright.takeoff.thickness.Layer;

/**
 * Equal work in one place: hours = quantity x equivalent x per metre x norm x factors.
 *
 * @param lineId line of the takeoff; lines are in the order of the services
 * @param size in words
 * @param layerNumber 1 for the innermost layer
 * @param quantity in that unit
 * @param unit {@code m}, {@code pcs} or {@code m2}
 * @param norm hours for a metre, square metre, cubic metre or piece
 * @param perMetre how much of the unit of the norm one metre is; 1 where the quantity has it
 *     already
 * @param equivalent straight work that one piece costs as much as; null where none is needed
 * @param factors all that hold, in the order of the pack
 * @param shares how the hours divide over the steps; null for jackets
 */
public record LabourItem(
    WorkArea area,
    String lineId,
    String serviceId,
    String serviceName,
    Kind kind,
    Form form,
    String size,
    int layerNumber,
    Layer layer,
    double quantity,
    String unit,
    Norm norm,
    double perMetre,
    @Nullable Norm equivalent,
    List<LabourFactor> factors,
    @Nullable StepShares shares) {

  static final Comparator<LabourItem> ORDER =
      Comparator.comparing(LabourItem::area)
          .thenComparing(LabourItem::lineId)
          .thenComparingDouble(LabourItem::perMetre)
          .thenComparingInt(LabourItem::layerNumber)
          .thenComparing(item -> item.norm().id())
          .thenComparingDouble(item -> item.layer().thicknessM())
          .thenComparing(LabourItem::factorsInWords);

  public LabourItem {
    factors = List.copyOf(factors);
    if (!(quantity > 0) || !(perMetre > 0)) {
      throw new IllegalArgumentException("no work: " + quantity + " " + unit + " x " + perMetre);
    }
  }

  /** Hours of all of it. */
  public double hours() {
    double hours = quantity * perMetre * norm.value() * factor();
    return equivalent == null ? hours : hours * equivalent.value();
  }

  /** Hours at one step of the trade. */
  public double hours(TradeStep step) {
    if (shares == null) {
      return step == TradeStep.JACKET ? hours() : 0;
    }
    return hours() * shares.share(step);
  }

  /** All factors together. */
  public double factor() {
    return factors.stream().mapToDouble(LabourFactor::value).reduce(1, (a, b) -> a * b);
  }

  /** The ids of the factors; empty where none holds. */
  public String factorsInWords() {
    return factors.stream().map(LabourFactor::id).collect(Collectors.joining(", "));
  }

  /** The same work with another quantity. */
  LabourItem with(double otherQuantity) {
    return with(otherQuantity, perMetre);
  }

  /** The same work with another quantity and measure. */
  LabourItem with(double otherQuantity, double otherPerMetre) {
    return new LabourItem(
        area,
        lineId,
        serviceId,
        serviceName,
        kind,
        form,
        size,
        layerNumber,
        layer,
        otherQuantity,
        unit,
        norm,
        otherPerMetre,
        equivalent,
        factors,
        shares);
  }
}
