package org.lagwright.ifc.extract;

import static org.assertj.core.api.Assertions.assertThat;
import static org.lagwright.ifc.extract.InlineModel.body;
import static org.lagwright.ifc.extract.InlineModel.element;
import static org.lagwright.ifc.extract.InlineModel.placed;
import static org.lagwright.ifc.extract.InlineModel.properties;
import static org.lagwright.ifc.extract.InlineModel.read;
import static org.lagwright.ifc.extract.Network.at;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.lagwright.ifc.model.Finding;
import org.lagwright.ifc.model.Kind;
import org.lagwright.ifc.model.MepElement;
import org.lagwright.ifc.model.MepModel;
import org.lagwright.ifc.model.Port;
import org.lagwright.ifc.model.ReadFinding;

/**
 * Elements, most without a body, whose parts are elements too; those that are drawn are 2.5 m long.
 */
class CountedByPartsTest {

  private static final String PIPE_60 = "IFCCIRCLEPROFILEDEF(.AREA.,$,$,30.15)";

  private static final double[] EAST = at(1, 0, 0);
  private static final double[] WEST = at(-1, 0, 0);

  private static String whole(String keyword) {
    return "#1=%s('1',$,'Whole',$,$,$,$,$,$);\n".formatted(keyword);
  }

  /** Two of them, the second 5 m farther. */
  private static String parts(String keyword) {
    return "#2=%s('2',$,'Part',$,$,#100,#10,$,$);\n".formatted(keyword)
        + "#3=%s('3',$,'Part',$,$,#110,#10,$,$);\n".formatted(keyword)
        + placed(100, 0, 0, 0)
        + placed(110, 0, 0, 5000)
        + body(PIPE_60);
  }

  private static String related(String relation) {
    return "#200=%s('r',$,$,$,#1,(#2,#3));\n".formatted(relation);
  }

  private static List<Finding> told(MepModel model) {
    return model.findings().stream()
        .filter(finding -> finding.code() == ReadFinding.COUNTED_BY_PARTS)
        .toList();
  }

  @ParameterizedTest
  @CsvSource({
    "IFCPIPESEGMENT,IFCRELNESTS",
    "IFCPIPESEGMENT,IFCRELAGGREGATES",
    "IFCDUCTSEGMENT,IFCRELAGGREGATES",
    "IFCPIPEFITTING,IFCRELAGGREGATES",
    "IFCVALVE,IFCRELNESTS"
  })
  void elementWithoutBodyIsNotCountedBesideItsParts(String keyword, String relation) {
    MepModel model = read(whole(keyword) + parts(keyword) + related(relation));

    assertThat(element(model, 1).kind()).isEqualTo(Kind.OTHER);
    assertThat(element(model, 2).kind().isLagged()).isTrue();
    assertThat(element(model, 3).kind().isLagged()).isTrue();
    assertThat(told(model)).hasSize(1);
    assertThat(told(model).get(0).element()).isEqualTo(element(model, 1).key());
    assertThat(told(model).get(0).values()).containsExactly("2", "Part");
    assertThat(model.findings()).allMatch(finding -> isOfAnotherOrTold(model, finding));
  }

  private static boolean isOfAnotherOrTold(MepModel model, Finding finding) {
    return finding.code() == ReadFinding.COUNTED_BY_PARTS
        || !element(model, 1).key().equals(finding.element());
  }

  @ParameterizedTest
  @CsvSource({"IFCPIPESEGMENT,IFCVALVE", "IFCVALVE,IFCPIPEFITTING", "IFCPIPESEGMENT,IFCACTUATOR"})
  void elementIsCountedWhosePartsAreOfAnotherKind(String keyword, String ofParts) {
    MepModel model = read(whole(keyword) + parts(ofParts) + related("IFCRELNESTS"));

    assertThat(element(model, 1).kind().isLagged()).isTrue();
    assertThat(told(model)).isEmpty();
  }

  @ParameterizedTest
  @CsvSource({"5000.,OTHER", "5200.,OTHER", "9000.,PIPE_SEGMENT"})
  void pipeIsCountedThatIsLongerThanItsParts(String statedMm, Kind kind) {
    String length = properties("Length", "IFCLENGTHMEASURE(%s)".formatted(statedMm));
    String records =
        whole("IFCPIPESEGMENT") + length + parts("IFCPIPESEGMENT") + related("IFCRELNESTS");

    assertThat(element(read(records), 1).kind()).isEqualTo(kind);
  }

  @Test
  void elementWithBodyIsCounted() {
    String whole = "#1=IFCPIPESEGMENT('1',$,'Whole',$,$,#120,#10,$,$);\n" + placed(120, 9000, 0, 0);

    MepModel model = read(whole + parts("IFCPIPESEGMENT") + related("IFCRELNESTS"));

    assertThat(element(model, 1).kind()).isEqualTo(Kind.PIPE_SEGMENT);
  }

