package org.lagwright.takeoff.fitting;

import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.lagwright.ifc.model.Form;
import org.lagwright.ifc.model.Section;
import org.lagwright.takeoff.fitting.pattern.Outline;
import org.lagwright.takeoff.fitting.pattern.SquareToRound;
import org.lagwright.takeoff.fitting.pattern.TubePiece;

/** Makes the cover of one layer by a method, and says which facts hold for it. */
final class CoverMaker {

  /** Two pieces turn no further than this. */
  private static final double SHARPEST_RAD = Math.toRadians(120);

  private final FittingShape shape;
  private final LayerOn on;
  private final Limits limits;

  CoverMaker(FittingShape shape, LayerOn on, Limits limits) {
    this.shape = shape;
    this.on = on;
    this.limits = limits;
  }

  private double leastM() {
    return limits.metres("leastThroatMm");
  }

  /** Facts for the rules. */
  Set<String> facts() {
    Set<String> facts = new HashSet<>();
    facts.add(shape.form().label());
    facts.add(shape.duct() ? Facts.DUCT : Facts.PIPE);
    facts.add(on.layer().form().label());
    facts.add(sectionFact());
    addIf(facts, Facts.SLIM, on.number() == 1 && widthM() <= limits.metres("pushOnUpToMm"));
    addIf(facts, Facts.WIDE, widthM() + 2 * on.belowM() > limits.metres("wholeFaceAboveMm"));
    addIf(facts, Facts.JOINTS_STAND_OUT, shape.jointsStandOut());
    addIf(facts, Facts.SWEPT, shape.swept());
    addIf(facts, Facts.MEASURED, isMeasured());
    if (isMeasured()) {
      addFormFacts(facts);
    }
    return facts;
  }

  private static void addIf(Set<String> facts, String fact, boolean holds) {
    if (holds) {
      facts.add(fact);
    }
  }

  private String sectionFact() {
    if (shape.section() instanceof Section.Round) {
      return Facts.ROUND;
    }
    return shape.section() instanceof Section.Oval ? Facts.OVAL : Facts.RECTANGULAR;
  }

  private double widthM() {
    return shape.section().largestSideM();
  }

  private boolean isMeasured() {
    return switch (shape.form()) {
      case BEND -> isMeasuredBend();
      case TEE, LATERAL -> shape.tee() != null;
      case CROSS, WYE -> !shape.legs().isEmpty();
      case REDUCER -> shape.lengthM() > 0 && isReducing();
      case TRANSITION, OFFSET, DAMPER, SILENCER -> shape.lengthM() > 0;
      default -> true;
    };
  }

  /** A closed throat allows two pieces only, and their cut must not become endless. */
  private boolean isMeasuredBend() {
    if (!(shape.bendRadiusM() > 0) || !(shape.angleRad() > 0) || shape.angleRad() > Math.PI) {
      return false;
    }
    return isSharp() || (!(shape.section() instanceof Section.Rectangular) && bendPieces() >= 3);
  }

  private boolean isSharp() {
    return shape.angleRad() <= SHARPEST_RAD;
  }

  private boolean isReducing() {
    if (shape.others().isEmpty()) {
      return false;
    }
    boolean round = shape.section() instanceof Section.Round;
    return !round
        || !(shape.others().get(0) instanceof Section.Round other)
        || other.outsideDiameterM() < shape.section().largestSideM() - 0.0005;
  }

  private void addFormFacts(Set<String> facts) {
    switch (shape.form()) {
      case BEND -> addBendFacts(facts);
      case TEE, LATERAL -> addTeeFacts(facts);
      case CROSS -> addCrossFacts(facts);
      case REDUCER, TRANSITION -> addReducerFacts(facts);
      default -> {}
    }
  }

  private void addBendFacts(Set<String> facts) {
    if (shape.section() instanceof Section.Rectangular) {
      addIf(facts, Facts.THROAT_OPEN, throatRadiusM() - on.totalM() > leastM());
      return;
    }
    addIf(facts, Facts.THROAT_OPEN, bendPieces() >= 3);
    double factor = limits.number("slideOverRadiusFactor");
    addIf(facts, Facts.GENTLE, shape.bendRadiusM() >= factor * widthM());
  }

