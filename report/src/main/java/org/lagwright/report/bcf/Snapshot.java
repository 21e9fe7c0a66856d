package org.lagwright.report.bcf;

import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.geom.Ellipse2D;
import java.awt.geom.Line2D;
import java.awt.image.BufferedImage;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.util.List;
import javax.imageio.ImageIO;
import org.lagwright.ifc.model.Point;

/** Draws what a view shows: the elements of a topic in colour, all others in grey. */
final class Snapshot {

  /** Of the elements of a topic, in picture and viewer. */
  static final Color INK = new Color(0xC6, 0x3D, 0x1E);

  private static final Color OTHERS = new Color(0xB5, 0xBC, 0xBE);
  private static final int HEIGHT = 600;
  private static final int WIDTH = (int) Math.round(HEIGHT * View.ASPECT);
  private static final double DOT = 7;

  private final View view;
  private final BufferedImage image = new BufferedImage(WIDTH, HEIGHT, BufferedImage.TYPE_INT_RGB);
  private final Graphics2D pen = image.createGraphics();

  private Snapshot(View view) {
    this.view = view;
  }

  /** The picture as PNG. */
  static byte[] png(View view, List<Trunk> all, List<Trunk> ofTopic) {
    Snapshot snapshot = new Snapshot(view);
    snapshot.prepare();
    all.forEach(trunk -> snapshot.draw(trunk, OTHERS, 2));
    ofTopic.forEach(trunk -> snapshot.draw(trunk, INK, trunk.box() ? 1 : 4));
    snapshot.pen.dispose();
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    try {
      ImageIO.write(snapshot.image, "png", out);
    } catch (IOException e) {
      throw new IllegalStateException("memory cannot be written to", e);
    }
    return out.toByteArray();
  }

  private void prepare() {
    pen.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
    pen.setColor(Color.WHITE);
    pen.fillRect(0, 0, WIDTH, HEIGHT);
  }

  private void draw(Trunk trunk, Color color, int width) {
    pen.setColor(color);
    pen.setStroke(new BasicStroke(width, BasicStroke.CAP_ROUND, BasicStroke.JOIN_ROUND));
    for (Trunk.Line line : trunk.lines()) {
      pen.draw(new Line2D.Double(x(line.from()), y(line.from()), x(line.to()), y(line.to())));
    }
    if (trunk.dot()) {
      double dot = DOT * width / 4;
      pen.fill(
          new Ellipse2D.Double(x(trunk.middle()) - dot, y(trunk.middle()) - dot, 2 * dot, 2 * dot));
    }
  }

  private double x(Point point) {
    return WIDTH / 2.0 + view.right(point) * HEIGHT / view.heightM();
  }

  private double y(Point point) {
    return HEIGHT / 2.0 - view.up(point) * HEIGHT / view.heightM();
  }
}
