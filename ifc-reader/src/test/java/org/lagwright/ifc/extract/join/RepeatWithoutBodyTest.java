package org.lagwright.ifc.extract.join;

import static org.assertj.core.api.Assertions.assertThat;
import static org.lagwright.ifc.extract.InlineModel.body;
import static org.lagwright.ifc.extract.InlineModel.diameterMm;
import static org.lagwright.ifc.extract.InlineModel.element;
import static org.lagwright.ifc.extract.InlineModel.placed;
import static org.lagwright.ifc.extract.InlineModel.properties;

import java.util.List;
import java.util.Objects;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.lagwright.ifc.extract.InlineModel;
import org.lagwright.ifc.extract.ReadOptions;
import org.lagwright.ifc.model.ElementKey;
import org.lagwright.ifc.model.MepElement;
import org.lagwright.ifc.model.MepModel;

/** An element of one GlobalId in several files, of which not all have its body. */
class RepeatWithoutBodyTest {

  private static final String LENGTH =
      """
      #70=IFCELEMENTQUANTITY('70',$,'Qto_PipeSegmentBaseQuantities',$,$,(#71));
      #71=IFCQUANTITYLENGTH('Length',$,$,2400.,$);
      #72=IFCRELDEFINESBYPROPERTIES('72',$,$,$,(#1),#70);
      """;

  /** A pipe of 60.3 mm, 2.5 m up from a point. */
  private static String drawn(double xMm, double zMm) {
    return body("IFCCIRCLEPROFILEDEF(.AREA.,$,$,30.15)")
        + "#1=IFCPIPESEGMENT('a',$,'Pipe DN50',$,$,#30,#10,$,$);\n"
        + placed(30, xMm, 0, zMm);
  }

  /** The same pipe without a representation. */
  private static String bare(double xMm, double zMm) {
    return "#1=IFCPIPESEGMENT('a',$,'Pipe DN50',$,$,#30,$,$,$);\n" + placed(30, xMm, 0, zMm);
  }

  private static String storey(double elevationMm) {
    return "#80=IFCBUILDINGSTOREY('80',$,'Storey',$,$,$,$,$,.ELEMENT.,%s);\n".formatted(elevationMm)
        + "#81=IFCRELCONTAINEDINSPATIALSTRUCTURE('81',$,$,$,(#1),#80);\n";
  }

  private static List<MepModel> join(String... files) {
    List<MepModel> models =
        IntStream.range(0, files.length).mapToObj(i -> InlineModel.read(i, files[i])).toList();
    return ModelJoiner.join(models, ReadOptions.DEFAULT.joinToleranceM());
  }

  private static List<String> codes(List<MepModel> models) {
    return models.stream().flatMap(m -> InlineModel.codes(m).stream()).toList();
  }

  /** Its middle lies 1.25 m above its placement, and it states 2.4 m. */
  @ParameterizedTest
  @CsvSource({"0,1,true", "1,0,true", "0,1,false", "1,0,false"})
  void elementThatOnlyOneFileDrawsCountsAsItIsDrawn(int drawn, int bare, boolean states) {
    String[] files = new String[2];
    files[drawn] = drawn(5000, 100);
    files[bare] = bare(5000, 100) + (states ? LENGTH : "");
    List<MepModel> models = join(files);
    MepElement counts = element(models.get(drawn), 1);

    assertThat(counts.repeats()).isNull();
    assertThat(diameterMm(counts)).isEqualTo(60.3);
    assertThat(Objects.requireNonNull(counts.lengthM()).value()).isEqualTo(2.5);
    assertThat(element(models.get(bare), 1).repeats()).isEqualTo(new ElementKey(drawn, 1));
    assertThat(InlineModel.codes(models.get(bare))).containsExactly("REPEATED_ELEMENTS");
  }

  /** Three files, of which any one has the body. */
  @ParameterizedTest
  @CsvSource({"0", "1", "2"})
  void allRepeatTheOneThatIsDrawn(int drawn) {
    String[] files = {bare(5000, 100), bare(5000, 100), bare(5000, 100)};
    files[drawn] = drawn(5000, 100);
    List<MepModel> models = join(files);

    for (int i = 0; i < files.length; i++) {
      ElementKey expected = i == drawn ? null : new ElementKey(drawn, 1);
      assertThat(element(models.get(i), 1).repeats()).isEqualTo(expected);
    }
    assertThat(codes(models)).doesNotContain("SAME_ID_ELSEWHERE");
  }

