package org.lagwright.ifc.extract;

import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.lagwright.ifc.geometry.Shape;
import org.lagwright.ifc.model.Evidence;
import org.lagwright.ifc.model.Form;
import org.lagwright.ifc.model.How;
import org.lagwright.ifc.model.Measured;
import org.lagwright.ifc.model.Property;

/** Angle and radius of bends, and the angle of laterals: every reading of them, and the choice. */
final class BendMeasurer {

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
    if (draft.form != Form.BEND && draft.form != Form.LATERAL) {
      return;
    }
    Shape made = joined != null && joined.form() == draft.form ? joined : null;
    draft.change().angleDeg = angle(draft, made);
    if (draft.form == Form.BEND) {
      draft.change().bendRadiusM = radius(draft, made);
      arc(draft);
    }
  }

  private @Nullable Measured<Double> angle(Draft draft, @Nullable Shape made) {
    Options<Double> options = new Options.Angles();
    if (draft.shape().form() == draft.form) {
      options.addAll(draft.shape().angleDeg());
    }
    options.addAll(made == null ? null : made.angleDeg());
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
    return options.choose();
  }

  /**
   * Angles typed as angles are in radians by now; bare numbers are degrees in every file we met.
   */
  private static Optional<Double> degrees(Property p) {
    Double number = p.number();
    boolean typed = p.measure() != null && p.measure().contains("PLANEANGLE");
    double deg =
        number == null
            ? PropertyNames.leadingNumber(p.text())
            : typed ? Math.toDegrees(number) : number;
    return deg > 0 && deg <= 180 ? Optional.of(deg) : Optional.empty();
  }

  private @Nullable Measured<Double> radius(Draft draft, @Nullable Shape made) {
    Options<Double> options = new Options.Lengths();
    if (draft.shape().form() == Form.BEND) {
      options.addAll(draft.shape().bendRadiusM());
    }
    options.addAll(made == null ? null : made.bendRadiusM());
    for (Property p : PropertyNames.listOf(draft.properties(), PropertyNames.Role.BEND_RADIUS)) {
      Optional<Double> radiusM = PropertyNames.lengthM(p, lengthUnitM);
      if (radiusM.isPresent()) {
        options.addStated(radiusM.get(), p, placeholders.contains(p));
      }
    }
    return options.choose();
  }

  /** The centre line of a bend that only joints or properties describe. */
  private static void arc(Draft draft) {
    if (draft.lengthM() == null && draft.angleDeg() != null && draft.bendRadiusM() != null) {
      double arcM = Math.toRadians(draft.angleDeg().value()) * draft.bendRadiusM().value();
      draft.change().lengthM =
          Measured.of(
              arcM,
              draft.bendRadiusM().how(),
              new Evidence(
                  draft.bendRadiusM().evidence().step(), "radius x angle", Sizes.metres(arcM)));
    }
  }
}
