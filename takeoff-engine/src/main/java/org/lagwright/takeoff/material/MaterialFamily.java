package org.lagwright.takeoff.material;

import java.util.List;
import java.util.Locale;
import org.jspecify.annotations.Nullable;
import org.lagwright.takeoff.pack.SourceStatus;

/**
 * One generic family of insulation.
 *
 * @param id stable id: {@code fef_nbr}
 * @param name in words
 * @param standards product standards it is sold under
 * @param conductivity published points, by rising mean temperature
 * @param service medium temperatures it stands
 * @param vapour resistance to water vapour, null where it is not known
 * @param closedCell true where the cells are closed
 * @param vapourBarrierIncluded true where cold pipes need no separate vapour barrier
 * @param stock what is sold
 * @param note what the user should know, null where nothing
 */
public record MaterialFamily(
    String id,
    String name,
    List<String> standards,
    Points conductivity,
    ServiceRange service,
    @Nullable VapourResistance vapour,
    boolean closedCell,
    boolean vapourBarrierIncluded,
    Stock stock,
    @Nullable String note) {

  /** How far beyond the end points the end value still counts as published, kelvin. */
  public static final double REACH_K = 10;

  public MaterialFamily {
    standards = List.copyOf(standards);
  }

  /**
   * Conductivity over mean temperature.
   *
   * @param grade density or product class the points belong to
   */
  public record Points(String grade, SourceStatus status, String source, List<Point> points) {
    public Points {
      points = List.copyOf(points);
      if (points.isEmpty()) {
        throw new IllegalArgumentException("conductivity needs at least one point.");
      }
      for (int i = 1; i < points.size(); i++) {
        if (!(points.get(i).meanC() > points.get(i - 1).meanC())) {
          throw new IllegalArgumentException("meanC must rise from point to point.");
        }
      }
    }

    /** Linear between the points, the end value beyond them, W/(m K). */
    double at(double meanC) {
      Point before = points.get(0);
      for (Point after : points) {
        if (meanC <= after.meanC()) {
          return meanC <= before.meanC() ? before.wPerMK() : between(before, after, meanC);
        }
        before = after;
      }
      return before.wPerMK();
    }

    private static double between(Point a, Point b, double meanC) {
      double share = (meanC - a.meanC()) / (b.meanC() - a.meanC());
      return a.wPerMK() + share * (b.wPerMK() - a.wPerMK());
    }

    /** Integral mean between two temperatures, W/(m K). */
    double integralMean(double oneC, double otherC) {
      double lowC = Math.min(oneC, otherC);
      double highC = Math.max(oneC, otherC);
      if (highC - lowC < 1e-9) {
        return at(lowC);
      }
      double fromC = lowC;
      double integral = 0;
      for (Point point : points) {
        if (point.meanC() > fromC && point.meanC() < highC) {
          integral += (at(fromC) + at(point.meanC())) / 2 * (point.meanC() - fromC);
          fromC = point.meanC();
        }
      }
      integral += (at(fromC) + at(highC)) / 2 * (highC - fromC);
      return integral / (highC - lowC);
    }
  }

  /**
   * One published point.
   *
   * @param meanC mean temperature, degC
   * @param wPerMK conductivity, W/(m K)
   */
  public record Point(double meanC, double wPerMK) {
    public Point {
      if (!(wPerMK > 0 && wPerMK < 1)) {
        throw new IllegalArgumentException(
            "wPerMK must lie between 0 and 1 for an insulation, was " + wPerMK + ".");
      }
    }
  }

  /**
   * Resistance to water vapour.
   *
   * @param mu times that of still air of equal thickness; null where no vapour passes
   */
  public record VapourResistance(@Nullable Double mu, SourceStatus status, String source) {
    public VapourResistance {
      if (mu != null && !(mu >= 1)) {
        throw new IllegalArgumentException("mu must be at least 1, that of air.");
      }
    }
  }

  /** Medium temperatures the family stands, degC. */
  public record ServiceRange(double fromC, double toC, SourceStatus status, String source) {
    public ServiceRange {
      if (!(fromC < toC)) {
        throw new IllegalArgumentException("fromC must be below toC.");
      }
    }
  }

  /**
   * Conductivity at a mean temperature: linear between the points; beyond them the value of the end
   * point, marked as extrapolated from {@link #REACH_K} outwards.
   *
   * @param meanC mean of inner and outer surface, degC
   */
  public Conductivity conductivityAt(double meanC) {
    List<Point> points = conductivity.points();
    double firstC = points.get(0).meanC();
    double lastC = points.get(points.size() - 1).meanC();
    boolean extrapolated = meanC < firstC - REACH_K || meanC > lastC + REACH_K;
    return new Conductivity(conductivity.at(meanC), meanC, extrapolated);
  }

  /** Integral mean of the conductivity between two temperatures, degC, W/(m K). */
  public double meanWPerMK(double oneC, double otherC) {
    return conductivity.integralMean(oneC, otherC);
  }

  /**
   * Conductivity between the two sides of a layer: the integral mean over the temperatures, marked
   * as extrapolated by their mean.
   *
   * @param oneC one side, degC
   * @param otherC other side, degC
   */
  public Conductivity conductivityBetween(double oneC, double otherC) {
    double meanC = (oneC + otherC) / 2;
    return new Conductivity(
        conductivity.integralMean(oneC, otherC), meanC, conductivityAt(meanC).extrapolated());
  }

  /** The same family with other stock and conductivity; null keeps its own. */
  MaterialFamily with(@Nullable Stock otherStock, @Nullable Points otherConductivity) {
    return new MaterialFamily(
        id,
        name,
        standards,
        otherConductivity == null ? conductivity : otherConductivity,
        service,
        vapour,
        closedCell,
        vapourBarrierIncluded,
        otherStock == null ? stock : otherStock,
        note);
  }

  /** True where the family stands a medium of this temperature, degC. */
  public boolean stands(double mediumC) {
    return mediumC >= service.fromC() && mediumC <= service.toC();
  }

  /** The service range in words: {@code -40 to 116 degC}. */
  public String serviceRangeInWords() {
    return String.format(Locale.ROOT, "%.0f to %.0f degC", service.fromC(), service.toC());
  }
}
