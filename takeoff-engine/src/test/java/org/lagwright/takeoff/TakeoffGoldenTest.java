package org.lagwright.takeoff;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.lagwright.ifc.model.Finding;
import org.lagwright.ifc.model.Form;
import org.lagwright.ifc.model.Kind;
import org.lagwright.ifc.model.MepElement;
import org.lagwright.ifc.model.Section;
import org.lagwright.takeoff.labour.LabourItem;
import org.lagwright.takeoff.labour.Norm;
import org.lagwright.takeoff.settings.Settings;
import org.lagwright.takeoff.settings.SettingsReader;
import org.lagwright.testmodels.golden.Golden;

/**
 * The takeoff of a small plant of the Alder Quay ferry terminal as text. A difference to the golden
 * file is a change to the estimate, and the commit says why.
 */
class TakeoffGoldenTest {

  private static final Section D114 = new Section.Round(0.1143);
  private static final Section D60 = new Section.Round(0.0603);

  @TempDir Path folder;

  @Test
  void theEstimateOfASmallPlantStaysAsItIs() throws IOException {
    Takeoff takeoff = Takeoff.of(List.of(TestElement.model(plant())), settings());

    Golden.check(TakeoffGoldenTest.class, "alder-quay.txt", print(takeoff));
  }

  @Test
  void theSamePlantGivesTheSameAgain() throws IOException {
    Takeoff first = Takeoff.of(List.of(TestElement.model(plant())), settings());
    Takeoff second = Takeoff.of(List.of(TestElement.model(plant())), settings());

    assertThat(second).isEqualTo(first);
  }

  private Settings settings() throws IOException {
    return SettingsReader.read(
        Files.writeString(
            folder.resolve("alder-quay.yaml"),
            """
            project: Alder Quay ferry terminal
            places:
              - {contains: Plant, location: plant-room}
            services:
              - {contains: Circuit 9, in: system, service: brine-flow}
            """));
  }

  private static List<MepElement> plant() {
    List<TestElement> plant = new ArrayList<>();
    plant.add(TestElement.of(1, Kind.EQUIPMENT, Form.APPARATUS).named("Chiller 1").joinedTo(2, 9));
    plant.add(chilled(2, 4.2).joinedTo(1, 3));
    plant.add(
        TestElement.fitting(3, Form.BEND, 114.3)
            .nominal("DN100")
            .bend(90, 0.1524)
            .at("Plant level", false)
            .joinedTo(2, 4));
    plant.add(chilled(4, 1.8).joinedTo(3, 5));
    plant.add(
        TestElement.of(5, Kind.VALVE, Form.VALVE_BODY)
            .round(114.3)
            .nominal("DN100")
            .length(0.19)
            .at("Plant level", false)
            .joinedTo(4, 6));
    plant.add(
        TestElement.fitting(6, Form.REDUCER, 114.3)
            .ends(D60, D114)
            .length(0.102)
            .at("Plant level", false)
            .joinedTo(5, 7));
    plant.add(TestElement.pipe(7, 60.3, 12.5).nominal("DN50").at("Level 1", null).joinedTo(6, 8));
    plant.add(
        TestElement.fitting(8, Form.TEE, 60.3).ends(D60, D60, D60).nominal("DN50").joinedTo(7));
    plant.add(
        TestElement.pipe(9, 114.3, 3).nominal("DN100").named("CHWR").at("Plant level", false));
    plant.add(TestElement.pipe(10, 60.3, 9).nominal("DN50").inSystem("LTHW flow", "HEATING"));
    plant.add(TestElement.pipe(11, 33.7, 6.5).nominal("DN25").inSystem("LTHW", "HEATING"));
    plant.add(TestElement.pipe(12, 22, 14).inSystem("DHW", "DOMESTICHOTWATER"));
    plant.add(TestElement.pipe(13, 28, 14).inSystem("Mains water", "DOMESTICCOLDWATER"));
    plant.add(TestElement.pipe(14, 42.4, 8).inSystem("Heating flow").named("Chilled water flow"));
    plant.add(TestElement.pipe(15, 60.3, 5).inSystem("Circuit 9", "HEATING"));
    plant.add(TestElement.pipe(16, 110, 7).inSystem("Waste water", "WASTEWATER"));
    plant.add(TestElement.pipe(17, 42.4, 3.5).inSystem("Circuit 4"));
    plant.add(TestElement.pipe(18, 42.4, 2.5).inSystem("Circuit 4"));
    plant.add(TestElement.of(19, Kind.PIPE_SEGMENT, Form.STRAIGHT).length(2).inSystem("CHWS"));
    plant.add(TestElement.duct(20, 600, 300, 11).inSystem("Supply air"));
    plant.add(TestElement.duct(21, 600, 300, 4).inSystem("Extract air"));
    plant.add(TestElement.duct(22, 400, 200, 6).inSystem("Ventilation", "VENTILATION"));
    plant.add(
        TestElement.of(23, Kind.DUCT_SEGMENT, Form.STRAIGHT)
            .round(315)
            .length(2.4)
            .inSystem("Outdoor air"));
    plant.add(TestElement.of(24, Kind.TERMINAL, Form.APPARATUS).inSystem("Supply air"));
    plant.add(TestElement.of(25, Kind.COVERING, Form.UNKNOWN));
    plant.add(TestElement.of(26, Kind.OTHER, Form.UNKNOWN));
    plant.add(
        TestElement.pipe(27, 22, 4)
            .inSystem("DHW circulation")
            .insulated(0.02, 25)
            .named("Pipe 27"));
    return plant.stream().map(TestElement::build).toList();
  }

