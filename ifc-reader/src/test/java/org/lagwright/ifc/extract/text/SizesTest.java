package org.lagwright.ifc.extract.text;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Optional;
import java.util.Random;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.lagwright.ifc.model.Section;

class SizesTest {

  private static final long SEED = 20261126;

  /** What the reading of nominal sizes stands for, written plainly. */
  private static final Pattern DN =
      Pattern.compile("(?<![\\p{L}\\d])DN[\\s_-]?(\\d{1,4})(?![\\p{L}\\d])");

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
      String text = randomText(random, PIECES);
      Matcher m = DN.matcher(text);
      Optional<Integer> expected =
          m.find() ? Optional.of(Integer.parseInt(m.group(1))) : Optional.empty();
      assertThat(Sizes.dn(text)).as(text).isEqualTo(expected);
      found += expected.isPresent() ? 1 : 0;
    }
    assertThat(found).isGreaterThan(2000);
  }

  private static final String NUMBER =
      "(\\d{1,4}(?:[.,]\\d+)?)(?![.,]?\\d)(?:\\s*(mm|cm|in(?![\\p{L}&&[^xX]])|\"))?";
  private static final String ALONE = "(?<![\\p{L}\\d.,])";

  /** What the reading of sides and diameters stands for. */
  private static final Pattern SIDES =
      Pattern.compile(ALONE + NUMBER + "\\s*[xX\u00D7]\\s*" + NUMBER);

  private static final Pattern BEHIND_SIGN =
      Pattern.compile("(?:\\bd\\s*=\\s*|\u00D8\\s*|(?<![\\p{L}\\d_])Da ?)" + NUMBER);
  private static final Pattern BEFORE_SIGN = Pattern.compile(ALONE + NUMBER + "\\s*\u00D8");

  private static final String[] FIGURES = {
    "x", " x ", "X", "\u00D7", "\u00D8", "\u00D8 ", "d=", "d = ", "D", " ", "-", "/", "Duct ", "a",
    "4", "22", "60,3", "315", "0.75", "1000", "20000", " mm", "mm", "cm", "\"", " in"
  };

  private static final double[] UNITS_M = {0.001, 0.01, 0.0254};

  private static double metres(String figure, String unit) {
    int at = unit == null ? 0 : Math.min(2, "mm cm in \"".indexOf(unit) / 3);
    return Double.parseDouble(figure.replace(',', '.')) * UNITS_M[at];
  }

  private static String randomText(Random random, String[] pieces) {
    StringBuilder text = new StringBuilder();
    for (int left = 1 + random.nextInt(9); left > 0; left--) {
      text.append(pieces[random.nextInt(pieces.length)]);
    }
    return text.toString();
  }

  private static Optional<Section> sides(String text) {
    Matcher m = SIDES.matcher(text);
    while (m.find()) {
      double widthM = metres(m.group(1), m.group(2) == null ? m.group(4) : m.group(2));
      double heightM = metres(m.group(3), m.group(4) == null ? m.group(2) : m.group(4));
      if (Math.min(widthM, heightM) >= 0.01 && Math.max(widthM, heightM) <= 10) {
        return Optional.of(new Section.Rectangular(widthM, heightM));
      }
    }
    return Optional.empty();
  }

  /** Figures with their thousands apart are looked at elsewhere. */
  private static final Pattern THOUSANDS =
      Pattern.compile("(?:^|[xX\u00D7]\\s*)\\d{1,2} \\d{3}(?!\\d)");

  private static Optional<Section> diameter(String text) {
    for (Pattern pattern : new Pattern[] {BEHIND_SIGN, BEFORE_SIGN}) {
      Matcher m = pattern.matcher(text);
      double diameterM = m.find() ? metres(m.group(1), m.group(2)) : 0;
      if (diameterM >= 0.01 && diameterM <= 10) {
        return Optional.of(new Section.Round(diameterM));
      }
    }
    return Optional.empty();
  }

  @Test
  void sidesAndDiametersAreThoseThatThePatternsFind() {
    System.out.println("seed " + SEED);
    Random random = new Random(SEED);
    int found = 0;
    for (int i = 0; i < 100_000; i++) {
      String text = randomText(random, FIGURES);
      if (!THOUSANDS.matcher(text).find()) {
        assertThat(Sizes.sides(text)).as(text).isEqualTo(sides(text));
      }
      assertThat(Sizes.diameter(text)).as(text).isEqualTo(diameter(text));
      found += sides(text).isPresent() || diameter(text).isPresent() ? 1 : 0;
    }
    assertThat(found).isGreaterThan(5000);
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "Duct 400x200, class B|400.0 x 200.0 mm",
        "Duct 400x200.|400.0 x 200.0 mm",
        "40x20cm, lined|400.0 x 200.0 mm",
        "400,5x200,5 mm|400.5 x 200.5 mm",
        "\u00D8110 inlet|110.0 mm",
        "\u00D812 in|304.8 mm",
        "d=300 mm, L=2|300.0 mm"
      })
  void whatFollowsASizeDoesNotChangeIt(String text, String size) {
    Optional<Section> sides = Sizes.sides(text);
    assertThat((sides.isPresent() ? sides : Sizes.diameter(text)).map(InWords::section))
        .contains(size);
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "22 x 1 mm|0.022",
        "Copper 54x1,5, hard|0.054",
        "5 x 22 x 1|0.022",
        "1\" x 3.2 mm|0.0254",
        "22 x 22|",
        "DN 50 x 3.2|",
        "60.3x2.9x6000|0.0603",
        "63 * 5.8|0.063",
        "d63x5.8|0.063",
        "22 x 1 x 300|",
        "60.3 x 2.875|",
        "1.10.2026 x 1|"
      })
  void outsideDiameterStandsBeforeAThinWall(String text, Double outsideM) {
    assertThat(Sizes.outsideDiameterAndWall(text)).isEqualTo(Optional.ofNullable(outsideM));
  }

  /** Sides are only looked for where a digit stands close behind the sign between them. */
  @Test
  void spacesMayStandAroundTheSignBetweenTwoSides() {
    for (String sign : new String[] {"x", "X", "\u00D7", "\u0445"}) {
      for (String text :
          new String[] {"400%s200", "400 %s 200", "400mm%s 200", "400 mm %s200 mm"}) {
        assertThat(Sizes.sides(String.format(text, sign)).map(InWords::section))
            .contains("400.0 x 200.0 mm");
      }
    }
    assertThat(Sizes.sides("Flex 200")).isEmpty();
  }

  /** A letter of Danish and Norwegian is a sign of a diameter only beside figures. */
  @Test
  void tRorIsNoSize() {
    assertThat(Sizes.mmEnds("T-rør")).isEmpty();
    assertThat(Sizes.mmEnds("80 mmø-50 mmø")).containsExactly(80, 50);
  }

  /** A flat oval has a stroke between its sides; so have two round ends. */
  @ParameterizedTest
  @CsvSource({
    "400/200-300/200,0",
    "400 mm/200 mm-400 mm/200 mm-300 mm/200 mm,0",
    "400/200-250\u00f8,0",
    "400/200,2",
    "315/315/250,3",
    "200/160-45,2"
  })
  void sidesOfFlatOvalsAreNoRoundEnds(String text, int ends) {
    assertThat(Sizes.ductEnds(text)).hasSize(ends);
  }
}
