package org.lagwright.ifc.extract.property;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.TreeMap;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class LinksTest {

  private static final long SEED = 4711;

  /** The greatest number of the last row does not fit into half a word. */
  @ParameterizedTest
  @CsvSource({"10, 200", "1000, 5000", "9000000000000000000, 3000"})
  void linksAnswerLikeAMapOfLists(long greatest, int count) {
    Random random = new Random(SEED);
    Links links = new Links();
    Map<Long, List<Long>> expected = new TreeMap<>();
    for (int i = 0; i < count; i++) {
      long key = 1 + Math.floorMod(random.nextLong(), greatest);
      long value = 1 + random.nextInt(50);
      links.add(key, value);
      expected.computeIfAbsent(key, k -> new ArrayList<>()).add(value);
    }
    links.close();

    expected.forEach(
        (key, values) -> {
          assertThat(links.first(key)).as("seed %d", SEED).isEqualTo(values.get(0));
          assertThat(links.last(key)).isEqualTo(values.get(values.size() - 1));
          assertThat(links.of(key))
              .containsExactly(new LinkedHashSet<>(values).toArray(Long[]::new));
        });
    assertThat(links.has(0)).isFalse();
    assertThat(links.of(greatest + 1)).isEmpty();
  }

  @ParameterizedTest(name = "1, 4 and 9 beside {0}: {1}")
  @CsvSource({"4, true", "1, true", "9, true", "3, false", "10, false"})
  void tablesShareAKeyWhereTheyDo(long key, boolean shared) {
    Links links = new Links();
    for (long each : new long[] {9, 4, 1, 4}) {
      links.add(each, 7);
    }
    Links one = new Links();
    one.add(2, 7);
    one.add(key, 7);

    assertThat(links.close().sharesAKeyWith(one.close())).isEqualTo(shared);
    assertThat(one.sharesAKeyWith(links)).isEqualTo(shared);
    assertThat(links.sharesAKeyWith(new Links().close())).isFalse();
  }
}
