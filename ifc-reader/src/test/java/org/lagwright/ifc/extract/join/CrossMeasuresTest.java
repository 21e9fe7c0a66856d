package org.lagwright.ifc.extract.join;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.lagwright.ifc.extract.InlineModel.codes;
import static org.lagwright.ifc.extract.InlineModel.diameterMm;
import static org.lagwright.ifc.extract.InlineModel.element;
import static org.lagwright.ifc.extract.InlineModel.value;
import static org.lagwright.ifc.extract.Network.at;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.TreeMap;
import java.util.function.Consumer;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.lagwright.ifc.extract.Network;
import org.lagwright.ifc.model.Form;
import org.lagwright.ifc.model.How;
import org.lagwright.ifc.model.Measured;
import org.lagwright.ifc.model.MepElement;
import org.lagwright.ifc.model.MepModel;
import org.lagwright.ifc.model.Port;
import org.lagwright.ifc.model.Section;

/**
 * A line dealt out to several files measures what it measures in one: bodies that are wider than
 * the pipe in them have its size, whichever file it stands in. All in millimetres.
 */
class CrossMeasuresTest {

  private static final double[] EAST = at(1, 0, 0);
  private static final double[] WEST = at(-1, 0, 0);
  private static final double[] UP = at(0, 0, 1);

  private static List<MepModel> join(Network... files) {
    List<MepModel> models = new ArrayList<>();
    for (int i = 0; i < files.length; i++) {
      models.add(files[i].read(i));
    }
    return ModelJoiner.join(models, 0.002);
  }

  /** Pieces dealt out to two files: the binary digits say which of them stand in the second. */
  private static List<MepModel> deal(int digits, List<Consumer<Network>> pieces) {
    Network[] files = {new Network(), new Network()};
    for (int i = 0; i < pieces.size(); i++) {
      pieces.get(i).accept(files[digits >> i & 1]);
    }
    return join(files);
  }

  /** What was measured of all elements, by instance number. */
  private static Map<Long, String> measures(List<MepModel> models) {
    Map<Long, String> measures = new TreeMap<>();
    for (MepModel model : models) {
      for (MepElement e : model.elements()) {
        measures.put(
            e.key().step(),
            e.kind()
                + " "
                + e.form()
                + " "
                + e.ends()
                + " "
                + Arrays.asList(read(e.section()), read(e.lengthM()), read(e.angleDeg()))
                + " "
                + e.ports().stream()
                    .map(Port::connectedTo)
                    .filter(Objects::nonNull)
                    .map(other -> other.step())
                    .sorted()
                    .toList());
      }
    }
    return measures;
  }

  private static <T> @Nullable T read(@Nullable Measured<T> measured) {
    return measured == null ? null : measured.value();
  }

  /** Flange, valve, flange, pump and flange in a pipe of 60.3; a cap of another size at its end. */
  private static List<Consumer<Network>> line(double flangeMm) {
    double valve = 1000 + flangeMm;
    double pump = valve + 230 + flangeMm;
    double end = pump + 280 + flangeMm;
    return List.of(
        n -> n.pipe(1, at(0, 0, 0), EAST, 1000, 60.3),
        n -> n.drum(2, "Flange", ".CONNECTOR.", at(1000, 0, 0), EAST, flangeMm, 114.57),
        n -> n.body(3, "IFCVALVE", "Gate valve", "$", at(valve, 0, 0), EAST, 230, 84.4),
        n -> n.drum(4, "Flange", ".CONNECTOR.", at(valve + 230, 0, 0), EAST, flangeMm, 114.57),
        n -> n.body(5, "IFCPUMP", "Pump", "$", at(pump, 0, 0), EAST, 280, 120.6),
        n -> n.drum(6, "Flange", ".CONNECTOR.", at(pump + 280, 0, 0), EAST, flangeMm, 114.57),
        n -> n.pipe(7, at(end, 0, 0), EAST, 1000, 60.3));
  }

  /** A flange of 16 mm has both its ends where a joint may lie. */
  @ParameterizedTest
  @ValueSource(doubles = {40, 20, 16})
  void itemsHaveTheSizeOfTheirPipeHoweverTheLineIsDealtOut(double flangeMm) {
    List<Consumer<Network>> line = line(flangeMm);
    Map<Long, String> inOneFile = measures(deal(0, line));

    for (int digits = 1; digits < 1 << line.size(); digits++) {
      assertThat(measures(deal(digits, line))).as("files %s", digits).isEqualTo(inOneFile);
    }
    for (int n = 2; n <= 6; n++) {
      MepElement item = element(deal(0b0111110, line).get(1), n * 1000L);
      assertThat(diameterMm(item)).isEqualTo(60.3);
      assertThat(Objects.requireNonNull(item.section()).how()).isEqualTo(How.NEIGHBOUR);
    }
  }

