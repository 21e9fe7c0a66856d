package org.lagwright.ifc.source;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.Objects;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.lagwright.ifc.SharedModels;
import org.lagwright.ifc.schema.IfcRecord;

/** Public files that are wrong in one way each: what every one of them ends in. */
class EdgeFilesTest {

  /** A value that is read all the same: numbers as a list, texts decoded. */
  private record Value(String file, long id, String attribute, String read) {}

  private record Noticed(String file, String code, String words) {}

  private record Refused(String file, String words) {}

  private static final String NO_LENGTH_UNIT = "declares no unit for length";

  static List<Value> values() {
    return List.of(
        new Value("gh_fail-swe002-mirrored-profile-def.ifc", 234, "ProfileType", "AREA"),
        new Value("sfp_extended_mvd.ifc", 20, "GlobalId", "2AyG2X0sb16Bjd4gQc07yZ"),
        new Value("sfp_fail_double_comma.ifc", 20, "GlobalId", "2AyG2X0sb16Bjd4gQc07yZ"),
        new Value("sfp_fail_no_header.ifc", 20, "GlobalId", "2AyG2X0sb16Bjd4gQc07yZ"),
        new Value("sfp_fail_reverse_string.ifc", 1, "GivenName", "C:\\path"),
        new Value("sfp_fail_utf8_with_bom.ifc", 1, "GivenName", ""),
        // no escape of the standard, so it stays as it is written
        new Value("sfp_fail_utf_encoding.ifc", 1, "GivenName", "W\\xc3\\xa4nd"),
        new Value("sfp_pass_1.ifc", 20, "GlobalId", "2AyG2X0sb16Bjd4gQc07yZ"),
        new Value("sfp_pass_double_reverse.ifc", 1, "GivenName", "C:\\path"),
        new Value("sfp_pass_page_encoding.ifc", 1, "GivenName", "abc\u00A7def"),
        new Value("sfp_pass_reverse_comment.ifc", 20, "GlobalId", "2AyG2X0sb16Bjd4gQc07yZ"),
        new Value("xb_BackSpaceInFileName.ifc", 48, "Name", "Island"),
        new Value(
            "xb_Badly_formed_Ifc_file.ifc", 42, "Name", "\u041A\u0440\u043E\u0432\u043B\u044F"),
        new Value("xb_DoubleBackSlashName.ifc", 418, "Name", "TextEndingInEscapedBackslash\\"),
        new Value("xb_DoubleBackSlashName.ifc", 421, "Name", "Text with accented character \u00E0"),
        new Value("xb_EmptyMultibyteString.ifc", 70, "Name", "Test Test Test"),
        new Value("xb_FormallyIllegalFile.ifc", 2, "Coordinates", "[NaN, NaN, NaN]"),
        new Value("xb_FormallyIllegalFile.ifc", 3, "Coordinates", "[1.6E10, 3.0, 1.0]"),
        new Value("xb_InvalidHeaderFileName.ifc", 1, "Name", "xbim"),
        new Value(
            "xb_InvalidMultiByte.ifc",
            15451,
            "Name",
            "1\u30B3\u30F3\u30AF\u30EA\u30FC\u30C8\u4F53\u7A4D"),
        new Value("xb_InvalidType.ifc", 2, "Role", "ARCHITECT"),
        new Value(
            "xb_Large_entity_label.ifc", 92_147_483_647L, "Name", "Autodesk Revit 2014 (ENU)"),
        new Value("xb_NewlinesInStrings.ifc", 323449, "Name", "L4x4x3/8\nB"),
        new Value("xb_RealWithExponent.ifc", 72, "Coordinates", "[0.0, 4.440892099E-13, 75.0]"),
        new Value(
            "xb_SpecicalSolidusEscape.ifc",
            1006,
            "Name",
            "This string ends with as special case of solidus escape \u00A7"),
        // bytes of another code page, escaped as if they were of ISO 8859-1
        new Value("xb_Wrongly1251Encoded.ifc", 56, "Name", "\u00E4\u00EE\u00EC"));
  }

