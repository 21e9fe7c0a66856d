package org.lagwright.testmodels.picture;

import java.awt.Color;
import java.awt.Font;
import java.awt.FontMetrics;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.image.BufferedImage;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import javax.imageio.ImageIO;

/**
 * The first lines that a command prints, as a terminal shows them:
 *
 * <pre>
 * java -cp test-models/target/classes org.lagwright.testmodels.picture.TerminalPicture TEXT LINES PNG
 * </pre>
 */
public final class TerminalPicture {

  private static final Font FONT = new Font(Font.MONOSPACED, Font.PLAIN, 13);
  private static final Color INK = new Color(0x20, 0x28, 0x2C);
  private static final Color PAPER = new Color(0xF6, 0xF7, 0xF7);
  private static final int MARGIN = 14;

  private TerminalPicture() {}

  /**
   * Draws one.
   *
   * @param args file with the text, how many lines of it, picture
   * @throws IOException if one cannot be read or written
   */
  public static void main(String[] args) throws IOException {
    List<String> lines =
        Files.readAllLines(Path.of(args[0])).stream().limit(Integer.parseInt(args[1])).toList();
    FontMetrics size =
        new BufferedImage(1, 1, BufferedImage.TYPE_INT_RGB).createGraphics().getFontMetrics(FONT);
    int width = lines.stream().mapToInt(size::stringWidth).max().orElse(0);
    BufferedImage image =
        new BufferedImage(
            width + 2 * MARGIN,
            lines.size() * size.getHeight() + 2 * MARGIN,
            BufferedImage.TYPE_BYTE_GRAY);
    Graphics2D pen = image.createGraphics();
    pen.setRenderingHint(
        RenderingHints.KEY_TEXT_ANTIALIASING, RenderingHints.VALUE_TEXT_ANTIALIAS_ON);
    pen.setColor(PAPER);
    pen.fillRect(0, 0, image.getWidth(), image.getHeight());
    pen.setColor(INK);
    pen.setFont(FONT);
    int y = MARGIN + size.getAscent();
    for (String line : lines) {
      pen.drawString(line, MARGIN, y);
      y += size.getHeight();
    }
    pen.dispose();
    ImageIO.write(image, "png", Path.of(args[2]).toFile());
  }
}
