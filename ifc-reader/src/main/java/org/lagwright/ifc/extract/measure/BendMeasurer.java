package org.lagwright.ifc.extract.measure;

import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.lagwright.ifc.extract.draft.Draft;
import org.lagwright.ifc.extract.text.BendAngleInText;
import org.lagwright.ifc.extract.text.InWords;
import org.lagwright.ifc.extract.text.PipeSizes;
import org.lagwright.ifc.extract.text.PropertyLengths;
import org.lagwright.ifc.extract.text.PropertyNames;
import org.lagwright.ifc.extract.text.Sizes;
import org.lagwright.ifc.extract.text.Tolerances;
import org.lagwright.ifc.geometry.mesh.FlatSides;
import org.lagwright.ifc.geometry.shape.Shape;
import org.lagwright.ifc.model.Effect;
import org.lagwright.ifc.model.Evidence;
import org.lagwright.ifc.model.Form;
import org.lagwright.ifc.model.How;
import org.lagwright.ifc.model.Measured;
import org.lagwright.ifc.model.Property;
import org.lagwright.ifc.model.ReadFinding;
import org.lagwright.ifc.model.Section;

/** Angle and radius of bends, and the angle of laterals: every reading of them, and the choice. */
final class BendMeasurer {

  private static final double USUAL_STEP_DEG = 7.5;
  private static final double OTHER_STEP_DEG = 11.25;
  private static final double USUAL_WITHIN_DEG = 0.06;

  /** Larger figures without a unit are radii and sizes of ducts more often than angles. */
  private static final double LARGEST_BARE_DEG = 90;

  private static final double SAME_FIGURE_M = 0.0005;

  private final Placeholders placeholders;
  private final double lengthUnitM;

  BendMeasurer(Placeholders placeholders, double lengthUnitM) {
    this.placeholders = placeholders;
    this.lengthUnitM = lengthUnitM;
  }

  /**
   * @param joined what the joints make, null if they do not tell
   */
  void measure(Draft draft, @Nullable Shape joined) {
    if (draft.form() != Form.BEND && draft.form() != Form.LATERAL) {
      return;
    }
    Shape made = joined != null && joined.form() == draft.form() ? joined : null;
    draft.change().setAngleDeg(angle(draft, made));
    if (draft.form() == Form.BEND) {
      if (draft.angleDeg() == null) {
        draft.note(ReadFinding.ANGLE_UNKNOWN, Effect.NONE);
      }
      draft.change().setBendRadiusM(radius(draft, made));
      arc(draft);
    }
  }

  private @Nullable Measured<Double> angle(Draft draft, @Nullable Shape made) {
    Options<Double> options = new Options.Angles();
    boolean longWay = made != null && isLongWayRound(draft, made);
    options.addAll(made == null || !longWay ? null : made.angleDeg());
    if (draft.shape().form() == draft.form()) {
      options.addAll(draft.shape().angleDeg());
    }
    options.addAll(made == null || longWay ? null : made.angleDeg());
    for (Property p : PropertyNames.listOf(draft.properties(), PropertyNames.Role.ANGLE)) {
      Optional<Double> deg = degrees(p);
      if (deg.isPresent()) {
        options.addStated(deg.get(), p, placeholders.contains(p));
      }
    }
    for (String text : draft.names().all()) {
      Optional<Double> deg = Sizes.angleDeg(text);
      if (deg.isPresent()) {
        options.add(deg.get(), How.TEXT, new Evidence(draft.step(), "name", text));
      }
    }
    if (draft.form() == Form.BEND) {
      addBare(options, draft);
    }
    return options.choose();
  }

  /**
   * Names of types of bends give the angle as a bare figure too, unless that is the size. The own
   * name of what has a type may be a number.
   */
  private static void addBare(Options<Double> options, Draft draft) {
    for (String text : draft.names().ofTypeElseOwn()) {
      double deg = BendAngleInText.figure(text);
      if (isUsual(deg) && deg <= LARGEST_BARE_DEG && !mayBeSize(draft, deg)) {
        options.add(deg, How.TEXT, new Evidence(draft.step(), "name", text));
      }
    }
  }

  /** True for a figure that is the size of a bend, as 90 may be, or if that is not known. */
  private static boolean mayBeSize(Draft draft, double figure) {
    Measured<Section> section = draft.section();
    boolean own = section == null || isSizeOf(section.value(), figure);
    Measured<List<Section>> ends = draft.ends();
    for (Section end : ends == null ? List.<Section>of() : ends.value()) {
      own |= isSizeOf(end, figure);
    }
    return own;
  }

  private static boolean isSizeOf(Section section, double mm) {
    return Math.abs(section.largestSideM() - mm / 1000) < SAME_FIGURE_M
        || Math.abs(section.smallestSideM() - mm / 1000) < SAME_FIGURE_M
        || PipeSizes.has((int) mm, section);
  }

  /**
   * Angles typed as angles are in radians by now; bare numbers are degrees in every file we met,
   * unless a figure that small is an angle of the trade in radians. Texts may have their sign.
   */
  private static Optional<Double> degrees(Property p) {
    Double number = p.number();
    double deg = PropertyLengths.figure(p);
    if (number == null && Double.isNaN(deg)) {
      return Sizes.angleDeg(p.text());
    }
    boolean typed = p.measure() != null && p.measure().contains("PLANEANGLE");
    if (number != null && typed) {
      deg = isInDegrees(p, number) ? number : Math.toDegrees(number);
    } else if (isUsual(Math.toDegrees(deg))) {
      deg = Math.toDegrees(deg);
    }
    return deg > 0 && deg <= 180 ? Optional.of(deg) : Optional.empty();
  }

