package org.lagwright.takeoff.measure;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import org.lagwright.ifc.model.Form;
import org.lagwright.ifc.model.MepElement;
import org.lagwright.ifc.model.Section;

/**
 * The size of an element as lines show it, and as they are sorted.
 *
 * @param words {@code DN50 / 60.3 mm}, {@code 300 x 200 mm}, {@code d 315 mm}, {@code 60.3 / 33.7
 *     mm}
 * @param sidesMm the figures in it, for sorting
 */
public record Size(String words, List<Double> sidesMm) implements Comparable<Size> {

  private static final Comparator<Section> LARGEST_FIRST =
      Comparator.comparingDouble(Section::largestSideM)
          .thenComparingDouble(Section::perimeterM)
          .reversed();

  private static final Comparator<Size> BY_FIGURES =
      (one, other) -> {
        int common = Math.min(one.sidesMm.size(), other.sidesMm.size());
        for (int i = 0; i < common; i++) {
          int order = Double.compare(one.sidesMm.get(i), other.sidesMm.get(i));
          if (order != 0) {
            return order;
          }
        }
        return Integer.compare(one.sidesMm.size(), other.sidesMm.size());
      };

  public Size {
    sidesMm = List.copyOf(sidesMm);
  }

  /**
   * The section that decides the thickness: the one read, else the largest end.
   *
   * @return empty where neither is known
   */
  public static Optional<Section> findDecidingSection(MepElement element) {
    if (element.section() != null) {
      return Optional.of(element.section().value());
    }
    return element.ends().stream().min(LARGEST_FIRST);
  }

  /** The size of an element, empty where no section is known. */
  public static Optional<Size> find(MepElement element) {
    return findDecidingSection(element).map(section -> of(element, section));
  }

  private static Size of(MepElement element, Section section) {
    boolean duct = isDuct(element, section);
    List<Section> ends = sortedEnds(element);
    List<String> words = ends.stream().map(end -> words(end, duct)).toList();
    if (words.stream().distinct().count() > 1) {
      String joined = String.join(" / ", words);
      return new Size(joined + " mm", ends.stream().flatMap(e -> sides(e).stream()).toList());
    }
    String nominal =
        element.nominalSize() == null || duct ? "" : element.nominalSize().strip() + " / ";
    return new Size(nominal + words(section, duct) + " mm", sides(section));
  }

  private static boolean isDuct(MepElement element, Section section) {
    return switch (element.kind()) {
      case DUCT_SEGMENT, DUCT_FITTING -> true;
      case PIPE_SEGMENT, PIPE_FITTING, VALVE -> false;
      default -> !(section instanceof Section.Round);
    };
  }

  /** Larger ends first; of a tee or lateral the run before the branch. */
  private static List<Section> sortedEnds(MepElement element) {
    List<Section> ends = new ArrayList<>(element.ends());
    boolean branched = element.form() == Form.TEE || element.form() == Form.LATERAL;
    if (branched && ends.size() == 3) {
      ends.subList(0, 2).sort(LARGEST_FIRST);
    } else {
      ends.sort(LARGEST_FIRST);
    }
    return ends;
  }

  private static String words(Section section, boolean duct) {
    String figures = sides(section).stream().map(Size::plain).collect(Collectors.joining(" x "));
    if (section instanceof Section.Round) {
      return duct ? "d " + figures : figures;
    }
    return section instanceof Section.Oval ? "oval " + figures : figures;
  }

  private static List<Double> sides(Section section) {
    if (section instanceof Section.Rectangular r) {
      return List.of(millimetres(r.widthM()), millimetres(r.heightM()));
    }
    if (section instanceof Section.Oval o) {
      return List.of(millimetres(o.widthM()), millimetres(o.heightM()));
    }
    return List.of(millimetres(section.largestSideM()));
  }

  /** To a tenth of a millimetre, so that noise of an export makes no line of its own. */
  private static double millimetres(double lengthM) {
    return Math.round(lengthM * 10000) / 10.0;
  }

  private static String plain(double mm) {
    return BigDecimal.valueOf(mm)
        .setScale(1, RoundingMode.HALF_UP)
        .stripTrailingZeros()
        .toPlainString();
  }

  @Override
  public int compareTo(Size other) {
    int byFigures = BY_FIGURES.compare(this, other);
    return byFigures != 0 ? byFigures : words.compareTo(other.words);
  }
}
