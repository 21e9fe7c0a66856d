package org.lagwright.takeoff.fitting;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.lagwright.ifc.model.Form;
import org.lagwright.ifc.model.Kind;
import org.lagwright.ifc.model.MepElement;
import org.lagwright.ifc.model.Section;
import org.lagwright.takeoff.TestElement;
import org.lagwright.takeoff.fitting.Making.Bonding;
import org.lagwright.takeoff.fitting.Making.LayerMaking;
import org.lagwright.takeoff.measure.Size;
import org.lagwright.takeoff.thickness.Layer;
import org.lagwright.takeoff.thickness.Layer.LayerForm;

class MakingChooserTest {

  private static final MakingPack PACK = MakingPack.bundled();
  private static final Section DUCT = new Section.Rectangular(0.6, 0.4);
  private static final Section SMALL_DUCT = new Section.Rectangular(0.4, 0.3);
  private static final Section ROUND = new Section.Round(0.25);

  /** An element, how its insulation is bought, and what has to come out. */
  record Case(TestElement element, LayerForm form, double wallMm, Method method, int pieces) {

    Making made(Map<String, String> methods) {
      return chooser(Map.of(), methods).choose(built(), section(), layers(), duct());
    }

    Making made() {
      return made(Map.of());
    }

    MepElement built() {
      return element.build();
    }

    private Section section() {
      return Size.findDecidingSection(built()).orElseThrow();
    }

    private List<Layer> layers() {
      return List.of(new Layer("fef_nbr", form, wallMm / 1000));
    }

    private boolean duct() {
      Kind kind = built().kind();
      boolean air =
          kind == Kind.INLINE
              && !(section() instanceof Section.Round r && r.outsideDiameterM() < 0.2);
      return kind == Kind.DUCT_SEGMENT || kind == Kind.DUCT_FITTING || air;
    }

    @Override
    public String toString() {
      return method.label()
          + ": "
          + built().form().label()
          + " in "
          + wallMm
          + " mm "
          + form.label();
    }
  }

  private static MakingChooser chooser(Map<String, Double> limits, Map<String, String> methods) {
    return new MakingChooser(PACK, limits, methods);
  }

  private static TestElement fitting(Form form, double mm) {
    return TestElement.fitting(1, form, mm);
  }

  private static TestElement duct(Form form, Section section) {
    return TestElement.of(1, Kind.DUCT_FITTING, form).section(section);
  }

  private static TestElement inline(Form form, Section section) {
    return TestElement.of(1, Kind.INLINE, form).section(section).length(0.3);
  }

  /** A branch at an angle, with legs of 200 mm. */
  private static TestElement branched(Form form, double run, double branch, double angleDeg) {
    Section main = new Section.Round(run / 1000);
    double c = Math.cos(Math.toRadians(angleDeg));
    double s = Math.sin(Math.toRadians(angleDeg));
    return fitting(form, run)
        .ends(main, main, new Section.Round(branch / 1000))
        .end(-0.2, 0, -1, 0)
        .end(0.2, 0, 1, 0)
        .end(0.2 * c, 0.2 * s, c, s);
  }

  private static TestElement cross(double run, double branch) {
    Section main = new Section.Round(run / 1000);
    Section side = new Section.Round(branch / 1000);
    return fitting(Form.CROSS, run).ends(main, side, main, side);
  }

  private static TestElement reducer(double large, double small) {
    return fitting(Form.REDUCER, large)
        .ends(new Section.Round(large / 1000), new Section.Round(small / 1000))
        .length(0.1);
  }

  private static Case of(TestElement element, LayerForm form, double wall, Method m, int pieces) {
    return new Case(element, form, wall, m, pieces);
  }

  private static Case tube(TestElement element, double wall, Method method, int pieces) {
    return of(element, LayerForm.TUBE, wall, method, pieces);
  }

  private static Case sheet(TestElement element, double wall, Method method, int pieces) {
    return of(element, LayerForm.SHEET, wall, method, pieces);
  }

