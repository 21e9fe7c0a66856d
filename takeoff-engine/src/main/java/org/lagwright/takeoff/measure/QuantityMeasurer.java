package org.lagwright.takeoff.measure;

import java.util.List;
import java.util.Optional;
import org.lagwright.ifc.model.Form;
import org.lagwright.ifc.model.MepElement;
import org.lagwright.ifc.model.Section;
import org.lagwright.takeoff.Quantities;
import org.lagwright.takeoff.fitting.CentreLine;
import org.lagwright.takeoff.fitting.Making;

/**
 * Net quantities along the centre line: area = outer girth of the insulation x centre line, volume
 * = cross-section of the insulation x centre line.
 *
 * <p>Exact for straight pieces. For bends it is Pappus' theorem, exact while the insulation does
 * not reach the axis of the bend; on tighter bends it stays the usual way to measure. Reducers and
 * transitions take the mean of both ends, which leaves out the slope. What has branches, or no
 * centre line that was read, counts as a piece without area and volume. Where pieces are known, see
 * {@link #isMeasuredByPieces}.
 */
public final class QuantityMeasurer {

  private QuantityMeasurer() {}

  /** True where an element is measured in metres; all others are counted. */
  public static boolean isMeasuredInMetres(MepElement element) {
    return element.kind().isSegment();
  }

  /**
   * True where area and volume are those of the pieces: what has branches, changes its section,
   * closes an end, or is wider than its pipe. Straights and bends are measured along their centre
   * line, whatever pieces they are made of.
   */
  public static boolean isMeasuredByPieces(MepElement element, Making making) {
    return !isMeasuredInMetres(element) && element.form() != Form.BEND && making.isMeasured();
  }

  /**
   * What an element contributes.
   *
   * @param section bare section
   * @param thicknessM total thickness of insulation, metres
   * @throws IllegalArgumentException if a segment has no length
   */
  public static Quantities measure(MepElement element, Section section, double thicknessM) {
    if (isMeasuredInMetres(element)) {
      if (element.lengthM() == null) {
        throw new IllegalArgumentException("a segment without length cannot be measured");
      }
      double lengthM = element.lengthM().value();
      Envelope envelope = Envelope.around(section, thicknessM);
      return along(envelope, lengthM, lengthM, 0);
    }
    Optional<CentreLine> centreLine = CentreLine.of(element);
    if (centreLine.isEmpty()) {
      return new Quantities(0, 1, 0, 0);
    }
    return along(envelope(element, section, thicknessM), centreLine.get().lengthM(), 0, 1);
  }

  private static Envelope envelope(MepElement element, Section section, double thicknessM) {
    List<Section> ends = element.ends();
    boolean changes = element.form() == Form.REDUCER || element.form() == Form.TRANSITION;
    if (changes && ends.size() == 2) {
      return Envelope.around(ends.get(0), thicknessM)
          .meanWith(Envelope.around(ends.get(1), thicknessM));
    }
    return Envelope.around(section, thicknessM);
  }

  private static Quantities along(
      Envelope envelope, double centreLineM, double lengthM, int pieces) {
    return new Quantities(
        lengthM,
        pieces,
        envelope.outerPerimeterM() * centreLineM,
        envelope.ringAreaM2() * centreLineM);
  }
}
