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
  private record Size(double boreM, double thicknessM, boolean counted)
      implements Comparable<Size> {
    private static final Comparator<Size> ORDER =
        Comparator.comparingDouble(Size::boreM)
            .thenComparingDouble(Size::thicknessM)
            .thenComparing(Size::counted);

    static Size of(LaggedElement pipe, boolean counted) {
      double boreM = Math.round(pipe.section().largestSideM() * 10_000) / 10_000.0;
      return new Size(boreM, pipe.thicknessM(), counted);
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
    Map<Size, Tally> tallies = new TreeMap<>();
    for (List<LaggedElement> run : runs(pipes)) {
      addRun(run, shown, tallies);
    }
    tallies.forEach((size, tally) -> book.add(supply(size), tally));
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
              .collect(
                  Collectors.groupingBy(
                      pipe -> Size.of(pipe, false), TreeMap::new, Collectors.toList()));
      runs.addAll(bySize.values());
    }
    return runs;
  }

  private void addRun(
      List<LaggedElement> run, Map<ElementKey, Integer> shown, Map<Size, Tally> tallies) {
    int counted = run.stream().mapToInt(pipe -> shown.getOrDefault(pipe.key(), 0)).sum();
    if (counted > 0) {
      for (LaggedElement pipe : run) {
        int own = shown.getOrDefault(pipe.key(), 0);
        tally(tallies, Size.of(pipe, true)).add(own, allowance(), pipe.key());
      }
      return;
    }
    double lengthM = run.stream().mapToDouble(LaggedElement::lengthM).sum();
    SpacingTable table = hangers.findTable(tableId).orElse(null);
    if (table == null || lengthM < figures.number("hangerRunFromM")) {
      return;
    }
    double spanM = table.spanM(run.get(0).section().largestSideM());
    double number = Math.ceil(lengthM / spanM - 1e-9) + figures.number("hangersPerRunExtra");
    double each = number / run.size();
    for (LaggedElement pipe : run) {
      tally(tallies, Size.of(pipe, false)).add(each, allowance(), pipe.key());
    }
  }

  private double allowance() {
    return figures.share("insertAllowancePct");
  }

  private static Tally tally(Map<Size, Tally> tallies, Size size) {
    return tallies.computeIfAbsent(size, k -> new Tally());
  }

  private Supply supply(Size size) {
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
    if (size.counted()) {
      return supply.by("hangers that the model shows within reach of these pipes");
    }
    SpacingTable table = hangers.findTable(tableId).orElseThrow();
    return supply
        .by(
            "length of each run over the spacing of "
                + ItemBook.plain(table.spanM(size.boreM()))
                + " m, rounded up, and {hangersPerRunExtra} more; spacing: "
                + table.name())
        .from(table.source(), table.status())
        .figures(figures, "hangersPerRunExtra");
  }

  private static String mm(double lengthM) {
    return ItemBook.plain(lengthM * 1000);
  }
}
