package org.lagwright.report;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.lagwright.ifc.model.Candidate;
import org.lagwright.ifc.model.Effect;
import org.lagwright.ifc.model.ElementKey;
import org.lagwright.ifc.model.Evidence;
import org.lagwright.ifc.model.ExistingInsulation;
import org.lagwright.ifc.model.Finding;
import org.lagwright.ifc.model.Form;
import org.lagwright.ifc.model.How;
import org.lagwright.ifc.model.Kind;
import org.lagwright.ifc.model.Measured;
import org.lagwright.ifc.model.MepElement;
import org.lagwright.ifc.model.MepSystem;
import org.lagwright.ifc.model.ModelFile;
import org.lagwright.ifc.model.Place;
import org.lagwright.ifc.model.Section;
import org.lagwright.takeoff.Quantities;
import org.lagwright.takeoff.Question;
import org.lagwright.takeoff.TakenElement;
import org.lagwright.takeoff.Takeoff;
import org.lagwright.takeoff.TakeoffFinding;
import org.lagwright.takeoff.TakeoffLine;
import org.lagwright.takeoff.Totals;
import org.lagwright.takeoff.Trace;
import org.lagwright.takeoff.heat.StillAir;
import org.lagwright.takeoff.labour.Labour;
import org.lagwright.takeoff.labour.LabourNorms;
import org.lagwright.takeoff.order.OrderList;
import org.lagwright.takeoff.pack.PackInfo;
import org.lagwright.takeoff.scope.Scope;
import org.lagwright.takeoff.scope.ScopeDecision;
import org.lagwright.takeoff.service.Classification;
import org.lagwright.takeoff.service.Vote;
import org.lagwright.takeoff.settings.DemandSettings;
import org.lagwright.takeoff.settings.OrderSettings;
import org.lagwright.takeoff.settings.Settings;
import org.lagwright.takeoff.settings.UnitSystem;
import org.lagwright.takeoff.thickness.ThicknessDecision;
import org.lagwright.takeoff.thickness.ThicknessPacks;

/**
 * A takeoff put together by hand, with one of everything a report has to show. Its figures are
 * chosen to be easy to follow, not to be right.
 */
public final class SampleTakeoff {

  public static final String PIPE_ID = "0AlderQuay0Pipe0000001";
  public static final String HOSTILE_ID = "0AlderQuay_x0041_00001";
  public static final String HOSTILE_NAME = "=HYPERLINK(\"http://example.invalid\")";

  private static final Classification CHILLED =
      new Classification(
          "chilled-water-flow",
          "Chilled water flow",
          6.0,
          6.0,
          null,
          List.of(
              new Vote("chilled-water-flow", "system name", "CHW Flow", 3),
              new Vote("cold-water", "layer", "P-COLD", 0.5)),
          null);
  private static final Classification SUPPLY_AIR =
      new Classification(
          "supply-air",
          "Supply air",
          16.0,
          null,
          null,
          List.of(new Vote("supply-air", "system name", "Supply 1", 3)),
          null);
  private static final Classification NOBODY_KNOWS =
      new Classification(Classification.UNKNOWN, "Unknown", null, null, null, List.of(), null);

  private static final MepSystem CHW = new MepSystem(12, "s1", "CHW Flow", null, null, null);
  private static final MepSystem SUPPLY =
      new MepSystem(13, "s2", "Supply 1", null, null, "VENTILATION");
  private static final Place PLANT_ROOM =
      Place.of("Ferry terminal", "Level 0", 0.0, "Plant room", false);

  private final List<TakenElement> elements = new ArrayList<>();

  private SampleTakeoff() {}

  /** The sample. */
  public static Takeoff takeoff() {
    return new SampleTakeoff().build();
  }

  /** A takeoff of a model without anything in it. */
  public static Takeoff empty() {
    return new Takeoff(
        List.of(new ModelFile(0, "empty.ifc", "0".repeat(64), "IFC4")),
        settings(),
        packs(),
        List.of(),
        List.of(),
        List.of(),
        List.of(),
        OrderList.EMPTY,
        Labour.none(),
        null,
        List.of(),
        new Totals(0, 0, 0, 0, 0, 0, 0, 0),
        List.of());
  }