  static List<Case> cases() {
    List<Case> cases = new ArrayList<>(pipeCases());
    cases.addAll(ductCases());
    return cases;
  }

  private static List<Case> pipeCases() {
    return List.of(
        tube(TestElement.pipe(1, 60, 3), 19, Method.TUBE_PUSHED_ON, 1),
        tube(TestElement.pipe(1, 60.1, 3), 19, Method.TUBE_SLIT_AND_GLUED, 1),
        of(TestElement.pipe(1, 60, 3), LayerForm.SECTION, 40, Method.SECTION_HALVES, 1),
        sheet(TestElement.pipe(1, 219.1, 3), 19, Method.SHEET_WRAPPED, 1),
        sheet(
            TestElement.of(1, Kind.PIPE_SEGMENT, Form.FLEXIBLE).round(50).length(1),
            9,
            Method.SHEET_WRAPPED,
            1),
        tube(fitting(Form.BEND, 114.3).bend(90, 0.1524), 25, Method.MITRED_PIECES, 4),
        tube(fitting(Form.BEND, 42.4).bend(90, 0.048), 40, Method.TWO_PIECE_MITRE, 2),
        tube(fitting(Form.BEND, 22).bend(90, 0.11), 9, Method.TUBE_SLID_OVER, 1),
        tube(
            fitting(Form.BEND, 33.7).bend(90, 0.038).named("Malleable elbow, threaded"),
            19,
            Method.OVERSIZE_MITRE,
            2),
        tube(branched(Form.TEE, 60.3, 60.3, 90), 19, Method.MITRED_TEE, 2),
        tube(branched(Form.TEE, 60.3, 60.3, 60), 19, Method.THREE_PIECE_TEE, 3),
        tube(branched(Form.LATERAL, 60.3, 60.3, 45), 19, Method.THREE_PIECE_TEE, 3),
        tube(branched(Form.TEE, 114.3, 60.3, 90), 25, Method.PUNCHED_TEE, 2),
        tube(branched(Form.LATERAL, 114.3, 60.3, 45), 25, Method.PUNCHED_TEE, 2),
        tube(branched(Form.TEE, 114.3, 60.3, 90).named("Swept tee"), 25, Method.SWEPT_TEE, 3),
        tube(cross(60.3, 60.3), 19, Method.FOUR_PIECE_CROSS, 4),
        tube(cross(114.3, 60.3), 19, Method.PUNCHED_CROSS, 3),
        tube(fitting(Form.WYE, 60.3), 19, Method.WYE_PIECES, 3),
        tube(reducer(60.3, 33.7), 19, Method.STEPPED_REDUCER, 2),
        tube(reducer(114.3, 60.3), 19, Method.CONE, 1),
        tube(
            reducer(114.3, 60.3).end(0, 0, -1, 0).end(0.1, 0.027, 1, 0),
            19,
            Method.ECCENTRIC_CONE,
            1),
        tube(fitting(Form.CAP, 60.3), 19, Method.CAP_WITH_DISC, 2),
        tube(fitting(Form.FLANGE, 114.3), 25, Method.FLANGE_BOX, 3),
        tube(fitting(Form.UNION, 33.7), 19, Method.SLEEVE, 1),
        tube(fitting(Form.COUPLING, 33.7), 19, Method.SLEEVE, 1),
        tube(
            TestElement.of(1, Kind.VALVE, Form.VALVE_BODY).round(114.3).length(0.23),
            25,
            Method.VALVE_BOX,
            5),
        tube(inline(Form.STRAINER, new Section.Round(0.0603)), 19, Method.VALVE_BOX, 5),
        tube(inline(Form.METER, new Section.Round(0.0603)), 19, Method.BODY_BOX, 3),
        tube(fitting(Form.BEND, 60.3), 19, Method.CUT_ON_SITE, 0));
  }

