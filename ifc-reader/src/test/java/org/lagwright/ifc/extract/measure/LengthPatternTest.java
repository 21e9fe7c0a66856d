package org.lagwright.ifc.extract.measure;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.lagwright.ifc.extract.InlineModel.body;
import static org.lagwright.ifc.extract.InlineModel.element;
import static org.lagwright.ifc.extract.InlineModel.first;
import static org.lagwright.ifc.extract.InlineModel.properties;
import static org.lagwright.ifc.extract.InlineModel.read;
import static org.lagwright.ifc.extract.InlineModel.value;

import java.util.Objects;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.lagwright.ifc.extract.InlineModel;
import org.lagwright.ifc.model.Candidate;
import org.lagwright.ifc.model.Form;
import org.lagwright.ifc.model.How;
import org.lagwright.ifc.model.MepElement;
import org.lagwright.ifc.model.MepModel;

/** Names and units under which exporters write lengths, angles and radii. */
class LengthPatternTest {

  private static final String PIPE = "#1=IFCPIPESEGMENT('1',$,'Pipe',$,$,$,$,$,$);\n";
  private static final String METRES = InlineModel.MILLIMETRES.replace(".MILLI.", "$");
  private static final String BEND = "#1=IFCPIPEFITTING('1',$,'Bogen',$,$,$,$,$,.BEND.);\n";

  @ParameterizedTest
  @CsvSource({
    "Length,IFCPOSITIVELENGTHMEASURE(1750.)",
    "Laenge,IFCREAL(1750.)",
    "L\\X\\E4nge,IFCREAL(1750.)",
    "Longueur,IFCTEXT('1750')",
    "Longueur,IFCLABEL('1.75 m')",
    "Lengte (mm),IFCINTEGER(1750)",
    "Lengte [m],IFCREAL(1.75)",
    "Lengte (cm),IFCREAL(175.)",
    "\\X2\\0414043B0438043D0430\\X0\\,IFCLENGTHMEASURE(1750.)",
  })
  void lengthIsReadInEveryLanguageAndUnit(String name, String written) {
    MepElement pipe = first(PIPE + properties(name, written));

    assertThat(value(pipe.lengthM())).isCloseTo(1.75, within(1e-9));
  }

  /** Pset_FlowSegmentPipeSegment is the IFC2X3 set of occurrences. */
  @ParameterizedTest
  @CsvSource({"Pset_FlowSegmentPipeSegment", "Pset_PipeSegmentTypeCommon"})
  void lengthIsReadFromEitherCommonSet(String set) {
    MepElement pipe =
        first(
            PIPE
                + properties("Length", "IFCPOSITIVELENGTHMEASURE(1750.)")
                    .replace("'Set'", "'" + set + "'"));

    assertThat(value(pipe.lengthM())).isCloseTo(1.75, within(1e-9));
  }

  /** The file measures angles in radians; exporters write degrees as bare numbers all the same. */
  @ParameterizedTest
  @CsvSource({
    "Winkel,IFCREAL(90.)",
    "Winkel,IFCTEXT('90')",
    "Winkel,IFCTEXT('90\\X\\B0')",
    "BendAngle,IFCLABEL('90 deg')",
    "BendAngle,IFCPLANEANGLEMEASURE(1.5707963267948966)"
  })
  void angleOfABendIsReadInDegreesAndRadians(String name, String written) {
    MepElement bend =
        first(
            BEND
                + properties(
                    name, written, "Radius/X", "IFCTEXT('165.1')", "Laenge", "IFCREAL(259.338)"));

    assertThat(bend.form()).isEqualTo(Form.BEND);
    assertThat(value(bend.angleDeg())).isCloseTo(90, within(1e-9));
    assertThat(value(bend.bendRadiusM())).isCloseTo(0.1651, within(1e-9));
    // the length of a bend is its arc: pi / 2 x 165.1 mm
    assertThat(value(bend.lengthM())).isCloseTo(0.259338, within(1e-6));
  }

  /** A bend of 30 mm with straight ends of 15 mm each; its property tells the arc, or nonsense. */
  @ParameterizedTest
  @CsvSource({"47.124,false", "60.,true"})
  void statedArcOfABendWithStraightEndsIsNoConflict(String writtenMm, boolean conflict) {
    MepModel model =
        read(
            BEND.replace("$,$,$,$,$,.BEND.", "$,$,#14,#10,$,.BEND.")
                + """
                #10=IFCPRODUCTDEFINITIONSHAPE($,$,(#11));
                #11=IFCSHAPEREPRESENTATION($,'Body','AdvancedSweptSolid',(#12));
                #12=IFCSWEPTDISKSOLID(#20,10.,$,$,$);
                #14=IFCLOCALPLACEMENT($,#15);
                #15=IFCAXIS2PLACEMENT3D(#16,$,$);
                #16=IFCCARTESIANPOINT((0.,0.,0.));
                #20=IFCINDEXEDPOLYCURVE(#21,(IFCLINEINDEX((1,2)),IFCARCINDEX((2,3,4)),IFCLINEINDEX((4,5))),$);
                #21=IFCCARTESIANPOINTLIST3D(((-15.,0.,0.),(0.,0.,0.),(21.213203435596427,8.786796564403573,0.),(30.,30.,0.),(30.,45.,0.)));
                """
                + properties("Laenge", "IFCREAL(" + writtenMm + ")"));
    MepElement bend = element(model, 1);

    assertThat(value(bend.bendRadiusM())).isCloseTo(0.03, within(1e-9));
    assertThat(value(bend.lengthM())).isCloseTo(0.03 * Math.PI / 2 + 0.03, within(1e-9));
    assertThat(InlineModel.codes(model).contains("LENGTH_CONFLICT")).isEqualTo(conflict);
  }

