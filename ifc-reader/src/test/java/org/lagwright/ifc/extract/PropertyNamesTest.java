package org.lagwright.ifc.extract;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Locale;
import org.junit.jupiter.api.Test;

class PropertyNamesTest {

  /** A name that is not written as names are looked up, folded and bare, would never be found. */
  @Test
  void everyNameOfTheTableIsFound() {
    List<String> lines = Resource.lines("property-names.txt");
    assertThat(lines).hasSameSizeAs(PropertyNames.Role.values());
    for (String line : lines) {
      int colon = line.indexOf(':');
      String role = line.substring(0, colon).toUpperCase(Locale.ROOT).replace('-', '_');
      int bit = PropertyNames.bit(PropertyNames.Role.valueOf(role));
      for (String name : line.substring(colon + 1).split(",", -1)) {
        assertThat(PropertyNames.roles(name) & bit).as(role + " " + name).isEqualTo(bit);
      }
    }
  }

  @Test
  void caseAccentsPunctuationAndAUnitInBracketsDoNotCount() {
    int width = PropertyNames.bit(PropertyNames.Role.WIDTH);
    assertThat(PropertyNames.roles("Larg-eur [mm]") & width).isEqualTo(width);
    assertThat(PropertyNames.roles("Breite (cm)") & width).isEqualTo(width);
    int outside = PropertyNames.bit(PropertyNames.Role.OUTSIDE_DIAMETER);
    assertThat(PropertyNames.roles("Diam\u00E8tre ext\u00E9rieur") & outside).isEqualTo(outside);
    assertThat(
            PropertyNames.roles(
                "\u041D\u0430\u0440\u0443\u0436\u043D\u044B\u0439 \u0434\u0438\u0430\u043C\u0435\u0442\u0440"))
        .isEqualTo(outside);
    assertThat(PropertyNames.roles("Width (kg)") & width).isZero();
  }
}
