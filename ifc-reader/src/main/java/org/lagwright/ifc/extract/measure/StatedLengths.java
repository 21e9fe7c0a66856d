package org.lagwright.ifc.extract.measure;

import java.util.List;
import java.util.Optional;
import org.lagwright.ifc.extract.draft.Draft;
import org.lagwright.ifc.extract.text.PropertyLengths;
import org.lagwright.ifc.extract.text.PropertyNames;
import org.lagwright.ifc.extract.text.Tolerances;
import org.lagwright.ifc.geometry.shape.Shape;
import org.lagwright.ifc.model.Evidence;
import org.lagwright.ifc.model.Form;
import org.lagwright.ifc.model.How;
import org.lagwright.ifc.model.Measured;
import org.lagwright.ifc.model.Property;
import org.lagwright.ifc.model.Section;

/** Lengths that properties and quantities state, as candidates beside what is drawn. */
final class StatedLengths {

  private static final String SIDE = "equals a side of the section";

  /** Nothing shorter is cut, and nothing in a building is as long in one piece. */
  private static final double SHORTEST_PIECE_M = 0.01;

  private static final double LONGEST_PIECE_M = 1000;

  /** Pipes and ducts come in bars and coils of this length at most. */
  private static final double LONGEST_BAR_M = 20;

  private final Placeholders placeholders;
  private final double lengthUnitM;

  StatedLengths(Placeholders placeholders, double lengthUnitM) {
    this.placeholders = placeholders;
    this.lengthUnitM = lengthUnitM;
  }

  void addTo(Options<Double> options, Draft draft) {
    boolean alone = draft.isSegment() && options.leading() == null;
    for (Property p : PropertyNames.listOf(draft.properties(), PropertyNames.Role.LENGTH)) {
      Optional<Double> lengthM = PropertyLengths.lengthBesideM(p, draft.properties(), lengthUnitM);
      if (lengthM.isPresent()) {
        addEither(options, p, lengthM.get(), alone, draft);
      }
    }
  }

  /**
   * A length that nobody would cut in the unit of the file, but would in the one that its name
   * says, or of a bare figure in millimetres, is taken in that; both stand as long as either may be
   * a piece.
   */
  private void addEither(
      Options<Double> options, Property p, double lengthM, boolean alone, Draft draft) {
    double otherM = isBar(lengthM) ? 0 : inOtherUnitM(p);
    Double leading = options.leading();
    boolean agrees = leading != null && Tolerances.sameLength(leading, lengthM);
    if (agrees || !isBar(otherM)) {
      add(options, p, lengthM, alone, draft);
      return;
    }
    add(options, p, otherM, alone, draft);
    if (alone && mayBePiece(lengthM)) {
      add(options, p, lengthM, alone, draft);
    } else {
      options.rule(lengthM, how(p), p.evidence(), "its unit is another one");
    }
  }

  private double inOtherUnitM(Property p) {
    double namedM = PropertyLengths.asNamedM(p);
    boolean bare = PropertyLengths.isBare(p) && BareFigures.isAsked(lengthUnitM);
    return bare ? PropertyLengths.figure(p) * 0.001 : namedM;
  }

  private static boolean isBar(double lengthM) {
    return lengthM >= SHORTEST_PIECE_M && lengthM <= LONGEST_BAR_M;
  }

  private static How how(Property p) {
    return p.quantity() ? How.QUANTITY_SET : How.PROPERTY;
  }

  /**
   * @param alone true if nothing is drawn that could contradict it
   */
  private void add(
      Options<Double> options, Property p, double lengthM, boolean alone, Draft draft) {
    How how = how(p);
    if (placeholders.contains(p)) {
      options.rule(lengthM, how, p.evidence(), "placeholder");
    } else if (isSideOfSection(draft, lengthM) || (alone && isDiameter(draft, lengthM))) {
      options.rule(lengthM, how, p.evidence(), SIDE);
    } else if (isArcAlone(draft, lengthM)) {
      options.rule(lengthM, how, p.evidence(), "arc of the bend without its straight ends");
    } else if (alone && PropertyLengths.isBare(p) && !mayBePiece(lengthM)) {
      options.rule(lengthM, how, p.evidence(), "its unit is not said, and no piece is so long");
    } else {
      options.add(lengthM, how, p.evidence());
    }
  }

  /** True for the arc of a bend that is drawn longer, with straight ends. */
  private static boolean isArcAlone(Draft draft, double lengthM) {
    Shape drawn = draft.shape();
    if (drawn.form() != Form.BEND
        || drawn.lengthM() == null
        || drawn.bendRadiusM() == null
        || drawn.angleDeg() == null) {
      return false;
    }
    double arcM = drawn.bendRadiusM().value() * Math.toRadians(drawn.angleDeg().value());
    return Tolerances.sameLength(arcM, lengthM)
        && !Tolerances.sameLength(drawn.lengthM().value(), lengthM);
  }

  private static boolean mayBePiece(double lengthM) {
    return lengthM >= SHORTEST_PIECE_M && lengthM <= LONGEST_PIECE_M;
  }

  /**
   * Some write the outside diameter as the length; of ducts pieces are as long as they are wide.
   */
  private static boolean isDiameter(Draft draft, double lengthM) {
    Measured<Section> section = draft.isDuct() ? null : draft.section();
    return section != null
        && (section.how() == How.PROPERTY || section.how() == How.QUANTITY_SET)
        && section.value() instanceof Section.Round round
        && Tolerances.sameLength(round.outsideDiameterM(), lengthM);
  }

  /** The two offsets of a transition across its axis, taken together. */
  void addEccentricity(Options<Double> options, Draft draft) {
    List<Property> offsets =
        PropertyNames.listOf(draft.properties(), PropertyNames.Role.ECCENTRICITY);
    double squaresM2 = 0;
    StringBuilder names = new StringBuilder();
    StringBuilder texts = new StringBuilder();
    for (Property p : offsets) {
      double offsetM = PropertyLengths.offsetM(p, lengthUnitM);
      squaresM2 += offsetM * offsetM;
      names.append(names.isEmpty() ? "" : ", ").append(p.name());
      texts.append(texts.isEmpty() ? "" : ", ").append(p.text());
    }
    if (!offsets.isEmpty() && Double.isFinite(squaresM2)) {
      Property first = offsets.get(0);
      options.add(
          Math.sqrt(squaresM2),
          How.PROPERTY,
          new Evidence(first.step(), first.set(), names.toString(), texts.toString()));
    }
  }

  /** Some exporters write a side of a duct as its length; only a drawn length can tell. */
  private static boolean isSideOfSection(Draft draft, double lengthM) {
    Measured<Double> drawn = draft.shape().lengthM();
    Measured<Section> section = draft.section();
    if (drawn == null || section == null || Tolerances.sameLength(drawn.value(), lengthM)) {
      return false;
    }
    return section.value() instanceof Section.Rectangular r
        ? Tolerances.sameLength(r.widthM(), lengthM) || Tolerances.sameLength(r.heightM(), lengthM)
        : Tolerances.sameLength(section.value().largestSideM(), lengthM);
  }
}
