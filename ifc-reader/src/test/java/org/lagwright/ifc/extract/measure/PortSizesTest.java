package org.lagwright.ifc.extract.measure;

import static org.assertj.core.api.Assertions.assertThat;
import static org.lagwright.ifc.extract.InlineModel.codes;
import static org.lagwright.ifc.extract.InlineModel.diameterMm;
import static org.lagwright.ifc.extract.InlineModel.element;
import static org.lagwright.ifc.extract.InlineModel.value;
import static org.lagwright.ifc.extract.Network.at;

import java.util.List;
import java.util.Objects;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.lagwright.ifc.extract.InlineModel;
import org.lagwright.ifc.extract.Network;
import org.lagwright.ifc.extract.text.InWords;
import org.lagwright.ifc.model.Candidate;
import org.lagwright.ifc.model.How;
import org.lagwright.ifc.model.MepElement;
import org.lagwright.ifc.model.MepModel;

/** Sizes among the properties of ports, as in Pset_DistributionPortTypePipe and its relatives. */
class PortSizesTest {

  private static final double[] EAST = at(1, 0, 0);
  private static final double[] WEST = at(-1, 0, 0);
  private static final double[] NORTH = at(0, 1, 0);
  private int set = 700_000;

  private static String mm(double value) {
    return "IFCPOSITIVELENGTHMEASURE(" + value + ")";
  }

  /** Properties of port p of element n: name and value as they stand in the file. */
  private void state(Network network, int n, int p, String... namesAndValues) {
    network.record(
        InlineModel.properties(
            set, n * 1000L + 100 + p * 20, "Pset_DistributionPortTypePipe", namesAndValues));
    set += 20;
  }

  private static Network tee() {
    return new Network()
        .fitting(1, "IFCPIPEFITTING", "Tee", "$")
        .port(1, 1, at(0, 0, 0), WEST)
        .port(1, 2, at(200, 0, 0), EAST)
        .port(1, 3, at(100, 100, 0), NORTH);
  }

  private static String ends(MepElement fitting) {
    return fitting.ends().stream().map(InWords::section).collect(Collectors.joining(", "));
  }

  @ParameterizedTest
  @CsvSource({
    "NominalDiameter,50.,NominalDiameter,25.",
    "OuterDiameter,60.3,OuterDiameter,33.7",
    "NominalDiameter,50.,OuterDiameter,33.7"
  })
  void endsOfATeeThatMeetsNothingHaveTheSizesOfItsPorts(
      String runName, double runMm, String branchName, double branchMm) {
    Network network = tee();
    state(network, 1, 1, runName, mm(runMm));
    state(network, 1, 2, runName, mm(runMm));
    state(network, 1, 3, branchName, mm(branchMm));
    MepModel model = network.read();
    MepElement tee = element(model, 1000);

    assertThat(ends(tee)).isEqualTo("60.3 mm, 60.3 mm, 33.7 mm");
    assertThat(Objects.requireNonNull(tee.endSections()).how()).isEqualTo(How.PROPERTY);
    assertThat(diameterMm(tee)).isEqualTo(60.3);
    assertThat(Objects.requireNonNull(tee.section()).evidence().path())
        .isEqualTo("port Pset_DistributionPortTypePipe." + runName);
    assertThat(codes(model)).contains("NO_GEOMETRY");
  }

  @Test
  void portTellsTheEndThatMeetsNothing() {
    Network network =
        tee().pipe(2, at(-1000, 0, 0), EAST, 1000, 60.3).pipe(3, at(200, 0, 0), EAST, 1000, 60.3);
    state(network, 1, 3, "NominalDiameter", mm(25));

    assertThat(ends(network.element(1))).isEqualTo("60.3 mm, 60.3 mm, 33.7 mm");
  }

  @Test
  void whatIsMetWinsOverWhatThePortStates() {
    Network network =
        tee()
            .pipe(2, at(-1000, 0, 0), EAST, 1000, 60.3)
            .pipe(3, at(200, 0, 0), EAST, 1000, 60.3)
            .pipe(4, at(100, 100, 0), NORTH, 1000, 33.7);
    state(network, 1, 3, "NominalDiameter", mm(100));

    assertThat(ends(network.element(1))).isEqualTo("60.3 mm, 60.3 mm, 33.7 mm");
  }

  @Test
  void sizeOfAPortIsALosingCandidateBesideTheBody() {
    Network network =
        new Network()
            .drum(1, "Muffe", ".CONNECTOR.", at(0, 0, 0), EAST, 60, 60.3)
            .port(1, 1, at(0, 0, 0), WEST)
            .port(1, 2, at(60, 0, 0), EAST);
    state(network, 1, 1, "NominalDiameter", mm(25));
    MepElement socket = network.element(1);

    assertThat(diameterMm(socket)).isEqualTo(60.3);
    assertThat(Objects.requireNonNull(socket.section()).lost())
        .extracting(Candidate::how)
        .containsExactly(How.PROPERTY);
  }

