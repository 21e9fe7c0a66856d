package org.lagwright.ifc.geometry;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.lagwright.ifc.geometry.frame.Bodies;
import org.lagwright.ifc.geometry.frame.Bodies.MappedPart;
import org.lagwright.ifc.geometry.frame.Frame;
import org.lagwright.ifc.geometry.frame.Item;
import org.lagwright.ifc.geometry.frame.Recent;
import org.lagwright.ifc.geometry.frame.Vec;
import org.lagwright.ifc.geometry.shape.Shape;
import org.lagwright.ifc.geometry.shape.ShapeHints;
import org.lagwright.ifc.geometry.shape.StatedSizes;
import org.lagwright.ifc.model.Point;
import org.lagwright.ifc.model.Section;

/**
 * Measures bodies that are drawn by maps. A type draws its body once for all its elements, so those
 * that are turned the same way are measured once, as if they lay at zero, and the shape is moved to
 * each of them. A body that is not remembered is measured the same way, so that its figures do not
 * depend on which element came first. Safe for several threads.
 */
final class MappedBodies {

  /** What is told of a body of more items than are followed. */
  static final Shape TOO_MANY_ITEMS =
      Shape.unmeasured("more than " + Bodies.MOST_ITEMS + " items in the body");

  private static final int REMEMBERED = 1 << 8;

  /** Bodies that take more to remember are measured each time: numbers, and ends. */
  private static final int MOST_NUMBERS = 300;

  private static final int MOST_ENDS = 30;

  /** Steps between places of ports: finer than drawn, coarser than what is lost in moving. */
  private static final double PORT_STEPS_PER_M = 1e6;

  private final Bodies bodies;
  private final Solids solids;
  private final Recent<Known> known = new Recent<>(REMEMBERED);

  MappedBodies(Bodies bodies, Solids solids) {
    this.bodies = bodies;
    this.solids = solids;
  }

  /** A body that was measured, and the stated sizes that were asked for. */
  private record Known(Drawing drawing, Asked asked, Shape shape) {}

  /**
   * Everything but stated sizes that a body is measured by.
   *
   * @param sources the representations that are mapped
   * @param numbers the frames of the maps, and what else is known of the element
   */
  @SuppressWarnings("ArrayRecordComponent") // compared below
  private record Drawing(long[] sources, double[] numbers) {

    boolean isThatOf(Drawing other) {
      return Arrays.equals(sources, other.sources) && Arrays.equals(numbers, other.numbers);
    }

    long slot() {
      long mixed =
          (Arrays.hashCode(sources) * 31L + Arrays.hashCode(numbers)) * 0x9E3779B97F4A7C15L;
      return mixed >>> Integer.SIZE;
    }
  }

  /** Remembers which stated sizes were asked for, and what they were. */
  private static final class Asked implements StatedSizes {
    private final StatedSizes stated;
    private @Nullable Optional<Section> sides;
    private @Nullable List<Double> diametersM;

    Asked(StatedSizes stated) {
      this.stated = stated;
    }

    @Override
    public Optional<Section> sides() {
      Optional<Section> told = sides == null ? stated.sides() : sides;
      sides = told;
      return told;
    }

    @Override
    public List<Double> diametersM() {
      List<Double> told = diametersM == null ? List.copyOf(stated.diametersM()) : diametersM;
      diametersM = told;
      return told;
    }

    /** Without the element that was asked, which would be kept as long as its shape. */
    Asked withoutElement() {
      Asked told = new Asked(StatedSizes.NONE);
      told.sides = sides;
      told.diametersM = diametersM;
      return told;
    }

    /** True if another element would have answered the same. */
    boolean areAlso(StatedSizes others) {
      return (sides == null || sides.equals(others.sides()))
          && (diametersM == null || diametersM.equals(others.diametersM()));
    }
  }

  /**
   * The shape of a body in the world, null if it has no items.
   *
   * @param product the frame of the product
   */
  @Nullable Shape measure(List<MappedPart> maps, Frame product, ShapeHints hints) {
    Vec at = Vec.of(maps.get(0).frame().origin());
    List<Frame> frames = aboutZero(maps, product);
    List<Point> portsM = aboutZero(hints.portsM(), at);
    Drawing drawing = drawing(maps, frames, portsM, hints);
    Known last = known.find(drawing.slot());
    if (last != null && last.drawing.isThatOf(drawing) && last.asked.areAlso(hints.stated())) {
      return last.shape.movedBy(at);
    }
    List<Item> items = bodies.items(maps, frames);
    if (items != null && items.isEmpty()) {
      return null;
    }
    Asked asked = new Asked(hints.stated());
    ShapeHints moved = new ShapeHints(portsM, hints.lengthPropertyM(), hints.straight(), asked);
    Shape shape = items == null ? TOO_MANY_ITEMS : solids.measure(items, moved);
    if (drawing.numbers.length <= MOST_NUMBERS && shape.ends().size() <= MOST_ENDS) {
      known.keep(drawing.slot(), new Known(drawing, asked.withoutElement(), shape));
    }
    return shape.movedBy(at);
  }

  /** The frames of maps as turned in the world, but with the first of them at zero. */
  private static List<Frame> aboutZero(List<MappedPart> maps, Frame product) {
    Frame turned = new Frame(Frame.WORLD.origin(), product.ex(), product.ey(), product.ez());
    Vec first = turned.point(Vec.of(maps.get(0).inner().origin()));
    List<Frame> frames = new ArrayList<>(maps.size());
    for (MappedPart map : maps) {
      Vec origin = turned.point(Vec.of(map.inner().origin())).minus(first);
      Frame world = map.frame();
      frames.add(new Frame(origin.point(), world.ex(), world.ey(), world.ez()));
    }
    return frames;
  }

  private static List<Point> aboutZero(List<Point> portsM, Vec at) {
    List<Point> moved = new ArrayList<>(portsM.size());
    for (Point port : portsM) {
      Vec from = Vec.of(port).minus(at);
      moved.add(new Point(inSteps(from.x()), inSteps(from.y()), inSteps(from.z())));
    }
    return moved;
  }

  /** Plus zero, as a number just below zero is zero too. */
  private static double inSteps(double metres) {
    return Math.rint(metres * PORT_STEPS_PER_M) / PORT_STEPS_PER_M + 0.0;
  }

  private static Drawing drawing(
      List<MappedPart> maps, List<Frame> frames, List<Point> portsM, ShapeHints hints) {
    long[] sources = new long[maps.size()];
    double[] numbers = new double[2 + 12 * frames.size() + 3 * portsM.size()];
    Double lengthM = hints.lengthPropertyM();
    numbers[0] = hints.straight() ? 1 : 0;
    numbers[1] = lengthM == null ? Double.NaN : lengthM;
    int at = 2;
    for (int i = 0; i < sources.length; i++) {
      Frame frame = frames.get(i);
      sources[i] = maps.get(i).source();
      at = put(frame.origin(), numbers, at);
      at = put(frame.ex(), numbers, at);
      at = put(frame.ey(), numbers, at);
      at = put(frame.ez(), numbers, at);
    }
    for (Point port : portsM) {
      at = put(port, numbers, at);
    }
    return new Drawing(sources, numbers);
  }

  private static int put(Point point, double[] into, int at) {
    into[at] = point.x();
    into[at + 1] = point.y();
    into[at + 2] = point.z();
    return at + 3;
  }
}
