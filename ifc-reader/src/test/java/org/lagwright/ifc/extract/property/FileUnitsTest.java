package org.lagwright.ifc.extract.property;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.lagwright.ifc.extract.InlineModel.element;
import static org.lagwright.ifc.extract.InlineModel.properties;
import static org.lagwright.ifc.extract.InlineModel.read;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.lagwright.ifc.extract.InlineModel;
import org.lagwright.ifc.model.Finding;
import org.lagwright.ifc.model.MepModel;

/** The units that a file assigns; the schema allows one of each kind. */
class FileUnitsTest {

  private static final String LENGTH_MM = "IFCSIUNIT(*,.LENGTHUNIT.,.MILLI.,.METRE.)";
  private static final String LENGTH_M = "IFCSIUNIT(*,.LENGTHUNIT.,$,.METRE.)";
  private static final String ANGLE_RAD = "IFCSIUNIT(*,.PLANEANGLEUNIT.,$,.RADIAN.)";
  private static final String DEGC =
      "IFCSIUNIT(*,.THERMODYNAMICTEMPERATUREUNIT.,$,.DEGREE_CELSIUS.)";
  private static final String KELVIN = "IFCSIUNIT(*,.THERMODYNAMICTEMPERATUREUNIT.,$,.KELVIN.)";

  /** A pipe of 114.3 mm, 2.5 m long. */
  private static final String PIPE =
      "#1=IFCPIPESEGMENT('1',$,'Pipe',$,$,#14,#10,$,$);\n"
          + InlineModel.body("IFCCIRCLEPROFILEDEF(.AREA.,$,$,57.15)");

  @Test
  void firstOfTwoUnitsOfLengthCountsAndTheOtherIsTold() {
    MepModel model = read("IFC4", units(LENGTH_MM, LENGTH_M, ANGLE_RAD) + PIPE);

    assertThat(InlineModel.diameterMm(element(model, 1))).isEqualTo(114.3);
    assertThat(InlineModel.value(element(model, 1).lengthM())).isEqualTo(2.5, within(1e-9));
    assertThat(messages(model))
        .containsExactly(
            "The file declares two units of length: millimetre and metre. The first is used."
                + " Check one length.");
  }

  @Test
  void sameUnitAssignedTwiceIsNoConflict() {
    String converted = "IFCCONVERSIONBASEDUNIT($,.LENGTHUNIT.,'mm',#890)";
    String factor = "#890=IFCMEASUREWITHUNIT(IFCLENGTHMEASURE(0.001),#891);\n";

    MepModel model =
        read(
            "IFC4",
            units(LENGTH_MM, LENGTH_MM, converted, ANGLE_RAD)
                + factor
                + "#891=%s;\n".formatted(LENGTH_M)
                + PIPE);

    assertThat(InlineModel.diameterMm(element(model, 1))).isEqualTo(114.3);
    assertThat(messages(model)).isEmpty();
  }

  /** Parts that were cut out of a model have units, but no project that assigns them. */
  @Test
  void unitsThatNoProjectAssignsCountWhereThereIsNone() {
    String withoutProject = units(LENGTH_MM, ANGLE_RAD).replaceFirst("#\\d+=IFCPROJECT.*\n", "");

    MepModel model = read("IFC4", withoutProject + PIPE);

    assertThat(InlineModel.diameterMm(element(model, 1))).isEqualTo(114.3);
    assertThat(messages(model)).isEmpty();
  }

  @Test
  void otherUnitsThanThoseOfTheProjectDoNotCount() {
    String others = "#880=IFCUNITASSIGNMENT((#881));\n#881=" + LENGTH_M + ";\n";

    MepModel model = read("IFC4", others + units(LENGTH_MM, ANGLE_RAD) + PIPE);

    assertThat(InlineModel.diameterMm(element(model, 1))).isEqualTo(114.3);
    assertThat(messages(model)).isEmpty();
  }

  @Test
  void unitsThatNothingIsReadInAreNotTold() {
    MepModel model =
        read(
            "IFC4",
            units(
                    LENGTH_MM,
                    ANGLE_RAD,
                    "IFCSIUNIT(*,.MASSUNIT.,$,.GRAM.)",
                    "IFCSIUNIT(*,.MASSUNIT.,.KILO.,.GRAM.)")
                + PIPE);

    assertThat(messages(model)).isEmpty();
  }

  @Test
  void unitThatTellsNoFactorLeavesTheNextOneToCount() {
    String broken = "IFCCONVERSIONBASEDUNIT($,.LENGTHUNIT.,'mm',$)";

    MepModel model = read("IFC4", units(broken, LENGTH_MM, ANGLE_RAD) + PIPE);

    assertThat(InlineModel.diameterMm(element(model, 1))).isEqualTo(114.3);
    assertThat(messages(model)).isEmpty();
  }

  /** Coordinates in it would be beyond all numbers. */
  @Test
  void unitOfAbsurdSizeLeavesTheNextOneToCount() {
    String huge = "IFCCONVERSIONBASEDUNIT($,.LENGTHUNIT.,'inch',#890)";
    String factor = "#890=IFCMEASUREWITHUNIT(IFCLENGTHMEASURE(1.E308),#891);\n";

    MepModel model =
        read(
            "IFC4",
            units(huge, LENGTH_MM, ANGLE_RAD) + factor + "#891=%s;\n".formatted(LENGTH_M) + PIPE);

    assertThat(InlineModel.diameterMm(element(model, 1))).isEqualTo(114.3);
    assertThat(messages(model)).isEmpty();
  }

  @Test
  void firstOfTwoScalesOfTemperatureCounts() {
    String flow = properties("Vorlauftemperatur", "IFCTHERMODYNAMICTEMPERATUREMEASURE(343.15)");

    MepModel model = read("IFC4", units(LENGTH_MM, ANGLE_RAD, KELVIN, DEGC) + PIPE + flow);

    assertThat(element(model, 1).findProperty("Vorlauftemperatur").orElseThrow().number())
        .isEqualTo(70, within(1e-9));
    assertThat(messages(model))
        .containsExactly(
            "The file declares two units of temperature: kelvin and degree celsius. The first is"
                + " used. Check one temperature.");
  }

  private static List<String> messages(MepModel model) {
    List<String> messages = new ArrayList<>();
    for (Finding finding : model.findings()) {
      if (finding.code().name().startsWith("UNITS")) {
        messages.add(finding.message());
      }
    }
    return messages;
  }

  /** A project whose units are these, in this order. */
  private static String units(String... units) {
    StringBuilder records = new StringBuilder();
    StringBuilder ids = new StringBuilder();
    for (int i = 0; i < units.length; i++) {
      ids.append(i == 0 ? "#" : ",#").append(902 + i);
      records.append("#%d=%s;\n".formatted(902 + i, units[i]));
    }
    return "#900=IFCPROJECT('p',$,$,$,$,$,$,$,#901);\n#901=IFCUNITASSIGNMENT((%s));\n"
            .formatted(ids)
        + records;
  }
}
