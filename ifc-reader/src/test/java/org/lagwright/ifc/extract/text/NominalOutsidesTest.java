package org.lagwright.ifc.extract.text;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

class NominalOutsidesTest {

  @Test
  void everyOutsideMayBeThatOfAPipeOfItsNominalSize() {
    assertThat(NominalOutsides.all()).isNotEmpty();
    for (NominalOutsides.Outside each : NominalOutsides.all()) {
      assertThat(PipeSizes.mayBe(each.dn(), each.outsideDiameterM())).as(each.toString()).isTrue();
      for (double alsoM : each.alsoM()) {
        assertThat(PipeSizes.mayBe(each.dn(), alsoM)).as(each.toString()).isTrue();
      }
    }
  }

  @Test
  void materialsAreInTheOrderOfTheirWords() {
    int last = -1;
    for (String line : Resource.lines("pipe-materials.txt")) {
      PipeMaterial material = PipeMaterial.named(line.substring(0, line.indexOf(':')));
      assertThat(material.ordinal()).isEqualTo(last + 1);
      last = material.ordinal();
    }
  }
}
