package org.lagwright.ifc.append;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.HexFormat;
import java.util.List;
import java.util.Objects;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.lagwright.ifc.schema.IfcFile;
import org.lagwright.ifc.schema.IfcRecord;
import org.lagwright.ifc.schema.IfcSchema;
import org.lagwright.ifc.schema.SchemaTypes;
import org.lagwright.ifc.step.StepBytes;
import org.lagwright.ifc.step.StepLimits;

class StepAppenderTest {

  private static final String HEAD =
      "ISO-10303-21;\nHEADER;\nFILE_SCHEMA(('IFC4'));\nENDSEC;\nDATA;\n";

  private static byte[] bytes(String text) {
    return text.getBytes(StandardCharsets.ISO_8859_1);
  }

  private static IfcFile open(byte[] file) {
    return IfcFile.open(StepBytes.of(file), StepLimits.DEFAULT, read -> {});
  }

  private static byte[] append(String text, StepAppender.Records records) throws IOException {
    byte[] file = bytes(text);
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    StepAppender.append(StepBytes.of(file), open(file).step(), out, records);
    return out.toByteArray();
  }

  private static void label(StepAppender to, String text) {
    to.add("IfcMaterial", List.of(StepValue.text(text), StepValue.NULL, StepValue.NULL));
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "#7=IFCMATERIAL('a',$,$);\n|ENDSEC;\nEND-ISO-10303-21;\n",
        "#7=IFCMATERIAL('a',$,$);\n/* ENDSEC; */\n|ENDSEC;\n/* ENDSEC; */END-ISO-10303-21;\n",
        "#7=IFCMATERIAL('ENDSEC; it''s',$,$);|ENDSEC;END-ISO-10303-21;",
        "#7=IFCMATERIAL('\u00e9\u00ff raw',$,$);\n|endsec ;\nEND-ISO-10303-21;\n\n"
      })
  void everyByteStaysAndRecordsComeBeforeTheEndOfTheData(String marked) throws IOException {
    String before = HEAD + marked.substring(0, marked.indexOf('|'));
    String after = marked.substring(marked.indexOf('|') + 1);
    byte[] written = append(before + after, to -> label(to, "b"));

    assertThat(new String(written, StandardCharsets.ISO_8859_1))
        .isEqualTo(before + "#8=IFCMATERIAL('b',$,$);\n" + after);
  }

  @Test
  void linesEndAsInTheFile() throws IOException {
    String file = (HEAD + "#3=IFCMATERIAL('a',$,$);\nENDSEC;\n").replace("\n", "\r\n");

    assertThat(new String(append(file, to -> label(to, "b")), StandardCharsets.ISO_8859_1))
        .contains("#4=IFCMATERIAL('b',$,$);\r\nENDSEC;\r\n");
  }

  @Test
  void numbersGoOnFromTheGreatestAndNotFromTheLast() throws IOException {
    String file = HEAD + "#900=IFCMATERIAL('a',$,$);\n#3=IFCMATERIAL('b',$,$);\nENDSEC;\n";
    byte[] written =
        append(
            file,
            to -> {
              label(to, "c");
              label(to, "d");
            });

    assertThat(open(written).step().size()).isEqualTo(4);
    assertThat(open(written).find(902)).isNotNull();
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "",
        "it's 5\\8 \"inch\"",
        "W\u00e4rmed\u00e4mmung 30 mm",
        "\u65ad\u70ed\u6750 \u00e9",
        "line\nbreak and tab\t",
        "\uD83D\uDD25 fire \uD83D\uDD25\u00e9",
        "\\X2\\00E9\\X0\\"
      })
  void textIsReadBackAsItWas(String text) throws IOException {
    byte[] written = append(HEAD + "ENDSEC;\n", to -> label(to, text));
    IfcRecord material = Objects.requireNonNull(open(written).find(1));

    assertThat(material.text("Name")).isEqualTo(text);
    assertThat(new String(written, StandardCharsets.ISO_8859_1)).matches("[\\n\\x20-\\x7E]*");
  }

  @ParameterizedTest
  @CsvSource({"0.025, 0.025", "25, 25.", "-0.0, 0.", "1e-9, 1.0E-9", "123456789.5, 1.234567895E8"})
  void realNumbersHaveAPoint(double value, String written) {
    assertThat(StepValue.real(value).written()).isEqualTo(written);
  }

  @ParameterizedTest
  @ValueSource(doubles = {Double.NaN, Double.POSITIVE_INFINITY})
  void whatIsNoNumberIsNotWritten(double value) {
    assertThatThrownBy(() -> StepValue.real(value)).isInstanceOf(IllegalArgumentException.class);
  }

  @ParameterizedTest
  @CsvSource({
    "IFC2X3, '#1=IFCMATERIAL(''wool'');'",
    "IFC4, '#1=IFCMATERIAL(''wool'',$,$);'",
    "IFC4X3, '#1=IFCMATERIAL(''wool'',$,$);'"
  })
  void attributesStandInTheOrderOfTheSchema(IfcSchema schema, String record) throws IOException {
    byte[] written =
        append(
            HEAD + "ENDSEC;\n",
            to -> new IfcAppender(schema, to).record("IfcMaterial").text("Name", "wool").add());

    assertThat(new String(written, StandardCharsets.US_ASCII)).contains(record);
  }

  @Test
  void whatTheSchemaDoesNotKnowIsRefused() throws IOException {
    append(
        HEAD + "ENDSEC;\n",
        to -> {
          IfcAppender ifc = new IfcAppender(IfcSchema.IFC2X3, to);
          assertThatThrownBy(
                  () -> ifc.record("IfcMaterial").text("Name", "a").text("Category", "b").add())
              .isInstanceOf(IllegalStateException.class)
              .hasMessageContaining("Category");
          assertThatThrownBy(() -> ifc.record("IfcMaterial").add())
              .isInstanceOf(IllegalStateException.class)
              .hasMessageContaining("IfcMaterial.Name has no value");
          assertThatThrownBy(() -> ifc.record("IfcPolygonalFaceSet").add())
              .isInstanceOf(IllegalStateException.class);
          assertThat(ifc.knows("IfcPolygonalFaceSet")).isFalse();
        });
  }

  @ParameterizedTest
  @EnumSource(IfcSchema.class)
  void derivedAttributesAreAsterisks(IfcSchema schema) throws IOException {
    byte[] written =
        append(
            HEAD + "ENDSEC;\n",
            to ->
                new IfcAppender(schema, to)
                    .record("IfcSIUnit")
                    .set("UnitType", StepValue.enumeration("LENGTHUNIT"))
                    .set("Name", StepValue.enumeration("METRE"))
                    .add());

    assertThat(new String(written, StandardCharsets.US_ASCII))
        .contains("#1=IFCSIUNIT(*,.LENGTHUNIT.,$,.METRE.);");
  }

  /** Counts of the published schemas, of each entity all attributes with a type. */
  @ParameterizedTest
  @CsvSource({"IFC2X3, 653", "IFC4, 776", "IFC4X3, 876"})
  void everyAttributeOfASchemaHasItsType(IfcSchema schema, int entities) {
    SchemaTypes types = SchemaTypes.of(schema);

    assertThat(types.entities()).hasSize(entities);
    assertThat(types.entities())
        .allSatisfy(e -> assertThat(types.attributes(e)).allMatch(a -> !a.type().isEmpty()));
    assertThat(types.attributes("IfcCovering").get(1).optional())
        .isEqualTo(schema != IfcSchema.IFC2X3);
  }

  /** Vectors from the IFC4X3 documentation of IfcGloballyUniqueId and by hand. */
  @ParameterizedTest
  @CsvSource({
    "f70dd363bfe3495d84a02c02dcb7d4d2, 3t3TDZl_D9NOIWB0BSjzJI",
    "00000000000000000000000000000000, 0000000000000000000000",
    "ffffffffffffffffffffffffffffffff, 3$$$$$$$$$$$$$$$$$$$$$"
  })
  void globalIdsAreCompressedAsTheStandardSays(String hex, String compressed) {
    assertThat(GlobalId.compressed(HexFormat.of().parseHex(hex))).isEqualTo(compressed);
  }

  @Test
  void oneNameHasOneGlobalId() {
    assertThat(GlobalId.of("a")).isEqualTo(GlobalId.of("a")).isNotEqualTo(GlobalId.of("b"));
    assertThat(GlobalId.of("a")).matches("[0-3][0-9A-Za-z_$]{21}");
  }
}
