package org.lagwright.takeoff.fitting;

import java.util.List;

/**
 * Makes covers over bodies and joints whose own dimensions models do not give: they are assumed
 * from the pipe by the limits of the pack.
 */
final class BodyMaker {

  private final LayerOn on;
  private final Limits limits;
  private final double pipeM;
  private final double lengthM;
  private final double flangeM;

  BodyMaker(FittingShape shape, LayerOn on, Limits limits) {
    this.on = on;
    this.limits = limits;
    this.pipeM = shape.section().largestSideM();
    this.lengthM = shape.lengthM();
    this.flangeM = shape.flangeM();
  }

  /** The cover, without pieces where the method makes none. */
  Cover make(Method method) {
    return switch (method) {
      case VALVE_BOX, REMOVABLE_VALVE_BOX -> valveBox();
      case BODY_BOX -> box(bodyM(), Math.max(lengthM, pipeM)).cylinder(on);
      case RECTANGULAR_BOX -> box(flangeM, Math.max(lengthM, pipeM)).rectangular(on, flangeM);
      case FLANGE_BOX, REMOVABLE_FLANGE_BOX -> flangeBox();
      case SLEEVE -> sleeve();
      case CAP_WITH_DISC -> cap();
      default -> new Cover(List.of(), 0, 0);
    };
  }

  private double bodyM() {
    return pipeM + limits.metres("bodyPlusMm");
  }

  /** A box over a body of this diameter; layers below it are wrapped round the body too. */
  private BoxCover box(double diameterM, double lengthM) {
    double belowM = 2 * on.belowM();
    double boreM = Math.max(diameterM, pipeM + 2 * on.wallM()) + belowM;
    return new BoxCover(boreM, lengthM + belowM, Math.min(pipeM + 2 * on.totalM(), boreM * 0.98));
  }

  private Cover valveBox() {
    double boreM = flangeM;
    double bodyLengthM = Math.max(lengthM, pipeM) + 2 * limits.metres("boltRoomMm");
    BoxCover box = box(boreM, bodyLengthM);
    return box.withNeck(
        on,
        limits.number("bonnetFactor") * box.boreM(),
        limits.number("bonnetHeightFactor") * box.boreM());
  }

  private Cover flangeBox() {
    double insideM = limits.metres("flangePairMm") + 2 * limits.metres("boltRoomMm");
    return box(flangeM, insideM).cylinder(on);
  }

  private Cover sleeve() {
    double overM = Math.max(lengthM, limits.metres("bodyPlusMm")) + 2 * limits.metres("overlapMm");
    double boreM = pipeM + 2 * on.totalM();
    return new BoxCover(boreM, overM, boreM * 0.98).sleeve(on);
  }

  private Cover cap() {
    double overM = lengthM > 0 ? lengthM : pipeM / 2;
    return new BoxCover(pipeM + 2 * on.belowM(), overM, pipeM).cap(on);
  }
}
