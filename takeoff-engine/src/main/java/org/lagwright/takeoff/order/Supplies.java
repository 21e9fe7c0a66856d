package org.lagwright.takeoff.order;

import java.util.ArrayList;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import org.lagwright.ifc.model.ElementKey;
import org.lagwright.ifc.model.Port;
import org.lagwright.ifc.model.Section;
import org.lagwright.takeoff.fitting.Making;
import org.lagwright.takeoff.fitting.Making.LayerMaking;
import org.lagwright.takeoff.fitting.Piece;
import org.lagwright.takeoff.material.MaterialPack;
import org.lagwright.takeoff.thickness.Layer.LayerForm;

/**
 * What closes and holds the insulation: adhesive, cleaner, tape, sealant, binding wire, pins.
 *
 * <p>Adhesive by coated faces and glued areas; tape over the joints of the outermost layer where
 * they are glued or the service is cold; sealant round ends of cold pipes that meet nothing
 * insulated; wire round rigid sections; pins on wide sides of ducts under fibrous sheet.
 */
final class Supplies {

  private final OrderPack figures;
  private final MaterialPack materials;
  private final SoldSizes sold;
  private final SheetOrder sheets;
  private final Set<ElementKey> insulated;
  private final Map<String, Tally> faces = new TreeMap<>();
  private final Map<String, Tally> bonded = new TreeMap<>();
  private final Map<String, Tally> tape = new TreeMap<>();
  private final Tally sealant = new Tally();
  private final Tally wire = new Tally();
  private final Tally pins = new Tally();
  private final Map<LayerMaking, Joints> known = new IdentityHashMap<>();

  Supplies(
      OrderPack figures,
      MaterialPack materials,
      SoldSizes sold,
      SheetOrder sheets,
      Set<ElementKey> insulated) {
    this.figures = figures;
    this.materials = materials;
    this.sold = sold;
    this.sheets = sheets;
    this.insulated = insulated;
  }

  void add(LaggedElement element) {
    List<LayerMaking> layers = element.making().layers();
    for (LayerMaking layer : layers) {
      if (!layer.cover().pieces().isEmpty()) {
        boolean outermost = layer == layers.get(layers.size() - 1);
        addLayer(element, layer, outermost);
      }
    }
    addSealant(element);
  }

  private void addLayer(LaggedElement element, LayerMaking layer, boolean outermost) {
    List<Piece> pieces = layer.cover().pieces();
    String material = pieces.get(0).layer().materialId();
    Joints joints = known.computeIfAbsent(layer, this::joints);
    boolean glued = layer.bonding() != Making.Bonding.NONE;
    if (glued) {
      tally(faces, material).add(joints.faceM2(), adhesiveShare(), element.key());
      tally(bonded, material).add(layer.bondedAreaM2(), adhesiveShare(), element.key());
    }
    if (outermost && (glued || element.cold())) {
      double lengthM =
          joints.jointM()
              + joints.joints() * figures.metres("tapeLapMm")
              + joints.seamM() * figures.share("tapeSeamPct");
      tally(tape, material).add(lengthM, figures.share("tapeAllowancePct"), element.key());
    }
    wire.add(wireM(pieces), figures.share("wireAllowancePct"), element.key());
    if (outermost && !materials.family(material).closedCell()) {
      double areaM2 = layer.cover().outerAreaM2() * wideShare(element.section());
      double number = Math.ceil(areaM2 * figures.number("pinsPerM2"));
      pins.add(number, figures.share("pinAllowancePct"), element.key());
    }
  }

  private double adhesiveShare() {
    return figures.share("adhesiveAllowancePct");
  }

  private static Tally tally(Map<String, Tally> byMaterial, String material) {
    return byMaterial.computeIfAbsent(material, k -> new Tally());
  }

  private Joints joints(LayerMaking layer) {
    Joints sum = Joints.NONE;
    for (Piece piece : layer.cover().pieces()) {
      sum = sum.plus(Joints.of(piece, layer.method(), sold.cuts(piece, sheets::around)));
    }
    return sum;
  }

  private double wireM(List<Piece> pieces) {
    double lengthM = 0;
    for (Piece piece : pieces) {
      if (piece.layer().form() == LayerForm.SECTION) {
        double wires = Math.ceil(piece.tubeLengthM() / figures.metres("wireSpacingMm") - 1e-9);
        double eachM = Math.PI * piece.outsideDiameterM() + figures.metres("wireTwistMm");
        lengthM += piece.count() * wires * eachM;
      }
    }
    return lengthM;
  }

