package org.lagwright.ifc.extract.measure;

import static org.assertj.core.api.Assertions.assertThat;
import static org.lagwright.ifc.extract.InlineModel.codes;
import static org.lagwright.ifc.extract.InlineModel.element;
import static org.lagwright.ifc.extract.InlineModel.value;
import static org.lagwright.ifc.extract.Network.at;

import java.util.Locale;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.lagwright.ifc.extract.InlineModel;
import org.lagwright.ifc.extract.Network;
import org.lagwright.ifc.model.Form;
import org.lagwright.ifc.model.MepElement;
import org.lagwright.ifc.model.MepModel;
import org.lagwright.ifc.model.Section;

/** How many ends a fitting has: by words, sizes, ports and its body, where they differ. */
class StatedBranchesTest {

  private static final double[] EAST = at(1, 0, 0);
  private static final double[] WEST = at(-1, 0, 0);
  private static final double[] NORTH = at(0, 1, 0);
  private static final int SIDES = 8;

  /** A list of outside diameters in millimetres as the property of fitting 9. */
  private static String diameters(String list) {
    return """
        #700=IFCPROPERTYLISTVALUE('OuterDiameter',$,(%s),$);
        #701=IFCPROPERTYSET('701',$,'Pset_PipeFittingTypeCommon',$,(#700));
        #702=IFCRELDEFINESBYPROPERTIES('702',$,$,$,(#9000),#701);
        """
        .formatted(
            "IFCPOSITIVELENGTHMEASURE(" + list.replace(" ", "),IFCPOSITIVELENGTHMEASURE(") + ")");
  }

  /** Fitting 9, of which the file joins the end of its run and its branch only. */
  private static Network joinedAtTwo(String name) {
    return new Network()
        .fitting(9, "IFCPIPEFITTING", name, ".JUNCTION.")
        .port(9, 1, at(0, 0, 0), WEST)
        .port(9, 2, at(76, 76, 0), NORTH)
        .pipe(1, at(-1000, 0, 0), EAST, 1000, 60.3)
        .port(1, 1, at(0, 0, 0), EAST)
        .connect(1, 1, 9, 1)
        .pipe(2, at(76, 76, 0), NORTH, 1000, 60.3)
        .port(2, 1, at(76, 76, 0), at(0, -1, 0))
        .connect(9, 2, 2, 1);
  }

  @ParameterizedTest
  @CsvSource({
    "Part,60.3 60.3 60.3,TEE",
    "Part,60.3,BEND",
    "Tee,60.3,TEE",
    "Abzweig,60.3,TEE",
    "Part DN50/50/50,60.3,TEE",
    "Part DN50/50,60.3,BEND"
  })
  void portsThatTheFileLeavesOutDoNotMakeABendOfATee(String name, String sizes, Form form) {
    MepModel model = joinedAtTwo(name).record(diameters(sizes)).read();

    assertThat(element(model, 9000).form()).isEqualTo(form);
    assertThat(codes(model).contains("FORM_CONFLICT")).isEqualTo(form == Form.BEND);
  }

  /** Fitting 9 with one clean end of 12 mm, of which no second one can be told. */
  private static Network withOneEndDrawn(String name) {
    StringBuilder points = new StringBuilder();
    StringBuilder faces = new StringBuilder("#9100");
    StringBuilder records = new StringBuilder();
    for (int i = 0; i < SIDES; i++) {
      double turn = 2 * Math.PI * i / SIDES;
      points.append(
          String.format(Locale.ROOT, "(0.,%.6f,%.6f),", 6 * Math.cos(turn), 6 * Math.sin(turn)));
      faces.append(",#").append(9101 + i);
      records.append(
          "#%d=IFCINDEXEDPOLYGONALFACE((%d,%d,9));\n"
              .formatted(9101 + i, i + 1, (i + 1) % SIDES + 1));
    }
    return new Network()
        .record("#9000=IFCPIPEFITTING('9',$,'%s',$,$,#9010,#9001,$,.JUNCTION.);".formatted(name))
        .record(InlineModel.placed(9010, 0, 0, 0))
        .record("#9001=IFCPRODUCTDEFINITIONSHAPE($,$,(#9002));")
        .record("#9002=IFCSHAPEREPRESENTATION($,'Body','Tessellation',(#9003));")
        .record("#9003=IFCPOLYGONALFACESET(#9004,.T.,(%s),$);".formatted(faces))
        .record("#9004=IFCCARTESIANPOINTLIST3D((%s(80.,0.,0.)));".formatted(points))
        .record("#9100=IFCINDEXEDPOLYGONALFACE((8,7,6,5,4,3,2,1));")
        .record(records.toString())
        .port(9, 1, at(0, 0, 0), WEST)
        .pipe(1, at(-1000, 0, 0), EAST, 1000, 15)
        .port(1, 1, at(0, 0, 0), EAST)
        .connect(1, 1, 9, 1);
  }

  @Test
  void teeOfWhichOneEndIsDrawnCleanlyIsNoCap() {
    MepElement tee = withOneEndDrawn("Part").record(diameters("15. 15. 15.")).element(9);

    assertThat(tee.form()).isEqualTo(Form.TEE);
    assertThat(value(tee.section())).isEqualTo(new Section.Round(0.015));
    assertThat(tee.ends()).hasSize(3).containsOnly(new Section.Round(0.015));
  }

  @Test
  void bareJunctionWithOneEndIsACap() {
    MepModel model = withOneEndDrawn("Part").read();

    assertThat(element(model, 9000).form()).isEqualTo(Form.CAP);
    assertThat(codes(model)).contains("FORM_CONFLICT");
  }

  /** Fitting 9 of an enumeration that exporters use for what they have no word for. */
  private static Network calledOffset() {
    return new Network()
        .drum(9, "Part", ".JUNCTION.", at(0, 0, 0), EAST, 160, 80)
        .record(InlineModel.properties(800, 9000, "Set", "ProductType", "IFCLABEL('S-part')"));
  }

  @Test
  void junctionDrawnWithTwoEndsIsWhatAPropertyCallsIt() {
    MepModel model = calledOffset().read();

    assertThat(element(model, 9000).form()).isEqualTo(Form.OFFSET);
    assertThat(codes(model)).containsOnlyOnce("FORM_CONFLICT");
  }

  @ParameterizedTest
  @CsvSource({"true,80.", "false,80. 80. 80."})
  void junctionWithAThirdPortOrSizeIsATee(boolean branchPort, String sizes) {
    Network network = calledOffset().record(diameters(sizes));
    if (branchPort) {
      network
          .port(9, 1, at(0, 0, 0), WEST)
          .port(9, 2, at(160, 0, 0), EAST)
          .port(9, 3, at(80, 40, 0), NORTH);
    }
    assertThat(network.element(9).form()).isEqualTo(Form.TEE);
  }
}
