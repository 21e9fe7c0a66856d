package org.lagwright.ifc.extract.join;

import static org.assertj.core.api.Assertions.assertThat;
import static org.lagwright.ifc.extract.InlineModel.body;
import static org.lagwright.ifc.extract.InlineModel.element;
import static org.lagwright.ifc.extract.InlineModel.placed;
import static org.lagwright.ifc.extract.InlineModel.properties;
import static org.lagwright.ifc.extract.Network.at;

import java.util.List;
import java.util.Objects;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.lagwright.ifc.extract.InlineModel;
import org.lagwright.ifc.extract.Network;
import org.lagwright.ifc.model.ElementKey;
import org.lagwright.ifc.model.Form;
import org.lagwright.ifc.model.MepElement;
import org.lagwright.ifc.model.MepModel;
import org.lagwright.ifc.model.MepSystem;
import org.lagwright.ifc.model.Point;
import org.lagwright.ifc.model.Port;

/** Several files as one model. */
class ModelJoinerTest {

  private static final double TOLERANCE_M = 0.002;

  /** A pipe of 60.3 mm, 2.5 m up from a point. */
  static String pipe(String globalId, double xMm, double zMm) {
    return body("IFCCIRCLEPROFILEDEF(.AREA.,$,$,30.15)")
        + "#1=IFCPIPESEGMENT('%s',$,'Pipe',$,$,#30,#10,$,$);\n".formatted(globalId)
        + placed(30, xMm, 0, zMm);
  }

  /** Wool around the first or the last part of a pipe of another file. */
  static String wool(double zMm, double lengthMm, double outerMm) {
    String ring =
        "IFCCIRCLEHOLLOWPROFILEDEF(.AREA.,$,$,%s,%s)".formatted(outerMm / 2, (outerMm - 60.3) / 2);
    return "#1=IFCCOVERING('w',$,'Wool',$,$,#30,#10,$,.INSULATION.);\n"
        + body(ring).replace("#13,2500.)", "#13," + lengthMm + ")")
        + placed(30, 0, 0, zMm);
  }

  static List<MepModel> join(String... files) {
    List<MepModel> models =
        IntStream.range(0, files.length).mapToObj(i -> InlineModel.read(i, files[i])).toList();
    return ModelJoiner.join(models, TOLERANCE_M);
  }

  static List<String> codes(List<MepModel> models) {
    return models.stream().flatMap(m -> InlineModel.codes(m).stream()).toList();
  }

  private static @Nullable ElementKey repeats(List<MepModel> models) {
    return element(models.get(1), 1).repeats();
  }

  @Test
  void elementWithOneGlobalIdInTwoFilesCountsInTheFirst() {
    List<MepModel> models = join(pipe("a", 0, 0), pipe("a", 0, 0));

    assertThat(element(models.get(0), 1).repeats()).isNull();
    assertThat(repeats(models)).isEqualTo(new ElementKey(0, 1));
    assertThat(codes(models)).containsOnlyOnce("REPEATED_ELEMENTS");
  }

  @Test
  void sameBodyInTheSamePlaceIsOneElementWhateverItsGlobalId() {
    List<MepModel> models = join(pipe("a", 0, 0), pipe("b", 0.5, 0));

    assertThat(repeats(models)).isEqualTo(new ElementKey(0, 1));
    assertThat(codes(models)).containsOnlyOnce("REPEATED_ELEMENTS");
  }

  @Test
  void ofPipesDrawnInEachOtherThatOfTheSameNameIsTheElement() {
    String two = pipe("%s", 0, 0) + "#2=IFCPIPESEGMENT('%s',$,'Drain',$,$,#30,#10,$,$);\n";
    List<MepModel> models = join(two.formatted("a", "b"), two.formatted("c", "d"));

    assertThat(repeats(models)).isEqualTo(new ElementKey(0, 1));
    assertThat(element(models.get(1), 2).repeats()).isEqualTo(new ElementKey(0, 2));
  }

