package org.lagwright.report.templates;

import java.util.List;
import java.util.Locale;
import java.util.Set;
import org.lagwright.ifc.model.ElementKey;
import org.lagwright.takeoff.fitting.Making.LayerMaking;
import org.lagwright.takeoff.fitting.Piece;
import org.lagwright.takeoff.fitting.pattern.Curve;
import org.lagwright.takeoff.fitting.pattern.EndCut;
import org.lagwright.takeoff.fitting.pattern.FlatPanel;
import org.lagwright.takeoff.fitting.pattern.PieceShape;
import org.lagwright.takeoff.fitting.pattern.TubePiece;

/**
 * One distinct piece with everywhere it is needed.
 *
 * @param number from 1, in the order of the takeoff
 * @param piece the piece; its count is that of the first use
 * @param making how the layer is made that it belongs to
 * @param uses where it is needed
 */
record Template(int number, Piece piece, LayerMaking making, List<Use> uses) {

  Template {
    uses = List.copyOf(uses);
  }

  /**
   * One element that needs it.
   *
   * @param element the element
   * @param count how many
   * @param run line, service, system and storey in words
   * @param assumed dimensions that nothing told
   */
  record Use(ElementKey element, String globalId, int count, String run, List<String> assumed) {}

  /** How many to cut for these elements. */
  int countFor(Set<ElementKey> elements) {
    return uses.stream().filter(use -> elements.contains(use.element())).mapToInt(Use::count).sum();
  }

  /** How many to cut in all. */
  int count() {
    return uses.stream().mapToInt(Use::count).sum();
  }

  /** The name used in file names and on drawings: {@code T007}. */
  String label() {
    return String.format(Locale.ROOT, "T%03d", number);
  }

  /** True where two figures say everything: a plain tube or a rectangle. */
  static boolean isPlain(PieceShape shape) {
    if (shape instanceof TubePiece tube) {
      return tube.start().equals(EndCut.SQUARE)
          && tube.end().equals(EndCut.SQUARE)
          && tube.holes().isEmpty();
    }
    return shape instanceof FlatPanel panel && panel.holes().isEmpty() && isRectangle(panel);
  }

  private static boolean isRectangle(FlatPanel panel) {
    Curve outline = panel.outline();
    var box = panel.pattern().bounds();
    return outline.vertices().size() == 4
        && Math.abs(panel.areaM2() - box.widthM() * box.heightM()) < 1e-9;
  }
}
