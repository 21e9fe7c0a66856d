package org.lagwright.report.templates;

import java.io.IOException;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Locale;
import org.lagwright.takeoff.fitting.pattern.Curve;
import org.lagwright.takeoff.fitting.pattern.FlatPoint;
import org.lagwright.takeoff.fitting.pattern.Pattern;

/** The lines of a pattern as SVG 1.1 in millimetres, one group for each line. */
final class SvgDrawing {

  private static final double EDGE_MM = 2;
  private static final double TOLERANCE_M = 1e-5;

  private final Template template;

  SvgDrawing(Template template) {
    this.template = template;
  }

  void write(OutputStream out) throws IOException {
    out.write(text().getBytes(StandardCharsets.UTF_8));
  }

  private String text() {
    Pattern pattern = template.piece().shape().pattern();
    Pattern.Bounds bounds = pattern.bounds();
    double widthMm = bounds.widthM() * 1000 + 2 * EDGE_MM;
    double heightMm = bounds.heightM() * 1000 + 2 * EDGE_MM;
    StringBuilder svg = new StringBuilder();
    svg.append("<?xml version=\"1.0\" encoding=\"UTF-8\"?>\n");
    svg.append(
        String.format(
            Locale.ROOT,
            "<svg xmlns=\"http://www.w3.org/2000/svg\" width=\"%.4fmm\" height=\"%.4fmm\""
                + " viewBox=\"0 0 %.4f %.4f\">\n",
            widthMm,
            heightMm,
            widthMm,
            heightMm));
    svg.append("<title>").append(escaped(title())).append("</title>\n");
    for (Curve curve : pattern.curves()) {
      svg.append(path(curve, bounds));
    }
    return svg.append("</svg>\n").toString();
  }

  private String title() {
    return template.label() + " " + template.piece().name() + ", cut " + template.count();
  }

  private static String path(Curve curve, Pattern.Bounds bounds) {
    StringBuilder d = new StringBuilder();
    List<FlatPoint> points = curve.flattened(TOLERANCE_M);
    for (int i = 0; i < points.size(); i++) {
      double x = (points.get(i).xM() - bounds.leftM()) * 1000 + EDGE_MM;
      double y = (bounds.bottomM() + bounds.heightM() - points.get(i).yM()) * 1000 + EDGE_MM;
      d.append(i == 0 ? "M" : " L").append(String.format(Locale.ROOT, "%.4f %.4f", x, y));
    }
    String style =
        switch (curve.role()) {
          case CUT -> "stroke-width=\"0.35\"";
          case BORE -> "stroke-width=\"0.2\" stroke-dasharray=\"2 1\"";
          case SEAM -> "stroke-width=\"0.3\" stroke-dasharray=\"6 1.5 1 1.5\"";
          case FOLD -> "stroke-width=\"0.18\" stroke-dasharray=\"4 1 0.5 1\"";
          case BASELINE, MARK -> "stroke-width=\"0.15\"";
        };
    return String.format(
        "<path class=\"%s\" fill=\"none\" stroke=\"black\" %s d=\"%s\"><title>%s</title></path>\n",
        curve.role().name().toLowerCase(Locale.ROOT), style, d, escaped(curve.label()));
  }

  private static String escaped(String text) {
    return text.replace("&", "&amp;").replace("<", "&lt;").replace(">", "&gt;");
  }
}
