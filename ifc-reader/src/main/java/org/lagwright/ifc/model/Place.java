package org.lagwright.ifc.model;

import java.util.List;
import java.util.Objects;
import org.jspecify.annotations.Nullable;

/**
 * Where an element is.
 *
 * @param storey name of the storey, null where the model does not tell
 * @param storeyElevationM elevation of the storey in metres, as the storey states it
 * @param space name (and long name) of the space it is in, by relation or by geometry
 * @param external true outdoors, false indoors, null where the model does not tell
 * @param positionM middle of the element in world coordinates of the file, metres; null where it
 *     has no place. A map conversion is not applied
 * @param heightAboveFloorM height of that middle above the floor of the storey in metres, or above
 *     that of the storey its space is on where that floor lies next below
 * @param basis what tells storey, space and whether it is outdoors, in this order
 */
public record Place(
    @Nullable String building,
    @Nullable String storey,
    @Nullable Double storeyElevationM,
    @Nullable String space,
    @Nullable Boolean external,
    @Nullable Point positionM,
    @Nullable Double heightAboveFloorM,
    List<Evidence> basis) {

  public Place {
    basis = List.copyOf(basis);
  }

  /** Nothing known. */
  public static final Place UNKNOWN = of(null, null, null, null, null);

  /** A place without position, as related in the model. */
  public static Place of(
      @Nullable String building,
      @Nullable String storey,
      @Nullable Double storeyElevationM,
      @Nullable String space,
      @Nullable Boolean external) {
    return new Place(building, storey, storeyElevationM, space, external, null, null, List.of());
  }

  /**
   * Of the heights above two floors that above the one next below, where work on the element is
   * done from; null if neither is known.
   */
  public static @Nullable Double aboveNextFloorM(@Nullable Double oneM, @Nullable Double otherM) {
    if (oneM == null || otherM == null) {
      return oneM == null ? otherM : oneM;
    }
    boolean nearer = otherM >= 0 && (oneM < 0 || otherM < oneM);
    return nearer ? otherM : oneM;
  }

  /** Spelled out: the compiler's own is put together when first asked, which takes long. */
  @Override
  public boolean equals(@Nullable Object other) {
    return other instanceof Place o
        && Objects.equals(building, o.building)
        && Objects.equals(storey, o.storey)
        && Objects.equals(storeyElevationM, o.storeyElevationM)
        && Objects.equals(space, o.space)
        && Objects.equals(external, o.external)
        && Objects.equals(positionM, o.positionM)
        && Objects.equals(heightAboveFloorM, o.heightAboveFloorM)
        && basis.equals(o.basis);
  }

  @Override
  public int hashCode() {
    return (Objects.hashCode(storey) * 31 + Objects.hashCode(space)) * 31
        + Objects.hashCode(positionM);
  }
}
