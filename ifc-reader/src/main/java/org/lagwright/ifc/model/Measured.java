package org.lagwright.ifc.model;

import java.util.List;

/**
 * A value with its origin and with the candidates that lost against it.
 *
 * @param value the chosen value; numbers in SI units
 * @param how how it was obtained
 * @param evidence where it stands in the file
 * @param lost the other values found for the same question
 */
public record Measured<T>(T value, How how, Evidence evidence, List<Candidate<T>> lost) {

  public Measured {
    lost = List.copyOf(lost);
  }

  /** A value without competitors. */
  public static <T> Measured<T> of(T value, How how, Evidence evidence) {
    return new Measured<>(value, how, evidence, List.of());
  }
}
