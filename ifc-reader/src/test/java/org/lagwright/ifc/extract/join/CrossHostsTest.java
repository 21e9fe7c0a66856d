package org.lagwright.ifc.extract.join;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.lagwright.ifc.extract.InlineModel.codes;
import static org.lagwright.ifc.extract.InlineModel.element;
import static org.lagwright.ifc.extract.InlineModel.properties;
import static org.lagwright.ifc.extract.Network.at;

import java.util.List;
import java.util.Objects;
import java.util.stream.IntStream;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.lagwright.ifc.extract.InlineModel;
import org.lagwright.ifc.extract.Network;
import org.lagwright.ifc.extract.ReadOptions;
import org.lagwright.ifc.model.ElementKey;
import org.lagwright.ifc.model.ExistingInsulation;
import org.lagwright.ifc.model.Kind;
import org.lagwright.ifc.model.MepElement;
import org.lagwright.ifc.model.MepModel;

/** Coverings in one file around fittings of another are read as they are within a file. */
class CrossHostsTest {

  private static final double[] EAST = at(1, 0, 0);
  private static final double[] NORTH = at(0, 1, 0);

  private static List<MepModel> join(Network... files) {
    return ModelJoiner.join(
        IntStream.range(0, files.length).mapToObj(i -> files[i].read(i)).toList(),
        ReadOptions.DEFAULT.joinToleranceM());
  }

  /** An element whose body turns by 90 degrees from the x to the y axis about (0, 300, 0). */
  private static Network bent(
      Network network, int n, String keyword, String name, String last, String profile) {
    int id = 1000 * n;
    return network.record(
        """
        #%1$d=%2$s('%1$d',$,'%3$s',$,$,#%4$d,#%5$d,$,%6$s);
        #%5$d=IFCPRODUCTDEFINITIONSHAPE($,$,(#%7$d));
        #%7$d=IFCSHAPEREPRESENTATION($,'Body','SweptSolid',(#%8$d));
        #%8$d=IFCREVOLVEDAREASOLID(#%9$d,$,#%10$d,1.5707963267948966);
        #%4$d=IFCLOCALPLACEMENT($,#%11$d);
        #%11$d=IFCAXIS2PLACEMENT3D(#%12$d,#%13$d,#%14$d);
        #%12$d=IFCCARTESIANPOINT((0.,0.,0.));
        #%13$d=IFCDIRECTION((1.,0.,0.));
        #%9$d=%15$s;
        #%10$d=IFCAXIS1PLACEMENT(#%16$d,#%14$d);
        #%16$d=IFCCARTESIANPOINT((300.,0.,0.));
        #%14$d=IFCDIRECTION((0.,1.,0.));"""
            .formatted(
                id, keyword, name, id + 4, id + 1, last, id + 2, id + 3, id + 8, id + 9, id + 5,
                id + 6, id + 7, id + 11, profile, id + 10));
  }

  private static Network bend(Network network) {
    return bent(network, 1, "IFCPIPEFITTING", "Bend", "$", circle(60.3));
  }

  private static String circle(double diameterMm) {
    return "IFCCIRCLEPROFILEDEF(.AREA.,$,$," + diameterMm / 2 + ")";
  }

  private static Network wool(Network network, int n, double innerMm, double outerMm) {
    String ring =
        "IFCCIRCLEHOLLOWPROFILEDEF(.AREA.,$,$,%s,%s)"
            .formatted(outerMm / 2, (outerMm - innerMm) / 2);
    return bent(network, n, "IFCCOVERING", "Wool", ".INSULATION.", ring);
  }

  private static ExistingInsulation insulation(MepElement element) {
    return Objects.requireNonNull(element.existingInsulation());
  }

  private static @Nullable Double thicknessMm(@Nullable ExistingInsulation insulation) {
    Double thicknessM = insulation == null ? null : insulation.thicknessM();
    return thicknessM == null ? null : Math.round(thicknessM * 1e6) / 1e3;
  }

  @Test
  void coveringLiesAroundTheBendOfAnotherFile() {
    List<MepModel> models = join(bend(new Network()), wool(new Network(), 2, 60.3, 120.3));
    ExistingInsulation shown = insulation(element(models.get(0), 1000));

    assertThat(shown.thicknessM()).isCloseTo(0.03, within(1e-6));
    assertThat(shown.share()).isEqualTo(1);
    assertThat(shown.coverings()).containsExactly(new ElementKey(1, 2000));
    assertThat(codes(models.get(1))).doesNotContain("COVERING_WITHOUT_HOST");
  }

