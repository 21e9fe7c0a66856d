package org.lagwright.ifc.extract.property;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class NamesSeenTest {

  @ParameterizedTest
  @ValueSource(ints = {1, 5, 63, 64, 65, 300})
  void nameThatCameBeforeIsNoticedWhateverItsCase(int count) {
    NamesSeen names = new NamesSeen();
    for (int i = 0; i < count; i++) {
      assertThat(names.add("Name " + i)).isTrue();
    }
    assertThat(names.add("NAME " + (count - 1))).isFalse();
    assertThat(names.add("name 0")).isFalse();
    assertThat(names.add("Name " + count)).isTrue();
  }
}
