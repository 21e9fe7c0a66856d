package org.lagwright.ifc.extract.insulation;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.lagwright.ifc.extract.InlineModel.codes;
import static org.lagwright.ifc.extract.InlineModel.diameterMm;
import static org.lagwright.ifc.extract.InlineModel.element;
import static org.lagwright.ifc.extract.InlineModel.properties;
import static org.lagwright.ifc.extract.InlineModel.read;
import static org.lagwright.ifc.extract.Network.at;
import static org.lagwright.ifc.extract.insulation.InsulationTest.PIPE;
import static org.lagwright.ifc.extract.insulation.InsulationTest.covering;
import static org.lagwright.ifc.extract.insulation.InsulationTest.mm;
import static org.lagwright.ifc.extract.insulation.InsulationTest.of;
import static org.lagwright.ifc.extract.insulation.InsulationTest.ring;
import static org.lagwright.ifc.extract.insulation.InsulationTest.thickness;

import java.util.StringJoiner;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.lagwright.ifc.extract.Network;
import org.lagwright.ifc.extract.text.WordedThickness;
import org.lagwright.ifc.model.MepModel;

/** How thick insulation is, from whatever tells it: walls, layers of material, parts, texts. */
class InsulationThicknessTest {

  private static final String LAYERS =
      """
      #70=IFCMATERIAL('Steel',$,$);
      #71=IFCMATERIAL('Foam',$,$);
      #72=IFCMATERIALLAYER(#70,3.2,$,$,$,$,$);
      #73=IFCMATERIALLAYER(#71,30.,$,$,$,'Insulation',$);
      """;

  /** A covering without a body that is related to the pipe. */
  private static String related(String name) {
    return "#200=IFCCOVERING('c',$,'%s',$,$,$,$,$,.INSULATION.);\n".formatted(name)
        + "#5=IFCRELCOVERSBLDGELEMENTS('5',$,$,$,#1,(#200));\n";
  }

  @ParameterizedTest
  @ValueSource(strings = {"Rohr isoliert", "Stahlrohr mit Isolierung", "Tube isolant"})
  void coveringLiesAroundAPipeThatIsCalledInsulated(String name) {
    MepModel model =
        read(
            PIPE.replace("'Pipe'", "'" + name + "'")
                + covering(2, "Wool", ring(120.3, 30), 0, 2500));

    assertThat(mm(of(model, 1))).isCloseTo(30, within(0.01));
    assertThat(codes(model)).doesNotContain("COVERING_WITHOUT_HOST");
  }

  /** An air gap, 30 mm of foam, and its sheet. */
  @ParameterizedTest
  @CsvSource({".T.,30", ".F.,40", "$,40"})
  void layersOfACoveringThatInsulateAreItsThickness(String ventilated, double thicknessMm) {
    String layers =
        """
        #70=IFCMATERIAL('Sheet',$,$);
        #71=IFCMATERIAL('Foam',$,$);
        #72=IFCMATERIALLAYER($,10.,%s,$,$,$,$);
        #73=IFCMATERIALLAYER(#71,30.,.F.,$,$,$,$);
        #74=IFCMATERIALLAYER(#70,1.,$,$,$,$,$);
        #75=IFCMATERIALLAYERSET((#72,#73,#74),$,$);
        #76=IFCRELASSOCIATESMATERIAL('76',$,$,$,(#200),#75);
        """
            .formatted(ventilated);

    assertThat(mm(of(read(PIPE + related("Wool") + layers), 1)))
        .isCloseTo(thicknessMm, within(1e-6));
  }

  /** The bore of a tube is wider than the pipe, so that it can be pushed over it. */
  @Test
  void gapBetweenPipeAndHollowCoveringIsNoInsulation() {
    MepModel model = read(PIPE + covering(2, "Foam", ring(64 + 2 * 19, 19), 0, 2500));

    assertThat(mm(of(model, 1))).isCloseTo(19, within(1e-6));
    assertThat(codes(model)).doesNotContain("INSULATION_CONFLICT");
  }

  /** The same drawn as faces, with twelve corners around. */
  @Test
  void gapBetweenPipeAndRingOfFacesIsNoInsulation() {
    MepModel model = read(PIPE + ringOfFaces(64, 64 + 2 * 19));

    assertThat(mm(of(model, 1))).isCloseTo(19, within(0.01));
    assertThat(codes(model)).doesNotContain("INSULATION_CONFLICT");
  }

