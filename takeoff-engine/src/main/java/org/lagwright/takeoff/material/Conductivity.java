package org.lagwright.takeoff.material;

/**
 * Conductivity of a family at one mean temperature.
 *
 * @param wPerMK W/(m K)
 * @param meanC mean temperature asked for, degC
 * @param extrapolated true where the mean temperature lies more than 10 K outside the published
 *     points; the value is then that of the nearest point
 */
public record Conductivity(double wPerMK, double meanC, boolean extrapolated) {}
