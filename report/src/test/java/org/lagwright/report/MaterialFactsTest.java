package org.lagwright.report;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.lagwright.report.MaterialFacts.Fact;
import org.lagwright.takeoff.material.MaterialPack;

class MaterialFactsTest {

  private static final MaterialPack PACK = MaterialPack.bundled();

  @Test
  void eachFigureStandsWithItsStatusAndSource() {
    assertThat(MaterialFacts.of(PACK.family("pe_foam")))
        .contains(
            new Fact(
                "conductivity",
                "verified",
                "0.038 at -20, 0.04 at 0, 0.042 at 20, 0.045 at 50 degC mean, W/(m K), 30 kg/m3,"
                    + " the poorer of two grades (TIASA 2001)"),
            new Fact(
                "vapour resistance",
                "from memory, verify",
                "mu 5000 (typical declarations 3500 to 10000)"))
        .anySatisfy(
            fact -> {
              assertThat(fact.property()).isEqualTo("sold as");
              assertThat(fact.figures()).startsWith("tube 2 m (");
            });
  }

  @Test
  void vapourResistanceThatIsNotKnownIsSaidSo() {
    assertThat(MaterialFacts.of(PACK.family("eps")))
        .contains(new Fact("vapour resistance", "", "not known"));
  }

  @Test
  void figuresFromMemoryAreNeverShownWithoutTheirMark() {
    assertThat(MaterialFacts.of(PACK.family("aerogel_blanket")))
        .filteredOn(fact -> fact.property().equals("conductivity"))
        .extracting(Fact::status)
        .containsExactly("from memory, verify");
  }
}
