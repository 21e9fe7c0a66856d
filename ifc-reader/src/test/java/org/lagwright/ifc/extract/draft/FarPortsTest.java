package org.lagwright.ifc.extract.draft;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.lagwright.ifc.extract.InlineModel.codes;
import static org.lagwright.ifc.extract.InlineModel.element;
import static org.lagwright.ifc.extract.InlineModel.value;
import static org.lagwright.ifc.extract.Network.at;

import java.util.Locale;
import java.util.Objects;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.lagwright.ifc.extract.InlineModel;
import org.lagwright.ifc.extract.Network;
import org.lagwright.ifc.model.How;
import org.lagwright.ifc.model.MepElement;
import org.lagwright.ifc.model.MepModel;
import org.lagwright.ifc.model.Port;

/**
 * Ports that an exporter put where another piece begins. Pipe 2 is 70 mm long, drawn as a mesh from
 * the origin to the east; pipe 1 comes from the west and ends where it begins.
 */
class FarPortsTest {

  private static final double[] EAST = at(1, 0, 0);
  private static final double[] WEST = at(-1, 0, 0);
  private static final double LENGTH_M = 0.07;
  private static final int SIDES = 8;

  /**
   * The two pipes, 22 mm wide, joined by ports.
   *
   * @param portMm where the port of pipe 2 towards pipe 1 was put; its other one lies at its end
   */
  private static Network pipes(double portMm) {
    return new Network()
        .pipe(1, at(-1500, 0, 0), EAST, 1500, 22)
        .port(1, 1, at(0, 0, 0), EAST)
        .record(mesh())
        .port(2, 1, at(portMm, 0, 0), WEST)
        .port(2, 2, at(70, 0, 0), EAST)
        .connect(1, 1, 2, 1);
  }

  private static String mesh() {
    StringBuilder points = new StringBuilder();
    for (int i = 0; i < 2 * SIDES; i++) {
      double turn = 2 * Math.PI * i / SIDES;
      points
          .append(i == 0 ? "" : ",")
          .append(
              String.format(
                  Locale.ROOT,
                  "(%s,%.6f,%.6f)",
                  i < SIDES ? "0." : "70.",
                  11 * Math.cos(turn),
                  11 * Math.sin(turn)));
    }
    StringBuilder faces = new StringBuilder();
    StringBuilder records = new StringBuilder();
    face(records, faces, 2100, "(8,7,6,5,4,3,2,1)");
    face(records, faces, 2101, "(9,10,11,12,13,14,15,16)");
    for (int i = 0; i < SIDES; i++) {
      int next = (i + 1) % SIDES;
      String side = "(%d,%d,%d,%d)".formatted(i + 1, next + 1, next + 9, i + 9);
      face(records, faces, 2102 + i, side);
    }
    return records
        + """
        #2000=IFCPIPESEGMENT('2',$,'Pipe',$,$,#2010,#2001,$,$);
        #2001=IFCPRODUCTDEFINITIONSHAPE($,$,(#2002));
        #2002=IFCSHAPEREPRESENTATION($,'Body','Tessellation',(#2003));
        #2003=IFCPOLYGONALFACESET(#2004,.T.,(%s),$);
        #2004=IFCCARTESIANPOINTLIST3D((%s));
        """
            .formatted(faces, points)
        + InlineModel.placed(2010, 0, 0, 0);
  }

  private static void face(StringBuilder records, StringBuilder faces, int id, String corners) {
    faces.append(faces.isEmpty() ? "" : ",").append('#').append(id);
    records.append("#%d=IFCINDEXEDPOLYGONALFACE(%s);\n".formatted(id, corners));
  }

  @Test
  void portFarOutsideTheBodyTellsWhatIsConnectedButNoLength() {
    MepModel model = pipes(-1500).read();
    MepElement pipe = element(model, 2000);
    Port far = pipe.ports().get(0);

    assertThat(value(pipe.lengthM())).isCloseTo(LENGTH_M, within(1e-9));
    assertThat(far.positionM()).isNull();
    assertThat(Objects.requireNonNull(far.connectedTo()).step()).isEqualTo(1000);
    assertThat(pipe.ports()).hasSize(2);
    assertThat(InlineModel.message(model, "GEOMETRY_ONLY_PARTLY_MEASURED"))
        .isEqualTo(
            "A port lies outside the body, its place does not count. Check it on the drawing.");
    assertThat(codes(model)).doesNotContain("LENGTH_CONFLICT");
  }

  /** Sockets and collars take a port some way out of the body that is drawn. */
  @ParameterizedTest
  @CsvSource({"0", "-15", "-49"})
  void portNearTheBodyIsAnEnd(double portMm) {
    MepElement pipe = pipes(portMm).element(2);

    assertThat(value(pipe.lengthM())).isCloseTo(LENGTH_M - portMm / 1000, within(1e-9));
    assertThat(Objects.requireNonNull(pipe.lengthM()).how()).isEqualTo(How.PORTS);
  }

  @Test
  void portsAsFarApartAsTheStatedLengthAreRightAndTheBodyIsASymbol() {
    MepModel model =
        pipes(-1500)
            .record(
                InlineModel.properties(
                    700, 2000, "Set", "Length", "IFCPOSITIVELENGTHMEASURE(1570.)"))
            .read();

    assertThat(value(element(model, 2000).lengthM())).isCloseTo(1.57, within(1e-9));
    assertThat(codes(model)).contains("LENGTH_CONFLICT");
  }

  /** The body of a valve is often a symbol, which says nothing against a port. */
  @Test
  void portFarOutsideAValveKeepsItsPlace() {
    MepElement valve =
        new Network()
            .body(2, "IFCVALVE", "Valve", "$", at(0, 0, 0), EAST, 70, 22)
            .port(2, 1, at(-200, 0, 0), WEST)
            .port(2, 2, at(70, 0, 0), EAST)
            .element(2);

    assertThat(valve.ports()).extracting(Port::positionM).doesNotContainNull();
  }
}
