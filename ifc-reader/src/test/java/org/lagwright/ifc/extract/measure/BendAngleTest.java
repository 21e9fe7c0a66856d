package org.lagwright.ifc.extract.measure;

import static org.assertj.core.api.Assertions.assertThat;
import static org.lagwright.ifc.extract.InlineModel.codes;
import static org.lagwright.ifc.extract.InlineModel.element;
import static org.lagwright.ifc.extract.InlineModel.properties;
import static org.lagwright.ifc.extract.InlineModel.read;

import java.util.Objects;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.lagwright.ifc.model.Measured;
import org.lagwright.ifc.model.MepElement;
import org.lagwright.ifc.model.MepModel;

/** Angles of bends that are not drawn, from their names. */
class BendAngleTest {

  private static MepModel bend(String name, @Nullable String objectType, String... stated) {
    return read(
        "#1=IFCPIPEFITTING('1',$,'%s',$,%s,$,$,$,.BEND.);\n"
                .formatted(name, objectType == null ? "$" : "'" + objectType + "'")
            + properties(stated));
  }

  private static MepModel bendOf(String name, double outsideMm) {
    return bend(name, null, "Outer Diameter", "IFCPOSITIVELENGTHMEASURE(" + outsideMm + ")");
  }

  private static @Nullable Double angleDeg(MepModel model) {
    Measured<Double> angleDeg = element(model, 1).angleDeg();
    return angleDeg == null ? null : angleDeg.value();
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "Bogen 45\u00B0|45",
        "Codo 45\u00BA|45",
        "Bogen 45 Grad|45",
        "90-Grad-Bogen|90",
        "Elbow 22.5 Deg|22.5",
        "45-degree elbow|45",
        "\u041E\u0442\u0432\u043E\u0434 90 \u0433\u0440\u0430\u0434.|90",
        "Bogen 45|45",
        "Rohrbogen 90 DN50|90",
        "Bogen_30_DN50|30",
        "Coude 90|90",
        "Elbow 22,5 (long)|22.5",
        "Elbow 90:4711|90",
        "90 Elbow|90",
        "45-Bogen|45"
      })
  void nameOfABendTellsItsAngle(String name, double deg) {
    MepModel model = bendOf(name, 60.3);

    assertThat(angleDeg(model)).isEqualTo(deg);
    assertThat(codes(model)).doesNotContain("ANGLE_UNKNOWN");
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "Bogen 90x5|60.3",
        "Bogen 90 x 5|60.3",
        "Bogen 90 mm|60.3",
        "Bogen 90mm|60.3",
        "Bogen 90\"|60.3",
        "Bogen 30/45|60.3",
        "Bogen 30-90|60.3",
        "Bogen 15 22|60.3",
        "Bogen DN 90|60.3",
        "Bogen 47|60.3",
        "Bogen 150|60.3",
        "Bogen 4500|60.3",
        "PE Bogen 90|90",
        "Bogen 15|15",
        "Bogen 15|21.3",
        "Bogen 90|101.6",
        "Bogen Nr. 45|60.3"
      })
  void whatMayBeSomethingElseIsNoAngleAndIsToldOf(String name, double outsideMm) {
    MepModel model = bendOf(name, outsideMm);

    assertThat(angleDeg(model)).isNull();
    assertThat(codes(model)).contains("ANGLE_UNKNOWN");
  }

  /** Bends may be numbered, but not their types. */
  @Test
  void bareFigureOfAnOccurrenceIsItsNumber() {
    MepModel model = bend("Bogen 45", "Stahlbogen", "NominalDiameter", "IFCREAL(50.)");

    assertThat(angleDeg(model)).isNull();
    assertThat(codes(model)).contains("ANGLE_UNKNOWN");
  }

  @Test
  void nameThatContradictsTheStatedAngleIsToldOf() {
    MepModel model =
        bend("B1", "Bogen 90", "NominalDiameter", "IFCREAL(50.)", "Angle", "IFCREAL(45.)");
    MepElement bend = element(model, 1);

    assertThat(angleDeg(model)).isEqualTo(45);
    assertThat(Objects.requireNonNull(bend.angleDeg()).lost())
        .singleElement()
        .satisfies(lost -> assertThat(lost.value()).isEqualTo(90));
    assertThat(codes(model)).contains("ANGLE_CONFLICT");
  }

  /** A pipe of 45 mm outside may be meant, and no bend is one. */
  @Test
  void figureOfWhatIsNoBendIsNoAngle() {
    MepModel model = read("#1=IFCPIPEFITTING('1',$,'Muffe 45',$,$,$,$,$,.CONNECTOR.);\n");

    assertThat(angleDeg(model)).isNull();
    assertThat(codes(model)).doesNotContain("ANGLE_UNKNOWN");
  }
}