  private double throatRadiusM() {
    return shape.bendRadiusM() - duct().widthM() / 2;
  }

  private void addTeeFacts(Set<String> facts) {
    if (!(shape.section() instanceof Section.Round) || !isRoundBranch()) {
      return;
    }
    FittingAxes.Tee tee = tee();
    if (radiusM(tee.branch()) > radiusM(tee.run()) + 0.0005) {
      return;
    }
    BranchCover branch = branch();
    addIf(facts, Facts.EQUAL, branch.isEqual());
    addIf(facts, Facts.SQUARE, branch.isSquare());
    addIf(facts, Facts.LANDS, branch.lands(on));
  }

  private boolean isRoundBranch() {
    return shape.others().stream().allMatch(Section.Round.class::isInstance);
  }

  private void addCrossFacts(Set<String> facts) {
    boolean equal = shape.others().isEmpty();
    addIf(facts, Facts.EQUAL, equal);
    addIf(facts, Facts.LANDS, !equal && isRoundBranch() && shape.legs().size() == 4);
  }

  private void addReducerFacts(Set<String> facts) {
    if (shape.others().isEmpty()) {
      return;
    }
    Section other = shape.others().get(0);
    boolean roundHere = shape.section() instanceof Section.Round;
    boolean roundThere = other instanceof Section.Round;
    boolean flat =
        shape.section() instanceof Section.Rectangular || other instanceof Section.Rectangular;
    addIf(facts, Facts.SQUARE_TO_ROUND, roundHere != roundThere && flat);
    if (roundHere != roundThere) {
      facts.remove(Facts.ROUND);
      facts.remove(Facts.RECTANGULAR);
    } else if (roundHere) {
      addIf(facts, Facts.ECCENTRIC, reducer().isEccentric());
      double stepM = shape.section().largestSideM() - other.largestSideM();
      addIf(facts, Facts.SMALL_STEP, stepM <= limits.metres("smallStepMm"));
    }
  }

  /** True where a method the user wants fits this element. */
  boolean canMake(Method method) {
    boolean round = shape.section() instanceof Section.Round;
    return switch (method) {
      case TUBE_SLID_OVER, TWO_PIECE_MITRE, OVERSIZE_MITRE ->
          shape.form() == Form.BEND && isMeasured() && round && isSharp();
      case MITRED_PIECES, NOTCHED_TUBE, SMOOTH_COVER ->
          shape.form() == Form.BEND && isMeasured() && round && bendPieces() >= 3;
      case MITRED_TEE, THREE_PIECE_TEE -> facts().containsAll(Set.of("tee", Facts.EQUAL));
      case PUNCHED_TEE, SWEPT_TEE -> facts().containsAll(Set.of("tee", Facts.LANDS));
      case CONE, STEPPED_REDUCER -> shape.form() == Form.REDUCER && isMeasured() && round;
      case VALVE_BOX, BODY_BOX, RECTANGULAR_BOX -> shape.form() == Form.VALVE_BODY && round;
      case REMOVABLE_VALVE_BOX ->
          round && (shape.form() == Form.VALVE_BODY || shape.form() == Form.STRAINER);
      case REMOVABLE_FLANGE_BOX -> round && shape.form() == Form.FLANGE && !shape.duct();
      case CUT_ON_SITE -> true;
      default -> false;
    };
  }

