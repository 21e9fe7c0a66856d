package org.lagwright.ifc.extract.measure;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.lagwright.ifc.extract.draft.Draft;
import org.lagwright.ifc.extract.draft.SizeTexts;
import org.lagwright.ifc.extract.text.Tolerances;
import org.lagwright.ifc.model.How;
import org.lagwright.ifc.model.Measured;
import org.lagwright.ifc.model.Section;

/**
 * The sizes of the ends of a fitting that anything tells of: drawn, met, or written.
 *
 * @param stated sizes of all ends that properties state
 */
record KnownEnds(
    Draft draft,
    List<Neighbours.Joint> joints,
    StatedEnds statedEnds,
    List<Measured<List<Section>>> stated) {

  /**
   * The largest of the ends that properties and texts state, of each statement; where all of them
   * are drawn and one is the size, that one, as it may be longer around and less wide.
   */
  List<Measured<Section>> largestStated(@Nullable Section size) {
    List<Measured<Section>> largest = new ArrayList<>(stated.size());
    for (Measured<List<Section>> each : stated) {
      Section section = leading(each.value(), size).orElseThrow();
      largest.add(Measured.of(section, each.how(), each.evidence()));
    }
    for (SizeTexts.Text text : SizeTexts.of(draft)) {
      Optional<Section> section = leading(statedEnds.inText(draft, text.value()), size);
      if (section.isPresent()) {
        largest.add(Measured.of(section.get(), How.TEXT, text.evidence()));
      }
    }
    return largest;
  }

  private Optional<Section> leading(List<Section> ends, @Nullable Section size) {
    boolean asDrawn = size != null && isAmong(ends, size);
    List<Section> drawn = FittingEnds.sections(draft.shape().ends());
    for (Section end : ends) {
      asDrawn &= isAmong(drawn, end);
    }
    return asDrawn ? Optional.ofNullable(size) : largest(ends);
  }

  /** True if one of the ends has a size, as far as something tells. */
  boolean haveOne(Section section) {
    return isAmong(all(), section);
  }

  private static boolean isAmong(List<Section> ends, Section section) {
    for (Section end : ends) {
      if (Tolerances.sameSection(end, section)) {
        return true;
      }
    }
    return false;
  }

  /** True if one of the ends may have a nominal size, as far as something tells. */
  boolean mayHaveOne(Nominal nominal) {
    for (Section end : all()) {
      if (nominal.mayBe(end)) {
        return true;
      }
    }
    return false;
  }

  private List<Section> all() {
    List<Section> known = new ArrayList<>(FittingEnds.sections(draft.shape().ends()));
    for (Neighbours.Joint joint : joints) {
      if (joint.known() != null) {
        known.add(joint.known().section());
      }
    }
    for (Measured<List<Section>> each : stated) {
      known.addAll(each.value());
    }
    for (SizeTexts.Text text : SizeTexts.of(draft)) {
      known.addAll(statedEnds.inText(draft, text.value()));
    }
    return known;
  }

  static Optional<Section> largest(List<Section> sections) {
    Section largest = null;
    for (Section section : sections) {
      largest = largest == null || FittingMeasurer.isLarger(section, largest) ? section : largest;
    }
    return Optional.ofNullable(largest);
  }
}
