package org.lagwright.ifc.extract;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Optional;
import java.util.Random;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;

class SizesTest {

  private static final long SEED = 20261126;

  /** What the reading of nominal sizes stands for, written plainly. */
  private static final Pattern DN = Pattern.compile("\\bDN\\s?(\\d{1,4})\\b");

  private static final String[] PIECES = {
    "DN", "DN ", "DN40", "DN 65", "D", "N", " ", "\t", "1", "50", "80", "1000", "_", "/", "-", "x",
    "\u00E4", "\u0416", "."
  };

  @Test
  void nominalSizesAreThoseThatThePatternFinds() {
    System.out.println("seed " + SEED);
    Random random = new Random(SEED);
    int found = 0;
    for (int i = 0; i < 20_000; i++) {
      StringBuilder text = new StringBuilder();
      for (int pieces = 1 + random.nextInt(8); pieces > 0; pieces--) {
        text.append(PIECES[random.nextInt(PIECES.length)]);
      }
      Matcher m = DN.matcher(text);
      Optional<Integer> expected =
          m.find() ? Optional.of(Integer.parseInt(m.group(1))) : Optional.empty();
      assertThat(Sizes.dn(text.toString())).as(text.toString()).isEqualTo(expected);
      found += expected.isPresent() ? 1 : 0;
    }
    assertThat(found).isGreaterThan(2000);
  }

  /** Sides are only looked for where a digit stands close behind the sign between them. */
  @Test
  void spacesMayStandAroundTheSignBetweenTwoSides() {
    for (String sign : new String[] {"x", "X", "\u00D7", "\u0445"}) {
      for (String text :
          new String[] {"400%s200", "400 %s 200", "400mm%s 200", "400 mm %s200 mm"}) {
        assertThat(Sizes.sides(String.format(text, sign)).map(Sizes::inWords))
            .contains("400.0 x 200.0 mm");
      }
    }
    assertThat(Sizes.sides("Flex 200")).isEmpty();
  }
}
