package org.lagwright.takeoff.clearance;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.lagwright.ifc.model.BuildingPart;
import org.lagwright.ifc.model.ElementKey;
import org.lagwright.ifc.model.Evidence;
import org.lagwright.ifc.model.Form;
import org.lagwright.ifc.model.Georeference;
import org.lagwright.ifc.model.How;
import org.lagwright.ifc.model.Kind;
import org.lagwright.ifc.model.Measured;
import org.lagwright.ifc.model.MepElement;
import org.lagwright.ifc.model.MepModel;
import org.lagwright.ifc.model.MepSystem;
import org.lagwright.ifc.model.Point;
import org.lagwright.ifc.model.Port;
import org.lagwright.ifc.model.Section;
import org.lagwright.ifc.model.UprightBox;
import org.lagwright.takeoff.Takeoff;
import org.lagwright.takeoff.TestElement;
import org.lagwright.takeoff.settings.SettingsReader;

/**
 * Clearance of many pipes on racks whose gaps are known from their design: ten lines side by side,
 * pipes across them, and walls that all lines go through, every second one with an opening. Run by
 * {@code .ci/bench}; see {@link #main}.
 */
public final class ClearanceBenchmark {

  private static final double OUTSIDE_M = 0.0603;

  /** What the default energy rule asks for on heating pipes of this size. */
  private static final double THICKNESS_M = 0.04;

  /** Between the finished surfaces of one line and the next. */
  private static final double[] GAPS_M = {0.02, 0.03, -0.01, 0.03, -0.09, 0.03, 0.02, 0.03, 0.03};

  private static final double CROSSING_GAP_M = 0.01;
  private static final double WANTED_M = 0.025;
  private static final int PIECES = 190;
  private static final int CROSSINGS = 100;
  private static final int WALLS = 80;
  private static final double WALL_M = 0.2;

  /** Around the outermost lines, and under and over all of them. */
  private static final double OPENING_MARGIN_M = 0.05;

  private static final double PIECE_M = 6;
  private static final double PITCH_M = 6.5;
  private static final double RACK_HEIGHT_M = 3;
  private static final int ELEMENTS_ON_RACK = (GAPS_M.length + 1) * PIECES + CROSSINGS;
  private static final double ACCURACY_M = 2e-5;
  private static final double LIMIT_S = 20;

  private final List<MepElement> elements = new ArrayList<>();
  private final List<BuildingPart> walls = new ArrayList<>();
  private final int racks;

  ClearanceBenchmark(int racks) {
    this.racks = racks;
    for (int rack = 0; rack < racks; rack++) {
      rack(rack * RACK_HEIGHT_M);
    }
  }

  private void rack(double z) {
    double acrossM = OUTSIDE_M + 2 * THICKNESS_M;
    double y = 0;
    for (int line = 0; line <= GAPS_M.length; line++) {
      for (int piece = 0; piece < PIECES; piece++) {
        double x = piece * PITCH_M;
        pipe(line, new Point(x, y, z), new Point(x + PIECE_M, y, z));
      }
      y += line < GAPS_M.length ? acrossM + GAPS_M[line] : 0;
    }
    double above = z + acrossM + CROSSING_GAP_M;
    for (int crossing = 0; crossing < CROSSINGS; crossing++) {
      double x = crossing * PITCH_M + PIECE_M / 2;
      pipe(1, new Point(x, -1, above), new Point(x, y + 1, above));
    }
    for (int wall = 0; wall < WALLS; wall++) {
      // behind the pipes across, where only the lines are
      wall((CROSSINGS + wall) * PITCH_M + PIECE_M / 2, y, z, wall % 2 == 1);
    }
  }

  private void wall(double x, double widthM, double z, boolean open) {
    double acrossM = OUTSIDE_M + 2 * THICKNESS_M;
    Point middle = new Point(x, widthM / 2, z);
    double openingM = widthM + acrossM + 2 * OPENING_MARGIN_M;
    UprightBox opening =
        new UprightBox(middle, 0, 2 * WALL_M, openingM, acrossM + 2 * OPENING_MARGIN_M);
    walls.add(
        new BuildingPart(
            new ElementKey(0, 10_000_000L + walls.size()),
            "wall-" + walls.size(),
            "IfcWall",
            "",
            null,
            new UprightBox(middle, 0, WALL_M, widthM + 4, 2),
            open ? List.of(opening) : List.of()));
  }

