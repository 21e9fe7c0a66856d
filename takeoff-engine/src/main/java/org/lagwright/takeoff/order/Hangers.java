package org.lagwright.takeoff.order;

import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Collectors;
import org.lagwright.ifc.model.ElementKey;
import org.lagwright.ifc.model.Kind;
import org.lagwright.ifc.model.MepElement;
import org.lagwright.ifc.model.Run;
import org.lagwright.takeoff.order.HangerPack.SpacingTable;

/**
 * How many hangers each insulated pipe has: those of the model where it shows any on a run; else as
 * many as the length of the run over the spacing for its size, rounded up, and one more, spread
 * evenly over its pipes.
 */
final class Hangers {

  private final OrderPack figures;
  private final HangerPack pack;
  private final String tableId;
  private final List<MepElement> all;
  private final Map<ElementKey, Count> counts = new HashMap<>();

  /**
   * Hangers of one pipe.
   *
   * @param number may be a fraction where they are spread over a run
   * @param shown true where the model shows them
   */
  record Count(double number, boolean shown) {}

  /** Pipes of one size and thickness share the hangers of their run. */
  record Size(double boreM, double thicknessM) implements Comparable<Size> {
    private static final Comparator<Size> ORDER =
        Comparator.comparingDouble(Size::boreM).thenComparingDouble(Size::thicknessM);

    static Size of(LaggedElement pipe) {
      double boreM = Math.round(pipe.section().largestSideM() * 10_000) / 10_000.0;
      return new Size(boreM, pipe.thicknessM());
    }

    @Override
    public int compareTo(Size other) {
      return ORDER.compare(this, other);
    }
  }

  /**
   * Counts the hangers.
   *
   * @param tableId table of spacing
   * @param lagged elements on lines
   * @param all every element read, for the hangers among them and for what runs on into what
   */
  Hangers(
      OrderPack figures,
      HangerPack pack,
      String tableId,
      List<LaggedElement> lagged,
      List<MepElement> all) {
    this.figures = figures;
    this.pack = pack;
    this.tableId = tableId;
    this.all = all;
    List<LaggedElement> pipes =
        lagged.stream().filter(e -> e.element().kind() == Kind.PIPE_SEGMENT).toList();
    Map<ElementKey, Integer> shown =
        new Supports(pack, all).byPipe(pipes, figures.metres("supportReachMm"));
    runs(pipes).forEach(run -> count(run, shown));
  }

  /** Hangers of a pipe; none of anything else. */
  Count of(ElementKey element) {
    return counts.getOrDefault(element, new Count(0, false));
  }

  /** Numbers by pipe, of pipes that have any. */
  Map<ElementKey, Double> numbers() {
    return counts.entrySet().stream()
        .filter(entry -> entry.getValue().number() > 0)
        .collect(Collectors.toMap(Map.Entry::getKey, entry -> entry.getValue().number()));
  }

  /** Pipes of one size that follow each other without a branch. */
  private List<List<LaggedElement>> runs(List<LaggedElement> pipes) {
    Map<ElementKey, LaggedElement> byKey = new HashMap<>();
    pipes.forEach(pipe -> byKey.put(pipe.key(), pipe));
    return Run.of(all).stream()
        .flatMap(
            run ->
                run.pieces().stream()
                    .filter(byKey::containsKey)
                    .map(byKey::get)
                    .collect(Collectors.groupingBy(Size::of, TreeMap::new, Collectors.toList()))
                    .values()
                    .stream())
        .toList();
  }

  private void count(List<LaggedElement> run, Map<ElementKey, Integer> shown) {
    boolean anyShown = run.stream().anyMatch(pipe -> shown.containsKey(pipe.key()));
    double each = anyShown ? 0 : bySpacing(run) / run.size();
    for (LaggedElement pipe : run) {
      double number = anyShown ? shown.getOrDefault(pipe.key(), 0) : each;
      counts.put(pipe.key(), new Count(number, anyShown));
    }
  }

  private double bySpacing(List<LaggedElement> run) {
    double lengthM = run.stream().mapToDouble(LaggedElement::lengthM).sum();
    SpacingTable table = pack.findTable(tableId).orElse(null);
    if (table == null || lengthM < figures.number("hangerRunFromM")) {
      return 0;
    }
    double spanM = table.spanM(run.get(0).section().largestSideM());
    return Math.ceil(lengthM / spanM - 1e-9) + figures.number("hangersPerRunExtra");
  }
}
