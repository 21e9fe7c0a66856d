package org.lagwright.ifc.extract.measure;

import static org.assertj.core.api.Assertions.assertThat;
import static org.lagwright.ifc.extract.InlineModel.properties;
import static org.lagwright.ifc.extract.InlineModel.read;

import java.util.Random;
import org.junit.jupiter.api.Test;
import org.lagwright.ifc.model.Measured;
import org.lagwright.ifc.model.MepElement;
import org.lagwright.ifc.model.Section;

/** Whatever people write into names and properties, the element is there and of a possible size. */
class TextsOfAllSortsTest {

  private static final long SEED = 20261128;

  private static final int TEXTS = 3000;

  /** As in the reader: nothing that is built is wider. */
  private static final double LARGEST_M = 10;

  private static final String[] PIECES = {
    "DN",
    "mm",
    " mm",
    "cm",
    "m",
    "\"",
    "''",
    "''''",
    "in",
    "ft",
    "x",
    " x ",
    "X",
    "*",
    "/",
    "-",
    ",",
    ".",
    ";",
    "(",
    ")",
    "d=",
    "OD",
    "=",
    " deg",
    "R",
    "PN16",
    "Rohr",
    "pipe",
    "duct",
    "Bogen",
    "Tee",
    "90",
    "1/2",
    "1 1/4",
    "0",
    "1",
    "12",
    "100",
    "1''200",
    "1 200",
    "1,5",
    "22",
    "60.3",
    "315",
    "400",
    "99999999999",
    "1e5",
    "-1",
    "insulation",
    "lining",
    "30",
    "25 mm",
    "isoliert",
    "50/40",
    "200x100",
    "6''-10\"",
    "5'' 3 1/2\"",
    "70/50",
    "supply",
    "%",
    "+",
    "0x0",
    "1/0",
    "0/0"
  };

  @Test
  void everyElementIsReadWithAPossibleSizeOrNone() {
    System.out.println("seed " + SEED);
    Random random = new Random(SEED);
    int sized = 0;
    for (int i = 0; i < TEXTS; i++) {
      String text = text(random);
      for (MepElement element : read(elements(text)).elements()) {
        Measured<Section> section = element.section();
        if (section != null) {
          assertThat(section.value().largestSideM()).as(text).isBetween(0.0, LARGEST_M);
          sized++;
        }
        assertThat(element.kind().isLagged()).as(text).isTrue();
      }
    }
    assertThat(sized).isGreaterThan(TEXTS / 10);
  }

  private static String elements(String text) {
    return "#1=IFCPIPESEGMENT('1',$,'%1$s',$,$,$,$,$,.RIGIDSEGMENT.);\n".formatted(text)
        + "#2=IFCDUCTFITTING('2',$,'Fitting',$,'%1$s',$,$,$,.BEND.);\n".formatted(text)
        + properties(
            100,
            1,
            "Texts",
            "Size",
            "IFCTEXT('" + text + "')",
            "InsulationThickness",
            "IFCTEXT('" + text + "')")
        + properties(
            200,
            2,
            "Texts",
            "NominalDiameter",
            "IFCLABEL('" + text + "')",
            "Insulation",
            "IFCTEXT('" + text + "')");
  }

  private static String text(Random random) {
    StringBuilder text = new StringBuilder();
    for (int i = 1 + random.nextInt(6); i > 0; i--) {
      text.append(PIECES[random.nextInt(PIECES.length)]).append(random.nextInt(3) == 0 ? " " : "");
    }
    return text.toString();
  }
}
