package org.lagwright.ifc.extract;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.lagwright.ifc.extract.InlineModel.codes;
import static org.lagwright.ifc.extract.InlineModel.diameterMm;
import static org.lagwright.ifc.extract.InlineModel.element;

import java.util.Objects;
import org.junit.jupiter.api.Test;
import org.lagwright.ifc.model.ExistingInsulation;
import org.lagwright.ifc.model.MepElement;
import org.lagwright.ifc.model.MepModel;

/** Pipes whose body shows a shell around the pipe, or flanges at its ends. */
class ShellInBodyTest {

  /** A pipe of 2 m as two items: what is inside, and a ring around it of some length. */
  private static MepModel pipe(String name, double innerMm, double outerMm, double ringMm) {
    return InlineModel.read(
        """
        #1=IFCPIPESEGMENT('g',$,'%s',$,$,#14,#10,$,$);
        #10=IFCPRODUCTDEFINITIONSHAPE($,$,(#11));
        #11=IFCSHAPEREPRESENTATION($,'Body','SweptSolid',(#20,#22));
        #13=IFCDIRECTION((0.,0.,1.));
        #14=IFCLOCALPLACEMENT($,#15);
        #15=IFCAXIS2PLACEMENT3D(#16,$,$);
        #16=IFCCARTESIANPOINT((0.,0.,0.));
        #20=IFCEXTRUDEDAREASOLID(#21,$,#13,2000.);
        #21=IFCCIRCLEPROFILEDEF(.AREA.,$,$,%s);
        #22=IFCEXTRUDEDAREASOLID(#23,$,#13,%s);
        #23=IFCCIRCLEHOLLOWPROFILEDEF(.AREA.,$,$,%s,%s);
        """
            .formatted(name, innerMm / 2, ringMm, outerMm / 2, (outerMm - innerMm) / 2));
  }

  @Test
  void shellAroundThePipeIsItsInsulation() {
    MepModel model = pipe("Pipe", 60.3, 120.3, 2000);
    MepElement pipe = element(model, 1);
    ExistingInsulation insulation = Objects.requireNonNull(pipe.existingInsulation());

    assertThat(diameterMm(pipe)).isEqualTo(60.3);
    assertThat(insulation.thicknessM()).isCloseTo(0.03, within(1e-9));
    assertThat(insulation.share()).isCloseTo(1, within(1e-9));
    assertThat(codes(model)).contains("INSULATION_IN_BODY");
  }

  @Test
  void shellThatEndsBeforeThePipeCoversItsShare() {
    MepElement pipe = element(pipe("Pipe", 60.3, 120.3, 1800), 1);
    ExistingInsulation insulation = Objects.requireNonNull(pipe.existingInsulation());

    assertThat(diameterMm(pipe)).isEqualTo(60.3);
    assertThat(insulation.thicknessM()).isCloseTo(0.03, within(1e-9));
    assertThat(insulation.share()).isCloseTo(0.9, within(1e-9));
  }

  @Test
  void tabulatedPipeAroundItsContentsIsThePipe() {
    MepElement pipe = element(pipe("Pipe", 309.1, 323.9, 2000), 1);

    assertThat(diameterMm(pipe)).isEqualTo(323.9);
    assertThat(pipe.existingInsulation()).isNull();
  }

  @Test
  void flangeOfAPipeWithANominalSizeIsNotInsulation() {
    MepModel model = pipe("Pipe DN100", 114.3, 220, 20);
    MepElement pipe = element(model, 1);

    assertThat(diameterMm(pipe)).isEqualTo(114.3);
    assertThat(pipe.existingInsulation()).isNull();
    assertThat(codes(model)).doesNotContain("INSULATION_IN_BODY");
  }
}