  @Test
  void capWithoutLengthInTheSamePlaceIsOneElementToo() {
    List<MepModel> models = join(cap("a", 0), cap("b", 0), cap("c", 5));

    assertThat(element(models.get(0), 1).form()).isEqualTo(Form.CAP);
    assertThat(element(models.get(0), 1).lengthM()).isNull();
    assertThat(repeats(models)).isEqualTo(new ElementKey(0, 1));
    assertThat(element(models.get(2), 1).repeats()).isNull();
  }

  /** A cone that is open at its round end of 60 mm. */
  private static String cap(String globalId, double xMm) {
    int corners = 24;
    StringBuilder points = new StringBuilder();
    StringBuilder faces = new StringBuilder();
    for (int i = 1; i <= corners; i++) {
      double turn = 2 * Math.PI * i / corners;
      points.append("(%s,%s,0.),".formatted(30 * Math.cos(turn), 30 * Math.sin(turn)));
      faces.append(
          "#%d=IFCINDEXEDPOLYGONALFACE((%d,%d,%d));\n"
              .formatted(100 + i, i, i % corners + 1, corners + 1));
    }
    String sides =
        IntStream.rangeClosed(1, corners)
            .mapToObj(i -> "#" + (100 + i))
            .collect(Collectors.joining(","));
    return """
        #1=IFCPIPEFITTING('%s',$,'Cap',$,$,#30,#10,$,$);
        #10=IFCPRODUCTDEFINITIONSHAPE($,$,(#11));
        #11=IFCSHAPEREPRESENTATION($,'Body','Tessellation',(#12));
        #12=IFCPOLYGONALFACESET(#13,.F.,(%s),$);
        #13=IFCCARTESIANPOINTLIST3D((%s(0.,0.,20.)));
        """
            .formatted(globalId, sides, points)
        + faces
        + placed(30, xMm, 0, 0);
  }

  /** What joins it in one file, or its words there, may tell another form. */
  @Test
  void fittingWhoseFormTwoFilesTellOtherwiseIsOneAndItIsTold() {
    String coupling =
        pipe("a", 0, 0).replace("IFCPIPESEGMENT('a',$,'Pipe'", "IFCPIPEFITTING('a',$,'Coupling'");
    List<MepModel> models = join(coupling, coupling.replace("'Coupling'", "'Flange'"));

    assertThat(repeats(models)).isEqualTo(new ElementKey(0, 1));
    assertThat(InlineModel.message(models.get(0), "FORM_CONFLICT"))
        .contains("It counts as coupling (in inline.ifc), but inline.ifc says flange.");
    assertThat(codes(models)).doesNotContain("SAME_ID_ELSEWHERE");
  }

  /** Its ports lie 40 mm before its ends; in the later file a pipe touches one of those. */
  @Test
  void elementWhoseEndsAreAllJoinedTakesNoJointOfItsRepetition() {
    double[] east = at(1, 0, 0);
    double[] west = at(-1, 0, 0);
    String joined =
        coupling()
            .pipe(1, at(-40, 0, 0), west, 500, 60.3)
            .port(1, 1, at(-40, 0, 0), east)
            .connect(1, 1, 2, 1)
            .pipe(3, at(140, 0, 0), east, 500, 60.3)
            .port(3, 1, at(140, 0, 0), west)
            .connect(3, 1, 2, 2)
            .text();
    String touched = coupling().pipe(4, at(0, 0, 0), west, 500, 60.3).text();
    List<MepModel> models = join(joined, touched);

    assertThat(element(models.get(1), 2000).repeats()).isEqualTo(new ElementKey(0, 2000));
    assertThat(element(models.get(1), 2000).ports())
        .extracting(Port::connectedTo)
        .contains(new ElementKey(1, 4000));
    assertThat(element(models.get(0), 2000).ports())
        .extracting(Port::connectedTo)
        .containsExactly(new ElementKey(0, 1000), new ElementKey(0, 3000));
  }