  private static String ringOfFaces(double boreMm, double outerMm) {
    int n = 12;
    StringJoiner points = new StringJoiner(",");
    StringJoiner faces = new StringJoiner(",");
    for (int ring = 0; ring < 4; ring++) {
      double radiusMm = (ring == 0 || ring == 3 ? boreMm : outerMm) / 2;
      for (int i = 0; i < n; i++) {
        double angle = 2 * Math.PI * i / n;
        points.add(
            "(%.6f,%.6f,%s)"
                .formatted(
                    radiusMm * Math.cos(angle),
                    radiusMm * Math.sin(angle),
                    ring < 2 ? "0." : "2500."));
        int a = ring * n + i + 1;
        int b = ring * n + (i + 1) % n + 1;
        int c = (ring + 1) % 4 * n + (i + 1) % n + 1;
        int d = (ring + 1) % 4 * n + i + 1;
        faces.add("(%d,%d,%d),(%d,%d,%d)".formatted(a, c, b, a, d, c));
      }
    }
    return """
        #200=IFCCOVERING('c',$,'Foam',$,$,#14,#210,$,.INSULATION.);
        #210=IFCPRODUCTDEFINITIONSHAPE($,$,(#211));
        #211=IFCSHAPEREPRESENTATION($,'Body','Tessellation',(#212));
        #212=IFCTRIANGULATEDFACESET(#213,$,.T.,(%s),$);
        #213=IFCCARTESIANPOINTLIST3D((%s));
        """
        .formatted(faces, points);
  }

  @Test
  void hollowCoverOfAValveIsAsThickAsItsWalls() {
    MepModel model =
        read(
            PIPE.replace("#1=IFCPIPESEGMENT", "#1=IFCVALVE")
                + covering(2, "Cover", ring(184, 32), 0, 2500));

    assertThat(mm(of(model, 1))).isCloseTo(32, within(1e-6));
  }

  /** A ring of faces, and a rectangle that is turned about the axis, both with a bore of 120 mm. */
  @ParameterizedTest
  @ValueSource(booleans = {true, false})
  void ringAroundAValveIsAsThickAsItsWallHoweverItIsDrawn(boolean faces) {
    String ring = faces ? ringOfFaces(120, 120 + 2 * 32) : turnedRing(60, 32);
    MepModel model = read(PIPE.replace("#1=IFCPIPESEGMENT", "#1=IFCVALVE") + ring);

    assertThat(mm(of(model, 1))).isCloseTo(32, within(0.01));
    assertThat(codes(model)).doesNotContain("INSULATION_CONFLICT");
  }

  private static String turnedRing(double boreRadiusMm, double wallMm) {
    return """
        #200=IFCCOVERING('c',$,'Cover',$,$,#14,#210,$,.INSULATION.);
        #210=IFCPRODUCTDEFINITIONSHAPE($,$,(#211));
        #211=IFCSHAPEREPRESENTATION($,'Body','SweptSolid',(#212));
        #212=IFCREVOLVEDAREASOLID(#213,#214,#215,6.283185307179586);
        #213=IFCRECTANGLEPROFILEDEF(.AREA.,$,#216,%s,2500.);
        #214=IFCAXIS2PLACEMENT3D(#217,#218,#219);
        #215=IFCAXIS1PLACEMENT(#217,#220);
        #216=IFCAXIS2PLACEMENT2D(#221,$);
        #217=IFCCARTESIANPOINT((0.,0.,0.));
        #218=IFCDIRECTION((0.,-1.,0.));
        #219=IFCDIRECTION((1.,0.,0.));
        #220=IFCDIRECTION((0.,1.,0.));
        #221=IFCCARTESIANPOINT((%s,1250.));
        """
        .formatted(wallMm, boreRadiusMm + wallMm / 2);
  }

  @Test
  void solidBoxAroundAValveDoesNotTellItsThickness() {
    MepModel model =
        read(
            PIPE.replace("#1=IFCPIPESEGMENT", "#1=IFCVALVE")
                + covering(2, "Box", "IFCCIRCLEPROFILEDEF(.AREA.,$,$,92.)", 0, 2500));

    assertThat(of(model, 1).thicknessM()).isNull();
  }

  /** Its body is hardly wider than the pipe, and what lies on the pipe lies on it. */
  @Test
  void solidCoveringAroundACouplingIsAsThickAsItIsWiderThanThePipe() {
    MepModel model =
        read(
            PIPE.replace("#1=IFCPIPESEGMENT('1',$,'Pipe'", "#1=IFCPIPEFITTING('1',$,'Muffe'")
                + covering(2, "Wool", "IFCCIRCLEPROFILEDEF(.AREA.,$,$,60.15)", 0, 2500));

    assertThat(mm(of(model, 1))).isCloseTo(30, within(1e-6));
  }

