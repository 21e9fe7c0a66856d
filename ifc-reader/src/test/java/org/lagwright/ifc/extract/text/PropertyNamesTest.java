package org.lagwright.ifc.extract.text;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Locale;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.lagwright.ifc.model.Property;

class PropertyNamesTest {

  /** A name that is not written as names are looked up, folded and bare, would never be found. */
  @Test
  void everyNameOfTheTableIsFound() {
    List<String> lines = Resource.lines("property-names.txt");
    assertThat(lines).hasSameSizeAs(PropertyNames.Role.values());
    for (String line : lines) {
      int colon = line.indexOf(':');
      String role = line.substring(0, colon).toUpperCase(Locale.ROOT).replace('-', '_');
      int bit = PropertyNames.bit(PropertyNames.Role.valueOf(role));
      for (String name : line.substring(colon + 1).split(",", -1)) {
        assertThat(PropertyNames.roles(name) & bit).as(role + " " + name).isEqualTo(bit);
      }
    }
  }

  @ParameterizedTest(name = "{0}: {1}")
  @CsvSource({
    "Outside Diameter [in], OUTSIDE_DIAMETER, 0.0254",
    "Outer Diameter (inch), OUTSIDE_DIAMETER, 0.0254",
    "Insulation Thickness (in), INSULATION_THICKNESS, 0.0254",
    "Box Width inches, WIDTH, ",
    "Width inches, WIDTH, 0.0254",
    "Width (\"), WIDTH, 0.0254",
    "Length (ft), LENGTH, 0.3048",
    "Length ft, LENGTH, 0.3048",
    "Length [feet], LENGTH, 0.3048",
    "Length (м), LENGTH, 1",
    "Ширина [мм], WIDTH, 0.001",
    "Length in, LENGTH, ",
    "Lift, LENGTH, ",
  })
  void unitInANameHoldsForBareNumbers(
      String name, PropertyNames.Role role, @Nullable Double unitM) {
    Property bare = new Property("Set", name, "2.5", 2.5, "IFCREAL", false, false, 1);

    assertThat(PropertyNames.answers(bare, role)).isEqualTo(unitM != null);
    if (unitM != null) {
      assertThat(PropertyLengths.lengthM(bare, 7).orElseThrow())
          .isEqualTo(2.5 * unitM, within(1e-12));
    }
  }

  @Test
  void unitInANameDoesNotHoldForALengthInTheUnitOfTheFile() {
    Property typed =
        new Property("Set", "Length (ft)", "2.5", 2.5, "IFCLENGTHMEASURE", false, false, 1);

    assertThat(PropertyLengths.lengthM(typed, 0.001)).contains(2.5);
  }

  /** So many inches of pipe are its nominal size, and texts of sizes are read by themselves. */
  @ParameterizedTest
  @ValueSource(strings = {"Nominal Diameter (in)", "Diameter [in]", "Size (in)", "Size inches"})
  void nameInInchesAnswersNoQuestionButForPlainLengths(String name) {
    assertThat(PropertyNames.roles(name)).isZero();
  }

  @ParameterizedTest(name = "{0}")
  @CsvSource({
    "External Diameter, OUTSIDE_DIAMETER",
    "Условный проход, NOMINAL",
    "Szerokość, WIDTH",
    "Højde [mm], HEIGHT",
    "Długość (m), LENGTH",
    "Free Size, SIZE",
    "Rayon de courbure, BEND_RADIUS",
    "Rohraußendurchmesser, OUTSIDE_DIAMETER",
    "Diamètre externe [mm], OUTSIDE_DIAMETER",
    "Diámetro externo, OUTSIDE_DIAMETER",
    "Diamètre intérieur, INSIDE_DIAMETER",
    "Внутренний диаметр, INSIDE_DIAMETER",
    "Binnendiameter, INSIDE_DIAMETER",
    "Épaisseur de paroi, WALL",
    "Толщина стенки, WALL",
    "Seinämänpaksuus, WALL",
    "Nominale diameter, NOMINAL",
    "Номинальный диаметр, NOMINAL",
    "Nominal Pipe Size, SIZE",
    "NPS, SIZE",
    "Rohrlänge, LENGTH",
    "Cut Length, LENGTH",
    "Lengde, LENGTH",
    "Dämmstoffdicke, INSULATION_THICKNESS",
    "Wärmedämmdicke, INSULATION_THICKNESS",
    "Isolierungsstärke, INSULATION_THICKNESS",
    "External Insulation Thickness, INSULATION_THICKNESS",
    "Internal Insulation Thickness, LINING_THICKNESS",
    "Wärmedämmung, INSULATION_MATERIAL",
    "Thermal insulation, INSULATION_MATERIAL",
    "Tipo de aislamiento, INSULATION_MATERIAL",
    "Tipo isolamento, INSULATION_MATERIAL",
    "Isolatietype, INSULATION_MATERIAL",
    "Épaisseur d'isolant, INSULATION_THICKNESS",
    "Epaisseur d'isolant, INSULATION_THICKNESS",
    "ISO_Dicke, INSULATION_THICKNESS",
  })
  void namesAsExportersWriteThemTellOneThing(String name, PropertyNames.Role role) {
    assertThat(PropertyNames.roles(name)).isEqualTo(PropertyNames.bit(role));
  }