  /** Whole 1 is drawn from 0 to 5 m, and its parts 2 and 3 are drawn there again. */
  @ParameterizedTest
  @CsvSource({"2500,OTHER", "2000,PIPE_SEGMENT", "2600,PIPE_SEGMENT"})
  void elementIsNotCountedThatItsPartsDrawAgain(double lastMm, Kind kind) {
    MepModel model =
        new Network()
            .pipe(1, at(0, 0, 0), EAST, 5000, 60.3)
            .pipe(2, at(0, 0, 0), EAST, 2500, 60.3)
            .pipe(3, at(2500, 0, 0), EAST, lastMm, 60.3)
            .pipe(4, at(5000, 0, 0), EAST, 1000, 60.3)
            .record("#200=IFCRELAGGREGATES('r',$,$,$,#1000,(#2000,#3000));")
            .read();

    assertThat(element(model, 1000).kind()).isEqualTo(kind);
    assertThat(told(model)).hasSize(kind == Kind.OTHER ? 1 : 0);
    int joined = kind == Kind.OTHER ? 3000 : 1000;
    assertThat(element(model, 4000).ports())
        .extracting(Port::connectedTo)
        .containsExactly(element(model, joined).key());
  }

  @Test
  void elementsThatArePartsOfEachOtherAreCounted() {
    String both =
        whole("IFCPIPESEGMENT")
            + "#2=IFCPIPESEGMENT('2',$,'Other',$,$,$,$,$,$);\n"
            + properties(500, 1, "Set", "OuterDiameter", "IFCLENGTHMEASURE(60.3)")
            + properties(600, 2, "Set", "OuterDiameter", "IFCLENGTHMEASURE(60.3)")
            + "#200=IFCRELNESTS('r',$,$,$,#1,(#2));\n"
            + "#201=IFCRELNESTS('s',$,$,$,#2,(#1));\n";

    assertThat(read(both).elements()).allMatch(element -> element.kind() == Kind.PIPE_SEGMENT);
  }

  @Test
  void elementIsCountedThatOthersAreConnectedTo() {
    String connected =
        "#4=IFCPIPESEGMENT('4',$,'Next',$,$,$,$,$,$);\n"
            + "#5=IFCDISTRIBUTIONPORT('5',$,$,$,$,$,$,$,$,$);\n"
            + "#6=IFCDISTRIBUTIONPORT('6',$,$,$,$,$,$,$,$,$);\n"
            + "#201=IFCRELNESTS('s',$,$,$,#1,(#5));\n"
            + "#202=IFCRELNESTS('t',$,$,$,#4,(#6));\n"
            + "#203=IFCRELCONNECTSPORTS('u',$,$,$,#5,#6,$);\n";
    String records = whole("IFCPIPESEGMENT") + parts("IFCPIPESEGMENT") + related("IFCRELNESTS");

    MepModel model = read(records + connected);

    assertThat(element(model, 1).kind()).isEqualTo(Kind.PIPE_SEGMENT);
  }

  /** Whole 1 is 5 m, has a port at each end and goes on as pipe 4; parts 2 and 3 are all of it. */
  private static Network connected(String keyword) {
    return new Network()
        .fitting(1, keyword, "Whole", "$")
        .port(1, 1, at(0, 0, 0), WEST)
        .port(1, 2, at(5000, 0, 0), EAST)
        .pipe(2, at(0, 0, 0), EAST, 2500, 60.3)
        .pipe(3, at(2500, 0, 0), EAST, 2500, 60.3)
        .pipe(4, at(5000, 0, 0), EAST, 1000, 60.3)
        .port(4, 1, at(5000, 0, 0), WEST)
        .connect(1, 2, 4, 1)
        .record("#200=IFCRELAGGREGATES('r',$,$,$,#1000,(#2000,#3000));");
  }

  /** Also a fitting put together of straight pieces. */
  @ParameterizedTest
  @ValueSource(strings = {"IFCPIPESEGMENT", "IFCPIPEFITTING"})
  void partsDrawnWhereTheWholeIsConnectedTakeItsPlace(String keyword) {
    MepModel model = connected(keyword).read();
    MepElement last = element(model, 3000);
    MepElement next = element(model, 4000);

    assertThat(element(model, 1000).kind()).isEqualTo(Kind.OTHER);
    assertThat(element(model, 1000).ports()).allMatch(port -> port.connectedTo() == null);
    assertThat(next.ports()).extracting(Port::connectedTo).containsExactly(last.key());
    assertThat(last.ports())
        .extracting(Port::connectedTo)
        .containsExactlyInAnyOrder(element(model, 2000).key(), next.key());
    assertThat(told(model)).hasSize(1);
  }

  @Test
  void fittingThatHoldsOneStraightPieceIsCounted() {
    MepModel model =
        read(
            whole("IFCPIPEFITTING")
                + parts("IFCPIPESEGMENT")
                + "#200=IFCRELNESTS('r',$,$,$,#1,(#2));\n");

    assertThat(element(model, 1).kind()).isEqualTo(Kind.PIPE_FITTING);
  }
}