  static List<Noticed> noticed() {
    return List.of(
        new Noticed("gh_na-por000-no_relating_port.ifc", "PORT_WITHOUT_OWNER", "2 ports"),
        new Noticed(
            "gh_pass-por000-passing_valid_port_connectivity.ifc", "PORT_WITHOUT_OWNER", "2"),
        new Noticed("sfp_fail_double_semi.ifc", "SYNTAX", "Line 27: this is no instance"),
        new Noticed("sfp_fail_duplicate_id.ifc", "SYNTAX", "instance #19 stands twice"),
        new Noticed("sfp_fail_invalid_0.ifc", "SYNTAX", "a number above 0 and '=' are expected"),
        new Noticed("sfp_fail_utf8_with_bom.ifc", "UNITS_ASSUMED", NO_LENGTH_UNIT),
        new Noticed("xb_Badly_formed_Ifc_file.ifc", "UNITS_ASSUMED", NO_LENGTH_UNIT),
        new Noticed("xb_FormallyIllegalFile.ifc", "UNITS_ASSUMED", NO_LENGTH_UNIT),
        new Noticed("xb_RealWithExponent.ifc", "UNITS_ASSUMED", NO_LENGTH_UNIT));
  }

  static List<Refused> refused() {
    return List.of(
        new Refused("xb_4walls1floorSite.ifcxml", "ifcXML is not supported"),
        new Refused("xb_HelloWallXml.ifczip", "the archive holds ifcXML"));
  }

  @ParameterizedTest
  @MethodSource("values")
  void valueIsRead(Value expected) {
    IfcRecord record =
        Objects.requireNonNull(
            SharedModels.open("edge/" + expected.file()).find(expected.id()), expected.file());

    assertThat(read(record, expected.attribute())).isEqualTo(expected.read());
    assertThat(ModelReader.read(file(expected.file()), 0, ProgressListener.SILENT).file().sha256())
        .isNotEmpty();
  }

  private static @Nullable String read(IfcRecord record, String attribute) {
    double[] numbers = record.numbers(attribute);
    if (numbers.length > 0) {
      return Arrays.toString(numbers);
    }
    String text = record.text(attribute);
    return text != null ? text : record.enumeration(attribute);
  }

  @ParameterizedTest
  @MethodSource("noticed")
  void findingSaysWhatIsWrong(Noticed expected) {
    assertThat(ModelReader.read(file(expected.file()), 0, ProgressListener.SILENT).findings())
        .anySatisfy(
            finding -> {
              assertThat(finding.code().name()).isEqualTo(expected.code());
              assertThat(finding.message()).contains(expected.words());
            });
  }

  @ParameterizedTest
  @MethodSource("refused")
  void whatCannotBeReadIsOneClearLine(Refused expected) {
    Path file = file(expected.file());

    assertThatThrownBy(() -> ModelReader.read(file, 0, ProgressListener.SILENT))
        .isInstanceOf(ModelException.class)
        .hasMessageStartingWith(file + ": " + expected.words())
        .satisfies(e -> assertThat(e.getMessage()).doesNotContain("\n"));
  }

  /** Four walls and a slab in an archive: read, and none of them a service. */
  @Test
  void archiveOfABuildingWithoutServicesHoldsNone() {
    assertThat(
            ModelReader.read(file("xb_SmallModelIfc2x3.ifczip"), 0, ProgressListener.SILENT)
                .otherProducts())
        .containsEntry("IfcWallStandardCase", 4)
        .containsEntry("IfcSlab", 1);
  }

  /** One body of 800 kB, of a proxy. */
  @Test
  void recordOfManyFacesIsRead() {
    assertThat(
            ModelReader.read(
                    file("xb_LargeTriangulatedCoordinates.ifc"), 0, ProgressListener.SILENT)
                .elements())
        .singleElement()
        .satisfies(e -> assertThat(e.ifcClass()).isEqualTo("IfcBuildingElementProxy"));
  }

  @Test
  void everyFileOfTheFolderHasItsEndHere() throws IOException {
    Set<String> known =
        Stream.of(
                values().stream().map(Value::file),
                noticed().stream().map(Noticed::file),
                refused().stream().map(Refused::file),
                Stream.of("xb_SmallModelIfc2x3.ifczip", "xb_LargeTriangulatedCoordinates.ifc"))
            .flatMap(files -> files)
            .collect(Collectors.toCollection(TreeSet::new));
    try (Stream<Path> files = Files.list(SharedModels.file("edge"))) {
      assertThat(files.map(f -> String.valueOf(f.getFileName())))
          .containsExactlyInAnyOrderElementsOf(known);
    }
  }

  private static Path file(String name) {
    return SharedModels.file("edge").resolve(name);
  }
}
