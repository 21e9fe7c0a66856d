package org.lagwright.takeoff.labour;

import java.util.List;
import org.jspecify.annotations.Nullable;
import org.lagwright.takeoff.pack.SourceStatus;

/**
 * What makes work slower or quicker than the norm says.
 *
 * @param id names it in the settings: {@code outdoor}
 * @param kind when it holds: {@code height}, {@code neighbours}, {@code location}, {@code cold},
 *     {@code layer}, {@code always}
 * @param from height in metres or number of neighbours from which on it holds; null for other kinds
 * @param location location class; null for other kinds
 * @param value hours are multiplied by it
 * @param what it means, in words
 * @param status how far it was checked
 */
public record LabourFactor(
    String id,
    String kind,
    @Nullable Double from,
    @Nullable String location,
    double value,
    String what,
    SourceStatus status) {

  static final String HEIGHT = "height";
  static final String NEIGHBOURS = "neighbours";
  static final String LOCATION = "location";
  static final String COLD = "cold";
  static final String LAYER = "layer";
  static final String ALWAYS = "always";

  /** Smallest and largest factor that is believed. */
  public static final double LEAST = 0.1;

  public static final double MOST = 10;

  public LabourFactor {
    if (!List.of(HEIGHT, NEIGHBOURS, LOCATION, COLD, LAYER, ALWAYS).contains(kind)) {
      throw new IllegalArgumentException(id + ": no factor is of kind '" + kind + "'.");
    }
    boolean banded = kind.equals(HEIGHT) || kind.equals(NEIGHBOURS);
    if (banded == (from == null) || kind.equals(LOCATION) == (location == null)) {
      throw new IllegalArgumentException(
          id + ": heights and neighbours need 'from', locations 'location', others neither.");
    }
    if (!(value >= LEAST && value <= MOST)) {
      throw new IllegalArgumentException(
          id + " must lie between " + LEAST + " and " + MOST + ", was " + value + ".");
    }
  }

  /** The same with a value of the user. */
  LabourFactor with(double usersValue) {
    return new LabourFactor(id, kind, from, location, usersValue, what, SourceStatus.USER);
  }
}
