package org.lagwright.ifc.extract.text;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.lagwright.ifc.model.Property;
import org.lagwright.ifc.model.Section;

/** Thicknesses of insulation as properties state them and as bodies show them. */
public final class Thicknesses {

  /** No pipe or duct of a building is insulated thicker. Common practice, no source. */
  private static final double IMPOSSIBLE_M = 0.5;

  /** Nor thinner: public files write 1 of whatever unit for none. */
  private static final double THINNEST_M = 0.002;

  /** Less than this is not even a coat of paint, but a figure for nothing, such as 1E-10. */
  private static final double NOTHING_M = 1e-5;

  /** A bare figure in a file in feet that makes more than this may as well be inches. */
  private static final double MOST_BARE_FEET_M = 0.1;

  /** One in a file in inches that makes more than this may as well be millimetres. */
  private static final double MOST_BARE_INCHES_M = 0.25;

  /** Likewise in centimetres: of 8 mm and less there is hardly any insulation. */
  private static final double MOST_BARE_CENTIMETRES_M = 0.085;

  private static final double CENTIMETRE_M = 0.01;

  /** From here on a figure stands for nothing, such as 1E30. Less may be millimetres as metres. */
  private static final double SENTINEL_M = 1000;

  /** Two figures for one thickness: rounding of drawn sizes, and pipes drawn by nominal size. */
  private static final double SAME_M = 0.001;

  private static final double SAME = 0.05;

  private Thicknesses() {}

  /** True if insulation of this thickness in metres is made. */
  public static boolean isPossible(double thicknessM) {
    return thicknessM >= THINNEST_M && thicknessM < IMPOSSIBLE_M;
  }

  /** True for coats, foils and sheets. */
  public static boolean isThin(double thicknessM) {
    return thicknessM < THINNEST_M;
  }

  /** True if two thicknesses in metres are one. */
  public static boolean same(double aM, double bM) {
    return Math.abs(aM - bM) <= Math.max(SAME_M, SAME * Math.max(aM, bM));
  }

  /** True for two thicknesses of insulation, none of them a coat, that are not the same. */
  public static boolean differ(@Nullable Double aM, @Nullable Double bM) {
    return aM != null && bM != null && !isThin(aM) && !isThin(bM) && !same(aM, bM);
  }

  /**
   * Properties that state a thickness above zero, possible or not, and texts with figures that
   * cannot be read as one. Zero, figures below it, nines, text such as 'none' and figures beyond
   * all measure stand for nothing known.
   */
  public static List<Property> stated(
      List<Property> properties, PropertyNames.Role role, double lengthUnitM) {
    List<Property> stated = new ArrayList<>();
    for (Property p : properties) {
      if (answers(p, role) && isStated(p, lengthUnitM)) {
        stated.add(p);
      }
    }
    return stated;
  }

  private static boolean isStated(Property p, double lengthUnitM) {
    double thicknessM = metres(p, lengthUnitM);
    boolean figure = thicknessM > NOTHING_M && thicknessM < SENTINEL_M && !isNines(p.text());
    boolean noNumber = p.number() == null || areSeveral(p.text());
    boolean unread = thicknessM == 0 && noNumber && hasFigure(p.text());
    return (figure || unread) && !(PropertyLengths.offsetM(p, lengthUnitM) < 0);
  }

  /** A length that is called insulation is its thickness. */
  private static boolean answers(Property p, PropertyNames.Role role) {
    if (PropertyNames.answers(p, role)) {
      return true;
    }
    if (role != PropertyNames.Role.INSULATION_THICKNESS) {
      return false;
    }
    boolean isLength = p.number() != null && PropertyLengths.isTyped(p);
    boolean isCalledInsulation =
        PropertyNames.answers(p, PropertyNames.Role.INSULATION_MATERIAL)
            || PropertyNames.answers(p, PropertyNames.Role.INSULATION_OR_SHUT_OFF);
    return isInSetOfInsulation(p) || (isLength && isCalledInsulation);
  }

  /** A thickness in a set of properties that is called insulation. */
  private static boolean isInSetOfInsulation(Property p) {
    return PropertyNames.answers(p, PropertyNames.Role.COVERING_THICKNESS)
        && !PropertyNames.answers(p, PropertyNames.Role.WIDTH)
        && Words.isInsulation(p.set())
        && !Words.isLining(p.set());
  }

  /** True if a property may state the thickness of insulation by the set it is in; cheap. */
  public static boolean anyInSetOfInsulation(List<Property> properties) {
    for (int i = 0; i < properties.size(); i++) {
      if (isInSetOfInsulation(properties.get(i))) {
        return true;
      }
    }
    return false;
  }

  /** 9999 and the like, which some write for nothing. */
  private static boolean isNines(String text) {
    int nines = 0;
    for (int i = 0; i < text.length(); i++) {
      char c = text.charAt(i);
      if (c == '9') {
        nines++;
      } else if (c != '.' && c != ',' && c != '0') {
        return false;
      }
    }
    return nines > 2;
  }