  @Test
  void pipeWithoutAnySizeHasThatOfItsPorts() {
    Network network =
        new Network()
            .fitting(1, "IFCPIPESEGMENT", "Pipe", "$")
            .port(1, 1, at(0, 0, 0), WEST)
            .port(1, 2, at(1000, 0, 0), EAST);
    state(network, 1, 1, "NominalDiameter", mm(50));
    MepModel model = network.read();

    assertThat(diameterMm(element(model, 1000))).isEqualTo(60.3);
    assertThat(Objects.requireNonNull(element(model, 1000).section()).how())
        .isEqualTo(How.PROPERTY);
    assertThat(codes(model)).contains("NO_GEOMETRY");
  }

  @Test
  void portsOfADuctStateItsSides() {
    Network network =
        new Network()
            .fitting(1, "IFCDUCTSEGMENT", "Duct", "$")
            .port(1, 1, at(0, 0, 0), WEST)
            .port(1, 2, at(1000, 0, 0), EAST);
    List.of(1, 2)
        .forEach(p -> state(network, 1, p, "NominalWidth", mm(400), "NominalHeight", mm(200)));

    assertThat(InWords.section(value(network.element(1).section()))).isEqualTo("400.0 x 200.0 mm");
  }

  @Test
  void widthOfAPortWithoutAHeightIsTheDiameterOfARoundDuct() {
    Network network =
        new Network()
            .fitting(1, "IFCDUCTSEGMENT", "Duct", "$")
            .port(1, 1, at(0, 0, 0), WEST)
            .port(1, 2, at(1000, 0, 0), EAST);
    List.of(1, 2).forEach(p -> state(network, 1, p, "NominalWidth", mm(250)));

    assertThat(InWords.section(value(network.element(1).section()))).isEqualTo("250.0 mm");
  }

  /** DN50 may be a plastic pipe of 63 mm, and the branch of a tee is smaller than its run. */
  @Test
  void nominalSizesOfPortsContradictNothingThatTheyMayBe() {
    Network network =
        tee().pipe(2, at(-1000, 0, 0), EAST, 1000, 63).pipe(3, at(200, 0, 0), EAST, 1000, 63);
    state(network, 1, 3, "NominalDiameter", mm(25));
    state(network, 1, 1, "NominalDiameter", mm(50));

    assertThat(codes(network.read())).doesNotContain("SECTION_CONFLICT");
  }

  @ParameterizedTest(name = "a port of {1} {2} on a pipe drawn {0} mm wide contradicts it: {3}")
  @CsvSource({
    "60.3, NominalDiameter, 80., true",
    "60.3, OuterDiameter, 88.9, true",
    "60.3, NominalDiameter, 50., false",
    "54., NominalDiameter, 50., false",
    "60.3, OuterDiameter, 60.3, false",
  })
  void portThatContradictsTheBodyOfItsPipeIsTold(
      double drawnMm, String name, double statedMm, boolean told) {
    Network network = pipeWithPorts(drawnMm);
    state(network, 1, 2, name, mm(statedMm));
    MepModel model = network.read();

    assertThat(diameterMm(element(model, 1000))).isEqualTo(drawnMm);
    assertThat(codes(model).contains("SECTION_CONFLICT")).isEqualTo(told);
  }

  @Test
  void portOfABranchAtTheSideOfAPipeContradictsNothing() {
    Network network = pipeWithPorts(60.3).port(1, 3, at(500, 30.15, 0), NORTH);
    state(network, 1, 3, "NominalDiameter", mm(20));

    assertThat(codes(network.read())).doesNotContain("SECTION_CONFLICT");
  }

  /** Of ducts the nominal size is the diameter; pipes of 200 mm are 219.1 mm wide. */
  @Test
  void nominalSizeOfThePortOfADuctIsItsDiameter() {
    Network network =
        new Network()
            .fitting(1, "IFCDUCTFITTING", "Bend", ".BEND.")
            .port(1, 1, at(0, 0, 0), WEST)
            .port(1, 2, at(200, 200, 0), NORTH);
    state(network, 1, 1, "NominalDiameter", mm(200));
    state(network, 1, 2, "NominalDiameter", mm(200));

    assertThat(ends(network.element(1))).isEqualTo("200.0 mm, 200.0 mm");
  }

  private static Network pipeWithPorts(double diameterMm) {
    return new Network()
        .pipe(1, at(0, 0, 0), EAST, 1000, diameterMm)
        .port(1, 1, at(0, 0, 0), WEST)
        .port(1, 2, at(1000, 0, 0), EAST);
  }
}
