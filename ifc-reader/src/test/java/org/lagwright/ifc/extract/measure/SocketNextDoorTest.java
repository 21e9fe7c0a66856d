package org.lagwright.ifc.extract.measure;

import static org.assertj.core.api.Assertions.assertThat;
import static org.lagwright.ifc.extract.Network.at;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.lagwright.ifc.extract.InlineModel;
import org.lagwright.ifc.extract.Network;
import org.lagwright.ifc.model.MepElement;
import org.lagwright.ifc.model.Section;

/** A reducer drawn with faces, from x = 0 to 60 mm, between a tee and a pipe of 60.3 mm. */
class SocketNextDoorTest {

  private static final int CORNERS = 24;

  private static Network reducer(double fromMm, double toMm) {
    List<String> points = new ArrayList<>();
    List<String> walls = new ArrayList<>();
    List<String> first = new ArrayList<>();
    List<String> last = new ArrayList<>();
    for (int i = 0; i < CORNERS; i++) {
      points.add(corner(0, fromMm, i));
      first.add(0, String.valueOf(i + 1));
      last.add(String.valueOf(CORNERS + i + 1));
      int next = (i + 1) % CORNERS;
      walls.add("%d,%d,%d,%d".formatted(i + 1, next + 1, CORNERS + next + 1, CORNERS + i + 1));
    }
    IntStream.range(0, CORNERS).forEach(i -> points.add(corner(60, toMm, i)));
    walls.add(String.join(",", first));
    walls.add(String.join(",", last));
    Network network = new Network();
    List<String> faces = new ArrayList<>();
    for (String wall : walls) {
      int face = 2020 + faces.size();
      faces.add("#" + face);
      network.record("#%d=IFCINDEXEDPOLYGONALFACE((%s));".formatted(face, wall));
    }
    return network
        .record("#2000=IFCPIPEFITTING('2',$,'Reducer',$,$,#2010,#2001,$,.TRANSITION.);")
        .record(InlineModel.placed(2010, 0, 0, 0))
        .record("#2001=IFCPRODUCTDEFINITIONSHAPE($,$,(#2002));")
        .record("#2002=IFCSHAPEREPRESENTATION($,'Body','Tessellation',(#2003));")
        .record("#2003=IFCPOLYGONALFACESET(#2004,.T.,(%s),$);".formatted(String.join(",", faces)))
        .record("#2004=IFCCARTESIANPOINTLIST3D((%s));".formatted(String.join(",", points)))
        .pipe(4, at(60, 0, 0), at(1, 0, 0), 1000, 60.3);
  }

  private static String corner(double x, double diameterMm, int i) {
    double t = 2 * Math.PI * i / CORNERS;
    return "(%s,%s,%s)".formatted(x, diameterMm / 2 * Math.cos(t), diameterMm / 2 * Math.sin(t));
  }

  private static List<Long> endsMm10(MepElement element) {
    return element.ends().stream().map(end -> Math.round(1e4 * end.largestSideM())).toList();
  }

  @Test
  void endInTheSocketOfATeeKeepsItsSize() {
    MepElement reducer =
        reducer(88.9, 60.3)
            .drum(3, "Tee", ".JUNCTION.", at(0, 0, 0), at(-1, 0, 0), 124, 95)
            .element(2);

    assertThat(Objects.requireNonNull(reducer.section()).value())
        .isEqualTo(new Section.Round(0.0889));
    assertThat(endsMm10(reducer)).containsExactly(889L, 603L);
  }

  @ParameterizedTest
  @CsvSource({"80, 88.9, 889", "93, 95, 950"})
  void endThatIsNoOutsideDiameterOfAPipeIsAsWideAsWhatItMeets(double drawn, double tee, long mm10) {
    MepElement reducer =
        reducer(drawn, 60.3)
            .drum(3, "Tee", ".JUNCTION.", at(0, 0, 0), at(-1, 0, 0), 124, tee)
            .element(2);

    assertThat(endsMm10(reducer)).containsExactly(mm10, 603L);
  }

  /** Of two that agree and another fitting whose end was misread. */
  @Test
  void endThatAPropertyGivesTooIsNotAsWideAsTheFittingItMeets() {
    MepElement reducer =
        reducer(88.9, 60.3)
            .drum(3, "Tee", ".JUNCTION.", at(0, 0, 0), at(-1, 0, 0), 124, 139.7)
            .record(
                InlineModel.properties(
                    500, 2000, "Set", "Outside Diameter", "IFCPOSITIVELENGTHMEASURE(88.9)"))
            .element(2);

    assertThat(Objects.requireNonNull(reducer.section()).value())
        .isEqualTo(new Section.Round(0.0889));
    assertThat(endsMm10(reducer)).containsExactly(889L, 603L);
  }
}
