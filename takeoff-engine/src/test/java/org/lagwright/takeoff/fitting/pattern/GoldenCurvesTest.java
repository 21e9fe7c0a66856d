package org.lagwright.takeoff.fitting.pattern;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.function.IntFunction;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.lagwright.takeoff.ReferenceRows;
import org.lagwright.takeoff.fitting.MakingPack;

/** Ordinates of developed curves against figures derived apart from this program. */
class GoldenCurvesTest {

  private static final double MM = 1000;

  static List<ReferenceRows.Row> rows() {
    return ReferenceRows.read(MakingPack.class, "curves.csv");
  }

  @ParameterizedTest
  @MethodSource("rows")
  void ordinateAgrees(ReferenceRows.Row row) {
    int station = (int) row.number("station");
    FlatPoint found = curve(row.text("curve"), row.text("part")).apply(station);
    double tolerance = row.number("tolerance");

    assertThat(found.xM() * MM).isCloseTo(row.number("x"), within(tolerance));
    assertThat(found.yM() * MM).isCloseTo(row.number("y"), within(tolerance));
  }

  private static IntFunction<FlatPoint> curve(String curve, String part) {
    return switch (curve.substring(0, 3)) {
      case "GC1" -> upper(tube(0.050, 0.050 * Math.tan(cut(22.5)), EndCut.SQUARE, mitre(22.5)));
      case "GC2" -> length(tube(0.08215, 2 * 0.1524 * Math.tan(cut(15)), mitre(15), mitre(15)));
      case "GC3" -> branch(part, 0.050, 0.050, 0.150, 90, 0);
      case "GC4" -> branch(part, 0.08215, 0.05515, 0.200, 90, 0);
      case "GC5" -> branch(part, 0.08215, 0.05515, 0.300, 45, 0);
      case "GC6" -> branch(part, 0.100, 0.040, 0.200, 90, 0.050);
      case "GC7" -> cone(part.equals("outer_arc"));
      case "GC8" -> eccentric(part.equals("large_edge"));
      default -> throw new IllegalArgumentException(curve);
    };
  }

  private static double cut(double deg) {
    return Math.toRadians(deg);
  }

  private static EndCut mitre(double deg) {
    return EndCut.mitre(cut(deg));
  }

  private static TubePiece tube(double r, double axisM, EndCut start, EndCut end) {
    return new TubePiece(new Outline.Circle(r), r / 10, axisM, start, end, List.of(), 0);
  }

  private static IntFunction<FlatPoint> upper(TubePiece tube) {
    return i -> {
      Ordinate o = tube.pattern().ordinates().get(i);
      return new FlatPoint(o.xM(), o.upperM());
    };
  }

  private static IntFunction<FlatPoint> length(TubePiece tube) {
    return i -> {
      Ordinate o = tube.pattern().ordinates().get(i);
      return new FlatPoint(o.xM(), o.upperM() - o.lowerM());
    };
  }

  private static IntFunction<FlatPoint> branch(
      String part, double a, double b, double t, double betaDeg, double e) {
    if (part.startsWith("branch")) {
      return upper(tube(b, t, EndCut.SQUARE, new EndCut.Saddle(a, e, cut(betaDeg))));
    }
    SaddleHole hole = new SaddleHole(a, b, e, cut(betaDeg), 0, 0);
    return i -> {
      double phi = 2 * Math.PI * i / 24;
      return new FlatPoint(hole.girthM(phi), hole.axialM(phi));
    };
  }

  /** The sector as drawn, symmetrical about the +y axis. */
  private static IntFunction<FlatPoint> cone(boolean outer) {
    ConePiece cone = new ConePiece(0.100, 0.060, 0.120, 0, 0.01);
    double radius = cone.sectorM(0) * (outer ? 1 : 0.6);
    return i -> {
      double turned = cone.angleRad() * (i / 24.0 - 0.5);
      FlatPoint point = new FlatPoint(radius * Math.sin(turned), radius * Math.cos(turned));
      assertThat(isDrawn(cone.pattern().curves().get(0), point)).isTrue();
      return point;
    };
  }

  private static boolean isDrawn(Curve curve, FlatPoint point) {
    return curve.flattened(1e-8).stream().anyMatch(p -> p.distanceM(point) < 2e-4);
  }

  /** The development as drawn, turned so that the flat side points along +y. */
  private static IntFunction<FlatPoint> eccentric(boolean large) {
    ConePiece cone = new ConePiece(0.100, 0.060, 0.120, 0.040, 0.01);
    List<FlatPoint> drawn = cone.pattern().curves().get(0).flattened(1e-6);
    int parts = 24 * 16;
    double back = -cone.angleRad() / 2;
    return i -> {
      FlatPoint p = drawn.get(large ? i * 16 : 2 * parts + 1 - i * 16);
      double c = Math.cos(back);
      double n = Math.sin(back);
      return new FlatPoint(p.xM() * c - p.yM() * n, p.xM() * n + p.yM() * c);
    };
  }
}
