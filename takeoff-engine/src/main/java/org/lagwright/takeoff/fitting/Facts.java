package org.lagwright.takeoff.fitting;

import java.util.Arrays;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import org.lagwright.ifc.model.Form;

/**
 * What rules of making may ask for: the form of the element by its label, and the facts here. Each
 * is true or false of one layer on one element.
 */
final class Facts {

  static final String PIPE = "pipe";
  static final String DUCT = "duct";
  static final String ROUND = "round";
  static final String RECTANGULAR = "rectangular";
  static final String OVAL = "oval";
  static final String TUBE = "tube";
  static final String SHEET = "sheet";
  static final String SECTION = "section";

  /** The dimensions that the method needs are known or assumed. */
  static final String MEASURED = "measured";

  /** The bare diameter allows to push a tube on. */
  static final String SLIM = "slim";

  /** What the layer lies on is wider than the limit for gluing seams only. */
  static final String WIDE = "wide";

  /** The joint stands out beyond the pipe: threaded, grooved, flanged ends. */
  static final String JOINTS_STAND_OUT = "joints-stand-out";

  /** Three or more mitred pieces find room at the throat. */
  static final String THROAT_OPEN = "throat-open";

  /** The bend is so wide that a tube follows it. */
  static final String GENTLE = "gentle";

  static final String SWEPT = "swept";

  /** Main and branch are of one size and their axes meet. */
  static final String EQUAL = "equal";

  static final String SQUARE = "square";

  /** The branch lands on the main. */
  static final String LANDS = "lands";

  static final String ECCENTRIC = "eccentric";

  /** Both ends of a reducer differ by no more than a tube can bridge. */
  static final String SMALL_STEP = "small-step";

  /** One end is rectangular, the other round. */
  static final String SQUARE_TO_ROUND = "square-to-round";

  private static final Set<String> OWN =
      Set.of(
          PIPE,
          DUCT,
          ROUND,
          RECTANGULAR,
          OVAL,
          TUBE,
          SHEET,
          SECTION,
          MEASURED,
          SLIM,
          WIDE,
          JOINTS_STAND_OUT,
          THROAT_OPEN,
          GENTLE,
          SWEPT,
          EQUAL,
          SQUARE,
          LANDS,
          ECCENTRIC,
          SMALL_STEP,
          SQUARE_TO_ROUND);

  private Facts() {}

  /**
   * Refuses facts that never hold.
   *
   * @throws IllegalArgumentException naming the known ones
   */
  static void requireKnown(String rule, List<String> facts) {
    Set<String> known = Arrays.stream(Form.values()).map(Form::label).collect(Collectors.toSet());
    known.addAll(OWN);
    for (String fact : facts) {
      if (!known.contains(fact)) {
        throw new IllegalArgumentException(
            rule + ": fact '" + fact + "' is none of " + new TreeSet<>(known) + ".");
      }
    }
  }
}