  /** A drum of which each of two files joins one end; the later one lies two kilometres away. */
  @Test
  void jointsUnderAnotherOriginAreThoseOfTheElementThatCounts() {
    double[] east = at(1, 0, 0);
    double[] west = at(-1, 0, 0);
    double awayMm = 2e6;
    String one = drum(0).pipe(1, at(0, 0, 0), west, 500, 60.3).text();
    String other = drum(awayMm).pipe(3, at(awayMm + 100, 0, 0), east, 500, 60.3).text();
    List<MepModel> models = join(one, other);

    assertThat(element(models.get(1), 2000).repeats()).isEqualTo(new ElementKey(0, 2000));
    assertThat(element(models.get(0), 2000).form()).isEqualTo(Form.COUPLING);
    assertThat(element(models.get(0), 2000).ports())
        .satisfiesExactlyInAnyOrder(
            port -> {
              assertThat(port.connectedTo()).isEqualTo(new ElementKey(0, 1000));
              assertThat(port.positionM()).isEqualTo(new Point(0, 0, 0));
            },
            port -> {
              assertThat(port.connectedTo()).isEqualTo(new ElementKey(1, 3000));
              Point atM = Objects.requireNonNull(port.positionM());
              assertThat(atM.distanceM(new Point(0.1, 0, 0))).isLessThan(1e-9);
            });
  }

  private static Network drum(double xMm) {
    return new Network().drum(2, "Coupling", "$", at(xMm, 0, 0), at(1, 0, 0), 100, 60.3);
  }

  private static Network coupling() {
    return new Network()
        .drum(2, "Coupling", "$", at(0, 0, 0), at(1, 0, 0), 100, 60.3)
        .port(2, 1, at(-40, 0, 0), at(-1, 0, 0))
        .port(2, 2, at(140, 0, 0), at(1, 0, 0));
  }

  @Test
  void sameGlobalIdOnAnotherStoreyIsAnotherElement() {
    List<MepModel> models = join(pipe("a", 0, 0), pipe("a", 0, 3500));

    assertThat(repeats(models)).isNull();
    assertThat(codes(models)).containsOnlyOnce("SAME_ID_ELSEWHERE");
  }

  @Test
  void sameGlobalIdUnderAnotherOriginIsTheSameElement() {
    List<MepModel> models = join(pipe("a", 0, 0), pipe("a", 24_525_622_890.0, 0));

    assertThat(repeats(models)).isEqualTo(new ElementKey(0, 1));
    assertThat(codes(models)).contains("FILES_FAR_APART");
  }

  @Test
  void thirdFileRepeatsTheFirstAndNotTheSecond() {
    List<MepModel> models = join(pipe("a", 0, 0), pipe("a", 0, 0), pipe("c", 0, 0));

    assertThat(element(models.get(2), 1).repeats()).isEqualTo(new ElementKey(0, 1));
  }

  @Test
  void unitsOfTheFilesMayDiffer() {
    String metres =
        InlineModel.MILLIMETRES.replace(".MILLI.", "$")
            + pipe("b", 0, 0).replace("30.15", "0.03015").replace("2500.", "2.5");
    List<MepModel> models =
        ModelJoiner.join(
            List.of(InlineModel.read(0, pipe("a", 0, 0)), InlineModel.read(1, "IFC4", metres)),
            TOLERANCE_M);

    assertThat(repeats(models)).isEqualTo(new ElementKey(0, 1));
  }

  @Test
  void insulationThatOnlyTheLaterFileShowsBelongsToTheElementThatCounts() {
    List<MepModel> models =
        join(
            pipe("a", 0, 0),
            pipe("a", 0, 0) + properties("Insulation Thickness", "IFCLENGTHMEASURE(30.)"));

    assertThat(element(models.get(0), 1).existingInsulation()).isNotNull();
  }

  @Test
  void endsThatTouchAcrossFilesAreConnected() {
    List<MepModel> models = join(pipe("a", 0, 0), pipe("b", 0, 2500.5));

    assertThat(connected(models.get(0))).containsExactly(new ElementKey(1, 1));
    assertThat(connected(models.get(1))).containsExactly(new ElementKey(0, 1));
    assertThat(codes(models)).containsOnlyOnce("FILES_CONNECTED");
  }

  @ParameterizedTest
  @CsvSource({"2510,30.15", "2500,44.45"})
  void endsWithAGapOrOfAnotherSizeAreNot(double zMm, double radiusMm) {
    String other = pipe("b", 0, zMm).replace("30.15", String.valueOf(radiusMm));
    List<MepModel> models = join(pipe("a", 0, 0), other);

    assertThat(connected(models.get(0))).isEmpty();
    assertThat(codes(models)).doesNotContain("FILES_CONNECTED");
  }

