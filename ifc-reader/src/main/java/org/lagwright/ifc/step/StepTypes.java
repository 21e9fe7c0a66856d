package org.lagwright.ifc.step;

import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.jspecify.annotations.Nullable;

/**
 * How often each keyword occurs in a stretch of a file, and which instances the listed ones are.
 */
final class StepTypes {

  private int[] counts = new int[64];
  private @Nullable IdLog[] logs = new IdLog[64];

  void add(StepKeyword keyword, long id) {
    int number = keyword.number();
    if (number >= counts.length) {
      counts = Arrays.copyOf(counts, number * 2);
      logs = Arrays.copyOf(logs, number * 2);
    }
    counts[number]++;
    if (keyword.listed()) {
      log(number).add(id);
    }
  }

  private IdLog log(int number) {
    IdLog log = logs[number];
    if (log == null) {
      log = new IdLog();
      logs[number] = log;
    }
    return log;
  }

  private int count(int number) {
    return number < counts.length ? counts[number] : 0;
  }

  private @Nullable IdLog find(int number) {
    return number < logs.length ? logs[number] : null;
  }

  /** Instances of listed keywords in all stretches of a file, ascending. */
  static long[] ids(List<StepTypes> stretches, List<StepKeyword> keywords) {
    int size = 0;
    for (StepKeyword keyword : keywords) {
      size += count(stretches, keyword);
    }
    long[] ids = new long[size];
    int at = 0;
    for (StepTypes stretch : stretches) {
      int from = at;
      for (StepKeyword keyword : keywords) {
        IdLog log = stretch.find(keyword.number());
        if (log != null) {
          log.copyTo(ids, at);
          at += log.size();
        }
      }
      Arrays.sort(ids, from, at);
    }
    // mostly ascending by now; what is not takes a second array as large
    Arrays.sort(ids);
    return ids;
  }

  /** How many instances of each keyword that occurs, sorted by keyword. */
  static Map<String, Integer> counts(List<StepTypes> stretches, List<StepKeyword> keywords) {
    Map<String, Integer> counts = new TreeMap<>();
    for (StepKeyword keyword : keywords) {
      int total = count(stretches, keyword);
      if (total > 0) {
        counts.put(keyword.name(), total);
      }
    }
    return counts;
  }

  /** How many instances of a keyword. */
  static int count(List<StepTypes> stretches, StepKeyword keyword) {
    int total = 0;
    for (StepTypes stretch : stretches) {
      total += stretch.count(keyword.number());
    }
    return total;
  }
}
