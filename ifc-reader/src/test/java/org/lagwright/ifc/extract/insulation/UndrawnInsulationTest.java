package org.lagwright.ifc.extract.insulation;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.lagwright.ifc.extract.InlineModel.codes;
import static org.lagwright.ifc.extract.InlineModel.properties;
import static org.lagwright.ifc.extract.InlineModel.read;
import static org.lagwright.ifc.extract.insulation.InsulationTest.PIPE;
import static org.lagwright.ifc.extract.insulation.InsulationTest.mm;
import static org.lagwright.ifc.extract.insulation.InsulationTest.of;

import org.junit.jupiter.api.Test;
import org.lagwright.ifc.model.MepModel;

/** Coverings without bodies: pieces, layers, or one written several times. */
class UndrawnInsulationTest {

  /** 30 mm on the pipe of 2.5 m, without a body. */
  private static String covering(int id, String name, String... more) {
    String[] stated = new String[2 + more.length];
    stated[0] = "Thickness";
    stated[1] = "IFCLENGTHMEASURE(30.)";
    System.arraycopy(more, 0, stated, 2, more.length);
    return "#%1$d00=IFCCOVERING('c%1$d',$,'%2$s',$,$,$,$,$,.INSULATION.);\n".formatted(id, name)
        + "#%1$d01=IFCRELCOVERSBLDGELEMENTS('r%1$d',$,$,$,#1,(#%1$d00));\n".formatted(id)
        + properties(id * 100 + 50, id * 100L, "Set", stated);
  }

  private static String piece(int id, double lengthMm) {
    return covering(id, "Piece " + id, "Length", "IFCLENGTHMEASURE(" + lengthMm + ")");
  }

  @Test
  void piecesWhoseLengthsTogetherFitAreOneLayer() {
    MepModel model = read(PIPE + piece(2, 1000) + piece(3, 1000) + piece(4, 500));

    assertThat(mm(of(model, 1))).isCloseTo(30, within(1e-6));
    assertThat(of(model, 1).share()).isCloseTo(1, within(1e-9));
    assertThat(codes(model)).doesNotContain("INSULATION_CONFLICT");
  }

  @Test
  void piecesThatAreShorterTogetherCoverTheirShare() {
    MepModel model = read(PIPE + piece(2, 1000) + piece(3, 1000));

    assertThat(mm(of(model, 1))).isCloseTo(30, within(1e-6));
    assertThat(of(model, 1).share()).isCloseTo(2000. / 2500, within(1e-9));
  }

  @Test
  void coveringsAsLongAsThePipeAreLayers() {
    MepModel model = read(PIPE + piece(2, 2500) + piece(3, 2500));

    assertThat(mm(of(model, 1))).isCloseTo(60, within(1e-6));
  }

  @Test
  void coveringsOfDifferentNamesAreLayers() {
    MepModel model = read(PIPE + covering(2, "Layer A") + covering(3, "Layer B"));

    assertThat(mm(of(model, 1))).isCloseTo(60, within(1e-6));
    assertThat(codes(model)).doesNotContain("INSULATION_CONFLICT");
  }

  @Test
  void coveringsThatAreAlikeCountOnceAndAreAFinding() {
    MepModel model = read(PIPE + covering(2, "Wool") + covering(3, "Wool") + covering(4, "Wool"));

    assertThat(mm(of(model, 1))).isCloseTo(30, within(1e-6));
    assertThat(codes(model)).containsOnlyOnce("INSULATION_CONFLICT");
  }
}
