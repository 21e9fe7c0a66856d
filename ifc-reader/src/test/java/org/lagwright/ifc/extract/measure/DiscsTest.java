package org.lagwright.ifc.extract.measure;

import static org.assertj.core.api.Assertions.assertThat;
import static org.lagwright.ifc.extract.InlineModel.element;
import static org.lagwright.ifc.extract.InlineModel.value;
import static org.lagwright.ifc.extract.Network.at;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.lagwright.ifc.extract.InlineModel;
import org.lagwright.ifc.extract.Network;
import org.lagwright.ifc.model.Form;
import org.lagwright.ifc.model.MepElement;
import org.lagwright.ifc.model.MepModel;
import org.lagwright.ifc.model.Section;

/** Thin bodies around a line that nothing names. */
class DiscsTest {

  private static final double[] EAST = at(1, 0, 0);

  /** Drawn as a cylinder between two pipes of 60.3 mm, with nothing that names it. */
  @ParameterizedTest
  @CsvSource({"18,165,FLANGE", "40,165,FLANGE", "80,75,COUPLING", "15,62,COUPLING"})
  void thinDiscThatStandsOutAroundItsPipeIsAFlange(double lengthMm, double diameterMm, Form form) {
    MepElement disc =
        new Network()
            .pipe(1, at(-1000, 0, 0), EAST, 1000, 60.3)
            .drum(9, "4711", "$", at(0, 0, 0), EAST, lengthMm, diameterMm)
            .pipe(2, at(lengthMm, 0, 0), EAST, 1000, 60.3)
            .element(9);

    assertThat(disc.form()).isEqualTo(form);
    assertThat(value(disc.section())).isEqualTo(new Section.Round(0.0603));
  }

  /** A frame of angles 40 mm high around a duct of 300 x 200, and a sleeve as wide as the duct. */
  @ParameterizedTest
  @CsvSource({"40,380,280,FLANGE", "40,300,200,COUPLING"})
  void frameAroundADuctIsAFlange(double lengthMm, double x, double y, Form form) {
    MepElement frame =
        new Network()
            .box(1, "IFCDUCTSEGMENT", at(-1000, 0, 0), EAST, 1000, 300, 200)
            .box(9, "IFCDUCTFITTING", at(0, 0, 0), EAST, lengthMm, x, y)
            .box(2, "IFCDUCTSEGMENT", at(lengthMm, 0, 0), EAST, 1000, 300, 200)
            .element(9);

    assertThat(frame.form()).isEqualTo(form);
  }

  @Test
  void whatTouchesALineWithOneSideMayCloseIt() {
    Network network = new Network().pipe(1, at(-1000, 0, 0), EAST, 1000, 60.3);
    MepModel model = network.drum(9, "4711", "$", at(0, 0, 0), EAST, 40, 60.3).read();

    assertThat(element(model, 9000).form()).isEqualTo(Form.COUPLING);
    assertThat(InlineModel.message(model, "GEOMETRY_ONLY_PARTLY_MEASURED"))
        .contains("whether it closes it");
  }
}
