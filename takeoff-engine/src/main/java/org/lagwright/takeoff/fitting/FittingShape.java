package org.lagwright.takeoff.fitting;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import org.lagwright.ifc.model.Candidate;
import org.lagwright.ifc.model.Form;
import org.lagwright.ifc.model.Measured;
import org.lagwright.ifc.model.MepElement;
import org.lagwright.ifc.model.Section;

/**
 * What making needs to know of one bare element: equal for elements that are covered alike.
 * Dimensions are rounded to a hundredth of a millimetre, angles to a thousandth of a degree, so
 * that noise of exports makes no pattern of its own.
 *
 * @param section of the run
 * @param others the other end of a reducer, the branch of a tee; empty where there is none
 * @param lengthM centre line of straights and bodies, 0 where unknown
 * @param flangeM diameter of flanges, read or assumed; 0 for what has none
 * @param bendRadiusM 0 where it is no bend or unknown
 * @param angleRad of a bend
 * @param level true where a bend lies level
 * @param tee axes of tees and laterals, null for others and where unknown
 * @param legs legs of crosses and wyes, empty for others and where unknown
 * @param offsetM distance of the axes of both ends
 * @param jointsStandOut threaded or grooved ends
 * @param swept a swept branch
 * @param assumed dimensions that nothing told, in words
 */
