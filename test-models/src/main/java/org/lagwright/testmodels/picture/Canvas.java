package org.lagwright.testmodels.picture;

import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.image.BufferedImage;
import java.util.Arrays;
import java.util.List;

/** Triangles on white, the nearest in front; places are metres to the right, up and away. */
final class Canvas {

  private static final int WIDTH = 1040;
  private static final int MARGIN = 16;

  /** Drawn larger by this and made smaller again, so that edges are smooth. */
  private static final int FINER = 2;

  private final double left;
  private final double top;
  private final double perM;
  private final BufferedImage fine;

  /** How far away is what each pixel shows, metres. */
  private final double[] depth;

  /** A canvas that holds all these corners. */
  Canvas(List<double[]> corners) {
    left = corners.stream().mapToDouble(c -> extreme(c, 0, -1)).min().orElseThrow();
    top = corners.stream().mapToDouble(c -> extreme(c, 1, 1)).max().orElseThrow();
    double right = corners.stream().mapToDouble(c -> extreme(c, 0, 1)).max().orElseThrow();
    double bottom = corners.stream().mapToDouble(c -> extreme(c, 1, -1)).min().orElseThrow();
    perM = FINER * (WIDTH - 2 * MARGIN) / (right - left);
    int height = (int) Math.ceil((top - bottom) * perM / FINER) + 2 * MARGIN;
    fine = new BufferedImage(WIDTH * FINER, height * FINER, BufferedImage.TYPE_INT_RGB);
    int white = Color.WHITE.getRGB();
    depth = new double[fine.getWidth() * fine.getHeight()];
    Arrays.fill(depth, Double.MAX_VALUE);
    for (int i = 0; i < depth.length; i++) {
      fine.setRGB(i % fine.getWidth(), i / fine.getWidth(), white);
    }
  }

  private static double extreme(double[] corners, int axis, int sign) {
    double most = -Double.MAX_VALUE;
    for (int i = axis; i < corners.length; i += 3) {
      most = Math.max(most, sign * corners[i]);
    }
    return sign * most;
  }

  /** Fills a triangle where nothing nearer is. */
  void fill(double[][] corners, Color color) {
    double[] x = new double[3];
    double[] y = new double[3];
    for (int k = 0; k < 3; k++) {
      x[k] = FINER * MARGIN + (corners[k][0] - left) * perM;
      y[k] = FINER * MARGIN + (top - corners[k][1]) * perM;
    }
    double twice = (x[1] - x[0]) * (y[2] - y[0]) - (x[2] - x[0]) * (y[1] - y[0]);
    if (twice == 0) {
      return;
    }
    for (int row = (int) least(y); row <= most(y); row++) {
      for (int column = (int) least(x); column <= most(x); column++) {
        double b = ((column - x[0]) * (y[2] - y[0]) - (x[2] - x[0]) * (row - y[0])) / twice;
        double c = ((x[1] - x[0]) * (row - y[0]) - (column - x[0]) * (y[1] - y[0])) / twice;
        if (b >= 0 && c >= 0 && b + c <= 1) {
          double away = (1 - b - c) * corners[0][2] + b * corners[1][2] + c * corners[2][2];
          put(column, row, away, color);
        }
      }
    }
  }

  private void put(int column, int row, double away, Color color) {
    int at = row * fine.getWidth() + column;
    if (away < depth[at]) {
      depth[at] = away;
      fine.setRGB(column, row, color.getRGB());
    }
  }

  private static double least(double[] values) {
    return Math.min(values[0], Math.min(values[1], values[2]));
  }

  private static double most(double[] values) {
    return Math.max(values[0], Math.max(values[1], values[2]));
  }

  /** What was drawn. */
  BufferedImage image() {
    BufferedImage image =
        new BufferedImage(WIDTH, fine.getHeight() / FINER, BufferedImage.TYPE_INT_RGB);
    Graphics2D pen = image.createGraphics();
    pen.setRenderingHint(
        RenderingHints.KEY_INTERPOLATION, RenderingHints.VALUE_INTERPOLATION_BILINEAR);
    pen.drawImage(fine, 0, 0, image.getWidth(), image.getHeight(), null);
    pen.dispose();
    return image;
  }
}