  @ParameterizedTest
  @ValueSource(strings = {"#75", "#76"})
  void coveringIsAsThickAsTheLayersOfItsMaterial(String material) {
    MepModel model =
        read(
            PIPE
                + LAYERS
                + related("Wool")
                + "#75=IFCMATERIALLAYERSET((#73),'30',$);\n"
                + "#76=IFCMATERIALLAYERSETUSAGE(#75,.AXIS2.,.POSITIVE.,0.,$);\n"
                + "#77=IFCRELASSOCIATESMATERIAL('77',$,$,$,(#200),%s);\n".formatted(material));

    assertThat(mm(of(model, 1))).isCloseTo(30, within(1e-6));
  }

  @Test
  void layerOfAPipeThatIsCalledInsulationIsThere() {
    MepModel model =
        read(
            PIPE
                + LAYERS
                + "#75=IFCMATERIALLAYERSET((#72,#73),'Pipe',$);\n"
                + "#77=IFCRELASSOCIATESMATERIAL('77',$,$,$,(#1),#75);\n");

    assertThat(mm(of(model, 1))).isCloseTo(30, within(1e-6));
    assertThat(of(model, 1).material()).isEqualTo("Foam");
  }

  @Test
  void pipeOfSteelLayersOnlyIsBare() {
    MepModel model =
        read(
            PIPE
                + LAYERS
                + "#75=IFCMATERIALLAYERSET((#72),'Pipe',$);\n"
                + "#77=IFCRELASSOCIATESMATERIAL('77',$,$,$,(#1),#75);\n");

    assertThat(element(model, 1).existingInsulation()).isNull();
  }

  @ParameterizedTest
  @CsvSource({
    "Pipe insulation 30 mm,30",
    "Dämmung - 12.5 mm,12.5",
    "Rohrschale 30mm,30",
    "Isolierung 3 cm,30",
    "Rohrschale 30 mm - 50 cm,30",
    "Insulation 40 cm,",
    "Armaflex 25 mm,25",
    "Insulation for pipe 60.3 mm,",
    "Rohrschale 60 x 30 mm,",
    "Insulation DN50 30 mm,",
    "Wool 20-30 mm,",
    "Wool 20 mm and 30 mm,",
    "Wool 30,"
  })
  void nameOfACoveringWithoutABodyTellsItsThickness(String name, Double expectedMm) {
    Double thicknessM = WordedThickness.metres(name).orElse(null);
    MepModel model = read(PIPE + related(name.replace("ä", "ae")));

    assertThat(of(model, 1).thicknessM()).isEqualTo(thicknessM);
    if (expectedMm == null) {
      assertThat(thicknessM).isNull();
    } else {
      assertThat(thicknessM).isCloseTo(expectedMm / 1000, within(1e-9));
    }
  }

