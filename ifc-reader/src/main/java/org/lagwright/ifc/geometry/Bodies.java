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

  /** The items of the body; empty if the product has none. */
  List<Item> items(IfcRecord product, Frame frame) {
    Found found = new Found();
    IfcRecord body = body(product);
    if (body != null) {
      collect(body, frame, 0, found);
    }
    return found.items;
  }

  /** Items collected so far, and how many records that took. */
  private static final class Found {
    final List<Item> items = new ArrayList<>();
    int visits;
  }

  /** The representation called Body, else the first one that may be a body. */
  private static @Nullable IfcRecord body(IfcRecord product) {
    IfcRecord shape = product.ref("Representation");
    IfcRecord substitute = null;
    for (IfcRecord representation :
        shape == null ? List.<IfcRecord>of() : shape.refs("Representations")) {
      String identifier = lower(representation.text("RepresentationIdentifier"));
      String type = lower(representation.text("RepresentationType"));
      if (identifier.equals("body") && !NO_BODY_TYPES.contains(type)) {
        return representation;
      }
      boolean possible = !NO_BODIES.contains(identifier) && !NO_BODY_TYPES.contains(type);
      substitute = substitute == null && possible ? representation : substitute;
    }
    return substitute;
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
    Frame origin = map == null ? null : coordinates.axes(map.ref("MappingOrigin"));
    IfcRecord source = map == null ? null : map.ref("MappedRepresentation");
    if (target != null && origin != null && source != null && nesting < MAX_NESTING) {
      collect(source, frame.times(target).times(origin), nesting + 1, into);
    }
  }
}
