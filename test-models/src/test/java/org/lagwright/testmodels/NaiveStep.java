package org.lagwright.testmodels;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** A plain reader for what our writer writes: one record a line, nothing clever. */
public final class NaiveStep {

  private static final Pattern RECORD = Pattern.compile("#(\\d+)=([A-Z0-9]+)\\((.*)\\);");
  private static final Pattern REFERENCE = Pattern.compile("#(\\d+)");
  private static final Pattern STRING = Pattern.compile("'(?:[^']|'')*'");

  /** One record: its number, its entity, its arguments as text. */
  public record Line(long id, String entity, List<String> arguments) {

    /** The record numbers in one argument. */
    public List<Long> references(int argument) {
      return numbers(arguments.get(argument));
    }

    /** The record numbers in all arguments. */
    public List<Long> references() {
      return arguments.stream().flatMap(a -> numbers(a).stream()).toList();
    }
  }

  private final Map<Long, Line> lines = new LinkedHashMap<>();

  /** Fails on a number that is used twice and on a line that is no record. */
  public NaiveStep(String text) {
    String data = text.substring(text.indexOf("DATA;\n") + 6, text.indexOf("ENDSEC;\nEND-ISO"));
    for (String line : data.split("\n", -1)) {
      if (line.isEmpty()) {
        continue;
      }
      Matcher matcher = RECORD.matcher(line);
      if (!matcher.matches()) {
        throw new AssertionError("no record: " + line);
      }
      long id = Long.parseLong(matcher.group(1));
      Line earlier = lines.put(id, new Line(id, matcher.group(2), split(matcher.group(3))));
      if (earlier != null) {
        throw new AssertionError("#" + id + " is used twice");
      }
    }
  }

  public List<Line> lines() {
    return List.copyOf(lines.values());
  }

  public List<Line> lines(String entity) {
    return lines.values().stream().filter(l -> l.entity().equals(entity)).toList();
  }

  public boolean has(long id) {
    return lines.containsKey(id);
  }

  public Line line(long id) {
    Line line = lines.get(id);
    if (line == null) {
      throw new AssertionError("no record #" + id);
    }
    return line;
  }

  private static List<Long> numbers(String argument) {
    Matcher matcher = REFERENCE.matcher(STRING.matcher(argument).replaceAll(""));
    return matcher.results().map(r -> Long.parseLong(r.group(1))).toList();
  }

  private static List<String> split(String arguments) {
    List<String> parts = new ArrayList<>();
    int depth = 0;
    boolean quoted = false;
    int start = 0;
    for (int i = 0; i < arguments.length(); i++) {
      char c = arguments.charAt(i);
      if (c == '\'') {
        quoted = !quoted;
      } else if (!quoted && c == '(') {
        depth++;
      } else if (!quoted && c == ')') {
        depth--;
      } else if (!quoted && depth == 0 && c == ',') {
        parts.add(arguments.substring(start, i));
        start = i + 1;
      }
    }
    parts.add(arguments.substring(start));
    return parts;
  }
}
