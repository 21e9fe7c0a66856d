package org.lagwright.ifc.extract.join;

import static org.assertj.core.api.Assertions.assertThat;
import static org.lagwright.ifc.extract.InlineModel.MILLIMETRES;
import static org.lagwright.ifc.extract.InlineModel.codes;
import static org.lagwright.ifc.extract.InlineModel.diameterMm;
import static org.lagwright.ifc.extract.InlineModel.properties;
import static org.lagwright.ifc.extract.Network.at;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.lagwright.ifc.extract.InlineModel;
import org.lagwright.ifc.extract.ModelExtractor;
import org.lagwright.ifc.extract.Network;
import org.lagwright.ifc.extract.ReadOptions;
import org.lagwright.ifc.model.MepModel;
import org.lagwright.ifc.model.ModelFile;

/** A value that stands for nothing in one file does so in the others of its exporter. */
class CrossPlaceholdersTest {

  private static final double[] UP = at(0, 0, 1);

  /** Four pipes of DN 15 to 80, all with an outside diameter of 60.3 mm. */
  private static final String MANY =
      sized(1, 15, 60.3) + sized(2, 25, 60.3) + sized(3, 50, 60.3) + sized(4, 80, 60.3);

  private static final String TWO = sized(5, 15, 60.3) + sized(6, 25, 60.3);

  private static String sized(int id, int nominalMm, double outsideMm) {
    String measure = "IFCPOSITIVELENGTHMEASURE(%s)";
    return "#%d=IFCPIPESEGMENT('g%d',$,'Pipe',$,$,$,$,$,$);\n".formatted(id, id)
        + properties(
            id * 100,
            id,
            "Set",
            "NominalDiameter",
            measure.formatted(nominalMm),
            "OuterDiameter",
            measure.formatted(outsideMm));
  }

  private static MepModel read(int index, String exporter, String records) {
    ModelFile source = new ModelFile(index, "inline.ifc", "sum", "IFC4", exporter);
    return ModelExtractor.extract(
        InlineModel.file("IFC4", MILLIMETRES + records), source, done -> {});
  }

  private static List<MepModel> join(MepModel... models) {
    return ModelJoiner.join(List.of(models), ReadOptions.DEFAULT.joinToleranceM());
  }

  @Test
  void placeholderOfTheLargeFileIsOneOnTheFewPipesOfTheSmallOne() {
    MepModel large = read(0, "Program 1", MANY);
    MepModel small = read(1, "Program 1", TWO);
    assertThat(small.elements()).extracting(InlineModel::diameterMm).containsOnly(60.3);

    MepModel joined = join(large, small).get(1);

    // steel by EN 10255
    assertThat(joined.elements()).extracting(InlineModel::diameterMm).containsExactly(21.3, 33.7);
    assertThat(codes(joined)).containsOnlyOnce("PLACEHOLDER_VALUES");
    assertThat(joined.file().sha256()).isEqualTo("sum");
    assertThat(join(read(0, "Program 1", TWO), read(1, "Program 1", MANY)).get(0).elements())
        .extracting(InlineModel::diameterMm)
        .containsExactly(21.3, 33.7);
  }

  /** Two pipes of each file are too few to tell, all four are not. */
  @Test
  void smallFilesExposeItTogether() {
    List<MepModel> joined =
        join(
            read(0, "Program 1", TWO),
            read(1, "Program 1", sized(7, 40, 60.3) + sized(8, 80, 60.3)));

    assertThat(diameterMm(joined.get(0).elements().get(0))).isEqualTo(21.3);
    assertThat(diameterMm(joined.get(1).elements().get(1))).isEqualTo(88.9);
  }

  @Test
  void otherExportersAndOtherValuesAreJudgedByThemselves() {
    for (MepModel small :
        List.of(
            read(1, "Program 2", sized(5, 50, 60.3) + sized(6, 50, 60.3)),
            read(1, "", TWO),
            read(1, "Program 1", sized(5, 15, 21.3) + sized(6, 50, 60.3)))) {
      List<Double> before = small.elements().stream().map(InlineModel::diameterMm).toList();

      assertThat(join(read(0, "Program 1", MANY), small).get(1).elements())
          .extracting(InlineModel::diameterMm)
          .containsExactlyElementsOf(before);
    }
  }

  /** Three pipes of other sizes show that the type does not tell the size of any piece. */
  @Test
  void sizeInTheNameOfATypeThatIsNoneOfItsPiecesIsNoSizeInAnotherFile() {
    String type =
        """
        #80=IFCPIPESEGMENTTYPE('t',$,'Pipe DN50',$,$,$,$,$,$,.RIGIDSEGMENT.);
        #81=IFCRELDEFINESBYTYPE('u',$,$,$,(%s),#80);
        """;
    String many =
        new Network()
                .pipe(1, at(0, 0, 0), UP, 1000, 21.3)
                .pipe(2, at(1000, 0, 0), UP, 1000, 33.7)
                .pipe(3, at(2000, 0, 0), UP, 1000, 88.9)
                .text()
            + type.formatted("#1000,#2000,#3000");
    String one =
        new Network().pipe(4, at(3000, 0, 0), UP, 1000, 42.4).text() + type.formatted("#4000");

    assertThat(codes(read(1, "Program 1", one))).contains("SECTION_CONFLICT");
    assertThat(codes(join(read(0, "Program 1", many), read(1, "Program 1", one)).get(1)))
        .contains("PLACEHOLDER_VALUES")
        .doesNotContain("SECTION_CONFLICT");
  }
}