  @ParameterizedTest
  @CsvSource({"30000.,differs", "2500.4,agrees"})
  void lengthOfAPropertyIsKeptBesideTheDrawnOne(String written, String why) {
    MepElement pipe =
        first(
            PIPE.replace("$,$,$,$,$,$)", "$,$,#14,#10,$,$)")
                + body("IFCCIRCLEPROFILEDEF(.AREA.,$,$,30.15)")
                + properties("Laenge", "IFCREAL(" + written + ")"));

    assertThat(value(pipe.lengthM())).isCloseTo(2.5, within(1e-9));
    assertThat(pipe.lengthM())
        .satisfies(
            length ->
                assertThat(length == null ? null : length.lost())
                    .singleElement()
                    .satisfies(
                        c -> {
                          assertThat(c.how()).isEqualTo(How.PROPERTY);
                          assertThat(c.why()).isEqualTo(why);
                        }));
  }

  /** 21.3 cannot be metres, so the length beside it is not in metres either. */
  @Test
  void bareLengthIsInMillimetresWhereABareDiameterBesideItMustBe() {
    MepElement pipe = pipeInMetres("21.3", "1500.");

    assertThat(value(pipe.lengthM())).isCloseTo(1.5, within(1e-9));
  }

  @Test
  void bareLengthStaysInTheUnitOfTheFileWhereTheDiameterIsInIt() {
    MepElement pipe = pipeInMetres("0.0213", "150.");

    assertThat(value(pipe.lengthM())).isCloseTo(150, within(1e-9));
  }

  private static MepElement pipeInMetres(String diameter, String length) {
    String diameterAndLength =
        properties(
            "OuterDiameter", "IFCREAL(" + diameter + ")", "Length", "IFCREAL(" + length + ")");
    return element(read("IFC4", METRES + PIPE + diameterAndLength), 1);
  }

  /** 1.5 mm in a file in millimetres is meant to be metres, or not; the typed one says so. */
  @ParameterizedTest
  @CsvSource({"IFCREAL(1.5),", "IFCTEXT('1.5'),", "IFCLENGTHMEASURE(1.5),0.0015"})
  void bareFigureThatNoPieceIsSoLongIsNoLength(String written, Double lengthM) {
    MepElement pipe =
        first(PIPE + properties("OuterDiameter", "IFCLENGTHMEASURE(60.3)", "L\\X\\E4nge", written));

    assertThat(pipe.lengthM() == null ? null : value(pipe.lengthM())).isEqualTo(lengthM);
  }

  /** The type says the unit of the file, the name another: the one that makes a piece of pipe. */
  @ParameterizedTest
  @CsvSource({
    "$,Lengte (mm),6000.,6,",
    "$,Lengte (mm),6.,6,",
    "$,Lengte (mm),500.,0.5,500",
    "$,Lengte,50.,50,",
    ".MILLI.,Length [m],6.,6,",
    ".MILLI.,Length [m],6000.,6,",
  })
  void lengthWhoseNameSaysAnotherUnitIsTakenInTheOneThatMakesAPiece(
      String prefix, String name, String figure, double lengthM, Double conflictM) {
    String units = InlineModel.MILLIMETRES.replace(".MILLI.", prefix);
    MepModel model =
        read("IFC4", units + PIPE + properties(name, "IFCLENGTHMEASURE(" + figure + ")"));
    MepElement pipe = element(model, 1);

    assertThat(value(pipe.lengthM())).isCloseTo(lengthM, within(1e-9));
    assertThat(Options.firstConflict(pipe.lengthM()).map(Candidate::value).orElse(null))
        .isEqualTo(conflictM);
    assertThat(InlineModel.codes(model).contains("LENGTH_CONFLICT")).isEqualTo(conflictM != null);
  }

  @Test
  void diameterAndInsulationWhoseNamesSayMillimetresArePossibleOnlyInThem() {
    String millimetres =
        properties(
            "Outside diameter (mm)",
            "IFCPOSITIVELENGTHMEASURE(110.)",
            "Insulation thickness (mm)",
            "IFCPOSITIVELENGTHMEASURE(30.)");
    MepElement pipe = element(read("IFC4", METRES + PIPE + millimetres), 1);

    assertThat(InlineModel.diameterMm(pipe)).isEqualTo(110);
    assertThat(Objects.requireNonNull(pipe.existingInsulation()).thicknessM()).isEqualTo(0.03);
  }

  /** Pieces of ducts are often as long as they are wide. */
  @ParameterizedTest
  @CsvSource({"IFCPIPESEGMENT,", "IFCDUCTSEGMENT,0.25"})
  void outsideDiameterOfAPipeWithoutBodyIsNotItsLength(String keyword, Double lengthM) {
    MepElement piece =
        first(
            PIPE.replace("IFCPIPESEGMENT", keyword)
                + properties(
                    "OuterDiameter", "IFCLENGTHMEASURE(250.)", "Length", "IFCLENGTHMEASURE(250.)"));

    assertThat(piece.lengthM() == null ? null : value(piece.lengthM())).isEqualTo(lengthM);
  }
}
