package org.lagwright.takeoff.pack;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import tools.jackson.core.JacksonException;
import tools.jackson.core.JsonParser;
import tools.jackson.core.JsonToken;
import tools.jackson.dataformat.csv.CsvMapper;
import tools.jackson.dataformat.csv.CsvSchema;

/**
 * Reads CSV as spreadsheets write it: comma, semicolon or tab between the cells, whichever the
 * heading uses; quotes; UTF-8. Lines that begin with # are remarks.
 */
public final class CsvTables {

  private static final String BYTE_ORDER_MARK = "\uFEFF";
  private static final List<Character> SEPARATORS = List.of(',', ';', '\t');
  private static final CsvMapper MAPPER = new CsvMapper();

  private CsvTables() {}

  /**
   * Reads a file of the user.
   *
   * @throws PackException if the file is missing, unreadable or no table
   */
  public static DataTable readFile(Path file) {
    return parse(PackReader.readText(file), file.toString());
  }

  /**
   * Reads a file that belongs to the program.
   *
   * @param owner class whose folder on the class path the name is relative to
   * @throws PackException if it is no table
   */
  public static DataTable readBundled(Class<?> owner, String name) {
    return parse(PackReader.readBundledText(owner, name), name);
  }

  /**
   * Reads a text.
   *
   * @param name shown in messages
   * @throws PackException if it is no table
   */
  public static DataTable parse(String text, String name) {
    String content = text.startsWith(BYTE_ORDER_MARK) ? text.substring(1) : text;
    CsvSchema schema =
        CsvSchema.emptySchema().withColumnSeparator(separator(content)).withAllowComments(true);
    List<DataTable.Line> lines = new ArrayList<>();
    try (JsonParser parser = MAPPER.reader(schema).createParser(content)) {
      List<String> cells = new ArrayList<>();
      int line = 1;
      for (JsonToken token = parser.nextToken(); token != null; token = parser.nextToken()) {
        if (token == JsonToken.VALUE_STRING) {
          if (cells.isEmpty()) {
            line = parser.currentTokenLocation().getLineNr();
          }
          cells.add(parser.getString());
        } else if (token == JsonToken.END_ARRAY) {
          lines.add(new DataTable.Line(line, cells));
          cells.clear();
        }
      }
    } catch (JacksonException e) {
      int line = e.getLocation() == null ? 1 : e.getLocation().getLineNr();
      String why = e.getOriginalMessage().lines().findFirst().orElse("not readable");
      throw new PackException(name + ":" + line + ": " + why + ". Correct this line.", e);
    }
    return DataTable.of(name, lines);
  }

  /** The separator that stands most often in the heading. */
  private static char separator(String content) {
    String heading =
        content.lines().filter(l -> !l.isBlank() && !l.startsWith("#")).findFirst().orElse("");
    char best = SEPARATORS.get(0);
    for (char candidate : SEPARATORS) {
      if (count(heading, candidate) > count(heading, best)) {
        best = candidate;
      }
    }
    return best;
  }

  private static long count(String text, char wanted) {
    return text.chars().filter(c -> c == wanted).count();
  }
}
