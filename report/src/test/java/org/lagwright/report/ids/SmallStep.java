package org.lagwright.report.ids;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;

/** Reads exchange files for tests with nothing of the program: one record a line, no comments. */
final class SmallStep {

  private static final Pattern RECORD =
      Pattern.compile("^#(\\d+)\\s*=\\s*(\\w+)\\s*\\((.*)\\);\\s*$", Pattern.MULTILINE);
  private static final Pattern REFERENCE = Pattern.compile("#(\\d+)");
  private static final Pattern SCHEMA = Pattern.compile("FILE_SCHEMA\\s*\\(\\('([^']+)'");

  private final Map<Integer, Item> items = new LinkedHashMap<>();
  private final String schema;

  /** A record with its arguments as they stand there. */
  record Item(int id, String keyword, List<String> arguments) {

    String argument(int position) {
      return position < arguments.size() ? arguments.get(position) : "$";
    }

    /** The text within the quotes; empty if there is none. */
    String text(int position) {
      String argument = argument(position);
      return argument.startsWith("'") ? argument.substring(1, argument.length() - 1) : "";
    }

    /** Numbers of the records referred to. */
    List<Integer> references(int position) {
      return REFERENCE
          .matcher(argument(position))
          .results()
          .map(r -> Integer.valueOf(r.group(1)))
          .toList();
    }
  }

  SmallStep(String text) {
    Matcher schemas = SCHEMA.matcher(text);
    schema = schemas.find() ? schemas.group(1) : "";
    RECORD
        .matcher(text)
        .results()
        .forEach(
            r -> {
              int id = Integer.parseInt(r.group(1));
              items.put(id, new Item(id, r.group(2), split(r.group(3))));
            });
  }

  private static List<String> split(String text) {
    List<String> parts = new ArrayList<>();
    int depth = 0;
    boolean quoted = false;
    int from = 0;
    for (int i = 0; i < text.length(); i++) {
      char c = text.charAt(i);
      quoted ^= c == '\'';
      depth += quoted ? 0 : c == '(' ? 1 : c == ')' ? -1 : 0;
      if (c == ',' && depth == 0 && !quoted) {
        parts.add(text.substring(from, i).trim());
        from = i + 1;
      }
    }
    parts.add(text.substring(from).trim());
    return parts;
  }

  String schema() {
    return schema;
  }

  /** The record of a number, which the file must have. */
  Item item(int id) {
    return Objects.requireNonNull(items.get(id), () -> "#" + id);
  }

  Stream<Item> all() {
    return items.values().stream();
  }

  Stream<Item> all(String keyword) {
    return all().filter(item -> item.keyword().equals(keyword));
  }
}
