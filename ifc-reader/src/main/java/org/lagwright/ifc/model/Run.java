package org.lagwright.ifc.model;

import java.util.List;

/**
 * Pieces that follow each other without a branch: from one tee, apparatus or open end to the next.
 *
 * @param pieces the pieces from one end to the other; at least one
 * @param lengthM their lengths along the centre line together, metres; pieces of unknown length add
 *     nothing
 */
public record Run(List<ElementKey> pieces, double lengthM) {

  public Run {
    pieces = List.copyOf(pieces);
    if (pieces.isEmpty()) {
      throw new IllegalArgumentException("a run has at least one piece");
    }
  }

  /** The runs of one or several models, each piece in one of them; in the order of the elements. */
  public static List<Run> of(List<MepElement> elements) {
    return new RunFinder(elements).runs();
  }
}