  private static TestElement chilled(long step, double lengthM) {
    return TestElement.pipe(step, 114.3, lengthM)
        .nominal("DN100")
        .inSystem("CHWS")
        .at("Plant level", false);
  }

  private static String print(Takeoff takeoff) {
    StringBuilder text = new StringBuilder(takeoff.settings().project()).append("\n\nLINES\n");
    takeoff.lines().forEach(line -> text.append(print(line)));
    text.append("\nLABOUR\n");
    takeoff.labour().items().forEach(item -> text.append(print(item)));
    text.append("\nQUESTIONS\n");
    takeoff.questions().forEach(question -> text.append(print(question)));
    text.append("\nFINDINGS\n");
    takeoff.findings().forEach(finding -> text.append(print(finding)));
    text.append("\nOUT OF SCOPE\n");
    takeoff.elements().stream()
        .filter(e -> e.lineId() == null && e.leftOutWith() == null)
        .forEach(
            e -> text.append("#" + e.element().key().step() + "  " + e.scope().reason() + "\n"));
    Totals totals = takeoff.totals();
    text.append(
        String.format(
            Locale.ROOT,
            "%nTOTALS%nread %d = on lines %d + left out %d + out of scope %d%n"
                + "%.3f m, %d pcs, %.3f m2, %.5f m3%n",
            totals.read(),
            totals.onLines(),
            totals.leftOut(),
            totals.outOfScope(),
            totals.insulatedLengthM(),
            totals.insulatedPieces(),
            totals.outerAreaM2(),
            totals.volumeM3()));
    return text.toString().replace("\r\n", "\n");
  }

  private static String print(TakeoffLine line) {
    return String.format(
        Locale.ROOT,
        "%s  %s, %s %s, %s, %s%n      %s, %s, by %s%n      %.3f %s, %.3f m2, %.5f m3  %s%n",
        line.id(),
        line.serviceName(),
        line.kind().label(),
        line.form().label(),
        line.size(),
        line.location(),
        line.materialId(),
        line.layers(),
        line.rule(),
        line.quantity(),
        line.unit(),
        line.outerAreaM2(),
        line.volumeM3(),
        line.elements().stream().map(key -> "#" + key.step()).toList());
  }

  private static String print(LabourItem item) {
    Norm equivalent = item.equivalent();
    return String.format(
        Locale.ROOT,
        "%s: %s, %s %s, layer %d%n      %.3f %s%s x %.5f x %s %s, factors %s: %.3f h%n",
        item.area().inWords(),
        item.serviceName(),
        item.form().label(),
        item.size(),
        item.layerNumber(),
        item.quantity(),
        item.unit(),
        equivalent == null ? "" : " x " + equivalent.id() + " " + equivalent.inWords(),
        item.perMetre(),
        item.norm().id(),
        item.norm().inWords(),
        item.factorsInWords().isEmpty() ? "none" : item.factorsInWords(),
        item.hours());
  }

  private static String print(Question question) {
    return String.format(
        Locale.ROOT,
        "%s  %s%n      %s, %s: %d pcs, %.3f m%n",
        question.code(),
        question.question(),
        question.what(),
        question.size(),
        question.pieces(),
        question.lengthM());
  }

  private static String print(Finding finding) {
    String about = finding.element() == null ? "all" : "#" + finding.element().step();
    return about + "  " + finding.effect() + "  " + finding.message() + "\n";
  }
}