  private static List<Case> ductCases() {
    return List.of(
        sheet(TestElement.duct(1, 600, 400, 2), 25, Method.DUCT_PANELS, 4),
        sheet(inline(Form.DAMPER, DUCT), 25, Method.DUCT_PANELS, 4),
        sheet(inline(Form.SILENCER, DUCT), 25, Method.DUCT_PANELS, 4),
        sheet(inline(Form.DAMPER, ROUND), 25, Method.SHEET_WRAPPED, 1),
        sheet(inline(Form.SILENCER, ROUND), 25, Method.SHEET_WRAPPED, 1),
        sheet(duct(Form.BEND, DUCT).bend(90, 0.5), 25, Method.DUCT_RADIUS_BEND, 4),
        sheet(duct(Form.BEND, DUCT).bend(90, 0.32), 25, Method.DUCT_SQUARE_BEND, 6),
        sheet(duct(Form.BEND, ROUND).bend(90, 0.25), 25, Method.MITRED_PIECES, 5),
        sheet(
            duct(Form.BEND, new Section.Oval(0.5, 0.2)).bend(90, 0.5), 25, Method.MITRED_PIECES, 6),
        sheet(duct(Form.TEE, DUCT).length(0.8), 25, Method.DUCT_TEE, 8),
        sheet(
            duct(Form.TRANSITION, DUCT).ends(DUCT, ROUND).length(0.4),
            25,
            Method.SQUARE_TO_ROUND,
            1),
        sheet(
            duct(Form.REDUCER, DUCT).ends(DUCT, ROUND).length(0.4), 25, Method.SQUARE_TO_ROUND, 1),
        sheet(
            duct(Form.TRANSITION, DUCT).ends(DUCT, SMALL_DUCT).length(0.4),
            25,
            Method.DUCT_TRANSITION,
            4),
        sheet(
            duct(Form.REDUCER, DUCT).ends(DUCT, SMALL_DUCT).length(0.4),
            25,
            Method.DUCT_TRANSITION,
            4),
        sheet(duct(Form.OFFSET, DUCT).length(0.6), 25, Method.DUCT_TRANSITION, 4),
        sheet(duct(Form.CAP, DUCT), 25, Method.DUCT_END_PANEL, 1),
        sheet(duct(Form.FLANGE, DUCT), 25, Method.FLANGE_STRIPS, 4),
        sheet(duct(Form.COUPLING, DUCT), 25, Method.HALVED_TUBE, 2));
  }

  @ParameterizedTest(name = "{0}")
  @MethodSource("cases")
  void methodFitsAndSaysWhyAndGivesItsPieces(Case given) {
    LayerMaking layer = given.made().layers().get(0);
    int pieces = layer.cover().pieces().stream().mapToInt(Piece::count).sum();

    assertThat(layer.method()).isEqualTo(given.method());
    assertThat(layer.reason()).isNotBlank().doesNotContain("{", "}");
    assertThat(layer.source()).isNotBlank();
    assertThat(pieces).isEqualTo(given.pieces());
    assertThat(layer.cover().outerAreaM2() > 0).isEqualTo(pieces > 0);
    for (Piece piece : layer.cover().pieces()) {
      assertThat(piece.shape().pattern().bounds().widthM()).isPositive();
      assertThat(piece.isSheet() ? piece.sheetAreaM2() : piece.tubeLengthM()).isPositive();
      assertThat(piece.jointFaceM2()).isPositive();
    }
  }

  @Test
  void everyRuleOfThePackIsTried() {
    Set<String> tried = new HashSet<>();
    cases().forEach(c -> tried.add(c.made().layers().get(0).rule()));
    List<String> rules = PACK.rules().stream().map(MakingPack.Rule::id).toList();

    assertThat(tried).containsAll(rules);
  }

  @Test
  void anglesOfTheTradeStandInTheReason() {
    Case two = cases().get(6);
    Case many = tube(fitting(Form.BEND, 60.3).bend(90, 0.0762), 9, Method.MITRED_PIECES, 3);

    assertThat(two.made().reasons()).contains("45 degrees off square", "135 to the base line");
    assertThat(many.made().reasons()).contains("22.5 degrees off square", "112.5 to the base line");
    assertThat(many.made().pieces().get(0).cutAnglesDeg().get(1)).isCloseTo(22.5, within(1e-9));
  }

