package org.lagwright.ifc.extract.graph;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.lagwright.ifc.extract.draft.Draft;
import org.lagwright.ifc.extract.draft.Drawn;
import org.lagwright.ifc.extract.draft.KindReader;
import org.lagwright.ifc.extract.draft.Names;
import org.lagwright.ifc.extract.draft.Worded;
import org.lagwright.ifc.geometry.frame.ShapeEnd;
import org.lagwright.ifc.geometry.shape.Shape;
import org.lagwright.ifc.model.Evidence;
import org.lagwright.ifc.model.Form;
import org.lagwright.ifc.model.How;
import org.lagwright.ifc.model.Kind;
import org.lagwright.ifc.model.Measured;
import org.lagwright.ifc.model.Point;
import org.lagwright.ifc.model.Section;
import org.lagwright.ifc.packed.Vocabulary;
import org.lagwright.ifc.threads.Workers;

/**
 * Pipes without ports, in runs of ten with a branch on the side of every fifth of them.
 *
 * <p>As a program it prints how long joining takes for more and more elements: {@code java
 * org.lagwright.ifc.extract.graph.TouchingEndsBenchmark [ELEMENTS]}.
 */
public final class TouchingEndsBenchmark {

  private static final double TOLERANCE_M = 0.002;
  private static final int RUN = 10;
  private static final int ROUNDS = 5;
  private static final Section MAIN = new Section.Round(0.1143);
  private static final Section BRANCH = new Section.Round(0.0337);

  private final List<Draft> drafts = new ArrayList<>();
  private final Vocabulary vocabulary = new Vocabulary(0);

  public TouchingEndsBenchmark(int elements) {
    int perRow = (int) Math.ceil(Math.sqrt(elements));
    while (drafts.size() < elements) {
      int run = drafts.size() / (RUN + RUN / 5);
      double x = run % perRow * 2.0 * RUN * 3;
      double y = run / perRow % 50 * 2.0;
      double z = run / perRow / 50 * 4.0;
      for (int i = 0; i < RUN; i++) {
        Point start = new Point(x + 3 * i, y, z);
        add(start, new Point(1, 0, 0), 3, MAIN);
        if (i % 5 == 0) {
          add(new Point(x + 3 * i + 1, y + 0.05715, z), new Point(0, 1, 0), 1, BRANCH);
        }
      }
    }
  }

  private void add(Point start, Point along, double lengthM, Section section) {
    Point end =
        new Point(
            start.x() + along.x() * lengthM,
            start.y() + along.y() * lengthM,
            start.z() + along.z() * lengthM);
    Point back = new Point(-along.x(), -along.y(), -along.z());
    Evidence evidence = new Evidence(drafts.size() + 1L, "drawn", "");
    Measured<Section> drawn = Measured.of(section, How.SOLID, evidence);
    Draft draft =
        new Draft(
            drafts.size() + 1,
            new Worded("IfcPipeSegment", new Names("", null, null, null, List.of()), List.of()),
            Drawn.of(
                new Shape(
                    Form.STRAIGHT,
                    drawn,
                    Measured.of(lengthM, How.SOLID, evidence),
                    null,
                    null,
                    List.of(new ShapeEnd(start, back, section), new ShapeEnd(end, along, section)),
                    List.of()),
                List.of()),
            new KindReader.Reading(Kind.PIPE_SEGMENT, Form.STRAIGHT, false),
            0,
            false,
            vocabulary,
            true);
    draft.change().setSection(drawn);
    draft.fold();
    drafts.add(draft);
  }

  /** Joints of ends, and of ends with sides. */
  public record Joined(int ends, int sides) {}

  public Joined join() {
    try (Workers workers = Workers.forThisMachine()) {
      return new Joined(
          TouchingEnds.join(drafts, TOLERANCE_M, workers), Taps.join(drafts, TOLERANCE_M, workers));
    }
  }

  int elements() {
    return drafts.size();
  }

  /** Prints elements, joints, and the best of five times. */
  public static void main(String[] arguments) {
    int most = arguments.length == 0 ? 400_000 : Integer.parseInt(arguments[0]);
    System.out.println(
        System.getProperty("java.vm.name") + " " + System.getProperty("java.version"));
    for (int elements = most / 16; elements <= most; elements *= 2) {
      double best = Double.MAX_VALUE;
      Joined joined = new Joined(0, 0);
      TouchingEndsBenchmark round = new TouchingEndsBenchmark(elements);
      for (int i = 0; i < ROUNDS; i++) {
        round = new TouchingEndsBenchmark(elements);
        long start = System.nanoTime();
        joined = round.join();
        best = Math.min(best, (System.nanoTime() - start) / 1e9);
      }
      System.out.printf(
          Locale.ROOT,
          "%7d elements, %7d ends and %6d sides joined: %.3f s, %.2f us an element%n",
          round.elements(),
          joined.ends(),
          joined.sides(),
          best,
          1e6 * best / round.elements());
    }
  }
}