  @Test
  void jointsOfBodiesAcrossFilesAreCounted() {
    List<MepModel> models = deal(0b0111110, line(40));

    assertThat(codes(models.get(1))).contains("FILES_CONNECTED");
    assertThat(models.get(1).findings())
        .filteredOn(f -> f.code().name().equals("FILES_CONNECTED"))
        .singleElement()
        .satisfies(f -> assertThat(f.values().get(0)).isEqualTo("2"));
  }

  /** What its own file had for want of a pipe that is met. */
  @Test
  void nominalSizeThatNoLongerCountsIsNotTold() {
    List<MepModel> models =
        deal(
            0b010,
            List.of(
                n -> n.pipe(1, at(0, 0, 0), EAST, 1000, 60.3),
                n -> n.drum(2, "Flange DN 50", ".CONNECTOR.", at(1000, 0, 0), EAST, 40, 165),
                n -> n.pipe(3, at(1040, 0, 0), EAST, 1000, 60.3)));

    MepElement flange = element(models.get(1), 2000);
    assertThat(Objects.requireNonNull(flange.section()).how()).isEqualTo(How.NEIGHBOUR);
    assertThat(codes(models.get(1))).doesNotContain("SIZE_FROM_NOMINAL");
  }

  /** Its ports say where it ends, and connect nothing. */
  @Test
  void portsThatOnlyTouchTellAsMuch() {
    Network valve =
        new Network()
            .body(2, "IFCVALVE", "Gate valve", "$", at(1000, 0, 0), EAST, 180, 124.46)
            .port(2, 0, at(1000, 0, 0), WEST)
            .port(2, 1, at(1180, 0, 0), EAST);
    Network pipes =
        new Network()
            .pipe(1, at(0, 0, 0), EAST, 1000, 88.9)
            .port(1, 0, at(1000, 0, 0), EAST)
            .pipe(3, at(1180, 0, 0), EAST, 1000, 88.9);

    MepElement read = element(join(pipes, valve).get(1), 2000);

    assertThat(diameterMm(read)).isEqualTo(88.9);
    assertThat(read.ends()).containsOnly(new Section.Round(0.0889));
    assertThat(value(read.lengthM())).isCloseTo(0.18, within(1e-9));
    assertThat(read.ports()).hasSize(2).allMatch(Port::isInFile).allMatch(Port::touching);
  }

  /** It has no body; its pipes tell what it is, and what was found before holds no longer. */
  @Test
  void reducerThatIsNotDrawnIsThatOfItsPipesInAnotherFile() {
    Network fitting =
        new Network()
            .fitting(2, "IFCPIPEFITTING", "Part", ".TRANSITION.")
            .port(2, 0, at(1000, 0, 0), WEST)
            .port(2, 1, at(1090, 0, 0), EAST);
    Network pipes =
        new Network()
            .pipe(1, at(0, 0, 0), EAST, 1000, 88.9)
            .pipe(3, at(1090, 0, 0), EAST, 1000, 60.3);
    assertThat(codes(fitting.read())).contains("GEOMETRY_ONLY_PARTLY_MEASURED");

    MepModel model = join(pipes, fitting).get(1);
    MepElement reducer = element(model, 2000);

    assertThat(reducer.form()).isEqualTo(Form.REDUCER);
    assertThat(reducer.ends())
        .containsExactlyInAnyOrder(new Section.Round(0.0889), new Section.Round(0.0603));
    assertThat(value(reducer.lengthM())).isCloseTo(0.09, within(1e-9));
    assertThat(codes(model)).doesNotContain("GEOMETRY_ONLY_PARTLY_MEASURED");
  }

