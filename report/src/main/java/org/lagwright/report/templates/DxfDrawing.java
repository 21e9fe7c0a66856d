package org.lagwright.report.templates;

import java.io.IOException;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.util.Locale;
import org.lagwright.takeoff.fitting.pattern.Curve;
import org.lagwright.takeoff.fitting.pattern.FlatPoint;

/**
 * The lines of a pattern as DXF R12 in millimetres: one polyline for each line, arcs as bulges, one
 * layer for each role.
 */
final class DxfDrawing {

  private final Template template;
  private final StringBuilder dxf = new StringBuilder();

  DxfDrawing(Template template) {
    this.template = template;
  }

  void write(OutputStream out) throws IOException {
    dxf.setLength(0);
    pair(999, template.label() + ", millimetres");
    section("HEADER");
    pair(9, "$ACADVER");
    pair(1, "AC1009");
    pair(0, "ENDSEC");
    layers();
    section("ENTITIES");
    template.piece().shape().pattern().curves().forEach(this::polyline);
    pair(0, "ENDSEC");
    pair(0, "EOF");
    out.write(dxf.toString().getBytes(StandardCharsets.US_ASCII));
  }

  private void layers() {
    section("TABLES");
    pair(0, "TABLE");
    pair(2, "LAYER");
    pair(70, Integer.toString(Curve.Role.values().length));
    for (Curve.Role role : Curve.Role.values()) {
      pair(0, "LAYER");
      pair(2, role.name());
      pair(70, "0");
      pair(62, "7");
      pair(6, "CONTINUOUS");
    }
    pair(0, "ENDTAB");
    pair(0, "ENDSEC");
  }

  private void polyline(Curve curve) {
    pair(0, "POLYLINE");
    pair(8, curve.role().name());
    pair(66, "1");
    at(new FlatPoint(0, 0));
    pair(70, curve.closed() ? "1" : "0");
    for (Curve.Vertex vertex : curve.vertices()) {
      pair(0, "VERTEX");
      pair(8, curve.role().name());
      at(vertex.at());
      if (vertex.bulge() != 0) {
        pair(42, String.format(Locale.ROOT, "%.9f", vertex.bulge()));
      }
    }
    pair(0, "SEQEND");
    pair(8, curve.role().name());
  }

  private void section(String name) {
    pair(0, "SECTION");
    pair(2, name);
  }

  private void at(FlatPoint point) {
    pair(10, String.format(Locale.ROOT, "%.5f", point.xM() * 1000));
    pair(20, String.format(Locale.ROOT, "%.5f", point.yM() * 1000));
    pair(30, "0.0");
  }

  private void pair(int code, String value) {
    dxf.append(String.format(Locale.ROOT, "%3d\n%s\n", code, value));
  }
}
