package org.lagwright.ifc.extract.insulation;

import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeSet;
import org.lagwright.ifc.geometry.Beside;

/** Parts of an element along each of which the same coverings lie. */
final class Stretches {

  /** What is shorter, against the longest stretch, is where pieces end. No source. */
  private static final double SHORT = 0.05;

  /**
   * A part of an element, or several.
   *
   * @param coverings that lie along all of it
   * @param share part of the element that they lie on
   */
  record Stretch(List<Layers.Covering> coverings, double share) {}

  private Stretches() {}

  /** Those of all coverings of an element; half shells and boards are one with their gaps. */
  static List<Stretch> of(List<Layers.Covering> coverings) {
    List<Layers.Covering> longestFirst = new ArrayList<>(coverings);
    longestFirst.sort(
        Comparator.comparingDouble((Layers.Covering c) -> c.extent().length()).reversed());
    if (coverings.stream().allMatch(covering -> covering.piece() == null)) {
      return along(longestFirst);
    }
    List<Stretch> stretches = new ArrayList<>();
    for (List<Layers.Covering> group : overlapping(longestFirst)) {
      TreeSet<Double> ends = ends(group);
      double share = ends.last() - ends.first();
      stretches.add(new Stretch(group, share * around(group, share)));
    }
    return stretches;
  }

  private static List<List<Layers.Covering>> overlapping(List<Layers.Covering> coverings) {
    List<List<Layers.Covering>> groups = new ArrayList<>();
    for (Layers.Covering covering : coverings) {
      groups.stream()
          .filter(g -> g.stream().anyMatch(c -> c.extent().overlaps(covering.extent())))
          .findFirst()
          .orElseGet(
              () -> {
                groups.add(new ArrayList<>());
                return groups.get(groups.size() - 1);
              })
          .add(covering);
    }
    return groups;
  }

  private static TreeSet<Double> ends(List<Layers.Covering> coverings) {
    TreeSet<Double> ends = new TreeSet<>();
    for (Layers.Covering covering : coverings) {
      ends.add(covering.extent().from());
      ends.add(covering.extent().to());
    }
    return ends;
  }

  /** Between each two ends of coverings; what is short adds its share to the longest stretch. */
  private static List<Stretch> along(List<Layers.Covering> coverings) {
    TreeSet<Double> ends = ends(coverings);
    return withoutShort(between(ends, coverings));
  }

  private static Map<List<Layers.Covering>, Double> between(
      TreeSet<Double> ends, List<Layers.Covering> group) {
    Map<List<Layers.Covering>, Double> shares = new LinkedHashMap<>();
    double from = ends.first();
    for (double to : ends) {
      List<Layers.Covering> here = new ArrayList<>();
      for (Layers.Covering covering : group) {
        if (covering.extent().from() <= from && covering.extent().to() >= to) {
          here.add(covering);
        }
      }
      if (to > from && !here.isEmpty()) {
        shares.merge(here, to - from, Double::sum);
      }
      from = to;
    }
    return shares;
  }

  private static List<Stretch> withoutShort(Map<List<Layers.Covering>, Double> shares) {
    double longestShare = Collections.max(shares.values());
    List<Stretch> stretches = new ArrayList<>();
    double shortShare = 0;
    int longest = 0;
    for (Map.Entry<List<Layers.Covering>, Double> each : shares.entrySet()) {
      if (each.getValue() < SHORT * longestShare) {
        shortShare += each.getValue();
      } else {
        stretches.add(new Stretch(each.getKey(), each.getValue()));
        boolean longer = each.getValue() > stretches.get(longest).share();
        longest = longer ? stretches.size() - 1 : longest;
      }
    }
    Stretch most = stretches.get(longest);
    stretches.set(longest, new Stretch(most.coverings(), most.share() + shortShare));
    return stretches;
  }

  /** Part of the circumference that half shells and boards leave no gap on. */
  private static double around(List<Layers.Covering> group, double share) {
    double most = 0;
    for (Layers.Covering one : group) {
      double around = one.piece() == null ? share : 0;
      for (Layers.Covering other : group) {
        Beside piece = Layers.isSameRing(one, other) ? other.piece() : null;
        around += piece == null ? 0 : piece.around() * other.extent().length();
      }
      most = Math.max(most, around);
    }
    return Math.min(1, most / share);
  }
}