  /** Part of the girth of a duct whose sides are wide enough for pins. */
  private double wideShare(Section section) {
    if (!(section instanceof Section.Rectangular r)) {
      return 0;
    }
    double fromM = figures.metres("pinSideAboveMm");
    double wideM = (r.widthM() > fromM ? r.widthM() : 0) + (r.heightM() > fromM ? r.heightM() : 0);
    return wideM / (r.widthM() + r.heightM());
  }

  private void addSealant(LaggedElement element) {
    if (!element.cold() || element.duct()) {
      return;
    }
    long ends = element.element().ports().stream().filter(this::isFree).count();
    double ringM = Math.PI * element.section().largestSideM();
    double litres = 1000 * ends * ringM * Consumption.beadM3PerM(figures.metres("sealantBeadMm"));
    sealant.add(litres, figures.share("sealantAllowancePct"), element.key());
  }

  private boolean isFree(Port port) {
    return port.connectedTo() == null || !insulated.contains(port.connectedTo());
  }

  void putOn(ItemBook book) {
    double adhesiveL = putAdhesive(book);
    putCleaner(book, adhesiveL);
    tape.forEach(
        (material, tally) ->
            book.add(
                new Supply(Goods.TAPE, "joint tape for " + name(material), "m")
                    .of(material)
                    .pack("roll of %s m", figures.number("tapeRollM"), 1)
                    .by(
                        "joints across with a lap of {tapeLapMm} mm each, and seams, of the outermost layer")
                    .figures(figures, "tapeLapMm", "tapeSeamPct", "tapeAllowancePct", "tapeRollM"),
                tally));
    book.add(
        new Supply(Goods.SEALANT, "sealant round free ends of cold pipes", "l")
            .pack("cartridge of %s ml", figures.number("sealantCartridgeMl"), 0.001)
            .by("bead of {sealantBeadMm} mm round each end that meets nothing insulated")
            .figures(figures, "sealantBeadMm", "sealantAllowancePct", "sealantCartridgeMl"),
        sealant);
    book.add(
        new Supply(Goods.WIRE, "binding wire round rigid sections", "m")
            .pack("roll of %s m", figures.number("wireRollM"), 1)
            .by("a wire each {wireSpacingMm} mm, {wireTwistMm} mm longer than the girth")
            .figures(figures, "wireSpacingMm", "wireTwistMm", "wireAllowancePct", "wireRollM"),
        wire);
    book.add(
        new Supply(Goods.PIN, "pins on ducts under fibrous sheet", "pcs")
            .pack("box of %s", figures.number("pinBox"), 1)
            .by("{pinsPerM2} a square metre on sides wider than {pinSideAboveMm} mm")
            .figures(figures, "pinsPerM2", "pinSideAboveMm", "pinAllowancePct", "pinBox"),
        pins);
  }

  private String name(String material) {
    return materials.family(material).name();
  }

  private double putAdhesive(ItemBook book) {
    double total = 0;
    List<String> all = new ArrayList<>(faces.keySet());
    for (String material : all) {
      Tally face = tally(faces, material);
      Tally bond = tally(bonded, material);
      Tally litres = new Tally();
      double share = adhesiveShare();
      double faceL = Consumption.adhesiveL(face.net(), figures.number("adhesiveFaceM2PerL"));
      double bondL = Consumption.adhesiveL(bond.net(), figures.number("adhesiveBondM2PerL"));
      litres.addAll(faceL + bondL, share, face.elements());
      litres.addAll(0, share, bond.elements());
      total += litres.net();
      String rule =
          "coated faces "
              + ItemBook.plain(face.net())
              + " m2 at {adhesiveFaceM2PerL} m2/l, glued areas "
              + ItemBook.plain(bond.net())
              + " m2 at {adhesiveBondM2PerL} m2/l";
      book.add(
          new Supply(Goods.ADHESIVE, "contact adhesive for " + name(material), "l")
              .of(material)
              .pack("tin of %s l", figures.number("adhesiveTinL"), 1)
              .by(rule)
              .figures(
                  figures,
                  "adhesiveFaceM2PerL",
                  "adhesiveBondM2PerL",
                  "adhesiveAllowancePct",
                  "adhesiveTinL"),
          litres);
    }
    return total;
  }

  private void putCleaner(ItemBook book, double adhesiveL) {
    Tally litres = new Tally();
    double share = figures.share("cleanerAllowancePct");
    litres.addAll(adhesiveL * figures.share("cleanerPct"), share, Set.of());
    faces.values().forEach(tally -> litres.addAll(0, share, tally.elements()));
    book.add(
        new Supply(Goods.CLEANER, "cleaner for faces and tools", "l")
            .pack("tin of %s l", figures.number("cleanerTinL"), 1)
            .by("{cleanerPct} % of the adhesive")
            .figures(figures, "cleanerPct", "cleanerAllowancePct", "cleanerTinL"),
        litres);
  }
}