  @ParameterizedTest(name = "{0}")
  @CsvSource({
    "AQ_Dämmdicke, Dämmdicke",
    "AQ_Dämmdicke [mm], Dämmdicke [mm]",
    "01_Dämmstärke, Dämmstärke",
    "AQ Insulation Thickness, Insulation Thickness",
    "AQ: Insulation thickness, Insulation thickness",
    "AQXY_B_isolatiedikte, isolatiedikte",
    "AQXY_Толщина изоляции, Толщина изоляции",
    "AQ_Isolierung, Isolierung",
    "AQ_Outside Diameter, Outside Diameter",
    "AQ: Outside Diameter (in), Outside Diameter (in)",
    "AQ_Nennweite, Nennweite",
    "AQ_Wandstärke, Wandstärke",
    "AQ_Länge, Länge",
    "AQ_B_breedte, breedte",
    "AQ_B_hoogte, hoogte",
    "[IDK] Isolationsdicke, Isolationsdicke",
    "[s] Wandstärke, Wandstärke",
    "[DA1] Aussen-Durchmesser, Aussen-Durchmesser",
    "[l]Laenge, Laenge",
    "[d1] DN, DN",
    "[d2] DN2, DN2",
  })
  void codeBeforeANameTellsNothing(String coded, String name) {
    assertThat(PropertyNames.roles(coded)).isEqualTo(PropertyNames.roles(name)).isNotZero();
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "Box_Width",
        "Flange_Height",
        "Max_Length",
        "MAX_Länge",
        "MAX_LENGTH",
        "BOX_WIDTH",
        "CAP_Length",
        "TEE_Width",
        "Min_Insulation Thickness",
        "MAX Insulation Thickness",
        "ISO_Outside Diameter",
        "INT_Outside Diameter",
        "15_Dämmdicke",
        "DN15 Insulation Thickness",
        "DN 15 Insulation Thickness",
        "L1_Dämmdicke",
        "A_Breite",
        "01_Länge",
        "02_Nennweite",
        "B_Outside Diameter",
        "AQ_Diameter",
        "AQ_Dicke",
        "AQ_OD",
        "AQ Width",
        "AQ: Length",
        "AQ_XY_C_Länge",
        "AQUVXY_Länge",
        "AQ_",
        "AQ",
        "[MAX] Breite",
        "[Flansch] Höhe",
        "[b2] Breite",
        "[b",
        "[AQ]"
      })
  void wordBeforeANameTellsOfSomethingElse(String name) {
    assertThat(PropertyNames.roles(name)).isZero();
  }

  @Test
  void caseAccentsPunctuationAndAUnitInBracketsDoNotCount() {
    int width = PropertyNames.bit(PropertyNames.Role.WIDTH);
    assertThat(PropertyNames.roles("Larg-eur [mm]") & width).isEqualTo(width);
    assertThat(PropertyNames.roles("Breite (cm)") & width).isEqualTo(width);
    int outside = PropertyNames.bit(PropertyNames.Role.OUTSIDE_DIAMETER);
    assertThat(PropertyNames.roles("Diam\u00E8tre ext\u00E9rieur") & outside).isEqualTo(outside);
    assertThat(
            PropertyNames.roles(
                "\u041D\u0430\u0440\u0443\u0436\u043D\u044B\u0439 \u0434\u0438\u0430\u043C\u0435\u0442\u0440"))
        .isEqualTo(outside);
    assertThat(PropertyNames.roles("Width (kg)") & width).isZero();
  }
}
