package org.lagwright.ifc.extract.text;

import static org.assertj.core.api.Assertions.assertThat;

import org.jspecify.annotations.Nullable;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.lagwright.ifc.extract.InlineModel;
import org.lagwright.ifc.model.Measured;
import org.lagwright.ifc.model.Section;

/** The mark that ends a quotation is no sign of inches. */
class QuotationsTest {

  @ParameterizedTest
  @CsvSource(
      quoteCharacter = '\'',
      value = {
        "IFCPIPESEGMENT,PSV \"V 6\",",
        "IFCPIPESEGMENT,{\"N\": \"PSV 006\"},",
        "IFCPIPESEGMENT,Pipe \\X2\\201C\\X0\\Zone 2\\X2\\201D\\X0\\,",
        "IFCPIPESEGMENT,Pipe \"DN 50\",60.3 mm",
        "IFCPIPESEGMENT,Pipe \"22x1\",22.0 mm",
        "IFCPIPESEGMENT,Pipe \"Main\" 2\",60.3 mm",
        "IFCPIPESEGMENT,Pipe 2\" \"Main\",60.3 mm",
        "IFCDUCTSEGMENT,Duct \"500x300\",500.0 x 300.0 mm",
        "IFCDUCTSEGMENT,Duct 12\" x 8\",304.8 x 203.2 mm"
      })
  void markBehindAFigureIsOfInchesUnlessItEndsAQuotation(
      String keyword, String name, @Nullable String size) {
    String record = "#1=%s('g',$,'%s',$,$,$,$,$,$);\n".formatted(keyword, name);

    Measured<Section> section = InlineModel.first(record).section();

    assertThat(section == null ? null : InWords.section(section.value())).isEqualTo(size);
  }
}
