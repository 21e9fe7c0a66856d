package org.lagwright.ifc.extract.measure;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
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

/** Short reducers of faces, some of whose neighbours are not drawn or of another size. */
class PartlyJoinedReducerTest {

  private static final double[] EAST = at(1, 0, 0);
  private static final double[] WEST = at(-1, 0, 0);

  /** Its ends lie nearer to each other than many a port to its end. */
  @ParameterizedTest
  @CsvSource({"false,false", "true,false", "false,true", "true,true"})
  void shortReducerOfFacesHasBothItsSizesToo(boolean west, boolean east) {
    Network network = faces(35, 28, 11);
    if (west) {
      network.pipe(3, at(0, 0, 0), WEST, 1000, 35);
    }
    if (east) {
      network.pipe(4, at(11, 0, 0), EAST, 1000, 28);
    }
    MepElement reducer = network.element(2);

    assertThat(reducer.form()).isEqualTo(Form.REDUCER);
    assertThat(reducer.ends())
        .extracting(end -> Math.round(end.largestSideM() * 1000))
        .containsExactlyInAnyOrder(35L, 28L);
  }

  /** A socket, or a pipe that was resized without its fitting. */
  @ParameterizedTest
  @CsvSource({"35,false", "22,true"})
  void onlyPipeThatIsMetIsToldWhereItIsAsWideAsNoneOfTheEnds(double pipeMm, boolean told) {
    MepModel model =
        faces(35, 28, 60)
            .pipe(3, at(0, 0, 0), WEST, 1000, pipeMm)
            .port(2, 0, at(0, 0, 0), WEST)
            .port(2, 1, at(60, 0, 0), EAST)
            .port(3, 0, at(0, 0, 0), EAST)
            .connect(2, 0, 3, 0)
            .read();

    assertThat(value(InlineModel.element(model, 2000).section()).largestSideM())
        .isCloseTo(0.035, within(1e-4));
    assertThat(InlineModel.codes(model).contains("SECTION_CONFLICT")).isEqualTo(told);
  }

  /** Fitting 2 as a frustum of faces along x, its ends of 24 corners. */
  private static Network faces(double fromMm, double toMm, double lengthMm) {
    int n = 24;
    StringBuilder points = new StringBuilder();
    StringBuilder sides = new StringBuilder();
    StringBuilder first = new StringBuilder();
    StringBuilder last = new StringBuilder();
    for (int i = 0; i < 2 * n; i++) {
      boolean near = i < n;
      double radiusMm = (near ? fromMm : toMm) / 2;
      double angle = 2 * Math.PI * i / n;
      String point =
          "(%s,%s,%s)"
              .formatted(
                  near ? 0 : lengthMm, radiusMm * Math.cos(angle), radiusMm * Math.sin(angle));
      points.append(i == 0 ? "" : ",").append(point);
    }
    for (int i = 0; i < n; i++) {
      int j = (i + 1) % n;
      sides.append(
          "#%d=IFCINDEXEDPOLYGONALFACE((%d,%d,%d,%d));\n"
              .formatted(2100 + i, j + 1, i + 1, i + 1 + n, j + 1 + n));
      first.append(i == 0 ? "" : ",").append(n - i);
      last.append(i == 0 ? "" : ",").append(i + 1 + n);
    }
    StringBuilder all = new StringBuilder();
    for (int i = 0; i < n + 2; i++) {
      all.append(i == 0 ? "#" : ",#").append(2100 + i);
    }
    return new Network()
        .record("#2000=IFCPIPEFITTING('2',$,'Part',$,$,#2010,#2001,$,$);")
        .record(InlineModel.placed(2010, 0, 0, 0))
        .record("#2001=IFCPRODUCTDEFINITIONSHAPE($,$,(#2002));")
        .record("#2002=IFCSHAPEREPRESENTATION($,'Body','Tessellation',(#2003));")
        .record("#2003=IFCPOLYGONALFACESET(#2004,.T.,(%s),$);".formatted(all))
        .record("#2004=IFCCARTESIANPOINTLIST3D((%s));".formatted(points))
        .record(sides.toString())
        .record("#%d=IFCINDEXEDPOLYGONALFACE((%s));".formatted(2100 + n, first))
        .record("#%d=IFCINDEXEDPOLYGONALFACE((%s));".formatted(2101 + n, last));
  }

  /** What nobody calls a reducer changes the size all the same, as it is drawn. */
  @Test
  void couplingBesideAnUnnamedReducerIsNoReducerItself() {
    Network network =
        faces(48.3, 42.4, 60)
            .pipe(4, at(60, 0, 0), EAST, 1000, 42.4)
            .body(3, "IFCPIPEFITTING", "Coupling", "$", at(-63, 0, 0), EAST, 63, 58)
            .pipe(5, at(-1063, 0, 0), EAST, 1000, 48.3)
            .port(2, 0, at(0, 0, 0), WEST)
            .port(2, 1, at(60, 0, 0), EAST)
            .port(3, 0, at(-63, 0, 0), WEST)
            .port(3, 1, at(0, 0, 0), EAST)
            .port(4, 0, at(60, 0, 0), WEST)
            .port(5, 0, at(-63, 0, 0), EAST)
            .connect(2, 0, 3, 1)
            .connect(2, 1, 4, 0)
            .connect(3, 0, 5, 0);

    assertThat(network.element(3).form()).isEqualTo(Form.COUPLING);
    assertThat(network.element(2).ends())
        .extracting(end -> Math.round(end.largestSideM() * 1e4))
        .containsExactlyInAnyOrder(483L, 424L);
  }
}