  @Test
  void portAtTheBoundaryOfTheFilesIsConnectedItself() {
    String port =
        """
        #60=IFCDISTRIBUTIONPORT('60',$,$,$,$,#61,$,.SOURCE.,$,$);
        #61=IFCLOCALPLACEMENT($,#62);
        #62=IFCAXIS2PLACEMENT3D(#63,#13,$);
        #63=IFCCARTESIANPOINT((0.,0.,2500.));
        #64=IFCRELNESTS('64',$,$,$,#1,(#60));
        """;
    List<MepModel> models = join(pipe("a", 0, 0) + port, pipe("b", 0, 2500));

    List<Port> ports = element(models.get(0), 1).ports();
    assertThat(ports).hasSize(1);
    assertThat(ports.get(0).step()).isEqualTo(60);
    assertThat(ports.get(0).connectedTo()).isEqualTo(new ElementKey(1, 1));
  }

  @Test
  void copiesWithinOneFileAreAFindingAndBothCount() {
    String twin = "#2=IFCPIPESEGMENT('b',$,'Pipe 2',$,$,#30,#10,$,$);\n";
    List<MepModel> models = join(pipe("a", 0, 0) + twin);

    assertThat(models.get(0).elements()).extracting(MepElement::repeats).containsOnlyNulls();
    assertThat(codes(models)).containsOnlyOnce("DRAWN_TWICE");
  }

  /** A pipe of 3 m along x from zero, and one drawn over it; real files hold such. */
  @ParameterizedTest(name = "{2} mm from {0}, {1}, {3} mm wide: {4}")
  @CsvSource({
    "500,0,1000,60.3,true",
    "-400,0,1000,60.3,true",
    "-600,0,1000,60.3,false",
    "3000,0,1000,60.3,false",
    "500,5,1000,60.3,true",
    "500,15,1000,60.3,true",
    "500,16,1000,60.3,false",
    "0,15,3000,60.3,true",
    "500,0,1000,48.3,false",
    "0,0,4000,60.3,true",
    "0,0,400000,60.3,true",
    "1000,0,3000,60.3,true",
    "1600,0,3000,60.3,false",
    "0,0,3000,76.1,true",
    "10,0,3000,76.1,false",
  })
  void pipeThatLiesMostlyInAnotherOneIsAFindingAndBothCount(
      double xMm, double yMm, double lengthMm, double diameterMm, boolean told) {
    Network one = new Network().pipe(1, at(0, 0, 0), at(1, 0, 0), 3000, 60.3);
    Network other = new Network().pipe(2, at(xMm, yMm, 0), at(1, 0, 0), lengthMm, diameterMm);
    List<MepModel> apart = ModelJoiner.join(List.of(one.read(0), other.read(1)), TOLERANCE_M);
    MepModel both = one.pipe(2, at(xMm, yMm, 0), at(1, 0, 0), lengthMm, diameterMm).read(0);
    List<MepModel> models = ModelJoiner.join(List.of(both), TOLERANCE_M);

    assertThat(models.get(0).elements()).extracting(MepElement::repeats).containsOnlyNulls();
    assertThat(codes(models).contains("DRAWN_TWICE")).isEqualTo(told);
    assertThat(apart.get(1).elements()).extracting(MepElement::repeats).containsOnlyNulls();
    assertThat(codes(apart).contains("DRAWN_TWICE")).isEqualTo(told);
  }

  /** In the second file stand both pipes of the first, one over the other. */
  @Test
  void ofPipesDrawnOverThoseThatCountAreTold() {
    Network over =
        new Network()
            .pipe(1, at(0, 0, 0), at(1, 0, 0), 3000, 60.3)
            .pipe(2, at(500, 0, 0), at(1, 0, 0), 1000, 60.3);
    List<MepModel> models = ModelJoiner.join(List.of(over.read(0), over.read(1)), TOLERANCE_M);

    assertThat(codes(models)).containsOnlyOnce("DRAWN_TWICE");
    assertThat(InlineModel.message(models.get(0), "DRAWN_TWICE")).contains("in this file");
  }