  /** The sample's straight and counted elements again and again, up to this many elements. */
  public static Takeoff large(int count) {
    Takeoff sample = takeoff();
    TakenElement drain = sample.elements().get(6);
    List<TakenElement> many = new ArrayList<>(sample.elements());
    while (many.size() < count) {
      many.add(drain);
    }
    Totals t = sample.totals();
    return new Takeoff(
        sample.models(),
        sample.settings(),
        sample.packs(),
        many,
        sample.lines(),
        sample.questions(),
        sample.measurements(),
        sample.order(),
        sample.labour(),
        sample.price(),
        sample.findings(),
        new Totals(
            many.size(),
            t.onLines(),
            t.leftOut(),
            many.size() - t.onLines() - t.leftOut(),
            t.insulatedLengthM(),
            t.insulatedPieces(),
            t.outerAreaM2(),
            t.volumeM3()),
        List.of());
  }

  private Takeoff build() {
    addPipes();
    addDucts();
    addOthers();
    return new Takeoff(
        List.of(
            new ModelFile(0, "alder-quay-plant-room.ifc", "a1".repeat(32), "IFC4"),
            new ModelFile(1, "alder-quay-hall.ifc", "b2".repeat(32), "IFC2X3")),
        settings(),
        packs(),
        elements,
        lines(),
        questions(),
        SampleEstimate.measurements(),
        SampleEstimate.order(),
        SampleEstimate.labour(),
        SampleEstimate.price(),
        findings(),
        new Totals(9, 5, 2, 2, 6.25, 2, 6.75, 0.175),
        List.of());
  }

  private void addPipes() {
    MepElement.Builder pipe =
        pipe(101, PIPE_ID, "CHW pipe 1").lengthM(metres(1.75)).existingInsulation(existing());
    elements.add(
        onLine(
            pipe.build(),
            CHILLED,
            SampleDecisions.cold(),
            new Quantities(1.75, 0, 0.75, 0.0125),
            "L001"));
    MepElement.Builder second =
        pipe(102, "0AlderQuay0Pipe0000002", "CHW pipe 2").lengthM(metres(2.5));
    elements.add(
        onLine(
            second.build(),
            CHILLED,
            SampleDecisions.cold(),
            new Quantities(2.5, 0, 1, 0.0225),
            "L001"));
    MepElement bend =
        pipe(103, "0AlderQuay0Bend0000001", "CHW bend")
            .is(Kind.PIPE_FITTING, Form.BEND)
            .ends(
                Measured.of(
                    List.of(new Section.Round(0.0603), new Section.Round(0.0603)),
                    How.SOLID,
                    new Evidence(1, "ends", "")))
            .bend(measured(90.0), measured(0.0762))
            .build();
    elements.add(
        onLine(bend, CHILLED, SampleDecisions.cold(), new Quantities(0, 1, 0.5, 0.01), "L002"));
    MepElement valve =
        pipe(104, "0AlderQuay0Valve000001", "Gate valve").is(Kind.VALVE, Form.VALVE_BODY).build();
    elements.add(
        onLine(valve, CHILLED, SampleDecisions.cold(), new Quantities(0, 1, 0, 0), "L003"));
  }

  private void addDucts() {
    MepElement duct =
        MepElement.builder(new ElementKey(1, 201), "0AlderQuay0Duct0000001", "IFCDUCTSEGMENT")
            .named("Supply duct", null, "Rectangular duct", "D-1")
            .is(Kind.DUCT_SEGMENT, Form.STRAIGHT)
            .section(measured(new Section.Rectangular(0.6, 0.3)))
            .lengthM(metres(2))
            .systems(List.of(SUPPLY))
            .place(PLANT_ROOM)
            .build();
    elements.add(
        onLine(duct, SUPPLY_AIR, SampleDecisions.air(), new Quantities(2, 0, 4.5, 0.13), "L004"));
    MepElement unknown =
        MepElement.builder(new ElementKey(1, 202), HOSTILE_ID, "IFCDUCTSEGMENT")
            .named(HOSTILE_NAME, "+1", "@SUM(A1)", null)
            .is(Kind.DUCT_SEGMENT, Form.STRAIGHT)
            .section(measured(new Section.Oval(0.5, 0.25)))
            .lengthM(metres(3.5))
            .build();
    elements.add(leftOut(unknown, NOBODY_KNOWS, Scope.ASK, "service unknown", "SERVICE_UNKNOWN"));
  }