  /** Its ends are then known from its joints only. */
  @Test
  void bendBetweenPipesIsFoundToo() {
    Network line =
        bend(new Network())
            .pipe(3, at(-1000, 0, 0), EAST, 1000, 60.3)
            .pipe(4, at(300, 300, 0), NORTH, 1000, 60.3);
    List<MepModel> models = join(line, wool(new Network(), 2, 60.3, 120.3));

    assertThat(element(models.get(0), 1000).openEnds()).isEmpty();
    assertThat(thicknessMm(insulation(element(models.get(0), 1000)))).isEqualTo(30);
    assertThat(element(models.get(0), 3000).existingInsulation()).isNull();
    assertThat(element(models.get(0), 4000).existingInsulation()).isNull();
  }

  /** Nothing that was read of it tells where it ends. */
  @Test
  void bendWhosePortsHaveNoPlaceIsFoundToo() {
    Network line =
        bend(new Network())
            .pipe(3, at(-1000, 0, 0), EAST, 1000, 60.3)
            .pipe(4, at(300, 300, 0), NORTH, 1000, 60.3)
            .unplacedPort(1, 0)
            .unplacedPort(1, 1)
            .unplacedPort(3, 0)
            .unplacedPort(4, 0)
            .connect(1, 0, 3, 0)
            .connect(1, 1, 4, 0);
    List<MepModel> models = join(line, wool(new Network(), 2, 60.3, 120.3));

    assertThat(element(models.get(0), 1000).openEnds()).isEmpty();
    assertThat(thicknessMm(insulation(element(models.get(0), 1000)))).isEqualTo(30);
  }

  @Test
  void layersAroundABendAddUp() {
    Network wool = wool(wool(new Network(), 2, 60.3, 120.3), 3, 120.3, 160.3);
    ExistingInsulation shown = insulation(element(join(bend(new Network()), wool).get(0), 1000));

    assertThat(thicknessMm(shown)).isEqualTo(50);
    assertThat(shown.coverings()).hasSize(2);
  }

  @Test
  void bendBesideTheCoveringIsNotItsHost() {
    String wool = wool(new Network(), 2, 60.3, 120.3).text();
    String aside = wool.replace("IFCCARTESIANPOINT((0.,0.,0.))", "IFCCARTESIANPOINT((80.,0.,0.))");
    List<MepModel> models =
        ModelJoiner.join(
            List.of(bend(new Network()).read(0), InlineModel.read(1, aside)),
            ReadOptions.DEFAULT.joinToleranceM());

    assertThat(element(models.get(0), 1000).existingInsulation()).isNull();
    assertThat(codes(models.get(1))).containsOnlyOnce("COVERING_WITHOUT_HOST");
  }

  @Test
  void coveringThatIsNoWiderThanTheDuctBendOfAnotherFileIsItsLining() {
    Network duct =
        bent(
            new Network(),
            1,
            "IFCDUCTFITTING",
            "Bend",
            "$",
            "IFCRECTANGLEPROFILEDEF(.AREA.,$,$,300.,200.)");
    Network lining =
        bent(
            new Network(),
            2,
            "IFCCOVERING",
            "Foam",
            ".INSULATION.",
            "IFCRECTANGLEPROFILEDEF(.AREA.,$,$,280.,180.)");
    MepElement host = element(join(duct, lining).get(0), 1000);

    assertThat(host.lining()).isNotNull();
    assertThat(host.existingInsulation()).isNull();
  }

  /** A box around a valve keeps off it, so what it states counts. */
  @Test
  void boxAroundAValveOfAnotherFileHasTheThicknessThatItStates() {
    Network valve =
        new Network().body(1, "IFCVALVE", "Gate valve", "$", at(0, 0, 0), EAST, 200, 60.3);
    String stated =
        properties(
            2500, 2000, "Pset_CoveringCommon", "TotalThickness", "IFCPOSITIVELENGTHMEASURE(40.)");
    Network box =
        new Network()
            .body(2, "IFCCOVERING", "Box", ".INSULATION.", at(0, 0, 0), EAST, 200, 260)
            .record(stated);

    assertThat(thicknessMm(insulation(element(join(valve, box).get(0), 1000)))).isEqualTo(40);
  }

  /** Its ends lie nearer to each other than a port may lie to one of them. */
  @ParameterizedTest
  @ValueSource(doubles = {12, 18, 40})
  void thinFlangeBetweenPipesIsInsulatedByTheCoveringOfAnotherFile(double thickMm) {
    Network line =
        new Network()
            .pipe(3, at(-1000, 0, 0), EAST, 1000, 60.3)
            .drum(1, "Flange", ".CONNECTOR.", at(0, 0, 0), EAST, thickMm, 165)
            .pipe(4, at(thickMm, 0, 0), EAST, 1000, 60.3);
    Network cap =
        new Network()
            .body(2, "IFCCOVERING", "Wool", ".INSULATION.", at(0, 0, 0), EAST, thickMm, 245)
            .record(
                properties(2500, 2000, "Set", "TotalThickness", "IFCPOSITIVELENGTHMEASURE(40.)"));

    assertThat(element(join(line, cap).get(0), 1000).kind()).isEqualTo(Kind.PIPE_FITTING);
    assertThat(thicknessMm(insulation(element(join(line, cap).get(0), 1000)))).isEqualTo(40);
  }

