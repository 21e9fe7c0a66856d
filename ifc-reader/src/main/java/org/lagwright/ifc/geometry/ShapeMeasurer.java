package org.lagwright.ifc.geometry;

import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.lagwright.ifc.geometry.curve.Curves;
import org.lagwright.ifc.geometry.curve.Path;
import org.lagwright.ifc.geometry.frame.Bodies;
import org.lagwright.ifc.geometry.frame.Coordinates;
import org.lagwright.ifc.geometry.frame.Frame;
import org.lagwright.ifc.geometry.frame.GeometryUnits;
import org.lagwright.ifc.geometry.frame.Item;
import org.lagwright.ifc.geometry.frame.Placements;
import org.lagwright.ifc.geometry.profile.Bores;
import org.lagwright.ifc.geometry.profile.Outline;
import org.lagwright.ifc.geometry.profile.Profile;
import org.lagwright.ifc.geometry.profile.Profiles;
import org.lagwright.ifc.geometry.shape.Parts;
import org.lagwright.ifc.geometry.shape.Shape;
import org.lagwright.ifc.geometry.shape.ShapeHints;
import org.lagwright.ifc.geometry.solid.SweptPath;
import org.lagwright.ifc.model.Evidence;
import org.lagwright.ifc.model.How;
import org.lagwright.ifc.model.Measured;
import org.lagwright.ifc.model.Section;
import org.lagwright.ifc.schema.IfcFile;
import org.lagwright.ifc.schema.IfcRecord;

/**
 * Measures the body of one element. Never throws for bad geometry: what cannot be measured is null
 * or empty in the {@link Shape}, with a phrase why.
 */
public final class ShapeMeasurer {

  /** A length from here on is an error in the file: 1000 km. */
  private static final double LARGEST_M = 1e6;

  private final Placements placements;
  private final Bodies bodies;
  private final Solids solids;
  private final MappedBodies mapped;
  private final Curves curves;
  private final Profiles profiles;
  private final Bores bores;

  /**
   * @param units units of the file
   * @param placements frames of the products of the same file, in metres
   */
  public ShapeMeasurer(IfcFile file, GeometryUnits units, Placements placements) {
    Coordinates coordinates = new Coordinates(units);
    this.placements = placements;
    this.bodies = new Bodies(coordinates);
    this.curves = new Curves(coordinates);
    this.profiles = new Profiles(coordinates, curves);
    this.bores = new Bores(coordinates, curves, profiles);
    this.solids = new Solids(coordinates, file.step().limits());
    this.mapped = new MappedBodies(bodies, solids);
  }

  /**
   * Measures the body representation of a product.
   *
   * @param hints what else is known, for bodies with more than one reading
   */
  public Shape measure(IfcRecord product, ShapeHints hints) {
    Frame placed = placements.of(product);
    Frame frame = placed == null ? Frame.WORLD : placed;
    Shape shape = best(product, frame, hints);
    if (shape == null) {
      return withoutBody(product, frame);
    }
    if (shape.section() == null && shape.lengthM() == null) {
      List<Item> axes = bodies.axes(product, frame);
      String problem = String.join("; ", shape.problems()) + "; the length is that of its axis";
      Shape line = axes.size() == 1 ? line(axes.get(0), problem) : null;
      shape = line == null ? shape : line;
    }
    return placed == null ? unplaced(shape) : shape;
  }

  /** The items of the body of a product in the world, each measured by itself. */
  public BodyItems itemsOf(IfcRecord product) {
    Frame frame = placements.of(product);
    List<List<Item>> candidates = frame == null ? List.of() : bodies.candidates(product, frame);
    return new BodyItems(solids, candidates.isEmpty() ? List.of() : candidates.get(0));
  }

  private Shape withoutBody(IfcRecord product, Frame frame) {
    for (Item item : bodies.axes(product, frame)) {
      Shape line = line(item, "only an axis is drawn, no body");
      if (line != null) {
        return line;
      }
    }
    if (!product.has("Representation")) {
      return Shape.unmeasured(Shape.NO_REPRESENTATION);
    }
    return Shape.unmeasured(Bodies.isOnlyBoxed(product) ? Shape.ONLY_A_BOX : Shape.NO_BODY);
  }

  /** The length and the turns of an axis, null if it cannot be read. */
  private @Nullable Shape line(Item item, String problem) {
    IfcRecord curve = item.record();
    Path path = curves.read(curve);
    return path == null
        ? null
        : SweptPath.line(
            path.in(item.frame()),
            new Evidence(curve.id(), curve.entityName(), "axis of " + path.legs().size() + " legs"),
            problem);
  }

  /** The shape of the first body that gives a section; of the first body if none does. */
  private @Nullable Shape best(IfcRecord product, Frame frame, ShapeHints hints) {
    Shape first = null;
    for (IfcRecord representation : Bodies.representations(product)) {
      Shape measured = measured(bodies.body(representation, frame), frame, hints);
      if (measured == null) {
        continue;
      }
      Shape shape =
          isPossible(measured)
              ? measured
              : Shape.unmeasured("figures are beyond anything that is built");
      if (shape.section() != null) {
        return shape;
      }
      first = first == null ? shape : first;
    }
    return first;
  }

  /** The shape of a body, null if it has no items. */
  private @Nullable Shape measured(Bodies.Body body, Frame frame, ShapeHints hints) {
    if (body.tooMany()) {
      return MappedBodies.TOO_MANY_ITEMS;
    }
    if (!body.maps().isEmpty()) {
      return mapped.measure(body.maps(), frame, hints);
    }
    return body.items().isEmpty() ? null : solids.measure(body.items(), hints);
  }

  /** The section of a profile definition by itself; empty if it is broken or has no plain shape. */
  public Optional<Measured<Section>> sectionOf(IfcRecord profile) {
    Profile read = profiles.read(profile);
    return read == null || read.outline() == null || !read.outline().isUsable()
        ? Optional.empty()
        : Optional.of(Measured.of(read.outline().section(), How.SOLID, read.evidence()))
            .filter(m -> isPossible(m.value().largestSideM()));
  }

  /**
   * Wall of a hollow profile in metres: half of what its bore is smaller, also where both outlines
   * are drawn as curves. Empty if it is not hollow, or if the bore has another shape.
   */
  public Optional<Double> wallM(IfcRecord profile) {
    Outline bore = bores.of(profile);
    Profile read = bore == null ? null : profiles.read(profile);
    Outline outside = read == null ? null : read.outline();
    return bore != null && outside != null && outside.isHollowedBy(bore)
        ? Optional.of(outside.largestHalfM() - bore.largestHalfM())
        : Optional.empty();
  }

  private static boolean isPossible(Shape shape) {
    Measured<Section> section = shape.section();
    return isPossible(shape.lengthM())
        && isPossible(shape.bendRadiusM())
        && (section == null || isPossible(section.value().largestSideM()));
  }

  private static boolean isPossible(@Nullable Measured<Double> figure) {
    return figure == null || isPossible(figure.value());
  }

  /** True for a length that a building can have: above 0 and below 1000 km. */
  public static boolean isPossible(double metres) {
    return metres > 0 && metres < LARGEST_M;
  }

  /** Sizes hold without a placement, positions do not. */
  private static Shape unplaced(Shape shape) {
    Shape without =
        new Shape(
            shape.form(),
            shape.section(),
            shape.lengthM(),
            shape.angleDeg(),
            shape.bendRadiusM(),
            List.of(),
            shape.problems(),
            shape.sheath());
    return Parts.withProblem(without, "its placement is missing or not read");
  }
}
