package org.lagwright.ifc.step;

import java.math.BigInteger;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.TreeMap;

/**
 * Reads an exchange file the plain way: one byte after the other, statement by statement, keeping
 * everything. The reference that the fast reader is held against; shares no code with it.
 */
final class SlowStep {

  /** Numbers beyond are no instance numbers; a little below the greatest long. */
  private static final BigInteger GREATEST =
      BigInteger.valueOf(Long.MAX_VALUE / 10 - 1).multiply(BigInteger.TEN).subtract(BigInteger.ONE);

  final Map<Long, Long> offsets = new LinkedHashMap<>();
  final Map<String, Integer> counts = new TreeMap<>();
  final Map<String, List<Long>> ids = new TreeMap<>();
  final List<StepProblem> problems = new ArrayList<>();
  String schema = "";

  /** Why the file is refused, with the line; empty if it is not. */
  String refusal = "";

  private final byte[] bytes;
  private boolean sawData;
  private boolean inData;

  private SlowStep(byte[] bytes) {
    this.bytes = bytes;
  }

  static SlowStep read(byte[] bytes) {
    SlowStep slow = new SlowStep(bytes);
    slow.refusal = slow.run();
    return slow;
  }

  private String run() {
    int at = bytes.length > 2 && (bytes[0] & 0xFF) == 0xEF ? 3 : 0;
    at = skip(at);
    if (!text(at, Math.min(bytes.length, at + 12)).equalsIgnoreCase("ISO-10303-21")) {
      return "1 not an IFC file";
    }
    while (at < bytes.length) {
      int end = end(at);
      if (end < 0) {
        if (inData || !sawData) {
          return line(at) + " never ends";
        }
        break;
      }
      statement(at, end);
      at = skip(end);
    }
    return !sawData
        ? "0 no DATA"
        : inData && at >= bytes.length
            ? line(bytes.length) + " without ENDSEC"
            : schema.isEmpty() ? "0 no FILE_SCHEMA" : "";
  }

  private void statement(int at, int end) {
    String statement = text(at, end).toUpperCase(Locale.ROOT);
    if (statement.startsWith("#")) {
      instance(at, end);
    } else if (statement.startsWith("DATA")) {
      inData = true;
      sawData = true;
    } else if (statement.startsWith("ENDSEC")) {
      inData = false;
    } else if (statement.startsWith("FILE_SCHEMA")) {
      String[] quoted = statement.split("'", -1);
      schema = quoted.length > 2 ? quoted[1].trim() : "";
    } else if (inData) {
      problem(at, "passed over");
    }
  }

  private void instance(int at, int end) {
    int i = at + 1;
    while (bytes[i] >= '0' && bytes[i] <= '9') {
      i++;
    }
    BigInteger number = new BigInteger("0" + text(at + 1, i));
    i = skip(i);
    if (number.signum() == 0 || number.compareTo(GREATEST) > 0 || bytes[i] != '=') {
      problem(at, "no instance");
      return;
    }
    int from = skip(i + 1);
    int to = from;
    while (to < end && text(to, to + 1).matches("[A-Za-z0-9_-]")) {
      to++;
    }
    long id = number.longValueExact();
    if (offsets.putIfAbsent(id, (long) at) != null) {
      problem(at, "twice");
      return;
    }
    String keyword = text(from, to).toUpperCase(Locale.ROOT);
    counts.merge(keyword, 1, Integer::sum);
    ids.computeIfAbsent(keyword, k -> new ArrayList<>()).add(id);
  }

  private void problem(int at, String what) {
    problems.add(new StepProblem(line(at), what));
  }

  /** Behind the semicolon of the statement that starts here; -1 if there is none. */
  private int end(int start) {
    int i = start;
    while (i < bytes.length) {
      if (bytes[i] == ';') {
        return i + 1;
      }
      int next = bytes[i] == '\'' ? string(i) : startsComment(i) ? comment(i) : i + 1;
      if (next < 0) {
        return -1;
      }
      i = next;
    }
    return -1;
  }

  private int string(int start) {
    int i = start + 1;
    while (i < bytes.length) {
      if (bytes[i] != '\'' || escapes(start, i)) {
        i++;
      } else if (i + 1 < bytes.length && bytes[i + 1] == '\'') {
        i += 2;
      } else {
        return i + 1;
      }
    }
    return -1;
  }

  /** {@code \S\'}: the quote belongs to the text unless a comma or bracket shows the end. */
  private boolean escapes(int start, int quote) {
    if (quote - 3 <= start || !text(quote - 3, quote).equals("\\S\\") || bytes[quote - 4] == '\\') {
      return false;
    }
    int next = quote + 1;
    while (next < bytes.length && bytes[next] >= 0 && bytes[next] <= ' ') {
      next++;
    }
    return next >= bytes.length || (bytes[next] != ',' && bytes[next] != ')');
  }

  private boolean startsComment(int i) {
    return bytes[i] == '/' && i + 1 < bytes.length && bytes[i + 1] == '*';
  }

  private int comment(int start) {
    int end = text(0, bytes.length).indexOf("*/", start + 2);
    return end < 0 ? -1 : end + 2;
  }

  private int skip(int from) {
    int i = from;
    while (i < bytes.length) {
      if (startsComment(i)) {
        int end = comment(i);
        if (end < 0) {
          return bytes.length;
        }
        i = end;
      } else if (bytes[i] >= 0 && bytes[i] <= ' ') {
        i++;
      } else {
        return i;
      }
    }
    return i;
  }

  private long line(int offset) {
    return 1 + text(0, offset).chars().filter(c -> c == '\n').count();
  }

  private String text(int from, int to) {
    return new String(bytes, from, to - from, StandardCharsets.ISO_8859_1);
  }
}
