package org.lagwright.ifc.extract.measure;

import java.util.List;
import org.lagwright.ifc.extract.draft.Draft;
import org.lagwright.ifc.geometry.shape.Shape;
import org.lagwright.ifc.model.Form;
import org.lagwright.ifc.model.Measured;
import org.lagwright.ifc.model.Section;

/**
 * Tells flanges from couplings where nothing names them. Flanges of steel pipes are 1.3 (DN 600) to
 * 4.5 times (DN 15) as wide as the pipe and up to a quarter as thick as they are wide (EN 1092-1,
 * types 01 and 05, PN 6 to PN 40, from memory); a socket is longer than half its width. Frames at
 * the ends of ducts are angles of 20 to 40 mm (common practice, no source).
 */
final class Discs {

  /** A disc is at most so thick against its own width. */
  private static final double THICKEST = 0.25;

  /** A round flange is at least so wide against its pipe; sockets are narrower. */
  private static final double LEAST_WIDER = 1.25;

  /** A frame stands out at each side of a duct by at least so much, metres. */
  private static final double LEAST_FRAME_M = 0.01;

  private Discs() {}

  /**
   * True if a straight body is a thin disc or frame that stands out around its line.
   *
   * @param met the sizes of the line
   */
  static boolean isOne(Draft draft, List<Section> met) {
    Shape shape = draft.shape();
    Measured<Section> body = shape.section();
    Measured<Double> lengthM = shape.lengthM();
    if (shape.form() != Form.STRAIGHT || body == null || lengthM == null || met.isEmpty()) {
      return false;
    }
    boolean thin = lengthM.value() <= THICKEST * body.value().smallestSideM();
    for (Section line : met) {
      thin &= standsOut(body.value(), line);
    }
    return thin;
  }

  private static boolean standsOut(Section body, Section line) {
    if (body instanceof Section.Round disc && line instanceof Section.Round pipe) {
      boolean wider = disc.outsideDiameterM() > LEAST_WIDER * pipe.outsideDiameterM();
      return wider || isFrame(body, line);
    }
    return isFrame(body, line);
  }

  private static boolean isFrame(Section body, Section line) {
    return body.smallestSideM() >= line.smallestSideM() + 2 * LEAST_FRAME_M
        && body.largestSideM() >= line.largestSideM() + 2 * LEAST_FRAME_M;
  }
}