record FittingShape(
    Form form,
    boolean duct,
    Section section,
    List<Section> others,
    double lengthM,
    double flangeM,
    double bendRadiusM,
    double angleRad,
    boolean level,
    FittingAxes.@Nullable Tee tee,
    List<JunctionCover.Leg> legs,
    double offsetM,
    boolean jointsStandOut,
    boolean swept,
    List<String> assumed) {

  /** Reads it off an element. */
  static FittingShape of(MepElement element, Section section, boolean duct, Limits limits) {
    return new Reading(element, section, duct, limits).shape();
  }

  private static double rounded(double lengthM) {
    return Math.round(lengthM * 1e5) / 1e5;
  }

  private static Section rounded(Section section) {
    if (section instanceof Section.Round round) {
      return new Section.Round(Math.max(1e-5, rounded(round.outsideDiameterM())));
    }
    if (section instanceof Section.Rectangular r) {
      return new Section.Rectangular(
          Math.max(1e-5, rounded(r.widthM())), Math.max(1e-5, rounded(r.heightM())));
    }
    Section.Oval oval = (Section.Oval) section;
    return new Section.Oval(
        Math.max(1e-5, rounded(oval.widthM())), Math.max(1e-5, rounded(oval.heightM())));
  }

  /** Reads one element. */
  private static final class Reading {

    private final MepElement element;
    private final Section section;
    private final boolean duct;
    private final Limits limits;
    private final List<String> assumed = new ArrayList<>();

    Reading(MepElement element, Section section, boolean duct, Limits limits) {
      this.element = element;
      this.section = rounded(section);
      this.duct = duct;
      this.limits = limits;
    }

    FittingShape shape() {
      Form form = element.form() == Form.UNKNOWN && isSegment() ? Form.STRAIGHT : element.form();
      FittingAxes.Tee tee = form == Form.TEE || form == Form.LATERAL ? tee(form) : null;
      List<JunctionCover.Leg> legs =
          form == Form.CROSS || form == Form.WYE ? legs(form) : List.of();
      double angleRad = angleRad();
      return new FittingShape(
          form,
          duct,
          tee == null ? larger() : tee.run(),
          tee == null ? smaller() : List.of(tee.branch()),
          lengthM(form),
          flangeM(form),
          form == Form.BEND ? bendRadiusM(angleRad) : 0,
          form == Form.BEND ? angleRad : 0,
          form != Form.BEND || FittingAxes.isLevel(element),
          tee,
          legs,
          rounded(FittingAxes.offsetM(element)),
          says("threaded", "screwed", "grooved", "malleable"),
          says("swept", "pitcher"),
          assumed);
    }

    private boolean isSegment() {
      return element.kind().isSegment();
    }

    private Section larger() {
      return Stream.concat(Stream.of(section), element.ends().stream().map(FittingShape::rounded))
          .max(Comparator.comparingDouble(Section::perimeterM))
          .orElseThrow();
    }

    /** The end that differs from the larger one. */
    private List<Section> smaller() {
      Section large = larger();
      return element.ends().stream()
          .map(FittingShape::rounded)
          .filter(end -> !end.equals(large))
          .limit(1)
          .toList();
    }

    private double angleRad() {
      return element.angleDeg() == null
          ? 0
          : Math.toRadians(Math.round(Math.abs(element.angleDeg().value()) * 1000) / 1000.0);
    }

    private double bendRadiusM(double angleRad) {
      if (element.bendRadiusM() != null) {
        return rounded(element.bendRadiusM().value());
      }
      if (element.lengthM() == null || angleRad == 0) {
        return 0;
      }
      assumed.add("bend radius from length and angle");
      return rounded(element.lengthM().value() / angleRad);
    }

    private double lengthM(Form form) {
      if (element.lengthM() != null) {
        return rounded(element.lengthM().value());
      }
      return switch (form) {
        case VALVE_BODY, STRAINER, METER ->
            assumedLengthM("bodyLengthFactor", "length of the body");
        case REDUCER -> assumedLengthM("reducerLengthFactor", "length of the reducer");
        default -> 0;
      };
    }

    /** As drawn where the body is wider than its pipe, else assumed from the pipe. */
    private double flangeM(Form form) {
      boolean round = section instanceof Section.Round;
      boolean flanged = form == Form.FLANGE || form == Form.VALVE_BODY || form == Form.STRAINER;
      if (!flanged || !round) {
        return 0;
      }
      if (form != Form.FLANGE) {
        assumed.add("bonnet by the width of the body (bonnetFactor, bonnetHeightFactor)");
        return assumedFlangeM();
      }
      assumed.add("thickness of the pair of flanges (flangePairMm)");
      double drawnM = drawnBodyM();
      return drawnM > 0 ? drawnM : assumedFlangeM();
    }

    private double assumedFlangeM() {
      double flangeM =
          rounded(
              limits.number("flangeFactor") * section.largestSideM()
                  + limits.metres("flangePlusMm"));
      assumed.add("flange diameter " + millimetres(flangeM) + " (flangeFactor, flangePlusMm)");
      return flangeM;
    }

    /** What is drawn lost against the pipe it sits on, and stands among the candidates. */
    private double drawnBodyM() {
      Measured<Section> read = element.section();
      if (read == null) {
        return 0;
      }
      return read.lost().stream()
          .filter(candidate -> candidate.how().isDrawn())
          .map(Candidate::value)
          .filter(Section.Round.class::isInstance)
          .mapToDouble(Section::largestSideM)
          .filter(widthM -> widthM > section.largestSideM() + 0.001)
          .map(FittingShape::rounded)
          .max()
          .orElse(0);
    }

    private double assumedLengthM(String factor, String what) {
      double lengthM = rounded(limits.number(factor) * section.largestSideM());
      assumed.add(what + " " + millimetres(lengthM) + " (" + factor + ")");
      return lengthM;
    }

    private FittingAxes.@Nullable Tee tee(Form form) {
      Optional<FittingAxes.Tee> read = FittingAxes.tee(element, section);
      if (read.isPresent()) {
        FittingAxes.Tee t = read.get();
        return new FittingAxes.Tee(
            rounded(t.startM()),
            rounded(t.endM()),
            rounded(t.branchM()),
            Math.toRadians(Math.round(Math.toDegrees(t.angleRad()) * 1000) / 1000.0),
            rounded(t.offsetM()),
            rounded(t.run()),
            rounded(t.branch()));
      }
      double legM = legM();
      double angle = form == Form.LATERAL ? Math.PI / 4 : Math.PI / 2;
      if (form == Form.LATERAL) {
        assumed.add("angle of the branch 45 degrees");
      }
      Section branch = element.ends().size() == 3 ? rounded(element.ends().get(2)) : section;
      double branchM =
          element.branchLengthM() == null ? legM : rounded(element.branchLengthM().value());
      return new FittingAxes.Tee(legM, legM, branchM, angle, 0, larger(), branch);
    }

    /** Half the length read, else by the diameter. */
    private double legM() {
      if (element.lengthM() != null) {
        double legM = rounded(element.lengthM().value() / 2);
        assumed.add("legs of " + millimetres(legM) + ", half the length read");
        return legM;
      }
      double legM = rounded(limits.number("legFactor") * section.largestSideM());
      assumed.add("legs of " + millimetres(legM) + " (legFactor)");
      return legM;
    }

    private List<JunctionCover.Leg> legs(Form form) {
      Optional<List<JunctionCover.Leg>> read = FittingAxes.legs(element);
      if (read.isPresent()) {
        return read.get().stream()
            .map(
                leg ->
                    new JunctionCover.Leg(
                        Math.toRadians(Math.round(Math.toDegrees(leg.directionRad()))),
                        rounded(leg.lengthM())))
            .toList();
      }
      double legM = legM();
      int count = form == Form.CROSS ? 4 : 3;
      List<JunctionCover.Leg> legs = new ArrayList<>();
      for (int i = 0; i < count; i++) {
        legs.add(new JunctionCover.Leg(2 * Math.PI * i / count, legM));
      }
      return legs;
    }

    private boolean says(String... words) {
      String text =
          (element.name() + " " + element.objectType() + " " + element.typeName())
              .toLowerCase(Locale.ROOT);
      for (String word : words) {
        if (text.contains(word)) {
          return true;
        }
      }
      return false;
    }

    private static String millimetres(double lengthM) {
      return Math.round(lengthM * 1000) + " mm";
    }
  }
}
