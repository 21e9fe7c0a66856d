package org.lagwright.testmodels.large;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.lagwright.testmodels.ifc.Vec;

/** Adds up what the lines of a model hold. Lengths are summed in whole tenths of a millimetre. */
final class QuantityBook {

  /** Tenths of a millimetre in a metre. */
  private static final double TENTHS = 10_000;

  private record Key(String what, String of) {}

  private record Sum(long count, long total) {
    Sum plus(Sum other) {
      return new Sum(count + other.count, total + other.total);
    }
  }

  private final Map<Key, Sum> lengths = new LinkedHashMap<>();
  private final Map<Key, Sum> numbers = new LinkedHashMap<>();

  void add(Run run) {
    run.parts().forEach(this::add);
    number("system", run.service().words, 1, run.parts().size());
    number("storey", "Level " + run.storey(), run.parts().size(), 0);
    // the first and the last element end in the open, and so does a branch
    number("connected port", "all", 2L * (run.parts().size() - 1), 0);
  }

  private void add(Part part) {
    String kind = part.kind();
    switch (part.form()) {
      case "straight" -> length("segment", kind + " " + part.sizes(), part.lengthTenths());
      case "bend" -> length("bend", kind + " " + part.sizes(), Math.round(10 * part.radiusMm()));
      // drawn thicker than its pipe, so that its size is a matter of opinion
      case "valve-body" -> number("item", kind + " " + part.form(), 1, 0);
      default -> number("item", kind + " " + part.form() + " " + part.sizes(), 1, 0);
    }
    number("port", "all", part.ports().size(), 0);
    number("property", "all", PartProperties.COUNT, 0);
    number("property", "Mark", 1, part.mark());
    long tenths = 0;
    for (Part.Port port : part.ports()) {
      Vec at = port.at();
      tenths += Math.round(10 * (at.x() + at.y() + at.z()));
    }
    lengths.merge(
        new Key("port position", "sum of x y z"), new Sum(part.ports().size(), tenths), Sum::plus);
  }

  private void length(String what, String of, long tenths) {
    lengths.merge(new Key(what, of), new Sum(1, tenths), Sum::plus);
  }

  private void number(String what, String of, long count, long total) {
    numbers.merge(new Key(what, of), new Sum(count, total), Sum::plus);
  }

  /** Everything so far and how many records there are of each entity. */
  List<KnownQuantity> quantities(Map<String, Long> recordCounts) {
    List<KnownQuantity> all = new ArrayList<>();
    lengths.forEach((k, s) -> all.add(new KnownQuantity(k.what, k.of, s.count, s.total / TENTHS)));
    numbers.forEach((k, s) -> all.add(new KnownQuantity(k.what, k.of, s.count, s.total)));
    recordCounts.forEach((entity, n) -> all.add(new KnownQuantity("record", entity, n, 0)));
    all.sort(Comparator.comparing(KnownQuantity::what).thenComparing(KnownQuantity::of));
    return all;
  }
}
