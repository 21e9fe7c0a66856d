package org.lagwright.ifc.extract.join;

import static org.assertj.core.api.Assertions.assertThat;
import static org.lagwright.ifc.extract.InlineModel.codes;
import static org.lagwright.ifc.extract.InlineModel.element;
import static org.lagwright.ifc.extract.InlineModel.properties;
import static org.lagwright.ifc.extract.Network.at;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.lagwright.ifc.extract.Network;
import org.lagwright.ifc.model.ElementKey;
import org.lagwright.ifc.model.Kind;
import org.lagwright.ifc.model.MepModel;
import org.lagwright.ifc.model.Port;

/**
 * Pipe 1 is a whole of 5 m that two files hold, 2 and 3 are its parts of 2.5 m, and pipe 4 goes on
 * where it ends.
 */
class CrossPartsTest {

  private static final double[] EAST = at(1, 0, 0);

  private static Network whole(Network file) {
    return file.pipe(1, at(0, 0, 0), EAST, 5000, 60.3);
  }

  /** Without a body; its length is stated. */
  private static Network bare() {
    return new Network()
        .fitting(1, "IFCPIPESEGMENT", "Whole", "$")
        .record(properties(500, 1000, "Set", "Length", "IFCLENGTHMEASURE(5000.)"));
  }

  private static Network next(Network file) {
    return file.pipe(4, at(5000, 0, 0), EAST, 1000, 60.3);
  }

  private static Network part(Network file, int n, double lengthMm) {
    return file.pipe(n, at(n == 2 ? 0 : 2500, 0, 0), EAST, lengthMm, 60.3)
        .record("#%d=IFCRELAGGREGATES('r%1$d',$,$,$,#1000,(#%d));".formatted(200 + n, 1000 * n));
  }

  private static List<MepModel> join(boolean turned, Network one, Network other) {
    return turned
        ? ModelJoiner.join(List.of(other.read(0), one.read(1)), 0.002)
        : ModelJoiner.join(List.of(one.read(0), other.read(1)), 0.002);
  }

  private static List<ElementKey> joints(MepModel model, long step) {
    return element(model, step).ports().stream().map(Port::connectedTo).toList();
  }

  @ParameterizedTest
  @ValueSource(booleans = {true, false})
  void wholeIsNotCountedBesideThePartsThatAnotherFileHolds(boolean turned) {
    Network withParts = part(part(whole(new Network()), 2, 2500), 3, 2500);
    List<MepModel> models = join(turned, next(whole(new Network())), withParts);
    int file = turned ? 1 : 0;
    int parts = 1 - file;

    assertThat(element(models.get(0), 1000).kind()).isEqualTo(Kind.OTHER);
    assertThat(element(models.get(1), 1000).kind()).isEqualTo(Kind.OTHER);
    assertThat(codes(models.get(file))).containsOnlyOnce("COUNTED_BY_PARTS");
    assertThat(element(models.get(parts), 3000).kind()).isEqualTo(Kind.PIPE_SEGMENT);
    assertThat(joints(models.get(file), 4000)).containsExactly(new ElementKey(parts, 3000));
    assertThat(joints(models.get(parts), 3000))
        .containsExactlyInAnyOrder(new ElementKey(parts, 2000), new ElementKey(file, 4000));
    assertThat(codes(models.get(1))).doesNotContain("SAME_ID_ELSEWHERE");
  }

  /** Each file holds the whole and one of its parts, which alone are but half of its length. */
  @ParameterizedTest
  @CsvSource({"true,false", "false,false", "true,true", "false,true"})
  void wholeIsNotCountedWhosePartsAreDealtToTwoFiles(boolean turned, boolean drawn) {
    Network one = part(drawn ? whole(new Network()) : bare(), 2, 2500);
    Network other = part(drawn ? whole(new Network()) : bare(), 3, 2500);
    List<MepModel> models = join(turned, one, next(other));

    assertThat(element(one.read(0), 1000).kind()).isEqualTo(Kind.PIPE_SEGMENT);
    assertThat(element(other.read(0), 1000).kind()).isEqualTo(Kind.PIPE_SEGMENT);
    assertThat(element(models.get(0), 1000).kind()).isEqualTo(Kind.OTHER);
    assertThat(element(models.get(1), 1000).kind()).isEqualTo(Kind.OTHER);
    assertThat(joints(models.get(turned ? 0 : 1), 3000))
        .containsExactlyInAnyOrder(
            new ElementKey(turned ? 1 : 0, 2000), new ElementKey(turned ? 0 : 1, 4000));
  }

  @Test
  void wholeIsCountedThatIsLongerThanThePartsOfAllFiles() {
    Network one = part(whole(new Network()), 2, 2500);
    List<MepModel> models = join(false, one, part(whole(new Network()), 3, 1500));

    assertThat(element(models.get(0), 1000).kind()).isEqualTo(Kind.PIPE_SEGMENT);
  }

  /** A storey that was made by copying its file. */
  @Test
  void wholeAtAnotherPlaceIsCounted() {
    Network withParts = part(part(whole(new Network()), 2, 2500), 3, 2500);
    Network above = new Network().pipe(1, at(0, 0, 3000), EAST, 5000, 60.3);
    List<MepModel> models = join(false, above, withParts);

    assertThat(element(models.get(0), 1000).kind()).isEqualTo(Kind.PIPE_SEGMENT);
    assertThat(codes(models.get(0))).doesNotContain("COUNTED_BY_PARTS");
  }
}
