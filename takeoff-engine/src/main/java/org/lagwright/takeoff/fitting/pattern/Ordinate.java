package org.lagwright.takeoff.fitting.pattern;

/**
 * A numbered station of a pattern for marking by hand: the ends of a tube there, or the edge of its
 * first hole.
 *
 * @param number from 0 at the seam
 * @param turnDeg where it lies round the tube, degrees from the heel
 * @param xM along the girth from the seam, metres
 * @param lowerM lower cut below the base line as a negative figure, above it as a positive one
 * @param upperM upper cut above the base line, metres
 */
public record Ordinate(int number, double turnDeg, double xM, double lowerM, double upperM) {}
