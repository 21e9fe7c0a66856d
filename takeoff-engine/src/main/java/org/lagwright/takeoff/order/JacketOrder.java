package org.lagwright.takeoff.order;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import org.lagwright.ifc.model.ElementKey;
import org.lagwright.takeoff.measure.Envelope;

/** Jackets where the settings ask for one, with laps, bands and fixings. */
final class JacketOrder {

  private final OrderPack figures;
  private final List<JacketRule> rules;
  private final Map<String, Sums> byJacket = new TreeMap<>();

  private static final class Sums {
    final Tally area = new Tally();
    final Tally bands = new Tally();
    final Tally fixings = new Tally();
  }

  JacketOrder(OrderPack figures, List<JacketRule> rules) {
    this.figures = figures;
    this.rules = List.copyOf(rules);
  }

  /** The id of the jacket that an element gets, empty where it gets none. */
  static Optional<String> find(LaggedElement element, List<JacketRule> rules) {
    return JacketRule.find(rules, element.location(), element.serviceId());
  }

  void add(LaggedElement element) {
    Optional<String> wanted = find(element, rules);
    if (wanted.isEmpty()) {
      return;
    }
    OrderPack.Jacket jacket = figures.jacket(wanted.get());
    Sums sums = byJacket.computeIfAbsent(jacket.id(), k -> new Sums());
    double girthM = Envelope.around(element.section(), element.thicknessM()).outerPerimeterM();
    double lapFactor = Consumption.lapFactor(girthM, jacket.lapMm() / 1000, jacket.courseM());
    boolean straight = element.element().kind().isSegment();
    double allowance =
        figures.share(straight ? "jacketStraightAllowancePct" : "jacketFittingAllowancePct");
    sums.area.add(element.outerAreaM2() * lapFactor, allowance, element.key());
    addBands(jacket, sums, element.key(), element.outerAreaM2() / girthM, girthM);
    addFixings(jacket, sums, element.key(), element.outerAreaM2() / girthM, girthM);
  }

  /** One at each end and between them at the spacing. */
  private void addBands(
      OrderPack.Jacket jacket, Sums sums, ElementKey key, double lengthM, double girthM) {
    if (jacket.bandSpacingMm() != null && lengthM > 0) {
      double bands = Math.ceil(lengthM / (jacket.bandSpacingMm() / 1000) - 1e-9) + 1;
      double eachM = girthM + figures.metres("bandLapMm");
      sums.bands.add(bands * eachM, figures.share("bandAllowancePct"), key);
    }
  }

  /** On the seam, and round each joint of two sheets. */
  private void addFixings(
      OrderPack.Jacket jacket, Sums sums, ElementKey key, double lengthM, double girthM) {
    Double spacingMm = jacket.fixingSpacingMm();
    Double fromMm = jacket.fixingFromMm();
    boolean wide = fromMm != null && girthM / Math.PI * 1000 >= fromMm;
    if (spacingMm != null && wide && lengthM > 0) {
      double spacingM = spacingMm / 1000;
      double onSeam = Math.ceil(lengthM / spacingM - 1e-9);
      double joints = Math.ceil(lengthM / jacket.courseM() - 1e-9);
      double fixings = onSeam + joints * Math.ceil(girthM / spacingM - 1e-9);
      sums.fixings.add(fixings, figures.share("fixingAllowancePct"), key);
    }
  }

  void putOn(ItemBook book) {
    List<Runnable> later = new ArrayList<>();
    byJacket.forEach(
        (id, sums) -> {
          OrderPack.Jacket jacket = figures.jacket(id);
          book.add(sheet(jacket), sums.area);
          later.add(() -> book.add(bands(jacket), sums.bands));
          later.add(() -> book.add(fixings(jacket), sums.fixings));
        });
    later.forEach(Runnable::run);
  }

  private Supply sheet(OrderPack.Jacket jacket) {
    SheetSize size = new SheetSize("piece", jacket.soldWidthM(), jacket.soldLengthM());
    return new Supply(Goods.JACKET, jacket.name(), "m2")
        .packed(new PackSize(size.inWords(), size.areaM2()))
        .by(
            "outer area with laps of "
                + ItemBook.plain(jacket.lapMm())
                + " mm on the girth and on each "
                + ItemBook.plain(jacket.courseM())
                + " m of length")
        .from(jacket.source(), jacket.status())
        .figures(figures, "jacketStraightAllowancePct", "jacketFittingAllowancePct");
  }

  private Supply bands(OrderPack.Jacket jacket) {
    return new Supply(Goods.BAND, "bands for " + jacket.name(), "m")
        .pack("roll of %s m", figures.number("bandRollM"), 1)
        .by(
            "a band each "
                + ItemBook.plain(jacket.bandSpacingMm() == null ? 0 : jacket.bandSpacingMm())
                + " mm and one more for each piece, {bandLapMm} mm longer than the girth")
        .from(jacket.source(), jacket.status())
        .figures(figures, "bandLapMm", "bandAllowancePct", "bandRollM");
  }

  private Supply fixings(OrderPack.Jacket jacket) {
    return new Supply(Goods.FIXING, "screws or rivets for " + jacket.name(), "pcs")
        .pack("box of %s", figures.number("fixingBox"), 1)
        .by(
            "one each "
                + ItemBook.plain(jacket.fixingSpacingMm() == null ? 0 : jacket.fixingSpacingMm())
                + " mm of seams and of joints of sheets")
        .from(jacket.source(), jacket.status())
        .figures(figures, "fixingAllowancePct", "fixingBox");
  }
}
