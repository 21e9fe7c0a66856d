package org.lagwright.ifc.extract.measure;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.lagwright.ifc.extract.InlineModel.body;
import static org.lagwright.ifc.extract.InlineModel.codes;
import static org.lagwright.ifc.extract.InlineModel.element;
import static org.lagwright.ifc.extract.InlineModel.first;
import static org.lagwright.ifc.extract.InlineModel.properties;
import static org.lagwright.ifc.extract.InlineModel.read;
import static org.lagwright.ifc.extract.InlineModel.value;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.lagwright.ifc.extract.InlineModel;
import org.lagwright.ifc.extract.text.InWords;
import org.lagwright.ifc.model.MepElement;
import org.lagwright.ifc.model.MepModel;

/** Sizes, angles and offsets that only properties and names give. */
class StatedSizesTest {

  private static final String METRES = InlineModel.MILLIMETRES.replace(".MILLI.", "$");

  private static final String FEET =
      InlineModel.MILLIMETRES.replace(
              "#902=IFCSIUNIT(*,.LENGTHUNIT.,.MILLI.,.METRE.);",
              "#902=IFCCONVERSIONBASEDUNIT($,.LENGTHUNIT.,'FOOT',#904);")
          + "#904=IFCMEASUREWITHUNIT(IFCRATIOMEASURE(0.3048),#905);\n"
          + "#905=IFCSIUNIT(*,.LENGTHUNIT.,$,.METRE.);\n";

  private static String mm(double value) {
    return "IFCPOSITIVELENGTHMEASURE(" + value + ")";
  }

  private static String item(String keyword, String name) {
    return "#1=%s('1',$,'%s',$,$,$,$,$,$);\n".formatted(keyword, name);
  }

  /** Name and value of properties, with a semicolon between all of them. */
  private static String stating(String namesAndValues) {
    return properties(namesAndValues.split(";", -1));
  }

  private static @Nullable String size(MepElement element) {
    return element.section() == null ? null : InWords.section(value(element.section()));
  }

