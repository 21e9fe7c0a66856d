package org.lagwright.ifc.geometry;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import org.lagwright.ifc.schema.IfcRecord;

/**
 * Finds the items of a product's body. Axis, box, footprint and clearance representations are not
 * bodies and never measured.
 */
final class Bodies {

  /** Mapped items within mapped items that are followed. */
  private static final int MAX_NESTING = 20;

  /** Records looked at for one body; a file of a few lines can nest its maps to billions. */
  private static final int MAX_VISITS = 100_000;

  /** Representations that are tried; more than a body and a substitute is unusual. */
  private static final int MAX_CANDIDATES = 4;

  private static final Set<String> NO_BODIES =
      Set.of(
          "axis",
          "box",
          "footprint",
          "clearance",
          "annotation",
          "plan",
          "lighting",
          "reference",
          "cog",
          "profile",
          "surveypoints",
          "fallback");

  /** Representation types of flat or empty content, whatever their identifier says. */
  private static final Set<String> NO_BODY_TYPES =
      Set.of(
          "boundingbox",
          "curve",
          "curve2d",
          "curve3d",
          "geometriccurveset",
          "annotation2d",
          "point",
          "pointcloud",
          "fillarea",
          "text",
          "segment");

  private final Coordinates coordinates;

  Bodies(Coordinates coordinates) {
    this.coordinates = coordinates;
  }

  /** The items of each representation that may be the body, the most likely first. */
  List<List<Item>> candidates(IfcRecord product, Frame frame) {
    List<List<Item>> candidates = new ArrayList<>();
    for (IfcRecord representation : bodies(product)) {
      Found found = new Found();
      collect(representation, frame, 0, found);
      if (!found.items.isEmpty()) {
        candidates.add(found.items);
      }
    }
    return candidates;
  }

  /** Curves that stand for the product where it has no body: items of an axis representation. */
  List<Item> axes(IfcRecord product, Frame frame) {
    IfcRecord shape = product.ref("Representation");
    Found found = new Found();
    for (IfcRecord representation :
        shape == null ? List.<IfcRecord>of() : shape.refs("Representations")) {
      String identifier = lower(representation.text("RepresentationIdentifier"));
      boolean flat = NO_BODY_TYPES.contains(lower(representation.text("RepresentationType")));
      if (identifier.equals("axis") || (flat && identifier.equals("body"))) {
        collect(representation, frame, 0, found);
      }
    }
    List<Item> curves = new ArrayList<>();
    for (Item item : found.items) {
      List<IfcRecord> elements = item.record().refs("Elements");
      elements.forEach(element -> curves.add(new Item(element, item.frame())));
      if (elements.isEmpty()) {
        curves.add(item);
      }
    }
    return curves;
  }

  /** Items collected so far, and how many records that took. */
  private static final class Found {
    final List<Item> items = new ArrayList<>();
    int visits;
  }

  /** The representations called Body, then all others that may be one. */
  private static List<IfcRecord> bodies(IfcRecord product) {
    IfcRecord shape = product.ref("Representation");
    List<IfcRecord> bodies = new ArrayList<>();
    List<IfcRecord> others = new ArrayList<>();
    for (IfcRecord representation :
        shape == null ? List.<IfcRecord>of() : shape.refs("Representations")) {
      String identifier = lower(representation.text("RepresentationIdentifier"));
      boolean flat = NO_BODY_TYPES.contains(lower(representation.text("RepresentationType")));
      if (!flat && !NO_BODIES.contains(identifier)) {
        (identifier.equals("body") ? bodies : others).add(representation);
      }
    }
    bodies.addAll(others);
    return bodies.subList(0, Math.min(bodies.size(), MAX_CANDIDATES));
  }

  private static String lower(@Nullable String text) {
    return text == null ? "" : text.trim().toLowerCase(Locale.ROOT);
  }

  private void collect(IfcRecord representation, Frame frame, int nesting, Found into) {
    for (IfcRecord item : representation.refs("Items")) {
      if (++into.visits > MAX_VISITS) {
        return;
      }
      if (item.is("IfcMappedItem")) {
        mapped(item, frame, nesting, into);
      } else {
        into.items.add(new Item(item, frame));
      }
    }
  }

  /** Placement x mapping target x mapping origin, as other open readers do it. */
  private void mapped(IfcRecord item, Frame frame, int nesting, Found into) {
    IfcRecord map = item.ref("MappingSource");
    Frame target = coordinates.operator(item.ref("MappingTarget"));
    Frame origin = map == null ? null : coordinates.axes(map, "MappingOrigin").frame();
    IfcRecord source = map == null ? null : map.ref("MappedRepresentation");
    if (target != null && origin != null && source != null && nesting < MAX_NESTING) {
      collect(source, frame.times(target).times(origin), nesting + 1, into);
    }
  }
}
