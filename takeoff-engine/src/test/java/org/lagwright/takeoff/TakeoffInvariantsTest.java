package org.lagwright.takeoff;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Random;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.lagwright.ifc.model.Effect;
import org.lagwright.ifc.model.ElementKey;
import org.lagwright.ifc.model.Finding;
import org.lagwright.ifc.model.Form;
import org.lagwright.ifc.model.Kind;
import org.lagwright.ifc.model.MepElement;
import org.lagwright.ifc.model.MepModel;
import org.lagwright.ifc.model.ModelFile;
import org.lagwright.ifc.model.Port;
import org.lagwright.ifc.model.Section;
import org.lagwright.takeoff.scope.Scope;
import org.lagwright.takeoff.settings.SettingsReader;

/** What holds for every model, tried on random ones; the seed stands in the name of the test. */
class TakeoffInvariantsTest {

  private static final double SAME = 1e-9;
  private static final double[] DIAMETERS_MM = {15, 22, 33.7, 60.3, 114.3, 219.1};
  private static final List<String> SYSTEMS =
      List.of(
          "CHWS",
          "CHWR",
          "LTHW flow",
          "Heizung RL",
          "TWW",
          "Kaltwasser",
          "Zuluft",
          "Abluft",
          "ETA",
          "Regenwasser",
          "Abwasser",
          "Sauggasleitung",
          "Refrigerant liquid",
          "Ventilation",
          "?");

  @ParameterizedTest(name = "seed {0}")
  @ValueSource(longs = {1, 2, 3, 4, 5, 6, 7, 8, 9, 10})
  void everyElementIsOnALineLeftOutWithAFindingOrOutWithAReason(long seed) {
    Takeoff takeoff = takeoff(soup(seed, 200));

    Map<ElementKey, TakeoffLine> lineOf =
        takeoff.lines().stream()
            .flatMap(line -> line.elements().stream().map(key -> Map.entry(key, line)))
            .collect(Collectors.toMap(Map.Entry::getKey, Map.Entry::getValue));
    Map<ElementKey, Long> leftOutFindings =
        takeoff.findings().stream()
            .filter(f -> f.effect() == Effect.LEFT_OUT)
            .map(Finding::element)
            .filter(Objects::nonNull)
            .collect(Collectors.groupingBy(Function.identity(), Collectors.counting()));
    for (TakenElement taken : takeoff.elements()) {
      ElementKey key = taken.element().key();
      boolean onLine = lineOf.containsKey(key);
      boolean leftOut = taken.leftOutWith() != null;
      boolean out = taken.scope().scope() == Scope.OUT;
      assertThat((onLine ? 1 : 0) + (leftOut ? 1 : 0) + (out ? 1 : 0)).as("%s", key).isEqualTo(1);
      assertThat(leftOutFindings.getOrDefault(key, 0L)).isEqualTo(leftOut ? 1L : 0L);
      assertThat(taken.findLineId().isPresent()).isEqualTo(onLine);
      assertThat(taken.scope().reason()).isNotBlank();
      assertThat(taken.trace().steps()).isNotEmpty();
    }
    assertThat(takeoff.totals().read()).isEqualTo(200);
    assertThat(takeoff.totals().onLines()).isEqualTo(lineOf.size()).isPositive();
    assertThat(takeoff.totals().leftOut())
        .isEqualTo(leftOutFindings.size())
        .isEqualTo(takeoff.questions().stream().mapToInt(Question::pieces).sum())
        .isPositive();
    assertThat(takeoff.totals().outOfScope()).isPositive();
  }

  @ParameterizedTest(name = "seed {0}")
  @ValueSource(longs = {11, 12, 13})
  void linesSumTheirElementsAndTotalsSumTheLines(long seed) {
    Takeoff takeoff = takeoff(soup(seed, 200));

    double lengthM = 0;
    double areaM2 = 0;
    for (TakeoffLine line : takeoff.lines()) {
      Quantities sum =
          takeoff.elements().stream()
              .filter(e -> line.id().equals(e.lineId()))
              .map(TakenElement::quantities)
              .reduce(Quantities.NONE, Quantities::plus);
      double expected = line.unit().equals("m") ? sum.lengthM() : sum.pieces();
      assertThat(line.quantity()).isCloseTo(expected, within(SAME));
      assertThat(line.outerAreaM2()).isCloseTo(sum.outerAreaM2(), within(SAME));
      assertThat(line.volumeM3()).isCloseTo(sum.volumeM3(), within(SAME));
      lengthM += sum.lengthM();
      areaM2 += sum.outerAreaM2();
    }
    assertThat(takeoff.totals().insulatedLengthM()).isCloseTo(lengthM, within(SAME));
    assertThat(takeoff.totals().outerAreaM2()).isCloseTo(areaM2, within(SAME));
  }

  @ParameterizedTest(name = "seed {0}")
  @ValueSource(longs = {21, 22, 23, 24, 25})
  void orderOfTheElementsDoesNotChangeLinesOrQuestions(long seed) {
    List<MepElement> elements = soup(seed, 150);
    Takeoff inOrder = takeoff(elements);
    List<MepElement> shuffled = new ArrayList<>(elements);
    Collections.shuffle(shuffled, new Random(seed));

    Takeoff mixed = takeoff(shuffled);

    assertThat(mixed.lines()).isEqualTo(inOrder.lines());
    assertThat(mixed.questions()).isEqualTo(inOrder.questions());
    assertThat(mixed.findings()).containsExactlyInAnyOrderElementsOf(inOrder.findings());
  }

