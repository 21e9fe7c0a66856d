package org.lagwright.takeoff.labour;

import java.util.Comparator;
import org.jspecify.annotations.Nullable;
import org.lagwright.ifc.model.Place;

/**
 * Where work is done.
 *
 * @param elevationM elevation of the storey, metres; null where the model does not tell
 * @param storey name of the storey; empty where the model does not tell
 * @param space name of the space; empty where the model does not tell
 */
public record WorkArea(@Nullable Double elevationM, String storey, String space)
    implements Comparable<WorkArea> {

  private static final Comparator<WorkArea> ORDER =
      Comparator.comparing(
              WorkArea::elevationM, Comparator.nullsLast(Comparator.<Double>naturalOrder()))
          .thenComparing(WorkArea::storey)
          .thenComparing(WorkArea::space);

  /** The area of a place. */
  public static WorkArea of(Place place) {
    String storey = place.storey();
    String space = place.space();
    return new WorkArea(
        place.storeyElevationM(), storey == null ? "" : storey, space == null ? "" : space);
  }

  /** From below, then by name. */
  @Override
  public int compareTo(WorkArea other) {
    return ORDER.compare(this, other);
  }

  /** The storey in words. */
  public String storeyInWords() {
    return storey.isEmpty() ? "storey not told" : storey;
  }

  /** Storey and space in words: {@code Level 0, Plant room}. */
  public String inWords() {
    return space.isEmpty() ? storeyInWords() : storeyInWords() + ", " + space;
  }
}