  @Test
  void ownMethodGoesBeforeTheRulesWhereItCanBeMade() {
    Case wide = cases().get(5);
    Case tight = cases().get(6);

    for (String own : List.of("notched-tube", "smooth-cover", "two-piece-mitre")) {
      Making made = wide.made(Map.of("bend", own));
      assertThat(made.layers().get(0).method().label()).isEqualTo(own);
      assertThat(made.reasons()).isEqualTo("chosen in the settings");
    }
    assertThat(tight.made(Map.of("bend", "notched-tube")).layers().get(0).method())
        .isEqualTo(Method.TWO_PIECE_MITRE);
  }

  @Test
  void limitThatTheUserChangedMovesTheBoundary() {
    Case slit = cases().get(1);
    Making made =
        chooser(Map.of("pushOnUpToMm", 70.0), Map.of())
            .choose(slit.built(), new Section.Round(0.0601), slit.layers(), false);

    assertThat(made.layers().get(0).method()).isEqualTo(Method.TUBE_PUSHED_ON);
  }

  @Test
  void adhesiveGoesOverTheWholeFaceAbove600MillimetresAndOnUndersidesOfFlatSides() {
    assertThat(bonding(TestElement.pipe(1, 600, 1), LayerForm.SHEET)).isEqualTo(Bonding.JOINTS);
    assertThat(bonding(TestElement.pipe(1, 601, 1), LayerForm.SHEET)).isEqualTo(Bonding.WHOLE_FACE);
    assertThat(bonding(TestElement.duct(1, 600, 400, 1), LayerForm.SHEET))
        .isEqualTo(Bonding.UNDERSIDES);
    assertThat(bonding(TestElement.pipe(1, 60, 1), LayerForm.SECTION)).isEqualTo(Bonding.NONE);
  }

  private static Bonding bonding(TestElement element, LayerForm form) {
    return of(element, form, 25, Method.SHEET_WRAPPED, 1).made().layers().get(0).bonding();
  }

  @Test
  void secondLayerIsMeasuredOverTheFirst() {
    MepElement pipe = TestElement.pipe(1, 114.3, 1).build();
    List<Layer> layers =
        List.of(
            new Layer("fef_nbr", LayerForm.TUBE, 0.032),
            new Layer("fef_nbr", LayerForm.SHEET, 0.019));
    Making made =
        chooser(Map.of(), Map.of()).choose(pipe, new Section.Round(0.1143), layers, false);

    assertThat(made.pieces().get(1).sheetAreaM2())
        .isCloseTo(Math.PI * (0.1143 + 2 * (0.032 + 0.019)), within(1e-12));
    assertThat(made.pieces()).extracting(Piece::layerNumber).containsExactly(1, 2);
    assertThat(made.volumeM3()).isCloseTo(Math.PI * 0.051 * (0.1143 + 0.051), within(1e-12));
  }

  @Test
  void whatNothingTellsIsNamedAsAssumed() {
    assertThat(tube(fitting(Form.TEE, 60.3), 19, Method.MITRED_TEE, 2).made().assumed())
        .containsExactly("legs of 60 mm (legFactor)");
    assertThat(cases().get(9).made().assumed()).isEmpty();
  }

  @Test
  void equalElementsShareOneMaking() {
    MakingChooser chooser = chooser(Map.of(), Map.of());
    Case bend = cases().get(5);

    assertThat(chooser.choose(bend.built(), bend.section(), bend.layers(), false))
        .isSameAs(chooser.choose(bend.built(), bend.section(), bend.layers(), false));
  }

  @Test
  void rulesThatNameUnknownFactsAreRefused() {
    assertThatThrownBy(() -> new MakingPack.Rule("x", List.of("bent"), "cone", "because", "source"))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessageContaining("bent");
  }
}
