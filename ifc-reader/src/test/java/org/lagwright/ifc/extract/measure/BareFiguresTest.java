package org.lagwright.ifc.extract.measure;

import static org.assertj.core.api.Assertions.assertThat;
import static org.lagwright.ifc.extract.InlineModel.body;
import static org.lagwright.ifc.extract.InlineModel.codes;
import static org.lagwright.ifc.extract.InlineModel.element;
import static org.lagwright.ifc.extract.InlineModel.properties;
import static org.lagwright.ifc.extract.InlineModel.value;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.lagwright.ifc.extract.InlineModel;
import org.lagwright.ifc.extract.text.InWords;
import org.lagwright.ifc.model.MepElement;
import org.lagwright.ifc.model.MepModel;

/**
 * Figures of properties that do not say their unit, in files in centimetres, inches or feet. Pipes
 * of 60.3 and 114.3 mm are steel by EN 10220, of 22 mm copper by EN 1057.
 */
class BareFiguresTest {

  private static String file(String unit) {
    String one =
        switch (unit) {
          case "cm" -> "#902=IFCSIUNIT(*,.LENGTHUNIT.,.CENTI.,.METRE.);\n";
          case "m" -> "#902=IFCSIUNIT(*,.LENGTHUNIT.,$,.METRE.);\n";
          default -> "#902=IFCCONVERSIONBASEDUNIT($,.LENGTHUNIT.,'" + unit + "',#904);\n";
        };
    return InlineModel.MILLIMETRES.replace("#902=IFCSIUNIT(*,.LENGTHUNIT.,.MILLI.,.METRE.);\n", one)
        + "#904=IFCMEASUREWITHUNIT(IFCRATIOMEASURE(%s),#905);\n"
            .formatted("ft".equals(unit) ? "0.3048" : "0.0254")
        + "#905=IFCSIUNIT(*,.LENGTHUNIT.,$,.METRE.);\n";
  }

  private static MepModel read(String unit, String element, String stating) {
    return InlineModel.read(
        "IFC4",
        file(unit)
            + "#1=IFC%s('1',$,'Piece',$,$,$,$,$,$);\n".formatted(element)
            + properties(stating.split(";", -1)));
  }

  private static String size(MepModel model) {
    return InWords.section(value(element(model, 1).section()));
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        // in the unit of the file
        "cm|DUCTSEGMENT|Width;IFCREAL(50.);Height;IFCREAL(30.)|500.0 x 300.0 mm|false",
        "inch|DUCTSEGMENT|Width;IFCTEXT('20');Height;IFCTEXT('12')|508.0 x 304.8 mm|false",
        "cm|PIPESEGMENT|OuterDiameter;IFCREAL(6.03)|60.3 mm|false",
        // so large a one is not made
        "cm|DUCTSEGMENT|Width;IFCREAL(500.);Height;IFCREAL(300.)|500.0 x 300.0 mm|true",
        "inch|DUCTSEGMENT|Width;IFCREAL(500.);Height;IFCREAL(300.)|500.0 x 300.0 mm|false",
        "inch|DUCTSEGMENT|Width;IFCTEXT('200');Height;IFCTEXT('150')|200.0 x 150.0 mm|true",
        "ft|DUCTSEGMENT|Width;IFCREAL(20.);Height;IFCREAL(12.)|508.0 x 304.8 mm|true",
        "cm|DUCTSEGMENT|Diameter;IFCREAL(250.)|250.0 mm|true",
        "cm|PIPESEGMENT|OuterDiameter;IFCREAL(60.3)|60.3 mm|true",
        "inch|PIPESEGMENT|OuterDiameter;IFCTEXT('114.3')|114.3 mm|true",
        "ft|PIPESEGMENT|OuterDiameter;IFCREAL(22.)|22.0 mm|false",
        // either may be
        "cm|DUCTSEGMENT|Width;IFCREAL(200.);Height;IFCREAL(100.)|2000.0 x 1000.0 mm|true",
        "cm|PIPESEGMENT|OuterDiameter;IFCREAL(16.)|160.0 mm|true",
        // its unit is said
        "cm|DUCTSEGMENT|Width;IFCLENGTHMEASURE(500.);Height;IFCLENGTHMEASURE(300.)|5000.0 x 3000.0 mm|false",
        "m|DUCTSEGMENT|Width;IFCREAL(500.);Height;IFCREAL(300.)|500.0 x 300.0 mm|false"
      })
  void sizeThatIsNotMadeIsInAnotherUnit(
      String unit, String kind, String stating, String size, boolean told) {
    MepModel model = read(unit, kind, stating);

    assertThat(size(model)).isEqualTo(size);
    assertThat(codes(model).contains("SECTION_CONFLICT")).isEqualTo(told);
  }

  @ParameterizedTest
  @CsvSource({"50.,30.,500., 300.", "50.,30.,50., 30.", "250., 100., 250., 100."})
  void drawnDuctTellsTheUnit(String widthCm, String heightCm, String width, String height) {
    String drawn =
        "#1=IFCDUCTSEGMENT('1',$,'Duct',$,$,#14,#10,$,$);\n"
            + body("IFCRECTANGLEPROFILEDEF(.AREA.,$,$," + widthCm + "," + heightCm + ")");
    String stating = "Width;IFCREAL(%s);Height;IFCREAL(%s)".formatted(width, height);
    MepModel model =
        InlineModel.read("IFC4", file("cm") + drawn + properties(stating.split(";", -1)));

    assertThat(codes(model)).isEmpty();
  }

  @ParameterizedTest
  @CsvSource({
    "cm, 300., 3.0, false",
    "cm, 3000., 3.0, true",
    "inch, 3000., 3.0, true",
    "ft, 10., 3.048, false"
  })
  void lengthThatNobodyCutsIsInMillimetres(
      String unit, String figure, double metres, boolean told) {
    MepModel model = read(unit, "PIPESEGMENT", "Length;IFCREAL(" + figure + ")");
    MepElement pipe = element(model, 1);

    assertThat(value(pipe.lengthM())).isEqualTo(metres);
    assertThat(codes(model).contains("LENGTH_CONFLICT")).isEqualTo(told);
  }

  @ParameterizedTest
  @CsvSource({"0.", "-60.3", "1.E+30"})
  void figureThatIsNoneTellsNoSize(String figure) {
    MepModel model = read("cm", "PIPESEGMENT", "OuterDiameter;IFCREAL(" + figure + ")");

    assertThat(element(model, 1).section()).isNull();
  }
}
