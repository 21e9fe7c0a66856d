package org.lagwright.ifc.large;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import java.util.TreeMap;
import org.jspecify.annotations.Nullable;
import org.lagwright.ifc.model.Measured;
import org.lagwright.ifc.model.MepElement;
import org.lagwright.ifc.model.MepModel;
import org.lagwright.ifc.model.MepSystem;
import org.lagwright.ifc.model.Point;
import org.lagwright.ifc.model.Port;
import org.lagwright.ifc.model.Property;
import org.lagwright.ifc.model.Section;
import org.lagwright.testmodels.large.KnownQuantity;

/**
 * Adds up a model that was read in the rows of {@link KnownQuantity}, to be held against what the
 * generator knows.
 */
public final class ReadQuantities {

  /** Lengths and positions agree to this much of each element, metres. */
  private static final double TOLERANCE_M = 1e-6;

  private record Key(String what, String of) {}

  private record Sum(long count, double total) {
    Sum plus(Sum other) {
      return new Sum(count + other.count, total + other.total);
    }
  }

  private final Map<Key, Sum> sums = new HashMap<>();
  private final Map<Long, String> systems = new TreeMap<>();

  private ReadQuantities() {}

  /** All rows for pipes, ducts, fittings and what else is lagged. */
  public static List<KnownQuantity> of(MepModel model) {
    ReadQuantities quantities = new ReadQuantities();
    model.elements().stream().filter(e -> e.kind().isLagged()).forEach(quantities::add);
    quantities.systems.values().forEach(words -> quantities.add("system", words, 1, 0));
    List<KnownQuantity> rows = new ArrayList<>();
    quantities.sums.forEach((k, s) -> rows.add(new KnownQuantity(k.what, k.of, s.count, s.total)));
    return rows;
  }

  /**
   * One sentence for each row that differs, in either direction; empty where all agree. Rows that
   * count records of the file are not compared.
   */
  public static List<String> differences(List<KnownQuantity> known, List<KnownQuantity> read) {
    Map<Key, KnownQuantity> left = new HashMap<>();
    read.forEach(q -> left.put(new Key(q.what(), q.of()), q));
    List<String> differences = new ArrayList<>();
    for (KnownQuantity want : known) {
      if (want.what().equals("record")) {
        continue;
      }
      KnownQuantity got = left.remove(new Key(want.what(), want.of()));
      if (got == null || !agree(want, got)) {
        differences.add("known " + want + ", read " + got);
      }
    }
    left.values().forEach(got -> differences.add("read, but not known: " + got));
    return differences;
  }

  private static boolean agree(KnownQuantity want, KnownQuantity got) {
    return want.count() == got.count()
        && Math.abs(want.total() - got.total()) <= TOLERANCE_M * Math.max(1, want.count());
  }

  private void add(MepElement element) {
    String kind = element.kind().label();
    String form = element.form().label();
    switch (element.form()) {
      case STRAIGHT -> add("segment", kind + " " + sizes(element), 1, value(element.lengthM()));
      case BEND -> add("bend", kind + " " + sizes(element), 1, value(element.bendRadiusM()));
      case VALVE_BODY -> add("item", kind + " " + form, 1, 0);
      default -> add("item", kind + " " + form + " " + sizes(element), 1, 0);
    }
    for (Port port : element.ports()) {
      add("port", "all", 1, 0);
      if (port.connectedTo() != null) {
        add("connected port", "all", 1, 0);
      }
      Point at = Objects.requireNonNullElse(port.positionM(), new Point(0, 0, 0));
      add("port position", "sum of x y z", 1, at.x() + at.y() + at.z());
    }
    for (Property property : element.properties()) {
      add("property", "all", 1, 0);
      if (property.name().equals("Mark")) {
        add("property", "Mark", 1, Objects.requireNonNullElse(property.number(), Double.NaN));
      }
    }
    add("storey", String.valueOf(element.place().storey()), 1, 0);
    for (MepSystem system : element.systems()) {
      String words = system.name().replaceAll(" \\d+$", "");
      systems.put(system.step(), words);
      add("system", words, 0, 1);
    }
  }

  private void add(String what, String of, long count, double total) {
    sums.merge(new Key(what, of), new Sum(count, total), Sum::plus);
  }

  private static double value(@Nullable Measured<Double> measured) {
    return measured == null ? Double.NaN : measured.value();
  }

  /** The sizes of the ends, without repetition of the first: {@code 60.3-48.3}. */
  private static String sizes(MepElement element) {
    List<Section> ends = new ArrayList<>(element.ends());
    if (ends.isEmpty() && element.section() != null) {
      ends.add(element.section().value());
    }
    return String.join("-", ends.stream().map(ReadQuantities::size).distinct().toList());
  }

  private static String size(Section section) {
    if (section instanceof Section.Round round) {
      return millimetres(round.outsideDiameterM());
    }
    if (section instanceof Section.Rectangular duct) {
      return millimetres(duct.widthM()) + "x" + millimetres(duct.heightM());
    }
    return section.toString();
  }

  /** To a tenth, without needless zeros. */
  private static String millimetres(double metres) {
    String text = String.format(Locale.ROOT, "%.1f", metres * 1000);
    return text.endsWith(".0") ? text.substring(0, text.length() - 2) : text;
  }
}