  private void addOthers() {
    MepElement drain =
        pipe(105, "0AlderQuay0Drain000001", "Drain\u0007\r\n-1+2").lengthM(metres(4)).build();
    elements.add(notTaken(drain, Scope.OUT, "drains carry no insulation"));
    MepElement tank =
        MepElement.builder(new ElementKey(0, 106), "0AlderQuay0Tank0000001", "IFCTANK")
            .named("Buffer \uD83D", null, null, null)
            .is(Kind.EQUIPMENT, Form.APPARATUS)
            .systems(List.of(CHW, SUPPLY))
            .build();
    elements.add(leftOut(tank, CHILLED, Scope.IN, "apparatus", "EQUIPMENT_BY_DRAWING"));
    MepElement tray =
        MepElement.builder(new ElementKey(0, 107), "", "IFCCABLECARRIERSEGMENT")
            .named("x".repeat(40_000), null, null, null)
            .build();
    elements.add(notTaken(tray, Scope.OUT, "no pipe or duct"));
  }

  private static MepElement.Builder pipe(long step, String globalId, String name) {
    return MepElement.builder(new ElementKey(0, step), globalId, "IFCPIPESEGMENT")
        .named(name, null, "Steel pipe", null)
        .is(Kind.PIPE_SEGMENT, Form.STRAIGHT)
        .nominalSize("DN50")
        .section(
            new Measured<>(
                new Section.Round(0.0603),
                How.SOLID,
                new Evidence(301, "IfcCircleProfileDef.Radius", "30.15"),
                List.of(
                    new Candidate<>(
                        new Section.Round(0.05),
                        How.PROPERTY,
                        new Evidence(302, "Dimensions.Diameter", "50."),
                        "is the nominal size"))))
        .systems(List.of(CHW))
        .place(PLANT_ROOM);
  }

  private static Measured<Double> metres(double lengthM) {
    return Measured.of(lengthM, How.PORTS, new Evidence(303, "ports", lengthM + " m apart"));
  }

  private static <T> Measured<T> measured(T value) {
    return Measured.of(value, How.SOLID, new Evidence(304, "IfcExtrudedAreaSolid", "figures"));
  }

  private static ExistingInsulation existing() {
    return new ExistingInsulation(
        0.025,
        "Foam & \"tape\"",
        1,
        new Evidence(305, "Insulation.Thickness", "25."),
        List.of(new ElementKey(0, 306)));
  }

  private static TakenElement onLine(
      MepElement element,
      Classification service,
      ThicknessDecision thickness,
      Quantities quantities,
      String line) {
    return new TakenElement(
        element,
        service,
        new ScopeDecision(Scope.IN, "service is insulated", "scope-1"),
        thickness,
        null,
        quantities,
        0,
        line,
        null,
        SampleDecisions.trace());
  }

  private static TakenElement leftOut(
      MepElement element, Classification service, Scope scope, String reason, String code) {
    return new TakenElement(
        element,
        service,
        new ScopeDecision(scope, reason, "scope-2"),
        null,
        null,
        Quantities.NONE,
        0,
        null,
        code,
        SampleDecisions.trace());
  }

  private static TakenElement notTaken(MepElement element, Scope scope, String reason) {
    return new TakenElement(
        element,
        null,
        new ScopeDecision(scope, reason, "scope-3"),
        null,
        null,
        Quantities.NONE,
        0,
        null,
        null,
        Trace.of(List.of()));
  }

