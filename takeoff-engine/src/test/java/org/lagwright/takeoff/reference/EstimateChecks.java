package org.lagwright.takeoff.reference;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.function.ToDoubleFunction;
import org.lagwright.ifc.model.Form;
import org.lagwright.ifc.model.Kind;
import org.lagwright.ifc.model.MepElement;
import org.lagwright.ifc.model.Section;
import org.lagwright.takeoff.TestElement;
import org.lagwright.takeoff.fitting.Making;
import org.lagwright.takeoff.fitting.MakingChooser;
import org.lagwright.takeoff.fitting.MakingPack;
import org.lagwright.takeoff.labour.LabourBook;
import org.lagwright.takeoff.labour.LabourNorms;
import org.lagwright.takeoff.labour.LabourTask;
import org.lagwright.takeoff.labour.Neighbours;
import org.lagwright.takeoff.measure.Size;
import org.lagwright.takeoff.order.LaggedElement;
import org.lagwright.takeoff.pack.CsvTables;
import org.lagwright.takeoff.price.BuildUp;
import org.lagwright.takeoff.price.PriceList;
import org.lagwright.takeoff.price.PriceTerms;
import org.lagwright.takeoff.thickness.Layer;
import org.lagwright.takeoff.thickness.Layer.LayerForm;

/** How the program computes the hours of the checks on labour and price. */
final class EstimateChecks {

  private static final MakingChooser MAKINGS =
      new MakingChooser(MakingPack.bundled(), Map.of(), Map.of());

  private EstimateChecks() {}

  static Map<String, ToDoubleFunction<Inputs>> computed() {
    return Map.of(
        "labour-volume-h-per-m", EstimateChecks::byVolume,
        "labour-equivalents-h", EstimateChecks::byEquivalents,
        "price", EstimateChecks::price);
  }

  private static double price(Inputs i) {
    boolean margin = i.values().containsKey("margin");
    PriceTerms terms =
        new PriceTerms(
            "EUR",
            i.get("rate"),
            i.get("tools"),
            i.get("overhead"),
            i.get(margin ? "margin" : "markup"),
            margin ? PriceTerms.Profit.MARGIN : PriceTerms.Profit.MARKUP,
            0,
            new PriceList("none", List.of()));
    double net = i.get("mat");
    return new BuildUp(net, net * i.get("waste") / 100, i.get("hours"), terms).total();
  }

  private static double byVolume(Inputs i) {
    LabourBook book = new LabourBook(LabourNorms.bundled(), new Neighbours(List.of(), 0));
    double odMm = i.get("od") * 1000;
    book.add(
        task(
            TestElement.pipe(1, odMm, 1).build(),
            new Layer("x", LayerForm.SECTION, i.get("wall"))));
    return book.labour().hours();
  }

  private static double byEquivalents(Inputs i) {
    String norms = String.format(Locale.ROOT, "item,unit,value%ntube,h/m,%s%n", i.get("rate"));
    LabourBook book =
        new LabourBook(
            LabourNorms.bundled().with(CsvTables.parse(norms, "own.csv"), Set.of()),
            new Neighbours(List.of(), 0));
    double odMm = i.get("od") * 1000;
    List<MepElement> elements = new ArrayList<>();
    elements.add(TestElement.pipe(1, odMm, i.get("m")).build());
    fittings(elements, Form.BEND, odMm, i.get("bends"));
    fittings(elements, Form.VALVE_BODY, odMm, i.get("valves"));
    fittings(elements, Form.FLANGE, odMm, i.get("flanges"));
    Layer layer = new Layer("x", LayerForm.TUBE, 0.025);
    elements.forEach(element -> book.add(task(element, layer)));
    return book.labour().hours();
  }

  private static void fittings(List<MepElement> into, Form form, double odMm, double count) {
    for (int n = 0; n < count; n++) {
      Kind kind = form == Form.VALVE_BODY ? Kind.VALVE : Kind.PIPE_FITTING;
      into.add(TestElement.of(100 + into.size(), kind, form).round(odMm).build());
    }
  }

  private static LabourTask task(MepElement element, Layer layer) {
    Section section = Size.findDecidingSection(element).orElseThrow();
    Making making = MAKINGS.choose(element, section, List.of(layer), false);
    LaggedElement lagged =
        new LaggedElement(
            element,
            "L001",
            section,
            "x",
            "indoor",
            false,
            false,
            layer.thicknessM(),
            0,
            making.outerAreaM2(),
            making);
    return new LabourTask(lagged, "heating flow", "DN100", List.of(layer), false, 0);
  }
}