  /** Both ends are as wide as each other; its size is that of the higher one. */
  @ParameterizedTest
  @ValueSource(ints = {0b000, 0b010, 0b011, 0b110})
  void reducerHasTheLargerOfItsSizesWhicheverEndComesFirst(int digits) {
    Section larger = new Section.Rectangular(0.5, 0.3);
    Section smaller = new Section.Rectangular(0.5, 0.25);
    List<Consumer<Network>> line =
        List.of(
            n -> n.box(1, "IFCDUCTSEGMENT", at(0, 0, 0), EAST, 1000, 250, 500),
            n ->
                n.fitting(2, "IFCDUCTFITTING", "Part", ".TRANSITION.")
                    .port(2, 0, at(1000, 0, 0), WEST)
                    .port(2, 1, at(1400, 0, 0), EAST),
            n -> n.box(3, "IFCDUCTSEGMENT", at(1400, 0, 0), EAST, 1000, 300, 500));

    MepElement part = element(deal(digits, line).get(digits >> 1 & 1), 2000);

    assertThat(read(part.section())).isEqualTo(larger);
    assertThat(part.ends()).containsExactlyInAnyOrder(larger, smaller);
  }

  /** The pipe is drawn through the valve. */
  @Test
  void valveAroundAPipeOfAnotherFileHasItsSize() {
    Network pipe = new Network().pipe(1, at(0, 0, 0), EAST, 3000, 60.3);
    Network valve =
        new Network().body(2, "IFCVALVE", "Gate valve", "$", at(1000, 0, 0), EAST, 180, 110);

    List<MepModel> models = join(pipe, valve);

    assertThat(diameterMm(element(models.get(1), 2000))).isEqualTo(60.3);
    assertThat(element(models.get(0), 1000).ports()).allMatch(Port::tap).hasSize(2);
  }

  /** A straight piece without a size has that of its neighbour, and hands it on. */
  @Test
  void pipeWithoutASizeTakesThatOfTheOtherFile() {
    Network bare =
        new Network()
            .fitting(2, "IFCPIPESEGMENT", "Pipe", "$")
            .port(2, 0, at(1000, 0, 0), WEST)
            .port(2, 1, at(2000, 0, 0), EAST);
    Network pipe = new Network().pipe(1, at(0, 0, 0), EAST, 1000, 60.3);

    assertThat(diameterMm(element(join(pipe, bare).get(1), 2000))).isEqualTo(60.3);
  }

  /**
   * It has pipes in one file only, and so another size there; it counts once, with the size of its
   * pipes.
   *
   * @param alone the file in which it stands alone
   */
  @ParameterizedTest
  @ValueSource(ints = {0, 1})
  void valveThatStandsInBothFilesIsOne(int alone) {
    Network[] files = {new Network(), new Network()};
    for (Network file : files) {
      file.body(2, "IFCVALVE", "Gate valve", "$", at(1000, 0, 0), EAST, 180, 124.46);
    }
    files[1 - alone]
        .pipe(1, at(0, 0, 0), EAST, 1000, 88.9)
        .pipe(3, at(1180, 0, 0), EAST, 1000, 88.9);

    List<MepModel> models = join(files);
    MepElement counted = element(models.get(0), 2000);

    assertThat(element(models.get(1), 2000).repeats()).isEqualTo(counted.key());
    assertThat(codes(models.get(1)))
        .contains("REPEATED_ELEMENTS")
        .doesNotContain("SAME_ID_ELSEWHERE");
    assertThat(diameterMm(counted)).isEqualTo(88.9);
    assertThat(counted.ports()).hasSize(2);
  }

  /**
   * What is not joined in one file is not joined across: a duct to a pipe, pipes of two sizes, a
   * body more than four times as wide, one that lies askew.
   */
  @ParameterizedTest
  @CsvSource({
    "IFCDUCTSEGMENT,Duct,60.3,true",
    "IFCPIPESEGMENT,Pipe,88.9,true",
    "IFCVALVE,Valve,260,true",
    "IFCVALVE,Valve,90,false"
  })
  void whatIsNotJoinedInOneFileIsNotJoinedAcross(
      String keyword, String name, double diameterMm, boolean inLine) {
    Consumer<Network> pipe = n -> n.pipe(1, at(0, 0, 0), EAST, 1000, 60.3);
    Consumer<Network> other =
        n -> n.body(2, keyword, name, "$", at(1000, 0, 0), inLine ? EAST : UP, 200, diameterMm);

    Map<Long, String> inTwo = measures(deal(0b10, List.of(pipe, other)));

    assertThat(inTwo).isEqualTo(measures(deal(0, List.of(pipe, other))));
    assertThat(inTwo.values()).allMatch(measure -> measure.endsWith(" []"));
  }
}
