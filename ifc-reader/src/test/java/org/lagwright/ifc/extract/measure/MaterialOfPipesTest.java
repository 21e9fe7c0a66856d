package org.lagwright.ifc.extract.measure;

import static org.assertj.core.api.Assertions.assertThat;
import static org.lagwright.ifc.extract.InlineModel.body;
import static org.lagwright.ifc.extract.InlineModel.codes;
import static org.lagwright.ifc.extract.InlineModel.element;
import static org.lagwright.ifc.extract.InlineModel.properties;
import static org.lagwright.ifc.extract.InlineModel.read;
import static org.lagwright.ifc.extract.InlineModel.value;

import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.lagwright.ifc.extract.text.InWords;
import org.lagwright.ifc.model.Finding;
import org.lagwright.ifc.model.MepElement;
import org.lagwright.ifc.model.MepModel;

/** The outside of pipes of which only the nominal size is known, by what they are made of. */
class MaterialOfPipesTest {

  private static final String MATERIAL =
      """
      #30=%s;
      #31=IFCMATERIAL('%s',$,$);
      #32=IFCRELASSOCIATESMATERIAL('m',$,$,$,(#1),#30);
      """;

  private static String pipe(String name) {
    return "#1=IFCPIPESEGMENT('1',$,'%s',$,$,$,$,$,$);\n".formatted(name);
  }

  private static String size(MepElement element) {
    return element.section() == null ? "" : InWords.section(value(element.section()));
  }

  private static String told(MepModel model) {
    return model.findings().stream().map(Finding::message).collect(Collectors.joining("; "));
  }

  @ParameterizedTest
  @CsvSource({
    "Kupfer,50,54.0 mm",
    "Cu-DHP,12,15.0 mm",
    "Stahl verzinkt,50,60.3 mm",
    "SML,100,110.0 mm",
    "'Iron, Cast',50,58.0 mm",
    "Ductile iron,100,118.0 mm",
    "PE-Xa,20,25.0 mm",
    "HT-Rohr PP,50,50.0 mm",
    "PVC-U,50,63.0 mm",
    "Stahl mit PE-Mantel,50,60.3 mm",
    "Edelstahl pressfitting,50,54.0 mm",
    "Edelstahl,50,60.3 mm",
    "Holz,50,60.3 mm",
    "Kupferdraht in Mineralwolle,50,60.3 mm"
  })
  void nominalSizeTellsTheOutsideOfAPipeOfItsMaterial(String material, int dn, String inWords) {
    MepModel byName = read(pipe("Rohr DN " + dn + " " + material));
    MepModel byMaterial =
        read(pipe("Rohr DN" + dn) + MATERIAL.formatted("IFCMATERIALLIST((#31))", material));

    assertThat(size(element(byName, 1))).isEqualTo(inWords);
    assertThat(size(element(byMaterial, 1))).isEqualTo(inWords);
    assertThat(codes(byMaterial)).contains("SIZE_FROM_NOMINAL");
  }

  @Test
  void propertyOfThePipeTellsItsMaterial() {
    MepModel model =
        read(pipe("Rohr") + properties("DN", "IFCINTEGER(50)", "Material", "IFCLABEL('Copper')"));

    assertThat(size(element(model, 1))).isEqualTo("54.0 mm");
  }

  @Test
  void twoMaterialsTellNone() {
    MepModel model =
        read(
            pipe("Rohr DN50")
                + MATERIAL.formatted("IFCMATERIALLIST((#31,#33))", "Kupfer")
                + "#33=IFCMATERIAL('PVC',$,$);\n");

    assertThat(size(element(model, 1))).isEqualTo("60.3 mm");
  }

  @Test
  void whatElseIsCalledSoIsTold() {
    MepModel model = read(pipe("Copper DN15"));

    assertThat(size(element(model, 1))).isEqualTo("18.0 mm");
    assertThat(told(model)).contains("EN 1057 copper (from memory), or 15.0 mm");
  }

  @Test
  void copperInInchesIsAnEighthWiderThanItIsCalled() {
    assertThat(size(element(read(pipe("Copper tube 2\"")), 1))).isEqualTo("54.0 mm");
    assertThat(size(element(read(pipe("Copper tube 3\"")), 1))).isEqualTo("79.4 mm");
  }

  @Test
  void bodyOfAValveTellsNothingOfItsPipe() {
    MepModel model = read("#1=IFCVALVE('1',$,'Ventil Gusseisen DN100',$,$,$,$,$,$);\n");

    assertThat(size(element(model, 1))).isEqualTo("114.3 mm");
  }

  /** Of 76 mm there are copper tubes, and DN 50 may be as wide, but no cast iron is. */
  @ParameterizedTest
  @CsvSource({"Kupferrohr DN50,94,54.0 mm", "SML DN50,76,58.0 mm", "SML DN50,58,58.0 mm"})
  void insulationIsTakenOffDownToThePipeOfItsMaterial(String name, double drawnMm, String inWords) {
    MepModel model =
        read(
            "#1=IFCPIPESEGMENT('1',$,'%s',$,$,#14,#10,$,$);\n".formatted(name)
                + body("IFCCIRCLEPROFILEDEF(.AREA.,$,$,%s)".formatted(drawnMm / 2)));

    assertThat(size(element(model, 1))).isEqualTo(inWords);
    assertThat(codes(model).contains("INSULATION_IN_BODY")).isEqualTo(drawnMm > 58);
  }
}
