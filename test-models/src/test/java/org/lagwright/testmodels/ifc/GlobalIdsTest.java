package org.lagwright.testmodels.ifc;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.UUID;
import org.junit.jupiter.api.Test;

class GlobalIdsTest {

  /** Vector: documentation of IfcGloballyUniqueId, buildingSMART IFC4.3. */
  @Test
  void compressedAsInTheStandard() {
    assertThat(GlobalIds.compress(UUID.fromString("f70dd363-bfe3-495d-84a0-2c02dcb7d4d2")))
        .isEqualTo("3t3TDZl_D9NOIWB0BSjzJI");
  }

  @Test
  void smallestAndLargestFillAllPlaces() {
    assertThat(GlobalIds.compress(new UUID(0, 0))).isEqualTo("0".repeat(22));
    assertThat(GlobalIds.compress(new UUID(-1, -1))).isEqualTo("3" + "$".repeat(21));
  }

  @Test
  void sameNameGivesSameId() {
    assertThat(GlobalIds.of("a")).isEqualTo(GlobalIds.of("a")).isNotEqualTo(GlobalIds.of("b"));
  }
}