  @Test
  void insulationThatIsStatedWithoutABodyBelongsToTheDrawnElement() {
    String stated = properties("Insulation Thickness", "IFCLENGTHMEASURE(30.)");
    List<MepModel> models = join(bare(5000, 100) + stated, drawn(5000, 100));

    assertThat(Objects.requireNonNull(element(models.get(1), 1).existingInsulation()).thicknessM())
        .isEqualTo(0.03);
  }

  /** Half of 2.5 m and a metre beyond the middle, which is at 1.25 m. */
  @ParameterizedTest
  @CsvSource({"5000,-990,true", "5000,-1010,false", "5000,3490,true", "5000,3510,false"})
  void placementFarFromTheBodyIsThatOfAnotherElement(double xMm, double zMm, boolean same) {
    for (String[] files :
        new String[][] {{drawn(5000, 0), bare(xMm, zMm)}, {bare(xMm, zMm), drawn(5000, 0)}}) {
      List<MepModel> models = join(files);

      assertThat(codes(models)).contains(same ? "REPEATED_ELEMENTS" : "SAME_ID_ELSEWHERE");
      assertThat(codes(models)).doesNotContain(same ? "SAME_ID_ELSEWHERE" : "REPEATED_ELEMENTS");
    }
  }

  /** The zero of a file is the placement of all that is drawn in coordinates of the whole. */
  @Test
  void placementAtTheZeroOfTheFileTellsNoPlace() {
    assertThat(codes(join(drawn(50_000, 0), bare(0, 0)))).contains("REPEATED_ELEMENTS");
  }

  @Test
  void placementOnAnotherStoreyIsThatOfAnotherElement() {
    List<MepModel> models = join(drawn(5000, 0) + storey(0), bare(5000, 3000) + storey(3000));
    List<MepModel> oneStorey = join(drawn(5000, 0) + storey(0), bare(5000, 3000) + storey(0));

    assertThat(codes(models)).contains("SAME_ID_ELSEWHERE");
    assertThat(codes(oneStorey)).contains("REPEATED_ELEMENTS");
  }

  @Test
  void bodiesOfOneGlobalIdInTwoPlacesStayTwo() {
    List<MepModel> models = join(drawn(5000, 0), drawn(5100, 0));

    assertThat(element(models.get(1), 1).repeats()).isNull();
    assertThat(codes(models)).containsOnlyOnce("SAME_ID_ELSEWHERE");
  }

  @ParameterizedTest
  @CsvSource({"0,1", "1,0"})
  void sizeAndLengthThatTheFileWithoutBodyStatesOtherwiseAreTold(int drawn, int bare) {
    String[] files = new String[2];
    files[drawn] = drawn(5000, 100);
    files[bare] =
        bare(5000, 100) + LENGTH + properties("Outside Diameter", "IFCLENGTHMEASURE(76.1)");
    MepModel counts = join(files).get(drawn);

    assertThat(InlineModel.message(counts, "SECTION_CONFLICT"))
        .contains("Size 60.3 mm is used")
        .contains(" in inline.ifc), but")
        .contains("76.1 mm is given by #510 Set.Outside Diameter = 76.1 in inline.ifc");
    assertThat(InlineModel.message(counts, "LENGTH_CONFLICT"))
        .contains("Length 2.500 m is used")
        .contains("2.400 m is given by #71 Qto_PipeSegmentBaseQuantities.Length");
  }

  @Test
  void sizeThatIsDrawnInBothFilesIsNoContradictionWhereOneStatesAnother() {
    String stated = properties("Outside Diameter", "IFCLENGTHMEASURE(76.1)");
    List<MepModel> models = join(drawn(5000, 0), drawn(5000, 0) + stated);

    assertThat(InlineModel.codes(models.get(0))).doesNotContain("SECTION_CONFLICT");
    assertThat(InlineModel.codes(models.get(1))).containsOnlyOnce("SECTION_CONFLICT");
  }

  @ParameterizedTest
  @CsvSource({"0,1", "1,0"})
  void sizeAndLengthThatOnlyOneOfTwoFilesStatesBelongToTheElement(int silent, int stating) {
    String[] files = new String[2];
    files[silent] = bare(5000, 100).replace(" DN50", "");
    files[stating] =
        files[silent] + LENGTH + properties("Outside Diameter", "IFCLENGTHMEASURE(76.1)");
    MepElement counts = element(join(files).get(0), 1);

    assertThat(counts.repeats()).isNull();
    assertThat(diameterMm(counts)).isEqualTo(76.1);
    assertThat(Objects.requireNonNull(counts.lengthM()).value()).isEqualTo(2.4);
    assertThat(counts.lengthM().evidence().toString().contains(" in inline.ifc"))
        .isEqualTo(silent == 0);
  }
}
