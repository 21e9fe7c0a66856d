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

  /** Instances of one keyword in all stretches of a file, in their order. */
  static long[] ids(List<StepTypes> stretches, StepKeyword keyword) {
    long[] ids = new long[keyword.listed() ? count(stretches, keyword) : 0];
    int at = 0;
    for (StepTypes stretch : stretches) {
      IdLog log = stretch.find(keyword.number());
      if (log != null) {
        log.copyTo(ids, at);
        at += log.size();
      }
    }
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

  private static int count(List<StepTypes> stretches, StepKeyword keyword) {
    int total = 0;
    for (StepTypes stretch : stretches) {
      total += stretch.count(keyword.number());
    }
    return total;
  }
}
