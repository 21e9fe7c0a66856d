package org.lagwright.ifc.geometry.frame;

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
public final class Bodies {

  /** Mapped items within mapped items that are followed. */
  private static final int MAX_NESTING = 20;

  /** Records looked at for one body; a file of a few lines can nest its maps to billions. */
  private static final int MAX_VISITS = 100_000;

  /** The same for a body that is measured: pieces of more items than this are not built. */
  public static final int MOST_ITEMS = 10_000;

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

  /** Representation types of flat or empty content, unless a body shows a solid all the same. */
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

  private static final List<String> SOLIDS =
      List.of(
          "IfcSolidModel",
          "IfcBooleanResult",
          "IfcCsgPrimitive3D",
          "IfcTessellatedItem",
          "IfcFaceBasedSurfaceModel",
          "IfcShellBasedSurfaceModel");

  private static final List<String> BOX = List.of("IfcBoundingBox");

  private final Coordinates coordinates;

  /** Looks for bodies in one file. */
  public Bodies(Coordinates coordinates) {
    this.coordinates = coordinates;
  }

  /** The items of each representation that may be the body, the most likely first. */
  public List<List<Item>> candidates(IfcRecord product, Frame frame) {
    List<List<Item>> candidates = new ArrayList<>();
    for (IfcRecord representation : representations(product)) {
      Found found = new Found(MAX_VISITS);
      collect(representation.refs("Items"), frame, 0, found);
      if (!found.items.isEmpty()) {
        candidates.add(found.items);
      }
    }
    return candidates;
  }

