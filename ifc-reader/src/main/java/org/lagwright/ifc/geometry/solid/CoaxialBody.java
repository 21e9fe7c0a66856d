package org.lagwright.ifc.geometry.solid;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.lagwright.ifc.geometry.frame.ShapeEnd;
import org.lagwright.ifc.geometry.frame.Spans;
import org.lagwright.ifc.geometry.frame.Vec;
import org.lagwright.ifc.geometry.shape.Ends;
import org.lagwright.ifc.geometry.shape.Prism;
import org.lagwright.ifc.geometry.shape.Shape;
import org.lagwright.ifc.geometry.shape.Sheath;
import org.lagwright.ifc.model.Candidate;
import org.lagwright.ifc.model.Evidence;
import org.lagwright.ifc.model.Form;
import org.lagwright.ifc.model.Measured;
import org.lagwright.ifc.model.Section;

/**
 * A straight piece that is drawn as several items about one axis: pipe and flanges, pipe and
 * socket, pipe and insulation. Its section is the one that shows along most of its length, if the
 * ends are wider: a flange or a socket is not the size of the pipe.
 */
public final class CoaxialBody {

  /** Why the section at an end is not that of the body. */
  static final String END_ONLY = "flange or socket at an end";

  /** Axes may lie apart by this, and items may leave gaps of this between them. */
  private static final double OFF_AXIS_M = 0.001;

  /** Sine of the angle between two axes that count as one. */
  private static final double PARALLEL = 0.002;

  /** What shows along more than this share of the length is the size of the body. */
  private static final double MOST = 0.5;

  /** A shell is drawn with a bore as wide as what it lies around, but for rounding. */
  private static final double FITS_M = 0.001;

  /** Or with the bore that is sold, which is wider by up to this. Common practice, no source. */
  private static final double LOOSE_M = 0.003;

  /** Thinner shells are walls, coats and linings. Common practice, no source. */
  private static final double THINNEST_M = 0.006;

  /**
   * An item.
   *
   * @param bore section of its bore, null if it has none or none is known
   */
  public record Part(Shape shape, @Nullable Section bore) {}

  /** An item along the common axis. */
  private record Layer(
      Measured<Section> section, @Nullable Section bore, double fromM, double toM) {

    double lengthM() {
      return toM - fromM;
    }

    List<double[]> span() {
      return List.<double[]>of(new double[] {fromM, toM});
    }
  }

  /** The widest first. */
  private static final class WidestFirst implements Comparator<Layer> {
    @Override
    public int compare(Layer a, Layer b) {
      return Double.compare(b.section.value().perimeterM(), a.section.value().perimeterM());
    }
  }

  private final ShapeEnd first;
  private final Vec along;
  private final Measured<Double> lengthOfLongest;
  private final List<Layer> layers = new ArrayList<>();
  private double fromM;
  private double toM;

  private CoaxialBody(Shape longest, Measured<Double> length) {
    this.first = longest.ends().get(0);
    this.along = longest.ends().get(1).out();
    this.lengthOfLongest = length;
  }

  /** True if all items are straight, so that {@link #of} may tell them. */
  public static boolean mayBe(List<Shape> shapes) {
    for (Shape shape : shapes) {
      if (shape.section() == null || shape.form() != Form.STRAIGHT || shape.ends().size() != 2) {
        return false;
      }
    }
    return true;
  }

  /**
   * The straight piece that the items make.
   *
   * @param longest the item that gives the axis
   * @param step the record that evidence of the whole points to
   * @return null if they do not lie about one axis, leave gaps, or none shows along most of it
   */
  public static @Nullable Shape of(List<Part> parts, Shape longest, long step) {
    Measured<Double> length = longest.lengthM();
    if (length == null) {
      return null;
    }
    CoaxialBody body = new CoaxialBody(longest, length);
    for (Part part : parts) {
      Layer layer = body.layer(part);
      if (layer == null) {
        return null;
      }
      body.layers.add(layer);
    }
    body.layers.sort(new WidestFirst());
    return body.measure(step);
  }

  private @Nullable Layer layer(Part part) {
    Shape shape = inLine(part.shape());
    Measured<Section> section = shape == null ? null : shape.section();
    if (shape == null || section == null) {
      return null;
    }
    double least = Double.MAX_VALUE;
    double most = -Double.MAX_VALUE;
    for (ShapeEnd end : shape.ends()) {
      Vec off = end.centre().minus(first.centre());
      if (off.across(along).norm() > OFF_AXIS_M) {
        return null;
      }
      least = Math.min(least, off.dot(along));
      most = Math.max(most, off.dot(along));
    }
    return new Layer(section, part.bore(), least, most);
  }

  /** The item read along the common axis, as a frame of a flange has a longer edge across it. */
  private @Nullable Shape inLine(Shape shape) {
    if (isParallel(shape.ends().get(1).out())) {
      return shape;
    }
    Shape turned = Prism.alongOf(shape, along);
    return turned != null && isParallel(turned.ends().get(1).out()) ? turned : null;
  }

  private boolean isParallel(Vec axis) {
    return axis.cross(along).norm() < PARALLEL;
  }

