package org.lagwright.takeoff.order;

import java.util.ArrayList;
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
 * Load-bearing inserts for cold pipes: one at each hanger. Hangers are those of the model where it
 * shows any on a run; else as many as the length of the run over the spacing for its size, rounded
 * up, and one more.
 */
final class InsertOrder {

  private final OrderPack figures;
  private final HangerPack hangers;
  private final String tableId;
  private final List<MepElement> all;

  InsertOrder(OrderPack figures, HangerPack hangers, String tableId, List<MepElement> all) {
    this.figures = figures;
    this.hangers = hangers;
    this.tableId = tableId;
    this.all = all;
  }

  /** Size of an insert. */
  private record Size(double boreM, double thicknessM) implements Comparable<Size> {
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

  void putOn(ItemBook book, List<LaggedElement> lagged) {
    List<LaggedElement> pipes =
        lagged.stream().filter(e -> e.cold() && e.element().kind() == Kind.PIPE_SEGMENT).toList();
    Map<ElementKey, Integer> shown =
        new Supports(hangers, all).byPipe(pipes, figures.metres("supportReachMm"));
    Map<Size, Count> counts = new TreeMap<>();
    for (List<LaggedElement> run : runs(pipes)) {
      addRun(run, shown, counts.computeIfAbsent(Size.of(run.get(0)), k -> new Count()));
    }
    counts.forEach((size, count) -> book.add(supply(size, count), count.all));
  }

  private static final class Count {
    final Tally all = new Tally();
    int shown;
    double bySpacing;
  }

  /** Pipes of one size that follow each other without a branch. */
  private List<List<LaggedElement>> runs(List<LaggedElement> pipes) {
    Map<ElementKey, LaggedElement> byKey = new HashMap<>();
    pipes.forEach(pipe -> byKey.put(pipe.key(), pipe));
    List<List<LaggedElement>> runs = new ArrayList<>();
    for (Run run : Run.of(all)) {
      Map<Size, List<LaggedElement>> bySize =
          run.pieces().stream()
              .filter(byKey::containsKey)
              .map(byKey::get)
              .collect(Collectors.groupingBy(Size::of, TreeMap::new, Collectors.toList()));
      runs.addAll(bySize.values());
    }
    return runs;
  }

  private void addRun(List<LaggedElement> run, Map<ElementKey, Integer> shown, Count count) {
    int counted = run.stream().mapToInt(pipe -> shown.getOrDefault(pipe.key(), 0)).sum();
    if (counted > 0) {
      count.shown += counted;
      run.forEach(
          pipe -> count.all.add(shown.getOrDefault(pipe.key(), 0), allowance(), pipe.key()));
      return;
    }
    double number = bySpacing(run);
    count.bySpacing += number;
    run.forEach(pipe -> count.all.add(number / run.size(), allowance(), pipe.key()));
  }

  private double bySpacing(List<LaggedElement> run) {
    double lengthM = run.stream().mapToDouble(LaggedElement::lengthM).sum();
    SpacingTable table = hangers.findTable(tableId).orElse(null);
    if (table == null || lengthM < figures.number("hangerRunFromM")) {
      return 0;
    }
    double spanM = table.spanM(run.get(0).section().largestSideM());
    return Math.ceil(lengthM / spanM - 1e-9) + figures.number("hangersPerRunExtra");
  }

  private double allowance() {
    return figures.share("insertAllowancePct");
  }

  private Supply supply(Size size, Count count) {
    double lengthM =
        hangers.shields().lengthM(size.boreM()) + 2 * figures.metres("insertBesideShieldMm");
    Supply supply =
        new Supply(
                Goods.INSERT,
                "load-bearing insert, bore "
                    + mm(size.boreM())
                    + " mm, wall "
                    + mm(size.thicknessM())
                    + " mm, at least "
                    + mm(lengthM)
                    + " mm long",
                "pcs")
            .sized(size.boreM(), size.thicknessM())
            .from(hangers.shields().source(), hangers.shields().status());
    if (count.bySpacing == 0) {
      return supply.by(count.shown + " hangers that the model shows");
    }
    SpacingTable table = hangers.findTable(tableId).orElseThrow();
    String bySpacing =
        ItemBook.plain(count.bySpacing)
            + " by the length of each run over "
            + ItemBook.plain(table.spanM(size.boreM()))
            + " m, rounded up, and {hangersPerRunExtra} more: "
            + table.name();
    String shown = count.shown == 0 ? "" : count.shown + " hangers that the model shows; ";
    return supply
        .by(shown + bySpacing)
        .from(table.source(), table.status())
        .figures(figures, "hangersPerRunExtra");
  }

  private static String mm(double lengthM) {
    return ItemBook.plain(lengthM * 1000);
  }
}
