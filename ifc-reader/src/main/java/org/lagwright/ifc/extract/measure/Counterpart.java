package org.lagwright.ifc.extract.measure;

import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.lagwright.ifc.extract.draft.Draft;
import org.lagwright.ifc.extract.text.PipeSizes;
import org.lagwright.ifc.extract.text.PropertyNames;
import org.lagwright.ifc.extract.text.PropertyNames.Role;
import org.lagwright.ifc.extract.text.Tolerances;
import org.lagwright.ifc.model.Property;
import org.lagwright.ifc.model.Section;

/**
 * What a property of an element should agree with: what is drawn, or where nothing is, what else is
 * stated.
 *
 * @param value in metres, or in degrees for an angle
 * @param agrees whether the property does
 */
record Counterpart(double value, boolean agrees) {

  /**
   * Null where there is nothing to hold the property against.
   *
   * @param role one of what the property may mean
   */
  static @Nullable Counterpart of(Role role, Property property, Draft draft) {
    Double number = property.number();
    if (number == null) {
      return null;
    }
    Double drawn = drawn(role, draft);
    return drawn != null
        ? new Counterpart(drawn, agree(role, number, drawn))
        : stated(role, property, number, draft);
  }

  private static @Nullable Counterpart stated(
      Role role, Property property, double number, Draft draft) {
    if (role == Role.OUTSIDE_DIAMETER) {
      Double nominalM = statedNominal(draft);
      return nominalM == null ? null : new Counterpart(nominalM, isOutsideOf(number, nominalM));
    }
    if (role == Role.LENGTH && !property.quantity()) {
      Double lengthM = quantityOfLength(draft);
      return lengthM == null ? null : new Counterpart(lengthM, sameLength(number, lengthM));
    }
    return null;
  }

  /** What is drawn, null if nothing is. */
  private static @Nullable Double drawn(Role role, Draft draft) {
    return switch (role) {
      case LENGTH -> drawnLength(draft);
      case WIDTH -> drawnWidth(draft);
      case HEIGHT -> drawnHeight(draft);
      case BEND_RADIUS -> drawnRadius(draft);
      case ANGLE -> drawnAngle(draft);
      default -> drawnDiameter(draft);
    };
  }

  private static boolean agree(Role role, double property, double drawn) {
    return switch (role) {
      case INSIDE_DIAMETER -> fitsInside(property, drawn);
      case ANGLE -> sameAngle(property, drawn);
      case NOMINAL -> nominal(property, drawn);
      default -> sameLength(property, drawn);
    };
  }

  private static @Nullable Double drawnLength(Draft draft) {
    return draft.shape().lengthM() == null ? null : draft.shape().lengthM().value();
  }

  private static @Nullable Double drawnDiameter(Draft draft) {
    return draft.shape().section() != null
            && draft.shape().section().value() instanceof Section.Round r
        ? r.outsideDiameterM()
        : null;
  }

  private static @Nullable Double drawnWidth(Draft draft) {
    return draft.shape().section() != null
            && draft.shape().section().value() instanceof Section.Rectangular r
        ? r.widthM()
        : null;
  }

  private static @Nullable Double drawnHeight(Draft draft) {
    return draft.shape().section() != null
            && draft.shape().section().value() instanceof Section.Rectangular r
        ? r.heightM()
        : null;
  }

  private static @Nullable Double drawnRadius(Draft draft) {
    return draft.shape().bendRadiusM() == null ? null : draft.shape().bendRadiusM().value();
  }

  private static @Nullable Double drawnAngle(Draft draft) {
    return draft.shape().angleDeg() == null ? null : draft.shape().angleDeg().value();
  }

  /** Where no diameter is drawn, the nominal size of a pipe tells whether the outside may be so. */
  private static @Nullable Double statedNominal(Draft draft) {
    List<Property> nominals =
        draft.isDuct() ? List.of() : PropertyNames.listOf(draft.properties(), Role.NOMINAL);
    for (Property p : nominals) {
      Optional<Double> mm = NominalSizes.figureMm(p);
      if (mm.isPresent()) {
        return mm.get() / 1000;
      }
    }
    return null;
  }

  /** Where no length is drawn, what the quantities of the piece itself say. */
  private static @Nullable Double quantityOfLength(Draft draft) {
    for (Property p : PropertyNames.listOf(draft.properties(), Role.LENGTH)) {
      if (p.quantity() && p.number() != null && p.number() > 0) {
        return p.number();
      }
    }
    return null;
  }

  private static boolean isOutsideOf(double property, double nominalM) {
    return PipeSizes.mayBe((int) Math.round(nominalM * 1000), diameterM(property));
  }

  /** A diameter may come in metres or as a bare number of millimetres. */
  private static double diameterM(double property) {
    return property < 5 ? property : property / 1000;
  }

  private static boolean fitsInside(double property, double drawnM) {
    double boreM = diameterM(property);
    return boreM <= drawnM * 1.02 && boreM > 0.5 * drawnM;
  }

  /** Written in degrees or radians. */
  private static boolean sameAngle(double property, double drawnDeg) {
    return Tolerances.sameAngle(property, drawnDeg)
        || Tolerances.sameAngle(Math.toDegrees(property), drawnDeg);
  }

  private static boolean sameLength(double property, double drawnM) {
    return Math.abs(property - drawnM) <= 0.02 * drawnM;
  }

  /** A nominal size may come in metres or as a bare number of millimetres. */
  private static boolean nominal(double property, double drawnM) {
    return PipeSizes.mayBe((int) Math.round(property < 5 ? property * 1000 : property), drawnM);
  }
}
