package org.lagwright.testmodels.tiny;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Supplier;
import org.lagwright.testmodels.ifc.Schema;
import org.lagwright.testmodels.ifc.Units;
import org.lagwright.testmodels.step.Ref;
import org.lagwright.testmodels.step.Value;

/** Rules about STEP text. */
final class TextRules {

  /** Beyond 2^32 as well. */
  private static final long LARGE_NUMBER = 4_294_967_300L;

  /** Property name to string as it stands in the file; the comment is what it means. */
  private static final String[][] ESCAPES = {
    {"quote", "'it''s'"}, // it's
    {"solidus", "'a\\\\b'"}, // a\b
    {"one byte", "'K\\X\\E4lte'"}, // Kälte
    {"two bytes", "'\\X2\\00D800B2\\X0\\ 60'"}, // Ø² 60
    {"four bytes", "'\\X4\\0001F6E0\\X0\\'"}, // U+1F6E0
    {"shifted", "'K\\S\\dlte'"}, // Kälte
    {"page", "'\\PE\\\\S\\R\\S\\^\\S\\T\\S\\P'"}, // вода, ISO 8859-5
    {"empty", "''"},
  };

  private TextRules() {}

  static Map<String, Supplier<String>> models() {
    Map<String, Supplier<String>> models = new LinkedHashMap<>();
    models.put("ids-beyond-2-to-the-31", TextRules::largeNumbers);
    models.put("strings-with-all-escapes", TextRules::escapes);
    return models;
  }

  private static String largeNumbers() {
    TinyFile file = new TinyFile(Schema.IFC4, Units.MILLIMETRE_RADIAN, LARGE_NUMBER);
    file.pipe("Pipe", 60.3, 2_500);
    return file.text();
  }

  private static String escapes() {
    TinyFile file = TinyFile.of(Schema.IFC4);
    Ref pipe = file.pipe("Pipe", 60.3, 2_500);
    List<Ref> values = new ArrayList<>();
    for (String[] escape : ESCAPES) {
      Value text = new Value.Verbatim("IFCTEXT(" + escape[1] + ")");
      values.add(file.properties.single(escape[0], text));
    }
    file.properties.bind(
        "escapes", List.of(pipe), file.properties.set("escapes", "Escapes", values));
    return file.text();
  }
}
