package org.lagwright.report.workbook;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.TreeSet;
import org.jspecify.annotations.Nullable;
import org.lagwright.ifc.model.Place;
import org.lagwright.takeoff.Quantities;
import org.lagwright.takeoff.TakenElement;

/**
 * The storeys with insulation, from the lowest up. Each has a short id: names are text of a model,
 * which formulas would read as numbers, operators or wildcards.
 */
final class Storeys {

  /** A storey of a building. */
  private record Key(String building, double elevationM, String name) {
    private static final Comparator<Key> UPWARDS =
        Comparator.comparing(Key::building).thenComparing(Key::elevationM).thenComparing(Key::name);

    static Key of(Place place) {
      String storey = place.storey();
      Double elevationM = place.storeyElevationM();
      return new Key(
          place.building() == null ? "" : place.building(),
          elevationM == null ? Double.POSITIVE_INFINITY : elevationM,
          storey == null ? "" : storey);
    }
  }

  /**
   * A storey with what is insulated on it.
   *
   * @param name in words; tells where the model does not
   */
  record Storey(String id, String name, Quantities quantities) {}

  private final List<Storey> list = new ArrayList<>();
  private final Map<Key, String> ids = new HashMap<>();

  Storeys(List<TakenElement> elements) {
    Map<Key, Quantities> sums = new HashMap<>();
    for (TakenElement taken : elements) {
      if (taken.lineId() != null) {
        sums.merge(Key.of(taken.element().place()), taken.quantities(), Quantities::plus);
      }
    }
    boolean severalBuildings = sums.keySet().stream().map(Key::building).distinct().count() > 1;
    TreeSet<Key> upwards = new TreeSet<>(Key.UPWARDS);
    upwards.addAll(sums.keySet());
    for (Key key : upwards) {
      String id = String.format(Locale.ROOT, "S%02d", list.size() + 1);
      ids.put(key, id);
      list.add(
          new Storey(id, inWords(key, severalBuildings), sums.getOrDefault(key, Quantities.NONE)));
    }
  }

  private static String inWords(Key key, boolean withBuilding) {
    String name = key.name().isBlank() ? "storey not told" : key.name();
    return withBuilding && !key.building().isBlank() ? key.building() + ", " + name : name;
  }

  /** From the lowest up. */
  List<Storey> list() {
    return list;
  }

  /** The id of the storey of an element on a line. */
  @Nullable String id(TakenElement taken) {
    return ids.get(Key.of(taken.element().place()));
  }
}