  private static List<TakeoffLine> lines() {
    return List.of(
        line("L001", CHILLED, Kind.PIPE_SEGMENT, Form.STRAIGHT, 4.25, 1.75, 0.035, 101, 102),
        line("L002", CHILLED, Kind.PIPE_FITTING, Form.BEND, 1, 0.5, 0.01, 103),
        line("L003", CHILLED, Kind.VALVE, Form.VALVE_BODY, 1, 0, 0, 104),
        new TakeoffLine(
            "L004",
            "supply-air",
            "Supply air",
            Kind.DUCT_SEGMENT,
            Form.STRAIGHT,
            "600 x 300 mm",
            "indoor",
            "flexible-foam",
            "flexible foam",
            0.051,
            "32 mm sheet + 19 mm sheet",
            "m",
            2,
            4.5,
            0.13,
            List.of(new ElementKey(1, 201)),
            "thicknessesM"));
  }

  private static TakeoffLine line(
      String id,
      Classification service,
      Kind kind,
      Form form,
      double quantity,
      double outerAreaM2,
      double volumeM3,
      long... steps) {
    List<ElementKey> keys = new ArrayList<>();
    for (long step : steps) {
      keys.add(new ElementKey(0, step));
    }
    return new TakeoffLine(
        id,
        service.serviceId(),
        service.name(),
        kind,
        form,
        "DN50 / 60.3 mm",
        "plant-room",
        "flexible-foam",
        "flexible foam",
        0.025,
        "25 mm tube",
        form == Form.STRAIGHT ? "m" : "pcs",
        quantity,
        outerAreaM2,
        volumeM3,
        keys,
        "dew-point");
  }

  private static List<Question> questions() {
    return List.of(
        new Question(
            "SERVICE_UNKNOWN",
            "Which service is this, and is it insulated?",
            "duct segments",
            "500 x 250 mm oval",
            1,
            3.5,
            "'Duct 2' (2222222222222222222202)",
            List.of(new ElementKey(1, 202))));
  }

  private static List<Finding> findings() {
    return List.of(
        about(0, 101, TakeoffFinding.ALREADY_INSULATED, Effect.NONE, "25 mm"),
        about(0, 104, TakeoffFinding.ALREADY_INSULATED, Effect.NONE, "=1+1"),
        about(0, 106, TakeoffFinding.EQUIPMENT_BY_DRAWING, Effect.LEFT_OUT, "Buffer"),
        Finding.ofFile(1, TakeoffFinding.NO_STOCK_THICKNESS, Effect.NONE, "80", "flexible-foam"),
        about(
            1,
            202,
            TakeoffFinding.SERVICE_UNKNOWN,
            Effect.LEFT_OUT,
            "Nothing tells which service this is",
            "Name its system in the model"),
        about(1, 202, TakeoffFinding.SIZE_UNKNOWN, Effect.ESTIMATED));
  }

  private static Finding about(
      int model, long step, TakeoffFinding code, Effect effect, String... values) {
    return Finding.about(new ElementKey(model, step), code, effect, values);
  }

  private static Settings settings() {
    return new Settings(
        "Alder Quay ferry terminal & pier",
        Map.of(
            "indoor", Settings.Air.still(26, 60, "program default"),
            "plant-room", Settings.Air.still(28, 65.5, "designer")),
        List.of(new Settings.PlaceRule("Plant room", "plant-room")),
        "none",
        1,
        0.9,
        StillAir.Source.ISO_12241,
        new Settings.Ground(0.8, 1.5, "program default"),
        0.002,
        Map.of("cold", "flexible-foam", "air", "flexible-foam", "hot", "mineral-wool"),
        List.of(new Settings.ServiceRule("CHW Flow", "system", "chilled-water-flow")),
        Map.of("chilled-water-flow", 6.0),
        Map.of("supply-air", "in"),
        Map.of("supply-air", 0.045),
        DemandSettings.NONE,
        List.of(),
        Map.of(),
        Map.of(),
        SampleEstimate.METHODS,
        OrderSettings.NONE,
        Map.of(),
        UnitSystem.METRIC,
        ThicknessPacks.bundled(),
        LabourNorms.bundled(),
        null);
  }

  private static List<PackInfo> packs() {
    return List.of(
        new PackInfo("services", "1", "names as they are used in models", "common practice"),
        new PackInfo("stock", "2", "sizes commonly sold", "from memory, verify"));
  }
}