  /** The cover by a method that the facts allow. */
  Cover make(Method method) {
    return switch (method) {
      case TUBE_PUSHED_ON, TUBE_SLIT_AND_GLUED, SECTION_HALVES, SHEET_WRAPPED -> straight();
      case DUCT_PANELS -> duct().straight(on, Math.max(shape.lengthM(), 1e-5));
      case TUBE_SLID_OVER -> bend().slidOver(on);
      case TWO_PIECE_MITRE -> bend().mitred(on, 2, leastM());
      case MITRED_PIECES -> bend().mitred(on, bendPieces(), leastM());
      case NOTCHED_TUBE -> bend().notched(on, bendPieces());
      case SMOOTH_COVER -> bend().smooth(on, limits.metres("smoothBulgeMm"));
      case OVERSIZE_MITRE -> oversizeBend().mitred(on, 2, leastM() + limits.metres("overlapMm"));
      case DUCT_RADIUS_BEND -> duct().radiusBend(on, shape.bendRadiusM(), shape.angleRad());
      case DUCT_SQUARE_BEND -> duct().squareBend(on, bendLegM(), shape.angleRad());
      case MITRED_TEE -> branch().notched(on, leastM());
      case THREE_PIECE_TEE -> branch().threePieces(on, leastM());
      case PUNCHED_TEE -> branch().saddled(on, leastM());
      case SWEPT_TEE -> branch().swept(on, leastM());
      case FOUR_PIECE_CROSS, WYE_PIECES -> junction().cover(on, leastM());
      case PUNCHED_CROSS -> cross().cover(on, leastM());
      case DUCT_TEE -> ductTee();
      case CONE, ECCENTRIC_CONE -> reducer().cone(on, method.words());
      case STEPPED_REDUCER -> reducer().stepped(on);
      case DUCT_TRANSITION -> transition();
      case SQUARE_TO_ROUND -> squareToRound();
      case DUCT_END_PANEL -> duct().endCap(on);
      case FLANGE_STRIPS -> flangeStrips();
      case HALVED_TUBE -> duct().halvedTube(on, 2 * limits.metres("ductFlangeMm"));
      default -> new BodyMaker(shape, on, limits).make(method);
    };
  }

  private Cover straight() {
    if (!(shape.lengthM() > 0)) {
      return new Cover(List.of(), 0, 0);
    }
    if (shape.section() instanceof Section.Rectangular) {
      return duct().straight(on, shape.lengthM());
    }
    TubePiece tube = TubePiece.straight(on.outer(outline()), on.wallM(), shape.lengthM());
    return Cover.of(List.of(on.round("straight piece", 1, outline(), tube)));
  }

  private Outline outline() {
    if (shape.section() instanceof Section.Oval oval) {
      double large = oval.largestSideM();
      double small = oval.smallestSideM();
      return shape.level() ? new Outline.Stadium(large, small) : new Outline.Stadium(small, large);
    }
    return new Outline.Circle(shape.section().largestSideM() / 2);
  }

  private BendCover bend() {
    return new BendCover(shape.bendRadiusM(), shape.angleRad(), outline());
  }

  private BendCover oversizeBend() {
    Outline larger = outline().grown(limits.metres("bodyPlusMm") / 2);
    return new BendCover(shape.bendRadiusM(), shape.angleRad(), larger);
  }

  private int bendPieces() {
    return bend().pieces(on, limits.metres("heelGapMm"), leastM());
  }

  private double bendLegM() {
    return shape.bendRadiusM() * Math.tan(Math.min(shape.angleRad(), 3) / 2);
  }

  /** The duct with its width in the plane of the bend. */
  private DuctCover duct() {
    return duct(shape.section());
  }

  private DuctCover duct(Section section) {
    if (section instanceof Section.Rectangular r) {
      return shape.level()
          ? new DuctCover(r.widthM(), r.heightM())
          : new DuctCover(r.heightM(), r.widthM());
    }
    return new DuctCover(section.largestSideM(), section.largestSideM());
  }

  private FittingAxes.Tee tee() {
    FittingAxes.Tee tee = shape.tee();
    if (tee == null) {
      throw new IllegalStateException("no axes of a branch");
    }
    return tee;
  }

  private static double radiusM(Section section) {
    return section.largestSideM() / 2;
  }

  private BranchCover branch() {
    FittingAxes.Tee tee = tee();
    return new BranchCover(
        radiusM(tee.run()),
        radiusM(tee.branch()),
        tee.startM(),
        tee.endM(),
        tee.branchM(),
        tee.angleRad(),
        tee.offsetM());
  }