  /** A tee without a body and length; its ports tell where it is. */
  @Test
  void fittingOfOneSizeAndOneSetOfEndsIsOneWhateverItsLength() {
    Network both = tee(tee(new Network(), 1), 2);

    assertThat(element(tee(new Network(), 1).read(0), 1000).lengthM()).isNull();
    assertThat(codes(ModelJoiner.join(List.of(both.read(0)), TOLERANCE_M)))
        .containsOnlyOnce("DRAWN_TWICE");
    List<MepModel> models =
        ModelJoiner.join(
            List.of(tee(new Network(), 1).read(0), tee(new Network(), 2).read(1)), TOLERANCE_M);
    assertThat(element(models.get(1), 2000).repeats()).isEqualTo(new ElementKey(0, 1000));
  }

  private static Network tee(Network network, int n) {
    return network
        .fitting(n, "IFCPIPEFITTING", "Tee DN50", "JUNCTION")
        .port(n, 1, at(3000, 0, 0), at(-1, 0, 0))
        .port(n, 2, at(3160, 0, 0), at(1, 0, 0))
        .port(n, 3, at(3080, 80, 0), at(0, 1, 0));
  }

  /** Neither file counts a proxy, so that nothing is counted twice. */
  @Test
  void proxyOfTheGlobalIdOfAPipeIsNoSecondElement() {
    String proxy =
        pipe("a", 0, 0).replace("IFCPIPESEGMENT('a',$,'Pipe'", "IFCBUILDINGELEMENTPROXY('a',$,'X'");

    assertThat(codes(join(proxy, pipe("a", 0, 0)))).doesNotContain("SAME_ID_ELSEWHERE");
    assertThat(codes(join(pipe("a", 0, 0), proxy))).doesNotContain("SAME_ID_ELSEWHERE");
  }

  @Test
  void mapConversionsAreKeptApartAndComparedBetweenFiles() {
    String first = pipe("a", 0, 0) + conversion(500_000);
    List<MepModel> models = join(first, pipe("b", 9000, 0) + conversion(500_100));

    var kept = Objects.requireNonNull(models.get(0).georeference().conversion());
    assertThat(kept.eastings()).isEqualTo(500_000);
    assertThat(kept.rotationDeg()).isEqualTo(90);
    assertThat(kept.crs()).isEqualTo("EPSG:25832");
    assertThat(Objects.requireNonNull(element(models.get(0), 1).place().positionM()).x()).isZero();
    assertThat(codes(models)).containsOnlyOnce("MAP_CONVERSIONS_DIFFER");
    assertThat(codes(join(first, pipe("b", 9000, 0) + conversion(500_000))))
        .doesNotContain("MAP_CONVERSIONS_DIFFER");
  }

  /** Twins in coordinates of their own, 100 m from each other. */
  @Test
  void nothingIsJoinedByPlaceWhereMapConversionsDiffer() {
    String first = pipe("a", 0, 0) + conversion(500_000);

    List<MepModel> apart = join(first, pipe("b", 0, 0) + conversion(500_100));
    List<MepModel> touching = join(first, pipe("c", 0, 2500) + conversion(500_100));
    List<MepModel> covered = join(first, wool(0, 2500, 120.3) + conversion(500_100));
    List<MepModel> together = join(first, pipe("b", 0, 0) + conversion(500_000));

    assertThat(repeats(apart)).isNull();
    assertThat(connected(touching.get(0))).isEmpty();
    assertThat(element(covered.get(0), 1).existingInsulation()).isNull();
    assertThat(repeats(together)).isEqualTo(new ElementKey(0, 1));
  }