  /** True for the members of a list that are not all the same, of which none is the thickness. */
  private static boolean areSeveral(String text) {
    if (text.indexOf(',') < 0) {
      return false;
    }
    double[] figures = PropertyLengths.leadingNumbers(text);
    boolean differ = false;
    for (double figure : figures) {
      if (!Double.isFinite(figure)) {
        return false;
      }
      differ |= figure != figures[0];
    }
    return differ;
  }

  private static boolean hasFigure(String text) {
    for (int i = 0; i < text.length(); i++) {
      char c = text.charAt(i);
      boolean fraction = c > 127 && Character.getType(c) == Character.OTHER_NUMBER;
      if ((c >= '1' && c <= '9') || fraction) {
        return true;
      }
    }
    return false;
  }

  /** The first thickness that insulation can have. */
  public static Optional<Property> firstPossible(List<Property> stated, double lengthUnitM) {
    for (Property p : stated) {
      if (isPossible(metres(p, lengthUnitM)) && !mayBeOtherUnit(p, lengthUnitM)) {
        return Optional.of(p);
      }
    }
    return Optional.empty();
  }

  /**
   * A foot of insulation is as unlikely as an inch is usual, and ten inches of it are as unlikely
   * as ten millimetres are usual; so are thirteen centimetres.
   */
  private static boolean mayBeOtherUnit(Property p, double lengthUnitM) {
    boolean centimetres = Math.abs(lengthUnitM - CENTIMETRE_M) < NOTHING_M;
    if (!centimetres && !InchSizes.isUnit(lengthUnitM)) {
      return false;
    }
    boolean feet = Math.abs(lengthUnitM - InchSizes.METRES_PER_FOOT) < NOTHING_M;
    double mostInchesM = feet ? MOST_BARE_FEET_M : MOST_BARE_INCHES_M;
    double asWrittenM = PropertyLengths.offsetM(p, lengthUnitM);
    boolean bare = asWrittenM != PropertyLengths.offsetM(p, 1);
    return bare
        && asWrittenM > (centimetres ? MOST_BARE_CENTIMETRES_M : mostInchesM)
        && asWrittenM < IMPOSSIBLE_M;
  }

  /**
   * The figure in metres, 0 if it is none. Bare numbers too large to be metres are millimetres; of
   * a text with more words the only figure counts, if it has a unit, or the only one in
   * millimetres. Of several none counts.
   */
  public static double metres(Property property, double lengthUnitM) {
    if (areSeveral(property.text())) {
      return 0;
    }
    double asWritten = PropertyLengths.lengthM(property, lengthUnitM).orElse(0.0);
    if (asWritten == 0 && property.number() == null) {
      double onlyM = Words.tellsOfLayers(property.text()) ? 0 : FigureCursor.onlyM(property.text());
      return onlyM > 0 ? onlyM : WordedThickness.metres(property.text()).orElse(0.0);
    }
    if (asWritten < IMPOSSIBLE_M) {
      return asWritten;
    }
    if (PropertyLengths.isTyped(property)) {
      double namedM = PropertyLengths.asNamedM(property);
      return namedM > 0 && namedM < IMPOSSIBLE_M ? namedM : asWritten;
    }
    return asWritten * 0.001 / lengthUnitM;
  }

  /** How much thicker one section is than another all round; empty if not evenly, or thinner. */
  public static Optional<Double> between(Section inner, Section outer) {
    List<Double> sides = new ArrayList<>();
    if (inner instanceof Section.Round a && outer instanceof Section.Round b) {
      sides.add((b.outsideDiameterM() - a.outsideDiameterM()) / 2);
    } else if (inner instanceof Section.Rectangular a && outer instanceof Section.Rectangular b) {
      addSides(a.widthM(), a.heightM(), b.widthM(), b.heightM(), sides);
    } else if (inner instanceof Section.Oval a && outer instanceof Section.Oval b) {
      addSides(a.widthM(), a.heightM(), b.widthM(), b.heightM(), sides);
    }
    if (sides.isEmpty() || !(sides.get(0) > 0)) {
      return Optional.empty();
    }
    for (double side : sides) {
      if (!(Math.abs(side - sides.get(0)) <= SAME_M)) {
        return Optional.empty();
      }
    }
    return Optional.of(sides.get(0));
  }

  /** A section without what lies around it; null if nothing is left. */
  public static @Nullable Section off(Section section, double thicknessM) {
    double byM = 2 * thicknessM;
    if (section instanceof Section.Round r) {
      return r.outsideDiameterM() > byM ? new Section.Round(r.outsideDiameterM() - byM) : null;
    }
    if (section instanceof Section.Rectangular r) {
      return Math.min(r.widthM(), r.heightM()) > byM
          ? new Section.Rectangular(r.widthM() - byM, r.heightM() - byM)
          : null;
    }
    Section.Oval oval = (Section.Oval) section;
    return Math.min(oval.widthM(), oval.heightM()) > byM
        ? new Section.Oval(oval.widthM() - byM, oval.heightM() - byM)
        : null;
  }

  /** Which side is the width differs between a duct and its covering where it stands upright. */
  private static void addSides(double w, double h, double outerW, double outerH, List<Double> to) {
    to.add((Math.max(outerW, outerH) - Math.max(w, h)) / 2);
    to.add((Math.min(outerW, outerH) - Math.min(w, h)) / 2);
  }
}