  /** It was found around the inner pipe in its own file. */
  @Test
  void coveringLiesOnTheOuterOfTwoPipesThoughThatStandsInAnotherFile() {
    Network inner =
        new Network()
            .pipe(1, at(0, 0, 0), EAST, 1000, 33.7)
            .body(2, "IFCCOVERING", "Wool", ".INSULATION.", at(0, 0, 0), EAST, 1000, 120.3);
    Network outer = new Network().pipe(3, at(0, 0, 0), EAST, 1000, 60.3);
    List<MepModel> models = join(inner, outer);

    assertThat(element(inner.read(0), 1000).existingInsulation()).isNotNull();
    assertThat(element(models.get(0), 1000).existingInsulation()).isNull();
    assertThat(thicknessMm(insulation(element(models.get(1), 3000)))).isEqualTo(30);
  }

  @ParameterizedTest
  @CsvSource({"120.3,COVERING", "60.3,OTHER"})
  void proxyCalledInsulationIsThatWhereItIsWiderThanThePipeOfAnotherFile(
      double outerMm, Kind kind) {
    Network proxy =
        new Network()
            .body(
                2,
                "IFCBUILDINGELEMENTPROXY",
                "Pipe insulation",
                "$",
                at(0, 0, 0),
                EAST,
                1000,
                outerMm);
    List<MepModel> models = join(new Network().pipe(1, at(0, 0, 0), EAST, 1000, 60.3), proxy);

    assertThat(element(models.get(1), 2000).kind()).isEqualTo(kind);
    assertThat(thicknessMm(element(models.get(0), 1000).existingInsulation()))
        .isEqualTo(kind == Kind.COVERING ? 30.0 : null);
    assertThat(codes(models.get(1)).contains("PROXY_LOOKS_LIKE_SERVICE"))
        .isEqualTo(kind == Kind.OTHER);
  }

  /** A tee of two cylinders, in as many ways as coverings may be cut about it. */
  @ParameterizedTest
  @CsvSource({"120.3,30", "160.3,50"})
  void coveringWithThreeEndsLiesAroundTheTeeOfAnotherFile(double outerMm, double thicknessMm) {
    List<MepModel> models =
        join(
            tee(new Network(), 1, "IFCPIPEFITTING", "Tee", "$", 60.3),
            tee(new Network(), 2, "IFCCOVERING", "Wool", ".INSULATION.", outerMm));
    List<MepModel> one =
        join(
            tee(
                tee(new Network(), 1, "IFCPIPEFITTING", "Tee", "$", 60.3),
                2,
                "IFCCOVERING",
                "Wool",
                ".INSULATION.",
                outerMm));

    assertThat(thicknessMm(insulation(element(models.get(0), 1000)))).isEqualTo(thicknessMm);
    assertThat(thicknessMm(insulation(element(one.get(0), 1000)))).isEqualTo(thicknessMm);
  }

  private static Network tee(
      Network network, int n, String keyword, String name, String last, double diameterMm) {
    int id = 1000 * n;
    return network.record(
        """
        #%1$d=%2$s('%1$d',$,'%3$s',$,$,#%15$d,#%4$d,$,%5$s);
        #%4$d=IFCPRODUCTDEFINITIONSHAPE($,$,(#%6$d));
        #%15$d=IFCLOCALPLACEMENT($,#%16$d);
        #%16$d=IFCAXIS2PLACEMENT3D(#%17$d,$,$);
        #%17$d=IFCCARTESIANPOINT((0.,0.,0.));
        #%6$d=IFCSHAPEREPRESENTATION($,'Body','SweptSolid',(#%7$d,#%8$d));
        #%7$d=IFCEXTRUDEDAREASOLID(#%9$d,$,#%10$d,400.);
        #%8$d=IFCEXTRUDEDAREASOLID(#%9$d,#%11$d,#%10$d,200.);
        #%9$d=%12$s;
        #%10$d=IFCDIRECTION((0.,0.,1.));
        #%11$d=IFCAXIS2PLACEMENT3D(#%13$d,#%14$d,#%10$d);
        #%13$d=IFCCARTESIANPOINT((0.,0.,200.));
        #%14$d=IFCDIRECTION((1.,0.,0.));"""
            .formatted(
                id,
                keyword,
                name,
                id + 1,
                last,
                id + 2,
                id + 3,
                id + 4,
                id + 5,
                id + 6,
                id + 7,
                circle(diameterMm),
                id + 8,
                id + 9,
                id + 10,
                id + 11,
                id + 12));
  }
}
