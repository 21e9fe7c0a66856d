package org.lagwright.ifc.geometry.frame;

import java.util.ArrayList;
import java.util.List;

/** Stretches of a line, each from a lower to a higher place on it, as shares or in metres. */
public final class Spans {

  private Spans() {}

  /** What lies in both. */
  public static List<double[]> and(List<double[]> some, List<double[]> others) {
    List<double[]> common = new ArrayList<>();
    for (double[] a : some) {
      for (double[] b : others) {
        add(Math.max(a[0], b[0]), Math.min(a[1], b[1]), common);
      }
    }
    return common;
  }

  /** What lies in some and not in the others. */
  public static List<double[]> minus(List<double[]> some, List<double[]> others) {
    List<double[]> left = some;
    for (double[] b : others) {
      List<double[]> next = new ArrayList<>();
      for (double[] a : left) {
        add(a[0], Math.min(a[1], b[0]), next);
        add(Math.max(a[0], b[1]), a[1], next);
      }
      left = next;
    }
    return left;
  }

  /** How long they are together. */
  public static double sum(List<double[]> spans) {
    double sum = 0;
    for (double[] span : spans) {
      sum += span[1] - span[0];
    }
    return sum;
  }

  private static void add(double from, double to, List<double[]> into) {
    if (to > from) {
      into.add(new double[] {from, to});
    }
  }
}