  @ParameterizedTest
  @CsvSource({"Part,.INSULATION.,true", "Pipe insulation,$,true", "Casing,.NOTDEFINED.,false"})
  void partOfAPipeMayBeItsInsulation(String name, String predefined, boolean insulated) {
    String part =
        covering(2, "Part", ring(120.3, 30), 0, 2500)
            .replace("IFCCOVERING", "IFCBUILDINGELEMENTPART")
            .replace("'Part'", "'" + name + "'")
            .replace(".INSULATION.", predefined);
    MepModel model = read(PIPE + part + "#5=IFCRELAGGREGATES('5',$,$,$,#1,(#200));\n");

    assertThat(element(model, 1).existingInsulation() != null).isEqualTo(insulated);
    if (insulated) {
      assertThat(mm(of(model, 1))).isCloseTo(30, within(1e-6));
    }
    assertThat(model.elements()).hasSize(1);
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "Isolierst\\X\\E4rke",
        "Dicke der D\\X\\E4mmung",
        "D\\X\\E4mmschichtdicke",
        "\\X\\C9paisseur de l''isolation",
        "Espesor del aislamiento",
        "Grosor de aislamiento",
        "Spessore isolante",
        "Isolasjonstykkelse",
        "Isoleringstykkelse",
        "Grubo\\X2\\015B0107\\X0\\ izolacji",
        "Espessura do isolamento",
        "Dikte van isolatie",
        "Isolationstykkelse",
        "Eristyksen paksuus",
        "Espessura de isolamento",
        "Hr\\X2\\00FA\\X0\\bka izol\\X2\\00E1\\X0\\cie",
        "\\X2\\0130\\X0\\zolasyon kal\\X2\\0131\\X0\\nl\\X2\\0131011F0131\\X0\\",
        "\\X2\\03A003AC03C703BF03C2\\X0\\ \\X2\\03BC03CC03BD03C903C303B703C2\\X0\\",
        "\\X2\\4FDD6E29539A5EA6\\X0\\",
        "Pipe Insulation Thickness",
        "Insulation Thick",
        "THK_INSUL",
        "Thickness of thermal insulation",
        "Thermal insulation thickness"
      })
  void thicknessIsKnownByItsNameInManyLanguages(String name) {
    MepModel model = read(PIPE + properties(name, "IFCLENGTHMEASURE(40.)"));

    assertThat(mm(of(model, 1))).isCloseTo(40, within(1e-6));
  }

  @ParameterizedTest
  @CsvSource({
    "\\X2\\04180437043E043B044F04460438044F\\X0\\,\\X2\\043A0430044304470443043A\\X0\\ 13 \\X2\\043C043C\\X0\\,13",
    "Izolacja,We\\X2\\0142\\X0\\na 30 mm,30"
  })
  void millimetresInOtherLettersAndLanguagesAreTold(String name, String text, double expectedMm) {
    MepModel model = read(PIPE + properties(name, "IFCLABEL('" + text + "')"));

    assertThat(mm(of(model, 1))).isCloseTo(expectedMm, within(1e-6));
  }

  @ParameterizedTest
  @CsvSource({
    "Insulation Type,elastomeric foam 25 mm,25",
    "Daemmung,Mineralwolle 30mm,30",
    "Insulation Type,Elastomeric foam,",
    "Insulation,Yes,"
  })
  void textThatNamesTheInsulationShowsThatItIsThere(String name, String text, Double expectedMm) {
    MepModel model = read(PIPE + properties(name, "IFCLABEL('" + text + "')"));

    assertThat(of(model, 1).material()).isEqualTo(text);
    if (expectedMm == null) {
      assertThat(of(model, 1).thicknessM()).isNull();
    } else {
      assertThat(mm(of(model, 1))).isCloseTo(expectedMm, within(1e-6));
    }
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "",
        "-",
        "0",
        "0 mm",
        "30",
        "none",
        "No insulation",
        "keine",
        "ohne",
        "sans",
        "niet",
        "onge\\X2\\00EF\\X0\\soleerd",
        "Oisolerad",
        "Ikke isolert",
        "Uisoleret",
        "Erist\\X2\\00E4\\X0\\m\\X2\\00E4\\X0\\t\\X2\\00F6\\X0\\n",
        "Nie",
        "Ne",
        "Nenhum",
        "\\X2\\041E0442044104430442044104420432044304350442\\X0\\",
        "\\X2\\041D043504380437043E043B04380440043E04320430043D043D044B0439\\X0\\",
        "n/a"
      })
  void textThatDeniesInsulationOrNamesNoneShowsNothing(String text) {
    MepModel model = read(PIPE + properties("Insulation Type", "IFCLABEL('" + text + "')"));

    assertThat(element(model, 1).existingInsulation()).isNull();
  }

  /** The covering shows the diameter round the run, which is less than that of the branch. */
  @ParameterizedTest
  @CsvSource({"86.9, 30, 30", "93.7, 30, 30", "66.9, 30, 16.6"})
  void coveringOfATeeIsHeldAgainstTheEndThatItsDiameterBelongsTo(
      double outerMm, double statedMm, double thickMm) {
    MepModel model = tee(outerMm, statedMm).read();

    assertThat(diameterMm(element(model, 1000))).isEqualTo(33.7);
    assertThat(mm(of(model, 1000))).isCloseTo(thickMm, within(0.01));
    assertThat(codes(model).contains("INSULATION_CONFLICT")).isEqualTo(thickMm != statedMm);
  }

  /** A run of 26.9 mm with a branch of 33.7 mm, and a covering along the run. */
  private static Network tee(double outerMm, double statedMm) {
    return new Network()
        .fitting(1, "IFCPIPEFITTING", "Tee", "$")
        .port(1, 0, at(0, 0, 0), at(-1, 0, 0))
        .port(1, 1, at(100, 0, 0), at(1, 0, 0))
        .port(1, 2, at(50, 50, 0), at(0, 1, 0))
        .pipe(2, at(-1000, 0, 0), at(1, 0, 0), 1000, 26.9)
        .pipe(3, at(100, 0, 0), at(1, 0, 0), 1000, 26.9)
        .pipe(4, at(50, 50, 0), at(0, 1, 0), 1000, 33.7)
        .body(5, "IFCCOVERING", "Wool", ".INSULATION.", at(0, 0, 0), at(1, 0, 0), 100, outerMm)
        .record("#6000=IFCRELCOVERSBLDGELEMENTS('6',$,$,$,#1000,(#5000));")
        .record(thickness(50, statedMm));
  }
}