  private static String ends(MepElement element) {
    return element.ends().stream().map(InWords::section).collect(Collectors.joining(", "));
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "IFCPIPEFITTING|OuterDiameter;IFCPOSITIVELENGTHMEASURE(60.3)|60.3 mm",
        "IFCPIPEFITTING|NominalDiameter;IFCPOSITIVELENGTHMEASURE(50.)|60.3 mm",
        "IFCVALVE|NominalDiameter;IFCPOSITIVELENGTHMEASURE(50.)|60.3 mm",
        "IFCVALVE|Size;IFCPOSITIVELENGTHMEASURE(50.)|60.3 mm",
        "IFCDUCTFITTING|Diameter;IFCPOSITIVELENGTHMEASURE(250.)|250.0 mm",
        "IFCDUCTFITTING|Width;IFCREAL(400.);Height;IFCREAL(200.)|400.0 x 200.0 mm",
        "IFCDAMPER|Width;IFCREAL(400.);Height;IFCREAL(200.)|400.0 x 200.0 mm",
        "IFCVALVE|Width;IFCREAL(400.);Height;IFCREAL(200.)|"
      })
  void fittingWithoutBodyHasTheSizeThatItsPropertiesState(
      String keyword, String stated, String inWords) {
    MepModel model = read(item(keyword, "Part") + stating(stated));

    assertThat(size(element(model, 1))).isEqualTo(inWords);
    assertThat(codes(model))
        .containsExactly(inWords == null ? "GEOMETRY_ONLY_PARTLY_MEASURED" : "NO_GEOMETRY");
  }

  @Test
  void damperHasTheDiameterOfItsName() {
    assertThat(size(first(item("IFCDAMPER", "Damper \u00D8250")))).isEqualTo("250.0 mm");
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "Tee|DN1;IFCREAL(50.);DN2;IFCREAL(50.);DN3;IFCREAL(25.)|60.3 mm, 60.3 mm, 33.7 mm",
        "Tee|DN1;IFCREAL(50.);DN2;IFCREAL(25.);DN3;IFCREAL(25.)|60.3 mm, 33.7 mm, 33.7 mm",
        "Tee|DN1;IFCREAL(50.);DN3;IFCREAL(25.)|60.3 mm, 60.3 mm, 33.7 mm",
        "Reducer|DN1;IFCREAL(25.);DN2;IFCREAL(50.)|33.7 mm, 60.3 mm",
        "Tee DN 50 / DN 25|Tag;IFCTEXT('x')|60.3 mm, 60.3 mm, 33.7 mm",
        "Reducer 3\"x2\"|Tag;IFCTEXT('x')|88.9 mm, 60.3 mm",
        "Reducer|Size;IFCTEXT('80 mm\u00F8-50 mm\u00F8')|88.9 mm, 60.3 mm"
      })
  void pipeFittingHasTheEndsThatAreStatedAndTheLargestAsItsSize(
      String name, String stated, String ends) {
    MepElement fitting = first(item("IFCPIPEFITTING", name) + stating(stated));

    assertThat(ends(fitting)).isEqualTo(ends);
    assertThat(size(fitting))
        .isEqualTo(
            List.of(ends.split(", ")).stream()
                .max((a, b) -> Double.compare(mmOf(a), mmOf(b)))
                .orElseThrow());
  }

  private static double mmOf(String inWords) {
    return Double.parseDouble(inWords.replace(" mm", ""));
  }

  @Test
  void listHasOneFigureForEachEnd() {
    String list =
        """
        #510=IFCPROPERTYLISTVALUE('NominalDiameter',$,(IFCPOSITIVELENGTHMEASURE(80.),IFCPOSITIVELENGTHMEASURE(50.)),$);
        #500=IFCPROPERTYSET('s',$,'Set',$,(#510));
        #501=IFCRELDEFINESBYPROPERTIES('r',$,$,$,(#1),#500);
        """;

    assertThat(ends(first(item("IFCPIPEFITTING", "Reducer") + list))).isEqualTo("88.9 mm, 60.3 mm");
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "Reducer 400x200/300x200|400.0 x 200.0 mm, 300.0 x 200.0 mm",
        "Reducer 500 x 300/400 x 250|500.0 x 300.0 mm, 400.0 x 250.0 mm",
        "Reducer 600x400/\u00D8315|600.0 x 400.0 mm, 315.0 mm",
        "Reducer 12 1/2\"\u00D8-10\"\u00D8|317.5 mm, 254.0 mm",
        "Reducer 14\"\u00D8/10-1/2\"\u00D8|355.6 mm, 266.7 mm",
        "Reducer 315/250|315.0 mm, 250.0 mm",
        "Tee 800x400 / 400x400|800.0 x 400.0 mm, 800.0 x 400.0 mm, 400.0 x 400.0 mm",
        "Tee 315 / 315 / 250|315.0 mm, 315.0 mm, 250.0 mm"
      })
  void nameOfADuctFittingGivesItsEnds(String name, String ends) {
    MepModel model = read(item("IFCDUCTFITTING", name));

    assertThat(ends(element(model, 1))).isEqualTo(ends);
    assertThat(size(element(model, 1))).isEqualTo(ends.substring(0, ends.indexOf(",")));
    assertThat(codes(model)).containsExactly("NO_GEOMETRY");
  }

  /** 12.5 in = 317.5 mm, 10.5 in = 266.7 mm, 8.5 in = 215.9 mm. */
  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "12 1/2\"\u00F8|317.5 mm",
        "10 1/2\"x8 1/2\"|266.7 x 215.9 mm",
        "10-1/2\"x8-1/2\"|266.7 x 215.9 mm",
        "DN315|315.0 mm",
        "D=250|250.0 mm"
      })
  void nameOfADuctGivesItsSize(String name, String inWords) {
    assertThat(size(first(item("IFCDUCTSEGMENT", name)))).isEqualTo(inWords);
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "Nennweite;IFCPOSITIVELENGTHMEASURE(315.)|315.0 mm",
        "Shape;IFCLABEL('FLATOVAL');Width;IFCREAL(600.);Height;IFCREAL(200.)|600.0 x 200.0 mm oval",
        "CrossSectionShape;IFCLABEL('ROUND');Width;IFCREAL(315.);Height;IFCREAL(315.)|315.0 mm",
        "Shape;IFCLABEL('RECTANGULAR');Width;IFCREAL(315.);Height;IFCREAL(315.)|315.0 x 315.0 mm",
        "Shape;IFCLABEL('RECTANGULAR');NominalDiameterOrWidth;IFCREAL(400.)|",
        "Shape;IFCLABEL('ROUND');NominalDiameterOrWidth;IFCREAL(400.)|400.0 mm"
      })
  void ductHasTheShapeThatIsStated(String stated, String inWords) {
    assertThat(size(first(item("IFCDUCTSEGMENT", "Duct") + stating(stated)))).isEqualTo(inWords);
  }

  /** NPS 4 is 114.3 mm wide, NPS 1 1/2 is 48.3 mm. */
  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "Pipe 4\"|Tag;IFCTEXT('x')|114.3 mm|DN100",
        "Pipe 1 1/2\"|Tag;IFCTEXT('x')|48.3 mm|DN40",
        "Pipe NPS 4|Tag;IFCTEXT('x')|114.3 mm|DN100",
        "Pipe|Size;IFCTEXT('4\"\u00F8')|114.3 mm|DN100",
        "Pipe|NominalDiameter;IFCPOSITIVELENGTHMEASURE(101.6)|114.3 mm|DN100",
        "Pipe|NominalDiameter;IFCREAL(50.);Diameter;IFCREAL(50.)|60.3 mm|DN50",
        "Riser 10''-6\"|Tag;IFCTEXT('x')||"
      })
  void nominalSizeOfAPipeInInchesIsThatOfTheTables(
      String name, String stated, String inWords, String nominal) {
    MepElement pipe = first(item("IFCPIPESEGMENT", name) + stating(stated));

    assertThat(size(pipe)).isEqualTo(inWords);
    assertThat(pipe.nominalSize()).isEqualTo(nominal);
  }

  @Test
  void plainDiameterOfAFileInFeetIsTheNominalSize() {
    MepModel model =
        InlineModel.read(
            "IFC4", FEET + item("IFCPIPESEGMENT", "Pipe") + properties("Diameter", mm(4.0 / 12)));

    assertThat(size(element(model, 1))).isEqualTo("114.3 mm");
    assertThat(codes(model)).contains("SIZE_FROM_NOMINAL");
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "NominalDiameter;IFCREAL(100.)|SECTION_CONFLICT",
        "NominalDiameter;IFCREAL(50.)|",
        "InnerDiameter;IFCPOSITIVELENGTHMEASURE(80.)|SECTION_CONFLICT",
        "InnerDiameter;IFCPOSITIVELENGTHMEASURE(54.5)|",
        "Diameter;IFCPOSITIVELENGTHMEASURE(50.)|",
        "Size;IFCLABEL('50 mm\u00F8')|",
        "Size;IFCLABEL('2\"\u00F8')|"
      })
  void whatIsStatedOfAPipeOf60MillimetresIsToldWhereItCannotBe(String stated, String code) {
    MepModel model =
        read(
            "#1=IFCPIPESEGMENT('1',$,'Pipe',$,$,#14,#10,$,$);\n"
                + body("IFCCIRCLEPROFILEDEF(.AREA.,$,$,30.15)")
                + stating(stated));

    assertThat(size(element(model, 1))).isEqualTo("60.3 mm");
    assertThat(codes(model)).isEqualTo(code == null ? List.of() : List.of(code));
  }

  /** No pipe is 8 m wide; a figure that says it is in metres is left. */
  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "OuterDiameter|IFCREAL(10.)|10.0 mm",
        "OuterDiameter|IFCINTEGER(8)|8.0 mm",
        "Aussendurchmesser|IFCTEXT('10')|10.0 mm",
        "OuterDiameter|IFCREAL(0.06)|60.0 mm",
        "OuterDiameter mm|IFCREAL(60.3)|60.3 mm",
        "OuterDiameter [m]|IFCREAL(8.)|"
      })
  void bareDiameterOfAFileInMetresThatNoPipeHasIsInMillimetres(
      String name, String value, String inWords) {
    MepModel model =
        InlineModel.read("IFC4", METRES + item("IFCPIPESEGMENT", "Pipe") + properties(name, value));

    assertThat(size(element(model, 1))).isEqualTo(inWords);
  }

  @ParameterizedTest
  @CsvSource({
    "Length mm,0.5",
    "L\u00E4nge mm,0.5",
    "Lengte_mm,0.5",
    "Lengthmm,0.5",
    "Length in mm,0.5",
    "Length (mm),0.5",
    "Length cm,5",
    "Length_m,500",
    "Length,500"
  })
  void unitBehindTheNameOfALengthCounts(String name, double lengthM) {
    MepModel model =
        InlineModel.read(
            "IFC4",
            METRES
                + item("IFCPIPESEGMENT", "Pipe")
                + properties(name.replace("\u00E4", "\\X2\\00E4\\X0\\"), "IFCREAL(500.)"));

    assertThat(value(element(model, 1).lengthM())).isCloseTo(lengthM, within(1e-9));
  }

  @ParameterizedTest
  @ValueSource(strings = {"Outside Diameter", "Nominal Diameter", "Length"})
  void figureOfAnotherQuantityIsNoLength(String name) {
    MepModel model =
        InlineModel.read(
            "IFC4",
            METRES + item("IFCPIPESEGMENT", "Pipe") + properties(name, "IFCPRESSUREMEASURE(50.)"));

    assertThat(element(model, 1).section()).isNull();
    assertThat(element(model, 1).lengthM()).isNull();
  }

  /** Radians are the unit of the file; 0.7854 of them are 45 degrees. */
  @ParameterizedTest
  @CsvSource({
    "IFCREAL(90.),90",
    "IFCREAL(1.5708),90",
    "IFCREAL(0.785),45",
    "IFCREAL(3.),3",
    "IFCPLANEANGLEMEASURE(90.),90",
    "IFCPLANEANGLEMEASURE(0.7853982),45",
    "IFCPLANEANGLEMEASURE(300.),"
  })
  void angleOfABendIsInTheUnitInWhichItCanBeBuilt(String value, Double deg) {
    MepElement bend = first(item("IFCPIPEFITTING", "Elbow") + properties("BendAngle", value));

    if (deg == null) {
      assertThat(bend.angleDeg()).isNull();
    } else {
      assertThat(value(bend.angleDeg())).isCloseTo(deg, within(0.05));
    }
  }

  @Test
  void bareAngleWithDegreesAsItsOwnUnitIsInDegrees() {
    String stated =
        """
        #510=IFCPROPERTYSINGLEVALUE('BendAngle',$,IFCREAL(30.),#511);
        #511=IFCCONVERSIONBASEDUNIT($,.PLANEANGLEUNIT.,'DEGREE',#512);
        #512=IFCMEASUREWITHUNIT(IFCPLANEANGLEMEASURE(0.0174532925199433),#903);
        #500=IFCPROPERTYSET('s',$,'Set',$,(#510));
        #501=IFCRELDEFINESBYPROPERTIES('r',$,$,$,(#1),#500);
        """;

    assertThat(value(first(item("IFCPIPEFITTING", "Elbow") + stated).angleDeg()))
        .isCloseTo(30, within(1e-9));
  }

  /** Offsets of 3 and 4 mm are one of 5 mm. */
  @Test
  void transitionHasTheLengthAndTheOffsetThatTheStandardSetStates() {
    MepElement reducer =
        first(
            item("IFCPIPEFITTING", "Reducer")
                + properties(
                    "NominalLength",
                    mm(90),
                    "EccentricityInY",
                    "IFCLENGTHMEASURE(-3.)",
                    "EccentricityInZ",
                    "IFCLENGTHMEASURE(4.)"));

    assertThat(value(reducer.lengthM())).isCloseTo(0.09, within(1e-9));
    assertThat(value(reducer.eccentricityM())).isCloseTo(0.005, within(1e-9));
  }

  @Test
  void equalBoundsAreOneFigure() {
    List<String> sizes = new ArrayList<>();
    for (Map.Entry<Double, Double> bounds : List.of(Map.entry(60.3, 60.3), Map.entry(60.3, 63.0))) {
      String stated =
          "#510=IFCPROPERTYBOUNDEDVALUE('OuterDiameter',$,%s,%s,$,$);\n"
                  .formatted(mm(bounds.getKey()), mm(bounds.getValue()))
              + "#500=IFCPROPERTYSET('s',$,'Set',$,(#510));\n"
              + "#501=IFCRELDEFINESBYPROPERTIES('r',$,$,$,(#1),#500);\n";
      sizes.add(String.valueOf(size(first(item("IFCPIPESEGMENT", "Pipe") + stated))));
    }
    assertThat(sizes).containsExactly("60.3 mm", "null");
  }

  /** What a type of a catalogue lists is the size of many pieces, and of none of them. */
  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "IFCPIPESEGMENT|OuterDiameter|48.3,60.3,76.1|null|null",
        "IFCPIPESEGMENT|OuterDiameter|60.3,60.3|60.3 mm|null",
        "IFCPIPESEGMENT|NominalDiameter|40.,50.,65.|null|null",
        "IFCPIPESEGMENT|NominalDiameter|50.,50.|60.3 mm|DN50",
        "IFCFLOWSEGMENT|NominalDiameter|40.,50.|null|null",
        "IFCDUCTSEGMENT|NominalDiameterOrWidth|250.,315.|null|null",
        "IFCDUCTSEGMENT|NominalDiameterOrWidth|315.|315.0 mm|null"
      })
  void listIsTheSizeOfAStraightPieceOnlyIfItsFiguresAgree(
      String keyword, String property, String figuresMm, String size, String nominal) {
    MepElement piece = first(item(keyword, "Pipe") + list(property, figuresMm));

    assertThat(String.valueOf(size(piece))).isEqualTo(size);
    assertThat(String.valueOf(piece.nominalSize())).isEqualTo(nominal);
    assertThat(piece.findProperty(property)).isPresent();
  }

  private static String list(String property, String figuresMm) {
    return listed(510, property, figuresMm)
        + "#500=IFCPROPERTYSET('s',$,'Set',$,(#510));\n"
        + "#501=IFCRELDEFINESBYPROPERTIES('r',$,$,$,(#1),#500);\n";
  }

  private static String listed(int id, String property, String figuresMm) {
    String values =
        Arrays.stream(figuresMm.split(",", -1))
            .map("IFCPOSITIVELENGTHMEASURE(%s)"::formatted)
            .collect(Collectors.joining(","));
    return "#%d=IFCPROPERTYLISTVALUE('%s',$,(%s),$);\n".formatted(id, property, values);
  }

  @Test
  void sizesThatAPropertyOfAStraightPieceCountsUpAreNoneOfIt() {
    MepElement pipe =
        first(
            item("IFCPIPESEGMENT", "Pipe")
                + properties("NominalDiameter", "IFCLABEL('DN40, DN50')"));

    assertThat(pipe.section()).isNull();
    assertThat(pipe.nominalSize()).isNull();
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "Transition|400.,300.|200.,200.|-|400.0 x 200.0 mm, 300.0 x 200.0 mm",
        "Reducer|300.,400.|200.,250.|-|300.0 x 200.0 mm, 400.0 x 250.0 mm",
        "Tee|400.,400.,300.|200.,200.,150.|-|400.0 x 200.0 mm, 400.0 x 200.0 mm, 300.0 x 150.0 mm",
        "Reducer|400.,300.|-|-|400.0 mm, 300.0 mm",
        "Reducer|400.,300.|-|RECTANGULAR|",
        "Reducer|400.,300.|200.|-|",
        "Reducer|400.,300.,250.|200.,200.,200.|-|",
        "Transition|400.,315.|200.,315.|-|",
        "Transition|400.,315.|200.,315.|RECTANGULAR|400.0 x 200.0 mm, 315.0 x 315.0 mm"
      })
  void ductFittingHasTheEndsThatListsOfWidthsAndHeightsGive(
      String name, String widthsMm, String heightsMm, String shape, @Nullable String ends) {
    StringBuilder records = new StringBuilder(item("IFCDUCTFITTING", name));
    records.append("#501=IFCRELDEFINESBYPROPERTIES('r',$,$,$,(#1),#500);\n");
    records.append("#500=IFCPROPERTYSET('s',$,'Set',$,(#510");
    records.append(heightsMm.equals("-") ? "" : ",#511");
    records.append(shape.equals("-") ? "" : ",#512").append("));\n");
    records.append(listed(510, "NominalDiameterOrWidth", widthsMm));
    records.append(listed(511, "NominalHeight", heightsMm.equals("-") ? "0." : heightsMm));
    records.append("#512=IFCPROPERTYSINGLEVALUE('Shape',$,IFCLABEL('%s'),$);\n".formatted(shape));

    MepElement fitting = first(records.toString());

    assertThat(ends(fitting)).isEqualTo(ends == null ? "" : ends);
    if (ends != null) {
      String largest = ends.startsWith("300.0") ? "400.0 x 250.0 mm" : ends.split(", ", -1)[0];
      assertThat(size(fitting)).isEqualTo(largest);
    }
  }
}
