package org.lagwright.ifc.extract.measure;

import static org.assertj.core.api.Assertions.assertThat;
import static org.lagwright.ifc.extract.Network.at;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.lagwright.ifc.extract.Network;
import org.lagwright.ifc.model.Form;

/** What the schema calls an obstruction: the end of a line, or a plate within it. */
class ObstructionTest {

  private static final double[] EAST = at(1, 0, 0);

  @ParameterizedTest(name = "''{0}'' between {1} pipes is a {2}")
  @CsvSource({
    "Part 7, 0, CAP",
    "Part 7, 1, CAP",
    "Part 7, 2, COUPLING",
    "Blind flange, 2, CAP",
    "Flange, 1, FLANGE"
  })
  void obstructionClosesTheLineUnlessItIsJoinedAtBothSides(String name, int pipes, Form form) {
    Network network =
        new Network().body(1, "IFCPIPEFITTING", name, ".OBSTRUCTION.", at(0, 0, 0), EAST, 20, 60.3);
    if (pipes > 0) {
      network.pipe(2, at(-1000, 0, 0), EAST, 1000, 60.3);
    }
    if (pipes > 1) {
      network.pipe(3, at(20, 0, 0), EAST, 1000, 60.3);
    }

    assertThat(network.element(1).form()).isEqualTo(form);
  }
}