  @ParameterizedTest(name = "seed {0}")
  @ValueSource(longs = {31, 32, 33, 34, 35})
  void aPipeSplitInTwoKeepsLengthAreaAndVolumeOfItsLine(long seed) {
    Random random = new Random(seed);
    List<MepElement> whole = new ArrayList<>();
    List<MepElement> split = new ArrayList<>();
    for (int i = 1; i <= 60; i++) {
      double outsideMm = any(random, DIAMETERS_MM);
      double lengthM = 0.1 + 6 * random.nextDouble();
      double cutM = lengthM * random.nextDouble();
      String system = SYSTEMS.get(random.nextInt(SYSTEMS.size()));
      whole.add(TestElement.pipe(i, outsideMm, lengthM).inSystem(system).build());
      split.add(TestElement.pipe(i, outsideMm, cutM).inSystem(system).build());
      split.add(TestElement.pipe(1000 + i, outsideMm, lengthM - cutM).inSystem(system).build());
    }

    List<TakeoffLine> before = takeoff(whole).lines();
    List<TakeoffLine> after = takeoff(split).lines();

    assertThat(after).hasSameSizeAs(before).isNotEmpty();
    for (int i = 0; i < before.size(); i++) {
      assertThat(after.get(i).size()).isEqualTo(before.get(i).size());
      assertThat(after.get(i).thicknessM()).isEqualTo(before.get(i).thicknessM());
      assertThat(after.get(i).quantity()).isCloseTo(before.get(i).quantity(), within(SAME));
      assertThat(after.get(i).outerAreaM2()).isCloseTo(before.get(i).outerAreaM2(), within(SAME));
      assertThat(after.get(i).volumeM3()).isCloseTo(before.get(i).volumeM3(), within(SAME));
      assertThat(after.get(i).elements()).hasSize(2 * before.get(i).elements().size());
    }
  }

  @ParameterizedTest(name = "seed {0}")
  @ValueSource(longs = {41, 42, 43})
  void theSameModelTwiceCountsTwiceThoughItsGlobalIdsRepeat(long seed) {
    List<MepElement> elements = soup(seed, 150);
    List<MepElement> again = elements.stream().map(TakeoffInvariantsTest::inSecondModel).toList();
    ModelFile file = new ModelFile(1, "again.ifc", "1".repeat(64), "IFC4");
    MepModel second = new MepModel(file, again, List.of(), List.of(), Map.of());

    Takeoff once = takeoff(elements);
    List<MepModel> both = List.of(TestElement.model(elements), second);
    Takeoff twice = Takeoff.of(both, SettingsReader.defaults());

    assertThat(twice.totals().read()).isEqualTo(2 * once.totals().read());
    assertThat(twice.totals().onLines()).isEqualTo(2 * once.totals().onLines());
    assertThat(twice.totals().leftOut()).isEqualTo(2 * once.totals().leftOut());
    assertThat(twice.lines()).hasSameSizeAs(once.lines());
    for (int i = 0; i < once.lines().size(); i++) {
      double expected = 2 * once.lines().get(i).quantity();
      assertThat(twice.lines().get(i).quantity()).isCloseTo(expected, within(SAME));
    }
    assertThat(twice.questions()).hasSameSizeAs(once.questions());
    assertThat(Takeoff.of(both, SettingsReader.defaults())).isEqualTo(twice);
  }

  private static MepElement inSecondModel(MepElement e) {
    List<Port> ports = new ArrayList<>();
    for (Port port : e.ports()) {
      long other = Objects.requireNonNull(port.connectedTo()).step();
      ports.add(new Port(port.step(), null, null, null, null, new ElementKey(1, other)));
    }
    return MepElement.builder(new ElementKey(1, e.key().step()), e.globalId(), e.ifcClass())
        .is(e.kind(), e.form())
        .section(e.section())
        .lengthM(e.lengthM())
        .systems(e.systems())
        .place(e.place())
        .ports(ports)
        .build();
  }

  private static Takeoff takeoff(List<MepElement> elements) {
    return Takeoff.of(List.of(TestElement.model(elements)), SettingsReader.defaults());
  }

  /** Elements of every kind and form, some without size, length or system, joined at random. */
  private static List<MepElement> soup(long seed, int count) {
    Random random = new Random(seed);
    List<MepElement> elements = new ArrayList<>();
    for (int i = 1; i <= count; i++) {
      Kind kind = any(random, Kind.values());
      TestElement element = TestElement.of(i, kind, any(random, Form.values()));
      if (random.nextInt(6) > 1) {
        element.round(any(random, DIAMETERS_MM));
      } else if (random.nextBoolean()) {
        element.section(new Section.Rectangular(0.4, 0.2));
      }
      if (random.nextInt(5) > 0) {
        element.length(0.05 + 6 * random.nextDouble());
      }
      if (random.nextInt(3) > 0) {
        element.inSystem(SYSTEMS.get(random.nextInt(SYSTEMS.size())));
      }
      if (random.nextInt(4) == 0) {
        element.at("Roof", random.nextBoolean());
      }
      if (random.nextInt(10) == 0) {
        element.insulated(0.02, 1 + random.nextInt(count));
      }
      for (int joints = random.nextInt(3); joints > 0; joints--) {
        element.joinedTo(1 + random.nextInt(count));
      }
      elements.add(element.build());
    }
    return elements;
  }

  private static double any(Random random, double... values) {
    return values[random.nextInt(values.length)];
  }

  @SafeVarargs
  private static <T> T any(Random random, T... values) {
    return values[random.nextInt(values.length)];
  }
}