  private JunctionCover junction() {
    return new JunctionCover(radiusM(shape.section()), shape.legs());
  }

  private CrossCover cross() {
    List<JunctionCover.Leg> legs = shape.legs();
    return new CrossCover(
        radiusM(shape.section()),
        radiusM(shape.others().get(0)),
        legs.get(0).lengthM(),
        sideLegM(legs));
  }

  /** The first leg that is not the other half of the run. */
  private static double sideLegM(List<JunctionCover.Leg> legs) {
    return legs.stream()
        .skip(1)
        .filter(leg -> Math.abs(Math.sin(leg.directionRad() - legs.get(0).directionRad())) > 0.5)
        .mapToDouble(JunctionCover.Leg::lengthM)
        .findFirst()
        .orElse(legs.get(1).lengthM());
  }

  private Cover ductTee() {
    FittingAxes.Tee tee = tee();
    double beyondM = Math.max(0, tee.branchM() - duct().widthM() / 2);
    return duct().tee(on, duct(tee.branch()), tee.startM() + tee.endM(), beyondM);
  }

  private ReducerCover reducer() {
    return new ReducerCover(
        radiusM(shape.section()), radiusM(shape.others().get(0)), shape.lengthM(), shape.offsetM());
  }

  private Cover transition() {
    Section other = shape.others().isEmpty() ? shape.section() : shape.others().get(0);
    return duct().transition(on, duct(other), shape.lengthM(), shape.offsetM(), 0);
  }

  private Cover squareToRound() {
    Section other = shape.others().get(0);
    boolean flatFirst = shape.section() instanceof Section.Rectangular;
    DuctCover flat = duct(flatFirst ? shape.section() : other);
    double radiusM = radiusM(flatFirst ? other : shape.section());
    double offsetM = Math.min(shape.offsetM(), flat.widthM() / 2);
    SquareToRound sheet =
        new SquareToRound(
            flat.widthM() + 2 * on.totalM(),
            flat.heightM() + 2 * on.totalM(),
            radiusM + on.totalM(),
            shape.lengthM(),
            offsetM,
            0,
            on.wallM());
    return Cover.of(List.of(on.flat("cover in one sheet", 1, sheet)));
  }

  private Cover flangeStrips() {
    return duct().flangeStrips(on, limits.metres("ductFlangeMm"), limits.metres("ductStripMm"));
  }

  /** Figures that reasons may show. */
  Map<String, Double> figures(Method method) {
    Map<String, Double> figures = new LinkedHashMap<>();
    if (shape.form() != Form.BEND || !isMeasured()) {
      return figures;
    }
    boolean oversize = method == Method.OVERSIZE_MITRE;
    BendCover bend = oversize ? oversizeBend() : bend();
    int pieces = method == Method.MITRED_PIECES ? bendPieces() : 2;
    double cutDeg = Math.toDegrees(bend.cutRad(pieces));
    figures.put("pieces", (double) pieces);
    figures.put("cutDeg", cutDeg);
    figures.put("baseDeg", 90 + cutDeg);
    figures.put("gapMm", bend.heelGapM(pieces, on.belowM()) * 1000);
    figures.put("throatMm", bend.throatM(pieces, on.totalM()) * 1000);
    figures.put("boreMm", (bend.bare().widthM() + 2 * on.belowM()) * 1000);
    return figures;
  }

  /** Area glued to what lies below, one coat. */
  double bondedM2(Making.Bonding bonding, Cover cover) {
    return switch (bonding) {
      case WHOLE_FACE -> cover.outerAreaM2() * widthM() / (widthM() + 2 * on.totalM());
      case UNDERSIDES -> cover.outerAreaM2() * undersideShare();
      case JOINTS, ITSELF, NONE -> 0;
    };
  }

  private double undersideShare() {
    if (shape.section() instanceof Section.Rectangular r) {
      return r.widthM() / (r.perimeterM() + 8 * on.totalM());
    }
    return 0;
  }
}