  /** A pipe in coordinates that count from another point, or in another direction. */
  @ParameterizedTest
  @CsvSource({"0,1,0,true", "1000,1,0,false", "0,0,1,false"})
  void nothingIsJoinedByPlaceWhereWorldCoordinateSystemsDiffer(
      double xMm, double ex, double ey, boolean one) {
    String world =
        """
        #90=IFCGEOMETRICREPRESENTATIONCONTEXT($,'Model',3,$,#91,$);
        #91=IFCAXIS2PLACEMENT3D(#92,$,#93);
        #92=IFCCARTESIANPOINT((%s,0.,0.));
        #93=IFCDIRECTION((%s,%s,0.));
        """
            .formatted(xMm, ex, ey);
    String project = InlineModel.MILLIMETRES.replace("$,#901)", "(#90),#901)");
    List<MepModel> models =
        ModelJoiner.join(
            List.of(
                InlineModel.read(0, pipe("a", 0, 0)),
                InlineModel.read(1, "IFC4", project + pipe("b", 0, 0) + world)),
            TOLERANCE_M);

    assertThat(repeats(models) != null).isEqualTo(one);
    assertThat(codes(models).contains("WORLD_SYSTEMS_DIFFER")).isEqualTo(!one);
  }

  @Test
  void systemThatOnlyTheLaterFileNamesIsThatOfTheElementThatCounts() {
    String system =
        """
        #90=IFCDISTRIBUTIONSYSTEM('90',$,'Heating flow',$,$,$,.HEATING.);
        #91=IFCRELASSIGNSTOGROUP('91',$,$,$,(#1),$,#90);
        """;
    List<MepModel> models = join(pipe("a", 0, 0), pipe("b", 0, 0) + system);

    assertThat(element(models.get(0), 1).systems())
        .extracting(MepSystem::name)
        .containsExactly("Heating flow");
  }

  /** The second file has the pipe again and what comes behind it. */
  @Test
  void whatIsConnectedToARepetitionIsConnectedToTheElementItself() {
    String next = "#2=IFCPIPESEGMENT('c',$,'Next',$,$,#40,#10,$,$);\n" + placed(40, 0, 0, 2500);
    List<MepModel> models = join(pipe("a", 0, 0), pipe("a", 0, 0) + next);

    assertThat(repeats(models)).isEqualTo(new ElementKey(0, 1));
    assertThat(connected(models.get(0))).containsExactly(new ElementKey(1, 2));
    assertThat(element(models.get(0), 1).openEnds()).hasSize(1);
    assertThat(element(models.get(1), 2).ports())
        .extracting(Port::connectedTo)
        .contains(new ElementKey(0, 1))
        .doesNotContain(new ElementKey(1, 1));
  }

  private static String conversion(double eastings) {
    return """
        #80=IFCMAPCONVERSION(#81,#82,%s,4000000.,12.,0.,1.,0.001);
        #81=IFCGEOMETRICREPRESENTATIONCONTEXT($,'Model',3,$,#15,$);
        #82=IFCPROJECTEDCRS('EPSG:25832',$,$,$,$,$,$);
        """
        .formatted(eastings);
  }

  private static List<ElementKey> connected(MepModel model) {
    return element(model, 1).ports().stream()
        .map(Port::connectedTo)
        .filter(Objects::nonNull)
        .toList();
  }

  /** Both are 2 m long, of one size, and have their middle at the origin. */
  @ParameterizedTest
  @CsvSource({"1,0,0,true", "-1,0,0,true", "0,1,0,false", "0.8,0.6,0,false"})
  void pipesThatCrossEachOtherInTheMiddleAreTwo(double x, double y, double z, boolean one) {
    Network first = new Network().pipe(1, at(-1000, 0, 0), at(1, 0, 0), 2000, 60.3);
    Network other =
        new Network().pipe(2, at(-1000 * x, -1000 * y, -1000 * z), at(x, y, z), 2000, 60.3);
    List<MepModel> models = ModelJoiner.join(List.of(first.read(0), other.read(1)), TOLERANCE_M);
    Network both =
        new Network()
            .pipe(1, at(-1000, 0, 0), at(1, 0, 0), 2000, 60.3)
            .pipe(2, at(-1000 * x, -1000 * y, -1000 * z), at(x, y, z), 2000, 60.3);

    assertThat(element(models.get(1), 2000).repeats() != null).isEqualTo(one);
    assertThat(codes(ModelJoiner.join(List.of(both.read(0)), TOLERANCE_M)).contains("DRAWN_TWICE"))
        .isEqualTo(one);
  }
}
