package org.lagwright.ifc.model;

import org.jspecify.annotations.Nullable;

/** Outer cross-section of a pipe or duct, without insulation. Lengths in metres. */
public sealed interface Section {

  /** Circumference of the outer surface in metres. */
  double perimeterM();

  /** Largest extent across in metres: the diameter or the longer side. */
  double largestSideM();

  /** Smallest extent across in metres: the diameter or the shorter side. */
  double smallestSideM();

  /** A pipe or a round duct. */
  record Round(double outsideDiameterM) implements Section {
    public Round {
      requirePositive(outsideDiameterM, "outside diameter");
    }

    @Override
    public double perimeterM() {
      return Math.PI * outsideDiameterM;
    }

    @Override
    public double largestSideM() {
      return outsideDiameterM;
    }

    @Override
    public double smallestSideM() {
      return outsideDiameterM;
    }

    /** Spelled out: the compiler's own is put together when first asked, which takes long. */
    @Override
    public boolean equals(@Nullable Object other) {
      return other instanceof Round o && Double.compare(outsideDiameterM, o.outsideDiameterM) == 0;
    }

    @Override
    public int hashCode() {
      return Double.hashCode(outsideDiameterM);
    }
  }

  /** A rectangular duct. Width is the side that lies level, where the model tells. */
  record Rectangular(double widthM, double heightM) implements Section {
    public Rectangular {
      requirePositive(widthM, "width");
      requirePositive(heightM, "height");
    }

    @Override
    public double perimeterM() {
      return 2 * (widthM + heightM);
    }

    @Override
    public double largestSideM() {
      return Math.max(widthM, heightM);
    }

    @Override
    public double smallestSideM() {
      return Math.min(widthM, heightM);
    }

    /** Spelled out: the compiler's own is put together when first asked, which takes long. */
    @Override
    public boolean equals(@Nullable Object other) {
      return other instanceof Rectangular o
          && Double.compare(widthM, o.widthM) == 0
          && Double.compare(heightM, o.heightM) == 0;
    }

    @Override
    public int hashCode() {
      return Double.hashCode(widthM) * 31 + Double.hashCode(heightM);
    }
  }

  /** A flat-oval duct: two half circles joined by straight sides. */
  record Oval(double widthM, double heightM) implements Section {
    public Oval {
      requirePositive(widthM, "width");
      requirePositive(heightM, "height");
    }

    @Override
    public double perimeterM() {
      return Math.PI * smallestSideM() + 2 * (largestSideM() - smallestSideM());
    }

    @Override
    public double largestSideM() {
      return Math.max(widthM, heightM);
    }

    @Override
    public double smallestSideM() {
      return Math.min(widthM, heightM);
    }

    /** Spelled out: the compiler's own is put together when first asked, which takes long. */
    @Override
    public boolean equals(@Nullable Object other) {
      return other instanceof Oval o
          && Double.compare(widthM, o.widthM) == 0
          && Double.compare(heightM, o.heightM) == 0;
    }

    @Override
    public int hashCode() {
      return Double.hashCode(widthM) * 31 + Double.hashCode(heightM);
    }
  }

  private static void requirePositive(double lengthM, String what) {
    if (!(lengthM > 0 && Double.isFinite(lengthM))) {
      throw new IllegalArgumentException(what + " must be above zero and finite, was " + lengthM);
    }
  }
}