  /** Curves that stand for the product where no body can be measured: those of its axis. */
  public List<Item> axes(IfcRecord product, Frame frame) {
    IfcRecord shape = product.ref("Representation");
    Found found = new Found(MAX_VISITS);
    for (IfcRecord representation :
        shape == null ? List.<IfcRecord>of() : shape.refs("Representations")) {
      String identifier = lower(representation.text("RepresentationIdentifier"));
      boolean flat = NO_BODY_TYPES.contains(lower(representation.text("RepresentationType")));
      boolean body = identifier.equals("body");
      if (identifier.equals("axis") || (flat && body)) {
        collect(representation.refs("Items"), frame, 0, found);
      } else if (body) {
        addSetsOfCurves(representation, frame, found);
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

  /** Adds the items of a body of which all are no more than curves. */
  private void addSetsOfCurves(IfcRecord representation, Frame frame, Found found) {
    Found drawn = new Found(MAX_VISITS);
    collect(representation.refs("Items"), frame, 0, drawn);
    for (Item item : drawn.items) {
      for (IfcRecord element : item.record().refs("Elements")) {
        if (!element.is("IfcCurve")) {
          return;
        }
      }
      if (!item.record().is("IfcGeometricSet")) {
        return;
      }
    }
    found.items.addAll(drawn.items);
  }

  /**
   * One representation that may be the body.
   *
   * @param items its items in the world; none where maps draw it
   * @param maps what draws it, where that may draw others as well
   * @param tooMany true if it has more items than are measured
   */
  public record Body(List<Item> items, List<MappedPart> maps, boolean tooMany) {}

  /**
   * A map that draws a part of a body.
   *
   * @param source the representation that is mapped
   * @param items what that shows
   * @param inner its frame within the product
   * @param frame its frame in the world
   */
  public record MappedPart(long source, List<IfcRecord> items, Frame inner, Frame frame) {}

  /** What a representation of a product shows, by its maps if it has nothing else. */
  public Body body(IfcRecord representation, Frame frame) {
    List<IfcRecord> shown = representation.refs("Items");
    List<MappedPart> maps = maps(shown, frame);
    if (maps.isEmpty()) {
      Found found = new Found(MOST_ITEMS);
      collect(shown, frame, 0, found);
      return new Body(found.items, List.of(), found.areTooMany());
    }
    MappedPart first = maps.get(0);
    if (maps.size() == 1 && first.items.size() == 1 && isSwept(first.items.get(0))) {
      return new Body(List.of(new Item(first.items.get(0), first.frame)), List.of(), false);
    }
    return new Body(List.of(), maps, false);
  }

  /** True for what is measured faster than looked up. */
  private static boolean isSwept(IfcRecord item) {
    return item.is("IfcSweptAreaSolid") || item.is("IfcSweptDiskSolid");
  }

  /** The items of maps that lie in other frames than in the world; null if they are too many. */
  public @Nullable List<Item> items(List<MappedPart> maps, List<Frame> frames) {
    Found found = new Found(MOST_ITEMS);
    for (int i = 0; i < maps.size(); i++) {
      collect(maps.get(i).items, frames.get(i), 1, found);
    }
    return found.areTooMany() ? null : found.items;
  }

  /** The maps among items; none if something else is there too. */
  private List<MappedPart> maps(List<IfcRecord> items, Frame frame) {
    List<MappedPart> maps = new ArrayList<>(1);
    for (IfcRecord item : items) {
      if (!item.is("IfcMappedItem") || maps.size() > MOST_ITEMS) {
        return List.of();
      }
      MappedPart map = mapped(item, frame);
      if (map != null) {
        maps.add(map);
      }
    }
    return maps;
  }

  /** Items collected so far, and how many records that took. */
  private static final class Found {
    final List<Item> items = new ArrayList<>();
    private final int most;
    private int visits;

    Found(int most) {
      this.most = most;
    }

    void visit() {
      visits++;
    }

    boolean areTooMany() {
      return visits > most;
    }
  }

  /** The representations called Body, then all others that may be one. */
  public static List<IfcRecord> representations(IfcRecord product) {
    IfcRecord shape = product.ref("Representation");
    List<IfcRecord> bodies = new ArrayList<>();
    List<IfcRecord> others = new ArrayList<>();
    for (IfcRecord representation :
        shape == null ? List.<IfcRecord>of() : shape.refs("Representations")) {
      String identifier = lower(representation.text("RepresentationIdentifier"));
      boolean flat = NO_BODY_TYPES.contains(lower(representation.text("RepresentationType")));
      boolean body = identifier.equals("body");
      if (flat ? body && shows(representation, SOLIDS, 0) : !NO_BODIES.contains(identifier)) {
        (body ? bodies : others).add(representation);
      }
    }
    bodies.addAll(others);
    return bodies.subList(0, Math.min(bodies.size(), MAX_CANDIDATES));
  }

  /** True if nothing but a box around the product stands for it. */
  public static boolean isOnlyBoxed(IfcRecord product) {
    IfcRecord shape = product.ref("Representation");
    for (IfcRecord representation :
        shape == null ? List.<IfcRecord>of() : shape.refs("Representations")) {
      if (shows(representation, BOX, 0)) {
        return true;
      }
    }
    return false;
  }

  /** True if an item of a representation is of one of some classes, also through a map. */
  private static boolean shows(IfcRecord representation, List<String> classes, int nesting) {
    for (IfcRecord item : representation.refs("Items")) {
      for (String entity : classes) {
        if (item.is(entity)) {
          return true;
        }
      }
      IfcRecord map = item.is("IfcMappedItem") ? item.ref("MappingSource") : null;
      IfcRecord source = map == null ? null : map.ref("MappedRepresentation");
      if (source != null && nesting < MAX_NESTING) {
        return shows(source, classes, nesting + 1);
      }
    }
    return false;
  }

  private static String lower(@Nullable String text) {
    return text == null ? "" : text.trim().toLowerCase(Locale.ROOT);
  }

  private void collect(List<IfcRecord> shown, Frame frame, int nesting, Found into) {
    for (IfcRecord item : shown) {
      into.visit();
      if (into.areTooMany()) {
        return;
      }
      if (!item.is("IfcMappedItem")) {
        into.items.add(new Item(item, frame));
        continue;
      }
      MappedPart map = nesting < MAX_NESTING ? mapped(item, frame) : null;
      if (map != null) {
        collect(map.items, map.frame, nesting + 1, into);
      }
    }
  }

  /** Placement x mapping target x mapping origin, as other open readers do it; null if broken. */
  private @Nullable MappedPart mapped(IfcRecord item, Frame frame) {
    IfcRecord map = item.ref("MappingSource");
    Frame target = coordinates.operator(item.ref("MappingTarget"));
    Frame origin = map == null ? null : coordinates.axes(map, "MappingOrigin").frame();
    IfcRecord source = map == null ? null : map.ref("MappedRepresentation");
    return target == null || origin == null || source == null
        ? null
        : new MappedPart(
            source.id(),
            source.refs("Items"),
            target.times(origin),
            frame.times(target).times(origin));
  }
}