  private @Nullable Shape measure(long step) {
    fromM = Double.MAX_VALUE;
    toM = -Double.MAX_VALUE;
    for (Layer layer : layers) {
      fromM = Math.min(fromM, layer.fromM);
      toM = Math.max(toM, layer.toM);
    }
    Layer main = shown();
    if (main == null) {
      return null;
    }
    Layer start = outermostAt(fromM);
    Layer finish = outermostAt(toM);
    Sheath sheath = sheath();
    boolean sticksOut = start.section.value().perimeterM() < main.section.value().perimeterM();
    Layer size = sheath == null && sticksOut && same(start, finish) ? start : main;
    return new Shape(
        Form.STRAIGHT,
        section(size, widest(start, finish)),
        length(step),
        null,
        null,
        List.of(end(start, fromM, along.times(-1)), end(finish, toM, along)),
        List.of(),
        sheath);
  }

  /** What shows along most of the length, null if nothing does, or where there are gaps. */
  private @Nullable Layer shown() {
    List<double[]> left = List.<double[]>of(new double[] {fromM, toM});
    double lengthM = toM - fromM;
    Layer most = null;
    int i = 0;
    while (i < layers.size()) {
      Layer widest = layers.get(i);
      double beforeM = Spans.sum(left);
      while (i < layers.size() && same(widest, layers.get(i))) {
        left = Spans.minus(left, layers.get(i).span());
        i++;
      }
      most = beforeM - Spans.sum(left) > MOST * lengthM ? widest : most;
    }
    return Spans.sum(left) > OFF_AXIS_M * layers.size() ? null : most;
  }

  private static boolean same(Layer a, Layer b) {
    return Ends.same(a.section.value(), b.section.value());
  }

  private static Layer widest(Layer a, Layer b) {
    return a.section.value().perimeterM() < b.section.value().perimeterM() ? b : a;
  }

  private Layer outermostAt(double atM) {
    for (Layer layer : layers) {
      if (layer.fromM < atM + OFF_AXIS_M && layer.toM > atM - OFF_AXIS_M) {
        return layer;
      }
    }
    return layers.get(0);
  }

  private static Measured<Section> section(Layer size, Layer end) {
    Measured<Section> own = size.section;
    if (end.section.value().perimeterM() <= own.value().perimeterM() || same(size, end)) {
      return own;
    }
    Candidate<Section> lost =
        new Candidate<>(end.section.value(), end.section.how(), end.section.evidence(), END_ONLY);
    return new Measured<>(own.value(), own.how(), own.evidence(), List.of(lost));
  }

  private Measured<Double> length(long step) {
    double lengthM = toM - fromM;
    return Math.abs(lengthM - lengthOfLongest.value()) < Vec.WELD_M
        ? lengthOfLongest
        : Measured.of(
            lengthM,
            lengthOfLongest.how(),
            new Evidence(step, "body of " + layers.size() + " items", "from end to end"));
  }

  private ShapeEnd end(Layer layer, double atM, Vec out) {
    Vec centre = first.centre().plus(along.times(atM));
    return new ShapeEnd(centre.point(), out.point(), layer.section.value(), first.width());
  }

  /** A shell, of one or more layers, around the innermost of what runs along most of the body. */
  private @Nullable Sheath sheath() {
    Layer pipe = null;
    Layer outer = null;
    for (int i = layers.size() - 1; i >= 0; i--) {
      Layer layer = layers.get(i);
      if (layer.lengthM() <= MOST * (toM - fromM)) {
        continue;
      }
      if (pipe == null || outer == null) {
        pipe = layer;
        outer = layer;
      } else if (isAround(layer, outer)) {
        boolean wall = pipe.equals(outer) && wallM(outer, layer) < THINNEST_M;
        pipe = wall ? layer : pipe;
        outer = layer;
      }
    }
    return pipe == null || outer == null || outer.equals(pipe)
        ? null
        : new Sheath(pipe.section, outer.section.value(), outer.lengthM() / (toM - fromM));
  }

  private boolean isAround(Layer shell, Layer inner) {
    Section bore = shell.bore == null ? boreAtEnd(shell) : shell.bore;
    Section outside = inner.section.value();
    if (bore == null || bore.getClass() != outside.getClass()) {
      return false;
    }
    double wideM = bore.largestSideM() - outside.largestSideM();
    double longM = bore.perimeterM() - outside.perimeterM();
    return wideM > -FITS_M && wideM < LOOSE_M && longM > -4 * FITS_M && longM < 4 * LOOSE_M;
  }

  /** Of a shell that is a face without thickness, closed by a ring at an end of it. */
  private @Nullable Section boreAtEnd(Layer shell) {
    for (Layer ring : layers) {
      if (ring.bore != null && same(ring, shell) && isAtEnd(ring, shell)) {
        return ring.bore;
      }
    }
    return null;
  }

  private static boolean isAtEnd(Layer ring, Layer shell) {
    return ring.lengthM() <= MOST * shell.lengthM()
        && (Math.abs(ring.fromM - shell.fromM) < OFF_AXIS_M
            || Math.abs(ring.toM - shell.toM) < OFF_AXIS_M);
  }

  private static double wallM(Layer inner, Layer outer) {
    return (outer.section.value().largestSideM() - inner.section.value().largestSideM()) / 2;
  }
}
