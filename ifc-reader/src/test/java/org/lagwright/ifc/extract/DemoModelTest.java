package org.lagwright.ifc.extract;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.lagwright.ifc.model.ElementKey;
import org.lagwright.ifc.model.Form;
import org.lagwright.ifc.model.Kind;
import org.lagwright.ifc.model.Measured;
import org.lagwright.ifc.model.MepElement;
import org.lagwright.ifc.model.MepModel;
import org.lagwright.ifc.model.MepSystem;
import org.lagwright.ifc.model.ModelFile;
import org.lagwright.ifc.model.Section;
import org.lagwright.ifc.schema.IfcFile;
import org.lagwright.ifc.step.StepBytes;
import org.lagwright.ifc.step.StepLimits;
import org.lagwright.testmodels.demo.AlderQuay;
import org.lagwright.testmodels.demo.DemoQuantity;
import org.lagwright.testmodels.ifc.Schema;

/** The demo building against its quantities, which come from the design and from no file. */
class DemoModelTest {

  @ParameterizedTest
  @EnumSource(Schema.class)
  void straightPipesAndDuctsHaveTheLengthsOfTheDesign(Schema schema) {
    TreeMap<String, Double> expected =
        AlderQuay.quantities().stream()
            .filter(q -> q.kind().endsWith("-segment"))
            .collect(
                Collectors.groupingBy(
                    q -> q.system() + " " + q.size(),
                    TreeMap::new,
                    Collectors.summingDouble(DemoQuantity::lengthM)));
    TreeMap<String, Double> found =
        read(schema).elements().stream()
            .filter(e -> e.kind().isSegment())
            .collect(
                Collectors.groupingBy(
                    e -> system(e) + " " + size(e),
                    TreeMap::new,
                    Collectors.summingDouble(e -> e.lengthM() == null ? 0 : e.lengthM().value())));

    assertThat(found.keySet()).isEqualTo(expected.keySet());
    expected.forEach(
        (key, lengthM) -> assertThat(found.get(key)).as(key).isCloseTo(lengthM, within(1e-6)));
  }

  @ParameterizedTest
  @EnumSource(Schema.class)
  void fittingsAndValvesAreCountedByForm(Schema schema) {
    TreeMap<String, Integer> expected =
        AlderQuay.quantities().stream()
            .filter(q -> !q.kind().equals("other"))
            .collect(
                Collectors.groupingBy(
                    q -> q.kind() + " " + q.form(),
                    TreeMap::new,
                    Collectors.summingInt(DemoQuantity::pieces)));
    TreeMap<String, Integer> found =
        read(schema).elements().stream()
            .filter(e -> e.kind() != Kind.OTHER && e.kind() != Kind.COVERING)
            .collect(
                Collectors.groupingBy(
                    e -> e.kind().label() + " " + e.form().label(),
                    TreeMap::new,
                    Collectors.summingInt(e -> 1)));

    assertThat(found).isEqualTo(expected);
  }

  @ParameterizedTest
  @EnumSource(Schema.class)
  void bendsHaveTheAnglesAndRadiiOfTheDesign(Schema schema) {
    TreeMap<String, Integer> expected =
        AlderQuay.quantities().stream()
            .filter(q -> q.form().equals("bend"))
            .collect(
                Collectors.groupingBy(
                    q -> turn(q.degrees(), q.bendRadiusM()),
                    TreeMap::new,
                    Collectors.summingInt(DemoQuantity::pieces)));
    TreeMap<String, Integer> found =
        read(schema).elements().stream()
            .filter(e -> e.form() == Form.BEND)
            .collect(
                Collectors.groupingBy(
                    e ->
                        e.angleDeg() == null || e.bendRadiusM() == null
                            ? "not measured " + e.name()
                            : turn(e.angleDeg().value(), e.bendRadiusM().value()),
                    TreeMap::new,
                    Collectors.summingInt(e -> 1)));

    assertThat(found).isEqualTo(expected);
  }

  @ParameterizedTest
  @EnumSource(Schema.class)
  void teesHaveRunRunAndBranchOfTheDesign(Schema schema) {
    TreeMap<String, Integer> expected =
        AlderQuay.quantities().stream()
            .filter(q -> q.form().equals("tee"))
            .collect(
                Collectors.groupingBy(
                    DemoQuantity::size, TreeMap::new, Collectors.summingInt(DemoQuantity::pieces)));
    TreeMap<String, Integer> found =
        read(schema).elements().stream()
            .filter(e -> e.form() == Form.TEE)
            .collect(
                Collectors.groupingBy(
                    e ->
                        e.ends().stream().map(DemoModelTest::size).collect(Collectors.joining("/")),
                    TreeMap::new,
                    Collectors.summingInt(e -> 1)));

    assertThat(found).isEqualTo(expected);
  }