  /** More than half a turn in radians, as written: degrees in a file whose unit is the radian. */
  private static boolean isInDegrees(Property p, double radians) {
    return radians > Math.PI + 1e-6 && PropertyLengths.leadingNumber(p.text()) == radians;
  }

  /** Bends are sold in these steps; figures are rounded to two or three decimals. */
  private static boolean isUsual(double deg) {
    return deg <= 180 + USUAL_WITHIN_DEG
        && (isStep(deg, USUAL_STEP_DEG) || isStep(deg, OTHER_STEP_DEG));
  }

  private static boolean isStep(double deg, double stepDeg) {
    double steps = Math.rint(deg / stepDeg);
    return steps > 0 && Math.abs(deg - steps * stepDeg) < USUAL_WITHIN_DEG;
  }

  /**
   * True if the body is what the bend between its joints leaves of a full circle: drawn from end to
   * end the wrong way round. No bend turns by more than half a circle.
   *
   * @param made the bend that the joints make
   */
  static boolean isLongWayRound(Draft draft, Shape made) {
    Measured<Double> drawnDeg = draft.shape().angleDeg();
    Measured<Double> drawnM = draft.shape().bendRadiusM();
    Measured<Double> madeDeg = made.angleDeg();
    Measured<Double> madeM = made.bendRadiusM();
    return drawnDeg != null
        && drawnM != null
        && madeDeg != null
        && madeM != null
        && drawnDeg.value() > 180
        && Tolerances.sameAngle(drawnDeg.value(), 360 - madeDeg.value())
        && Tolerances.sameLength(drawnM.value(), madeM.value());
  }

  /**
   * True if the ends cannot tell the arc: the body follows none, or has straight ends beside it.
   *
   * @param made the bend that the joints make
   */
  static boolean isArcUntoldByEnds(Draft draft, Shape made) {
    return isWithoutArc(draft, made) || hasTangents(draft.shape(), made);
  }

  /**
   * True for an arc between two equal tangents that reach as far as a wider arc between the joints:
   * {@code length = r angle + 2 (R - r) tan(angle / 2)}.
   */
  private static boolean hasTangents(Shape drawn, Shape made) {
    Measured<Double> lengthM = drawn.lengthM();
    Measured<Double> arcM = drawn.bendRadiusM();
    Measured<Double> widestM = made.bendRadiusM();
    Measured<Double> angleDeg = made.angleDeg();
    if (lengthM == null || arcM == null || widestM == null || angleDeg == null) {
      return false;
    }
    double overM = widestM.value() - arcM.value();
    double angle = Math.toRadians(angleDeg.value());
    double reachM = arcM.value() * angle + 2 * overM * Math.tan(angle / 2);
    return overM > 0
        && !Tolerances.sameLength(widestM.value(), arcM.value())
        && Tolerances.sameLength(lengthM.value(), reachM);
  }

  /** True if the body turns but follows no arc. */
  private static boolean isWithoutArc(Draft draft, Shape made) {
    Shape drawn = draft.shape();
    return drawn.form() == Form.BEND
        ? drawn.bendRadiusM() == null
        : drawn.form() == Form.UNKNOWN
            && made.bendRadiusM() != null
            && !FlatSides.followArc(drawn, made);
  }

  private @Nullable Measured<Double> radius(Draft draft, @Nullable Shape made) {
    Options<Double> options = new Options.Lengths();
    if (draft.shape().form() == Form.BEND) {
      options.addAll(draft.shape().bendRadiusM());
    }
    options.addAll(made == null || isArcUntoldByEnds(draft, made) ? null : made.bendRadiusM());
    for (Property p : PropertyNames.listOf(draft.properties(), PropertyNames.Role.BEND_RADIUS)) {
      Optional<Double> radiusM = PropertyLengths.lengthM(p, lengthUnitM);
      if (radiusM.isPresent() && isOfASide(draft, radiusM.get(), options.leading())) {
        options.rule(radiusM.get(), How.PROPERTY, p.evidence(), "inside or outside of the bend");
      } else if (radiusM.isPresent()) {
        options.addStated(radiusM.get(), p, placeholders.contains(p));
      }
    }
    return options.choose();
  }

  /** Ducts are often ordered by the radius of their throat, not of their centre line. */
  private static boolean isOfASide(Draft draft, double radiusM, @Nullable Double centreM) {
    Measured<Section> section = draft.section();
    if (section == null || centreM == null) {
      return false;
    }
    double offM = Math.abs(radiusM - centreM);
    if (section.value() instanceof Section.Round r) {
      return Tolerances.sameLength(2 * offM, r.outsideDiameterM());
    }
    return section.value() instanceof Section.Rectangular r
        && (Tolerances.sameLength(2 * offM, r.widthM())
            || Tolerances.sameLength(2 * offM, r.heightM()));
  }

  /** The centre line of a bend that only joints or properties describe. */
  private static void arc(Draft draft) {
    if (draft.lengthM() == null && draft.angleDeg() != null && draft.bendRadiusM() != null) {
      double arcM = Math.toRadians(draft.angleDeg().value()) * draft.bendRadiusM().value();
      draft
          .change()
          .setLengthM(
              Measured.of(
                  arcM,
                  draft.bendRadiusM().how(),
                  new Evidence(
                      draft.bendRadiusM().evidence().step(),
                      "radius x angle",
                      InWords.metres(arcM))));
    }
  }
}
