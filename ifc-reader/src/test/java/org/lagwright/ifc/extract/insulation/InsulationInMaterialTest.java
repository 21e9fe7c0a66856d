package org.lagwright.ifc.extract.insulation;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.lagwright.ifc.extract.InlineModel.body;
import static org.lagwright.ifc.extract.InlineModel.element;
import static org.lagwright.ifc.extract.InlineModel.read;
import static org.lagwright.ifc.extract.insulation.InsulationTest.PIPE;
import static org.lagwright.ifc.extract.insulation.InsulationTest.mm;

import java.util.Objects;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.lagwright.ifc.model.ExistingInsulation;
import org.lagwright.ifc.model.MepModel;

/** Insulation and lining among the materials of an element. */
class InsulationInMaterialTest {

  private static final String DUCT =
      "#1=IFCDUCTSEGMENT('1',$,'Duct',$,$,#14,#10,$,$);\n"
          + body("IFCRECTANGLEPROFILEDEF(.AREA.,$,$,450.,315.)");

  private static final String MATERIALS =
      "#70=IFCMATERIAL('Steel',$,$);\n#71=IFCMATERIAL('Mineral wool',$,$);\n";

  private static String of(String material) {
    return "#79=IFCRELASSOCIATESMATERIAL('79',$,$,$,(#1)," + material + ");\n";
  }

  private static String constituents(String name, String category) {
    return MATERIALS
        + "#72=IFCMATERIALCONSTITUENT('Wall',$,#70,$,$);\n"
        + "#73=IFCMATERIALCONSTITUENT('%s',$,#71,$,%s);\n".formatted(name, category)
        + "#75=IFCMATERIALCONSTITUENTSET('Set',$,(#72,#73));\n"
        + of("#75");
  }

  static String layers(String name, double thicknessMm) {
    return MATERIALS
        + "#72=IFCMATERIALLAYER(#70,1.,$,'Wall',$,$,$);\n"
        + "#73=IFCMATERIALLAYER(#71,%s,$,'%s',$,$,$);\n".formatted(thicknessMm, name)
        + "#75=IFCMATERIALLAYERSET((#72,#73),'Set',$);\n"
        + of("#75");
  }

  @ParameterizedTest
  @CsvSource({"Insulation,$", "Second,'''Insulation'''"})
  void constituentThatIsCalledInsulationIsThereOfUnknownThickness(String name, String category) {
    MepModel model = read(PIPE + constituents(name, category));

    assertThat(InsulationTest.of(model, 1).thicknessM()).isNull();
    assertThat(InsulationTest.of(model, 1).material()).isEqualTo("Mineral wool");
  }

  @ParameterizedTest
  @ValueSource(strings = {"#75", "#76"})
  void profileThatIsCalledInsulationIsAsThickAsItsWall(String material) {
    MepModel model =
        read(
            PIPE
                + MATERIALS
                + "#72=IFCMATERIALPROFILE('Pipe',$,#70,#77,$,$);\n"
                + "#73=IFCMATERIALPROFILE('Insulation',$,#71,#78,$,$);\n"
                + "#75=IFCMATERIALPROFILESET('Set',$,(#72,#73),$);\n"
                + "#76=IFCMATERIALPROFILESETUSAGE(#75,5,$);\n"
                + "#77=IFCCIRCLEHOLLOWPROFILEDEF(.AREA.,$,$,30.15,2.9);\n"
                + "#78=IFCCIRCLEHOLLOWPROFILEDEF(.AREA.,$,$,60.15,30.);\n"
                + of(material));

    assertThat(mm(InsulationTest.of(model, 1))).isCloseTo(30, within(1e-6));
  }

  @Test
  void materialOfAPipeThatIsCalledInsulatedIsThePipe() {
    MepModel model = read(PIPE + constituents("Rohr isoliert", "$"));

    assertThat(element(model, 1).existingInsulation()).isNull();
  }

  @Test
  void layerOfADuctThatIsCalledLiningLiesInside() {
    MepModel model = read(DUCT + layers("Lining", 25));

    assertThat(element(model, 1).existingInsulation()).isNull();
    assertThat(mm(Objects.requireNonNull(element(model, 1).lining()))).isCloseTo(25, within(1e-6));
  }

  @Test
  void constituentOfADuctThatIsCalledLiningLiesInside() {
    MepModel model = read(DUCT + constituents("Lining", "$"));
    ExistingInsulation lining = Objects.requireNonNull(element(model, 1).lining());

    assertThat(lining.thicknessM()).isNull();
    assertThat(element(model, 1).existingInsulation()).isNull();
  }

  @Test
  void liningOfAPipeIsNoInsulation() {
    MepModel model = read(PIPE + layers("Lining", 6));

    assertThat(element(model, 1).existingInsulation()).isNull();
    assertThat(element(model, 1).lining()).isNull();
  }

  private static String layersOf(String material, double thicknessMm, String wall) {
    return layers("Layer 2", thicknessMm)
        .replace("'Mineral wool'", "'" + material + "'")
        .replace("'Steel'", "'" + wall + "'");
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "Mineral wool",
        "Steinwolle",
        "Glasswool",
        "Fiberglass",
        "Elastomeric foam",
        "Kautschuk",
        "PUR-Schaum",
        "PIR",
        "Cellular glass",
        "Calcium silicate",
        "Laine de verre",
        "Lana minerale",
        "Steenwol",
        "Elastomer",
        "NBR",
        "Synthetic rubber",
        "Gummi, vernetzt",
        "Asv\u00E1nygyapot",
        "Ta\u015Fy\u00FCn\u00FC",
        "Izola\u021Bie"
      })
  void layerOfAMaterialThatInsulatesIsInsulation(String material) {
    MepModel model = read(PIPE + layersOf(material, 30, "Steel"));

    assertThat(mm(InsulationTest.of(model, 1))).isCloseTo(30, within(1e-6));
    assertThat(InsulationTest.of(model, 1).material()).isEqualTo(material);
  }

  /** A rubber hose, a pipe with a core of foam, a pipe in its casing, paint. */
  @ParameterizedTest
  @CsvSource({
    "Kautschuk,8,Kautschuk",
    "Synthetic rubber,8,PVC",
    "NBR,3,Steel",
    "PVC foam,3,PVC",
    "Polyethylene,30,Steel",
    "PUR Beschichtung,7,Steel",
    "PUR pipe,7,Steel"
  })
  void layerThatMayBeThePipeIsNoInsulation(String material, double thicknessMm, String wall) {
    MepModel model = read(PIPE + layersOf(material, thicknessMm, wall));

    assertThat(element(model, 1).existingInsulation()).isNull();
  }
}
