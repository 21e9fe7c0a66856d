package org.lagwright.testmodels.picture;

import java.awt.Color;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.Set;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import javax.imageio.ImageIO;
import org.lagwright.testmodels.check.TriangleMesh;
import org.lagwright.testmodels.check.WebIfc;

/**
 * A model with insulation as web-ifc draws it: coverings in colour, all other pipes, ducts and
 * apparatus in grey, walls and slabs left out. Run in the folder of a module:
 *
 * <pre>
 * java -cp ../test-models/target/classes org.lagwright.testmodels.picture.ModelPicture MODEL PNG
 * </pre>
 */
public final class ModelPicture {

  private static final Color INSULATION = new Color(0xE0, 0x8A, 0x3C);
  private static final Color OTHERS = new Color(0x9A, 0xA5, 0xAA);

  private static final Pattern COVERING = Pattern.compile("#(\\d+)\\s*=\\s*IFCCOVERING\\(");
  private static final Pattern BUILDING =
      Pattern.compile("#(\\d+)\\s*=\\s*IFC(?:WALL|SLAB|BEAM|COLUMN|OPENINGELEMENT|SPACE)\\w*\\(");

  /** Into the picture: north-east, down by about 30 degrees. */
  private static final double[] INTO = unit(1, 1, -0.8);

  private static final double[] RIGHT = unit(1, -1, 0);
  private static final double[] UP = cross(RIGHT, INTO);

  /** Light comes from above and a little from the left. */
  private static final double[] LIGHT = unit(-0.2, 0.5, 1);

  private static final double LEAST_LIGHT = 0.45;

  private ModelPicture() {}

  /**
   * Draws one.
   *
   * @param args model and picture
   * @throws IOException if one cannot be read or written, or web-ifc fails
   */
  public static void main(String[] args) throws IOException, InterruptedException {
    Path model = Path.of(args[0]);
    String text = Files.readString(model);
    Set<Long> coverings = records(text, COVERING);
    Set<Long> building = records(text, BUILDING);
    List<TriangleMesh> meshes =
        WebIfc.install().read(model).meshes().stream()
            .filter(mesh -> !building.contains(mesh.step()))
            .toList();
    Canvas canvas = new Canvas(meshes.stream().map(m -> seen(m.cornersM())).toList());
    for (TriangleMesh mesh : meshes) {
      draw(canvas, mesh, coverings.contains(mesh.step()) ? INSULATION : OTHERS);
    }
    ImageIO.write(canvas.image(), "png", Path.of(args[1]).toFile());
  }

  private static Set<Long> records(String text, Pattern pattern) {
    return pattern
        .matcher(text)
        .results()
        .map(m -> Long.valueOf(m.group(1)))
        .collect(Collectors.toSet());
  }

  /** Corners to the right, up and into the picture, metres. */
  private static double[] seen(double[] cornersM) {
    double[] seen = new double[cornersM.length];
    for (int i = 0; i < cornersM.length; i += 3) {
      double[] corner = Arrays.copyOfRange(cornersM, i, i + 3);
      seen[i] = dot(corner, RIGHT);
      seen[i + 1] = dot(corner, UP);
      seen[i + 2] = dot(corner, INTO);
    }
    return seen;
  }

  private static void draw(Canvas canvas, TriangleMesh mesh, Color color) {
    double[] seen = seen(mesh.cornersM());
    for (int i = 0; i < mesh.triangles().length; i += 3) {
      double[][] world = new double[3][];
      double[][] corners = new double[3][];
      for (int k = 0; k < 3; k++) {
        int at = 3 * mesh.triangles()[i + k];
        world[k] = Arrays.copyOfRange(mesh.cornersM(), at, at + 3);
        corners[k] = Arrays.copyOfRange(seen, at, at + 3);
      }
      canvas.fill(corners, shaded(color, world));
    }
  }

  private static Color shaded(Color color, double[][] corners) {
    double[] normal = cross(minus(corners[1], corners[0]), minus(corners[2], corners[0]));
    double light = LEAST_LIGHT + (1 - LEAST_LIGHT) * Math.abs(dot(normal, LIGHT));
    return new Color(
        (int) (color.getRed() * light),
        (int) (color.getGreen() * light),
        (int) (color.getBlue() * light));
  }

  private static double[] minus(double[] a, double[] b) {
    return new double[] {a[0] - b[0], a[1] - b[1], a[2] - b[2]};
  }

  private static double dot(double[] a, double[] b) {
    return a[0] * b[0] + a[1] * b[1] + a[2] * b[2];
  }

  /** Direction of the vector product. */
  private static double[] cross(double[] a, double[] b) {
    return unit(a[1] * b[2] - a[2] * b[1], a[2] * b[0] - a[0] * b[2], a[0] * b[1] - a[1] * b[0]);
  }

  /** The direction; a triangle without area has none. */
  private static double[] unit(double x, double y, double z) {
    double norm = Math.sqrt(x * x + y * y + z * z);
    return norm == 0 ? new double[3] : new double[] {x / norm, y / norm, z / norm};
  }
}
