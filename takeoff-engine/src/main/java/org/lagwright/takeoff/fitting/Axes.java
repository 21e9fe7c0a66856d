package org.lagwright.takeoff.fitting;

import java.util.List;
import java.util.Objects;
import org.lagwright.ifc.model.Section;
import org.lagwright.takeoff.fitting.pattern.SaddleHole;

/**
 * Lengths along the axes of an element, for methods of measurement that go through fittings.
 *
 * @param throughM along the axes: the arc of a bend, run and branch of a tee from their crossing,
 *     the length of bodies; metres, 0 where nothing tells
 * @param cornersM the same with bends to the crossing of their centre lines, metres
 * @param footsM2 for each branch the part of the outer surface of the run that it stands on, square
 *     metres
 */
public record Axes(double throughM, double cornersM, List<Double> footsM2) {

  public Axes {
    footsM2 = List.copyOf(footsM2);
  }

  /**
   * The axes of a shape.
   *
   * @param totalM thickness of all layers, metres
   */
  static Axes of(FittingShape shape, double totalM) {
    return switch (shape.form()) {
      case BEND -> bend(shape);
      case TEE, LATERAL -> tee(shape, Objects.requireNonNull(shape.tee()), totalM);
      case CROSS, WYE -> junction(shape, totalM);
      default -> new Axes(shape.lengthM(), shape.lengthM(), List.of());
    };
  }

  private static Axes bend(FittingShape shape) {
    double arcM = shape.bendRadiusM() * shape.angleRad();
    boolean corner = shape.angleRad() < Math.toRadians(179);
    double cornersM = corner ? 2 * shape.bendRadiusM() * Math.tan(shape.angleRad() / 2) : arcM;
    return new Axes(arcM, cornersM, List.of());
  }

  private static Axes tee(FittingShape shape, FittingAxes.Tee tee, double totalM) {
    double lengthM = tee.startM() + tee.endM() + tee.branchM();
    double footM2 = footM2(tee.run(), tee.branch(), tee.angleRad(), tee.offsetM(), totalM);
    return new Axes(lengthM, lengthM, List.of(footM2));
  }

  /** Two branches stand on the run of a cross; the pieces of a wye stand on nothing. */
  private static Axes junction(FittingShape shape, double totalM) {
    double lengthM = shape.legs().stream().mapToDouble(JunctionCover.Leg::lengthM).sum();
    if (shape.legs().size() != 4) {
      return new Axes(lengthM, lengthM, List.of());
    }
    Section branch = shape.others().isEmpty() ? shape.section() : shape.others().get(0);
    double footM2 = footM2(shape.section(), branch, Math.PI / 2, 0, totalM);
    return new Axes(lengthM, lengthM, List.of(footM2, footM2));
  }

  private static double footM2(
      Section run, Section branch, double angleRad, double offsetM, double totalM) {
    if (run instanceof Section.Round a && branch instanceof Section.Round b) {
      double runM = a.outsideDiameterM() / 2 + totalM;
      double awayM = Math.min(Math.abs(offsetM), runM / 2);
      double branchM = Math.min(b.outsideDiameterM() / 2 + totalM, runM - awayM);
      return new SaddleHole(runM, branchM, awayM, angleRad, runM, 0).areaM2();
    }
    return (width(branch) + 2 * totalM) * (height(branch) + 2 * totalM);
  }

  private static double width(Section section) {
    return section instanceof Section.Rectangular r ? r.widthM() : section.largestSideM();
  }

  private static double height(Section section) {
    return section instanceof Section.Rectangular r ? r.heightM() : section.largestSideM();
  }
}
