package org.lagwright.ifc.extract.measure;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.lagwright.ifc.extract.InlineModel.codes;
import static org.lagwright.ifc.extract.InlineModel.diameterMm;
import static org.lagwright.ifc.extract.InlineModel.element;
import static org.lagwright.ifc.extract.InlineModel.properties;
import static org.lagwright.ifc.extract.InlineModel.value;
import static org.lagwright.ifc.extract.Network.at;

import java.util.Objects;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.lagwright.ifc.extract.Network;
import org.lagwright.ifc.model.MepElement;
import org.lagwright.ifc.model.MepModel;
import org.lagwright.ifc.model.Section;

/** Bends that are drawn together with their insulation, as the pipes beside them are or are not. */
class FittingInsulationTest {

  private static final double[] EAST = at(1, 0, 0);
  private static final double[] NORTH = at(0, 1, 0);
  private static final double RADIUS_MM = 300;

  /** A bend of some diameter between two pipes of another, which have a nominal size. */
  private static Network bend(double pipeMm, double bendMm) {
    Network network =
        new Network()
            .pipe(1, at(0, 0, 0), EAST, 1000, pipeMm)
            .pipe(3, at(1000 + RADIUS_MM, RADIUS_MM, 0), NORTH, 1000, pipeMm)
            .record(drawn(bendMm));
    for (int n : new int[] {1, 3}) {
      state(network, n, "NominalDiameter", 50);
    }
    return network;
  }

  private static String drawn(double bendMm) {
    return """
                #2000=IFCPIPEFITTING('2',$,'Part',$,$,#2004,#2001,$,$);
                #2001=IFCPRODUCTDEFINITIONSHAPE($,$,(#2002));
                #2002=IFCSHAPEREPRESENTATION($,'Body','SweptSolid',(#2003));
                #2003=IFCREVOLVEDAREASOLID(#2008,$,#2009,1.5707963267948966);
                #2004=IFCLOCALPLACEMENT($,#2005);
                #2005=IFCAXIS2PLACEMENT3D(#2006,#2007,#2011);
                #2006=IFCCARTESIANPOINT((1000.,0.,0.));
                #2007=IFCDIRECTION((1.,0.,0.));
                #2008=IFCCIRCLEPROFILEDEF(.AREA.,$,$,%s);
                #2009=IFCAXIS1PLACEMENT(#2010,#2011);
                #2010=IFCCARTESIANPOINT((%s,0.,0.));
                #2011=IFCDIRECTION((0.,1.,0.));"""
        .formatted(bendMm / 2, RADIUS_MM);
  }

  private static Network state(Network network, int n, String name, double mm) {
    return network.record(
        properties(n * 1000 + 500, n * 1000L, "Set", name, "IFCPOSITIVELENGTHMEASURE(" + mm + ")"));
  }

  @Test
  void bendBetweenPipesDrawnWithTheirInsulationHasTheSizeOfTheBarePipes() {
    MepModel model = bend(120.3, 120.3).read();
    MepElement bend = element(model, 2000);

    assertThat(diameterMm(element(model, 1000))).isEqualTo(60.3);
    assertThat(diameterMm(bend)).isEqualTo(60.3);
    assertThat(bend.ends()).containsExactly(new Section.Round(0.0603), new Section.Round(0.0603));
    assertThat(Objects.requireNonNull(bend.existingInsulation()).thicknessM())
        .isCloseTo(0.03, within(1e-9));
    assertThat(value(bend.bendRadiusM())).isCloseTo(0.3, within(1e-9));
    assertThat(codes(model).stream().filter("INSULATION_IN_BODY"::equals)).hasSize(3);
  }

  @Test
  void bendThatStatesItsInsulationBetweenBarePipesHasTheirSize() {
    MepModel model = state(bend(60.3, 120.3), 2, "InsulationThickness", 30).read();
    MepElement bend = element(model, 2000);

    assertThat(diameterMm(bend)).isEqualTo(60.3);
    assertThat(Objects.requireNonNull(bend.existingInsulation()).thicknessM())
        .isCloseTo(0.03, within(1e-9));
  }

  @ParameterizedTest
  @CsvSource({"60.3,60.3", "60.3,120.3", "120.3,100.3"})
  void bendOfWhichNothingSaysThatItIsInsulatedIsAsDrawn(double pipeMm, double bendMm) {
    MepElement bend = bend(pipeMm, bendMm).element(2);

    assertThat(diameterMm(bend)).isEqualTo(bendMm);
    assertThat(bend.existingInsulation()).isNull();
  }

  /** Of 30 mm around 60.3 mm; the nominal size, the diameter or pipe tables say which pipe. */
  @ParameterizedTest
  @CsvSource({"NominalDiameter,50", "OuterDiameter,60.3", "Tag,1"})
  void bendThatMeetsNothingIsLessWideByTheThicknessThatItStates(String name, double mm) {
    Network network = new Network().record(drawn(120.3));
    network.record(
        properties(
            2500,
            2000,
            "Set",
            "InsulationThickness",
            "IFCPOSITIVELENGTHMEASURE(30.)",
            name,
            "IFCPOSITIVELENGTHMEASURE(" + mm + ")"));
    MepModel model = network.read();
    MepElement bend = element(model, 2000);

    assertThat(diameterMm(bend)).isEqualTo(60.3);
    assertThat(bend.ends()).containsExactly(new Section.Round(0.0603), new Section.Round(0.0603));
    assertThat(Objects.requireNonNull(bend.existingInsulation()).thicknessM())
        .isCloseTo(0.03, within(1e-9));
    assertThat(codes(model)).contains("INSULATION_IN_BODY").doesNotContain("SECTION_CONFLICT");
  }

  @ParameterizedTest
  @CsvSource({"60.3,50", "120.3,80"})
  void bendThatIsNotWiderByWhatItStatesIsAsDrawn(double bendMm, double nominalMm) {
    Network network = new Network().record(drawn(bendMm));
    state(network, 2, "InsulationThickness", 30);
    network.record(
        properties(2700, 2000, "More", "NominalDiameter", "IFCLENGTHMEASURE(" + nominalMm + ")"));

    assertThat(diameterMm(network.element(2))).isEqualTo(bendMm);
  }
}
