package org.lagwright.ifc.extract.insulation;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.lagwright.ifc.extract.InlineModel.codes;
import static org.lagwright.ifc.extract.InlineModel.element;
import static org.lagwright.ifc.extract.InlineModel.read;
import static org.lagwright.ifc.extract.insulation.InsulationTest.PIPE;
import static org.lagwright.ifc.extract.insulation.InsulationTest.covering;
import static org.lagwright.ifc.extract.insulation.InsulationTest.mm;
import static org.lagwright.ifc.extract.insulation.InsulationTest.of;
import static org.lagwright.ifc.extract.insulation.InsulationTest.ring;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.lagwright.ifc.extract.text.Words;
import org.lagwright.ifc.model.Kind;
import org.lagwright.ifc.model.MepModel;

/** Words of several languages that call something insulation. */
class InsulationWordsTest {

  @ParameterizedTest
  @ValueSource(
      strings = {
        "Pipe insulation",
        "D\\X\\E4mmung",
        "Rohrd\\X\\E4mmung 30 mm",
        "D\\X\\E4mmschale",
        "D\\X\\E4mmh\\X\\FClse",
        "D\\X\\E4mmschlauch",
        "Calorifugeage laine de roche",
        "Coibentazione tubo",
        "R\\X\\F8risolasjon",
        "Putkieristys",
        "Pipe lagging",
        "Izolacja rury"
      })
  void pipeCalledInsulationAroundAnotherOneIsACoveringAndCountsOnce(String name) {
    String wool =
        covering(2, name, ring(120.3, 30), 0, 2500)
            .replace("IFCCOVERING", "IFCPIPESEGMENT")
            .replace(".INSULATION.", "$");
    MepModel model = read(PIPE + wool);

    assertThat(element(model, 200).kind()).isEqualTo(Kind.COVERING);
    assertThat(mm(of(model, 1))).isCloseTo(30, within(0.01));
    assertThat(codes(model)).doesNotContain("COVERING_WITHOUT_HOST", "INSULATION_CONFLICT");
  }

  @ParameterizedTest
  @ValueSource(strings = {"Heat tracing", "Begleitheizung", "Korrosionsschutz", "Varmekabel"})
  void whatHeatsAPipeOrKeepsItFromRustInsulatesNothing(String name) {
    String around = covering(2, name, ring(80.3, 10), 0, 2500).replace(".INSULATION.", "$");

    assertThat(element(read(PIPE + around), 1).existingInsulation()).isNull();
  }

  @ParameterizedTest
  @ValueSource(strings = {"Schalld\u00E4mpfer", "Staudamm-Leitung", "Flagging", "Dampfrohr"})
  void wordThatOnlySoundsLikeItIsNone(String name) {
    assertThat(Words.isInsulation(name)).isFalse();
  }
}