  private void pipe(int line, Point from, Point to) {
    long step = elements.size() + 1;
    Evidence evidence = new Evidence(step, "as designed", "");
    String system = line % 2 == 0 ? "Heating flow" : "Heating return";
    elements.add(
        MepElement.builder(new ElementKey(0, step), "pipe-" + step, "IfcPipeSegment")
            .is(Kind.PIPE_SEGMENT, Form.STRAIGHT)
            .section(Measured.of(new Section.Round(OUTSIDE_M), How.SOLID, evidence))
            .lengthM(Measured.of(from.distanceM(to), How.PORTS, evidence))
            .systems(List.of(new MepSystem(1 + line % 2, system, system, null, null, null)))
            .ports(
                List.of(
                    new Port(step * 10, from, null, null, null, null),
                    new Port(step * 10 + 1, to, null, null, null, null)))
            .build());
  }

  Takeoff takeoff() {
    MepModel pipes = TestElement.model(elements);
    return Takeoff.of(
        List.of(
            new MepModel(
                pipes.file(), elements, List.of(), List.of(), Map.of(), Georeference.NONE, walls)),
        SettingsReader.defaults());
  }

  /** How many of each cause the design makes. */
  Map<Cause, Integer> designed() {
    Map<Cause, Integer> designed = new EnumMap<>(Cause.class);
    designed.put(Cause.TOO_CLOSE, racks * CROSSINGS * (GAPS_M.length + 1));
    for (double gapM : GAPS_M) {
      if (gapM < WANTED_M) {
        designed.merge(cause(gapM), racks * PIECES, Integer::sum);
      }
    }
    designed.merge(Cause.BARE_CLASH, passages(), Integer::sum);
    return designed;
  }

  /** How many go through openings; as many clash with walls that have none. */
  int passages() {
    return racks * WALLS / 2 * (GAPS_M.length + 1);
  }

  private static Cause cause(double gapM) {
    return gapM >= 0
        ? Cause.TOO_CLOSE
        : gapM > -2 * THICKNESS_M ? Cause.INSULATION_CLASH : Cause.BARE_CLASH;
  }

  /** Counts by cause, after each gap was found among those designed. */
  static Map<Cause, Integer> proved(Clearance clearance) {
    Map<Cause, Integer> found = new EnumMap<>(Cause.class);
    for (Passage passage : clearance.passages()) {
      if (passage.marginM() < OPENING_MARGIN_M - ACCURACY_M) {
        throw new IllegalStateException("an opening is narrower than designed");
      }
    }
    for (Clash clash : clearance.clashes()) {
      boolean wall = clash.second() instanceof Neighbour.Part;
      boolean known = wall || Math.abs(clash.gapM() - CROSSING_GAP_M) < ACCURACY_M;
      for (double gapM : GAPS_M) {
        known |= Math.abs(clash.gapM() - gapM) < ACCURACY_M;
      }
      if (!known || clash.cause() != (wall ? Cause.BARE_CLASH : cause(clash.gapM()))) {
        throw new IllegalStateException("found what was not designed: " + clash.gapM() + " m");
      }
      found.merge(clash.cause(), 1, Integer::sum);
    }
    return found;
  }

  /**
   * Proves the result against the design, then prints the seconds of the search in a fresh machine
   * and when the code is warm. Ends with 1 where the result is wrong or the fresh one over the
   * limit.
   *
   * @param arguments how many elements, 100 000 unless told
   */
  public static void main(String[] arguments) {
    int wanted = arguments.length > 0 ? Integer.parseInt(arguments[0]) : 100_000;
    ClearanceBenchmark benchmark = new ClearanceBenchmark(Math.max(1, wanted / ELEMENTS_ON_RACK));
    Takeoff takeoff = benchmark.takeoff();
    long start = System.nanoTime();
    Clearance clearance = Clearance.of(takeoff);
    double freshS = (System.nanoTime() - start) / 1e9;
    Map<Cause, Integer> found = proved(clearance);
    boolean right =
        found.equals(benchmark.designed())
            && clearance.passages().size() == benchmark.passages()
            && clearance.building() == benchmark.walls.size();
    start = System.nanoTime();
    int again = Clearance.of(takeoff).clashes().size();
    double warmS = (System.nanoTime() - start) / 1e9;
    boolean met = right && again == clearance.clashes().size() && freshS <= LIMIT_S;
    System.out.printf(
        Locale.ROOT,
        "clearance of %d elements and %d walls, %s, %d through openings (%s): fresh %.1f s, warm %.1f s; limit %.0f s, fresh  %s%n",
        clearance.lookedAt(),
        clearance.building(),
        found,
        clearance.passages().size(),
        right ? "as designed" : "WRONG",
        freshS,
        warmS,
        LIMIT_S,
        met ? "met" : "NOT MET");
    System.exit(met ? 0 : 1);
  }
}
