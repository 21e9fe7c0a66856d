package org.lagwright.ifc.extract.measure;

import static org.assertj.core.api.Assertions.assertThat;
import static org.lagwright.ifc.extract.InlineModel.body;
import static org.lagwright.ifc.extract.InlineModel.codes;
import static org.lagwright.ifc.extract.InlineModel.element;
import static org.lagwright.ifc.extract.InlineModel.first;
import static org.lagwright.ifc.extract.InlineModel.properties;
import static org.lagwright.ifc.extract.InlineModel.read;
import static org.lagwright.ifc.extract.InlineModel.value;

import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.lagwright.ifc.extract.text.InWords;
import org.lagwright.ifc.model.MepElement;
import org.lagwright.ifc.model.MepModel;

/** Ways in which people write sizes into names, inches and nominal sizes above all. */
class WrittenSizesTest {

  private static String bare(String keyword, String name) {
    return "#1=%s('1',$,'%s',$,$,$,$,$,$);\n".formatted(keyword, name.replace("'", "''"));
  }

  private static @Nullable String size(MepElement element) {
    return element.section() == null ? null : InWords.section(value(element.section()));
  }

  /** Outside diameters by EN 10255, whose DN 65 is 76.1 mm. */
  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "NPS 2|DN50|60.3 mm",
        "NPS2|DN50|60.3 mm",
        "NPS 3/4|DN20|26.9 mm",
        "NPS 1/2|DN15|21.3 mm",
        "NPS 1/2\"|DN15|21.3 mm",
        "NPS 1 1/2|DN40|48.3 mm",
        "NPS 1-1/4|DN32|42.4 mm",
        "NPS 2 1/2|DN65|76.1 mm",
        "NPS 2 (2\")|DN50|60.3 mm",
        "Rp 3/4|DN20|26.9 mm",
        "\u00BD\"|DN15|21.3 mm",
        "2\u00BD\"|DN65|76.1 mm",
        "2 \u00BD\"|DN65|76.1 mm",
        "1\u00BC in|DN32|42.4 mm",
        "1 1/4 in|DN32|42.4 mm",
        "Rohr 5/4\"|DN32|42.4 mm",
        "6/4 Zoll|DN40|48.3 mm",
        "\u00D82\"|DN50|60.3 mm",
        "PE da=110||110.0 mm",
        "PE Da 110||110.0 mm",
        "PE DE110||110.0 mm",
        "Tube de 110||",
        "110 dia||110.0 mm",
        "60.3 OD||60.3 mm",
        "12 OD||",
        "Rohr 22 mm||22.0 mm",
        "Rohr 22 mm isoliert||",
        "Rohr 22 mm, 3 St||",
        "Rohr 50 mm||",
        "Kupferrohr 22||",
        "1 1/4 Zoll|DN32|42.4 mm",
        "2 inch|DN50|60.3 mm",
        "DN 20\"|DN500|508.0 mm",
        "DN20\"|DN500|508.0 mm",
        "DN 3/4\"|DN20|26.9 mm",
        "Rohr DN 1 1/2\"|DN40|48.3 mm",
        "DN 1\"|DN25|33.7 mm",
        "DN 20 (3/4\")|DN20|26.9 mm",
        "DN 65 / 2 1/2\"|DN65|76.1 mm",
        "Riser 1/2 in shaft||",
        "1/2\" - 2\"||",
        "R1 1/2\"|DN40|48.3 mm",
        "R 1 1/4|DN32|42.4 mm",
        "G 3/4 A|DN20|26.9 mm",
        "Rc1/2|DN15|21.3 mm",
        "G\u00BD|DN15|21.3 mm",
        "R2\"|DN50|60.3 mm",
        "1.1/4\"|DN32|42.4 mm",
        "R3/4\"|DN20|26.9 mm",
        "KH3/4\"||",
        "KH1 1/2\"||",
        "R 2||",
        "Riser R 2.1||",
        "DN 3/4||",
        "2 in||",
        "45\u00B030'15\"||"
      })
  void inchesOfAPipeAreItsNominalSize(String name, String nominal, String size) {
    MepElement pipe = first(bare("IFCPIPESEGMENT", name));

    assertThat(pipe.nominalSize()).isEqualTo(nominal);
    assertThat(size(pipe)).isEqualTo(size);
  }

  /** They tell a size where nothing else does, but what is around a pipe is no size of it. */
  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "Rohr|Stahlrohr 60,3x2,9||60.3 mm",
        "Rohr||DN50|60.3 mm",
        "Rohr DN80|Stahlrohr 60,3x2,9|DN50|88.9 mm",
        "Rohr|2\" insulation||",
        "Rohr|||"
      })
  void descriptionOrTagTellsASizeThatNoNameDoes(
      String name, @Nullable String description, @Nullable String tag, @Nullable String size) {
    String record =
        "#1=IFCPIPESEGMENT('1',$,'%s',%s,$,$,$,%s,$);\n"
            .formatted(name, quoted(description), quoted(tag));

    assertThat(size(first(record))).isEqualTo(size);
  }

  @Test
  void descriptionOfATypeTellsASizeToo() {
    MepElement pipe =
        first(
            bare("IFCPIPESEGMENT", "Rohr")
                + "#2=IFCPIPESEGMENTTYPE('2',$,'Standard','60,3 x 2,9',$,$,$,$,$,.RIGIDSEGMENT.);\n"
                + "#3=IFCRELDEFINESBYTYPE('3',$,$,$,(#1),#2);\n");

    assertThat(size(pipe)).isEqualTo("60.3 mm");
  }

  private static String quoted(@Nullable String text) {
    return text == null ? "$" : "'" + text + "'";
  }

  /** ASME B36.10M: 2 1/2 inches are 73.0 mm outside, 3/4 of an inch 26.7 mm. */
  @ParameterizedTest
  @CsvSource({"36.5,NPS 2 1/2,DN65", "13.35,NPS 3/4,DN20", "24.15,NPS 1 1/2,DN40"})
  void drawnPipeAgreesWithItsFractionOfInches(double radiusMm, String name, String nominal) {
    MepModel model =
        read(
            "#1=IFCPIPESEGMENT('1',$,'%s',$,$,#14,#10,$,$);\n".formatted(name)
                + body("IFCCIRCLEPROFILEDEF(.AREA.,$,$," + radiusMm + ")"));

    assertThat(element(model, 1).nominalSize()).isEqualTo(nominal);
    assertThat(codes(model)).isEmpty();
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "Elbow NPS 1 1/2 90\u00B0|48.3 mm",
        "Reducer NPS 2 x 1 1/2|60.3 mm",
        "Reducer 2\u00BD\"x1\u00BD\"|76.1 mm",
        "Reduzierung_DN50_DN40|60.3 mm"
      })
  void fittingHasTheLargestSizeOfItsName(String name, String size) {
    assertThat(size(first(bare("IFCPIPEFITTING", name)))).isEqualTo(size);
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "60.3 mm OD|60.3 mm",
        "Pipe 60.3 mm OD 54 l/s|60.3 mm",
        "Pipe O.D. 50|50.0 mm",
        "Aussendurchmesser 60,3 mm|60.3 mm",
        "Pipe dia. 22 mm|22.0 mm",
        // of 50 mm it may be DN 50
        "Pipe 50 mm dia|",
        "Pipe outer dia 50 mm|50.0 mm",
        "Inside diameter 22|",
        "Diaphragm 22|",
        "Rohr_DN50_Stahl|60.3 mm",
        "DN50_PN16|60.3 mm",
        "DN-50|60.3 mm",
        "dn50|60.3 mm",
        "DN50mm|60.3 mm",
        "DN\u00A050|60.3 mm",
        "\u0422\u0440\u0443\u0431\u0430 \u0414\u0443 50|60.3 mm",
        "\u0422\u0440\u0443\u0431\u0430 \u0414\u042350|60.3 mm",
        "\u0422\u0440\u0443\u0431\u0430 57\u04453,5|57.0 mm",
        "DN 50 x 3,2|60.3 mm",
        "PE DN 110|110.0 mm",
        "OD 60.3|60.3 mm",
        "OD60.3|60.3 mm",
        "\u220560.3|60.3 mm",
        "\u03A660.3|60.3 mm",
        "d63x5.8|63.0 mm",
        "60.3x2.9x6000|60.3 mm",
        "60,3 * 2,9|60.3 mm",
        "22 mm|22.0 mm",
        "50 mm|",
        "Kupfer 22 mm|22.0 mm",
        "ADN50|",
        "DN50a|",
        "DN12345|"
      })
  void nameOfAPipeGivesItsSize(String name, String size) {
    assertThat(size(first(bare("IFCPIPESEGMENT", name)))).isEqualTo(size);
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "0.5 m x 0.3 m|500.0 x 300.0 mm",
        "0,5mx0,3m|500.0 x 300.0 mm",
        "3 m x 500 x 300|500.0 x 300.0 mm",
        "500W x 300H|500.0 x 300.0 mm",
        "500 mm (B) x 300 mm (H)|500.0 x 300.0 mm",
        "B 500 x H 300|500.0 x 300.0 mm",
        "Dia. 160 mm|160.0 mm",
        "160 mm dia.|160.0 mm",
        "Durchmesser 160|160.0 mm",
        "Diameter: 20\"|508.0 mm",
        "Diamond 160|",
        "400*200|400.0 x 200.0 mm",
        "400 MM x 200 MM|400.0 x 200.0 mm",
        "400\u00A0x\u00A0200|400.0 x 200.0 mm",
        "400\u00A0mm x 200\u00A0mm|400.0 x 200.0 mm",
        "B=400 H=200|400.0 x 200.0 mm",
        "B400xH200|400.0 x 200.0 mm",
        "W400 H200|400.0 x 200.0 mm",
        "0.4x0.2 m|400.0 x 200.0 mm",
        "0.4x0.2|",
        "2 x 4 m|",
        "Kanal B 201 H 105|",
        "12 400x200|400.0 x 200.0 mm",
        "16 inch x 8 inch|406.4 x 203.2 mm",
        "1'-4\" x 8\"|406.4 x 203.2 mm",
        "1'-4\"x0'-8\"|406.4 x 203.2 mm",
        "1' - 4\" x 0' - 8\"|406.4 x 203.2 mm",
        "4'-0\"x2'-0\"|1219.2 x 609.6 mm",
        "1'-4\" x 8|",
        "1 200 x 400|1200.0 x 400.0 mm",
        "1\u00A0200x400|1200.0 x 400.0 mm",
        "400 x 1 200|400.0 x 1200.0 mm",
        "AHU 1 200x400|200.0 x 400.0 mm",
        "1'200 x 400|1200.0 x 400.0 mm",
        "AHU 1'200x1\u2019100 mm|1200.0 x 1100.0 mm",
        "1'4 x 8|",
        "\u2205315|315.0 mm",
        "H12 W4|",
        "Shaft B4 H2|"
      })
  void textOfADuctGivesItsSides(String text, String size) {
    assertThat(size(first(bare("IFCDUCTSEGMENT", text)))).isEqualTo(size);
  }

  @Test
  void ductDrawnAsFeetAndInchesSayHasNoConflict() {
    MepModel model =
        read(
            "#1=IFCDUCTSEGMENT('1',$,'Rect 1''-4\" x 8\"',$,$,#14,#10,$,$);\n"
                + body("IFCRECTANGLEPROFILEDEF(.AREA.,$,$,406.4,203.2)"));

    assertThat(codes(model)).isEmpty();
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "Flat oval 500x250|Tag;IFCTEXT('x')|500.0 x 250.0 mm oval",
        "Ovalrohr|Size;IFCTEXT('500x250')|500.0 x 250.0 mm oval",
        "Flachovalrohr|Width;IFCREAL(500.);Height;IFCREAL(250.)|500.0 x 250.0 mm oval",
        "Oval Duct|Shape;IFCLABEL('Rectangular');Size;IFCTEXT('500x250')|500.0 x 250.0 mm",
        "Smoke removal 500x250|Tag;IFCTEXT('x')|500.0 x 250.0 mm"
      })
  void ductThatIsCalledOvalIsFlatOval(String name, String stated, String size) {
    MepElement duct = first(bare("IFCDUCTSEGMENT", name) + properties(stated.split(";", -1)));

    assertThat(size(duct)).isEqualTo(size);
  }

  /** A figure in its own name may number it. */
  @ParameterizedTest
  @CsvSource({"Kupferrohr 22,22.0 mm", "Cu22,22.0 mm", "Copper 22 L,22.0 mm", "Stahlrohr 22,"})
  void copperIsCalledByItsOutsideInTheNameOfAType(String type, @Nullable String inWords) {
    String pipe = "#1=IFCPIPESEGMENT('1',$,'Rohr',$,'%s',$,$,$,$);\n".formatted(type);

    assertThat(size(first(pipe))).isEqualTo(inWords);
  }
}