  @ParameterizedTest
  @EnumSource(Schema.class)
  void theSameBuildingIsTheSameInEverySchema(Schema schema) {
    Function<MepElement, String> line =
        e ->
            e.globalId()
                + " "
                + e.kind()
                + " "
                + e.form()
                + " "
                + size(e)
                + " "
                + e.place().storey();
    List<String> reference = read(Schema.IFC4).elements().stream().map(line).sorted().toList();

    assertThat(read(schema).elements().stream().map(line).sorted().toList()).isEqualTo(reference);
  }

  @ParameterizedTest
  @EnumSource(Schema.class)
  void theSameBuildingIsTheSameWithAndWithoutItsPorts(Schema schema) {
    Function<MepElement, String> line =
        e ->
            String.join(
                " ",
                e.globalId(),
                e.kind().label(),
                e.form().label(),
                size(e),
                e.ends().stream().map(DemoModelTest::size).collect(Collectors.joining("/")),
                figure(e.lengthM()),
                figure(e.angleDeg()),
                figure(e.bendRadiusM()));
    List<String> withPorts = read(schema).elements().stream().map(line).toList();

    assertThat(readWithoutPorts(schema).elements().stream().map(line).toList())
        .isEqualTo(withPorts);
  }

  private static String figure(@Nullable Measured<Double> measured) {
    return measured == null ? "-" : String.format(Locale.ROOT, "%.6f", measured.value());
  }

  @ParameterizedTest
  @EnumSource(Schema.class)
  void whatThePortsJoinIsJoinedByTouchWithoutThem(Schema schema) {
    Set<String> withPorts = joints(read(schema));

    assertThat(withPorts).hasSizeGreaterThan(200);
    assertThat(joints(readWithoutPorts(schema))).isEqualTo(withPorts);
  }

  /** Joined pairs of pipes, ducts, fittings and valves; apparatus has no ends that could touch. */
  private static Set<String> joints(MepModel model) {
    Map<ElementKey, MepElement> elements = model.elementsByKey();
    Set<String> joints = new TreeSet<>();
    for (MepElement element : model.elements()) {
      element.ports().stream()
          .map(port -> port.connectedTo())
          .filter(Objects::nonNull)
          .map(key -> Objects.requireNonNull(elements.get(key)))
          .filter(other -> element.kind().isLagged() && other.kind().isLagged())
          .forEach(other -> joints.add(element.globalId() + " - " + other.globalId()));
    }
    return joints;
  }

  @ParameterizedTest
  @EnumSource(Schema.class)
  void everyPortThatTouchesAnotherIsConnectedBothWays(Schema schema) {
    MepModel model = read(schema);

    assertThat(model.elements())
        .allSatisfy(
            e ->
                assertThat(e.ports())
                    .filteredOn(p -> p.connectedTo() != null)
                    .allSatisfy(
                        p -> assertThat(neighbours(model, p.connectedTo())).contains(e.key())));
  }

  private static List<ElementKey> neighbours(MepModel model, @Nullable ElementKey key) {
    return Objects.requireNonNull(model.elementsByKey().get(key)).ports().stream()
        .map(p -> p.connectedTo())
        .filter(Objects::nonNull)
        .toList();
  }

  private static String turn(double degrees, double radiusM) {
    return String.format(Locale.ROOT, "%.1f deg R%.4f", degrees, radiusM);
  }

  private static String system(MepElement element) {
    return element.systems().stream().map(MepSystem::name).findFirst().orElse("");
  }

  private static String size(MepElement element) {
    return element.section() == null ? "" : size(element.section().value());
  }

  private static String size(Section section) {
    if (section instanceof Section.Round r) {
      return mm(r.outsideDiameterM());
    }
    Section.Rectangular r = (Section.Rectangular) section;
    return mm(r.widthM()) + "x" + mm(r.heightM());
  }

  private static String mm(double lengthM) {
    String text = String.format(Locale.ROOT, "%.1f", lengthM * 1000);
    return text.endsWith(".0") ? text.substring(0, text.length() - 2) : text;
  }

  private static MepModel read(Schema schema) {
    return read(AlderQuay.write(schema));
  }

  private static MepModel readWithoutPorts(Schema schema) {
    return read(AlderQuay.writeWithoutPorts(schema));
  }

  private static MepModel read(String text) {
    byte[] bytes = text.getBytes(StandardCharsets.US_ASCII);
    IfcFile file = IfcFile.open(StepBytes.of(bytes), StepLimits.DEFAULT, read -> {});
    return ModelExtractor.extract(
        file, new ModelFile(0, "alder-quay.ifc", "", file.step().schema()), done -> {});
  }
}
