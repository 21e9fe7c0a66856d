package org.lagwright.ifc.extract.measure;

import static org.assertj.core.api.Assertions.assertThat;
import static org.lagwright.ifc.extract.InlineModel.codes;
import static org.lagwright.ifc.extract.InlineModel.properties;
import static org.lagwright.ifc.extract.InlineModel.read;
import static org.lagwright.ifc.extract.InlineModel.value;

import org.junit.jupiter.api.Test;
import org.lagwright.ifc.extract.InlineModel;
import org.lagwright.ifc.model.MepElement;
import org.lagwright.ifc.model.MepModel;

/** One figure on all pieces, where nothing is drawn that could contradict it. */
class UndrawnPlaceholderTest {

  private static final String MM = "IFCPOSITIVELENGTHMEASURE(%s)";

  private static String pipe(int id, String... namesAndValues) {
    return "#%d=IFCPIPESEGMENT('g%d',$,'Pipe',$,$,$,$,$,$);\n".formatted(id, id)
        + properties(id * 100, id, "Set", namesAndValues);
  }

  private static String sized(int id, int nominalMm, double outsideMm) {
    return pipe(
        id, "NominalDiameter", MM.formatted(nominalMm), "OuterDiameter", MM.formatted(outsideMm));
  }

  @Test
  void outsideDiameterOnPipesOfManyNominalSizesIsNoneOfTheirs() {
    MepModel model =
        read(sized(1, 15, 60.3) + sized(2, 25, 60.3) + sized(3, 50, 60.3) + sized(4, 80, 60.3));

    // steel by EN 10255
    assertThat(model.elements())
        .extracting(InlineModel::diameterMm)
        .containsExactly(21.3, 33.7, 60.3, 88.9);
    assertThat(codes(model)).contains("PLACEHOLDER_VALUES").doesNotContain("SECTION_CONFLICT");
  }

  /** PE pipes of 63 mm are called DN 50 by some and DN 63 by others. */
  @Test
  void outsideDiameterThatAllNominalSizesMayHaveStays() {
    MepModel model = read(sized(1, 50, 63) + sized(2, 63, 63) + sized(3, 50, 63));

    assertThat(model.elements()).extracting(InlineModel::diameterMm).containsOnly(63.0);
  }

  @Test
  void lengthOnPiecesWhoseQuantitiesDifferIsNotTheirs() {
    MepModel model = read(cut(1, 1500) + cut(2, 2000) + cut(3, 2500));

    assertThat(model.elements())
        .extracting((MepElement e) -> value(e.lengthM()))
        .containsExactly(1.5, 2.0, 2.5);
    assertThat(codes(model)).contains("PLACEHOLDER_VALUES").doesNotContain("LENGTH_CONFLICT");
  }

  private static String cut(int id, double lengthMm) {
    return pipe(id, "Length", MM.formatted(6000))
        + """
        #%1$d90=IFCQUANTITYLENGTH('Length',$,$,%2$s,$);
        #%1$d91=IFCELEMENTQUANTITY('q%1$d',$,'Quantities',$,$,(#%1$d90));
        #%1$d92=IFCRELDEFINESBYPROPERTIES('s%1$d',$,$,$,(#%1$d),#%1$d91);
        """
            .formatted(id, lengthMm);
  }
}
