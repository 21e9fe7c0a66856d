package org.lagwright.report.workbook;

import java.util.List;

/** Sentences of the sheet {@code Basis}, in our words; no standard method is claimed. */
final class BasisText {

  /** Which air holds where. */
  static final String LOCATIONS =
      "An element is outdoors where the model says so (IsExternal), else of the class that 'places'"
          + " in the settings gives its space, storey or system, else of the class that the words in"
          + " the names of its space and storey tell (plant room, shaft, garage), else indoor. Condensation"
          + " and touch take the temperature of the design in still air; heat flow, saving and least"
          + " cost take the mean and the wind. What lies in the ground is asked for; where the"
          + " settings take it in, its heat flows through the soil, and there is no condensation.";

  /** Where the temperatures come from. */
  static final String MEDIA =
      "Defaults of the services pack, common practice and no design values, unless 'temperaturesC'"
          + " in the settings gives others or the model tells one, in a property or in the name of a"
          + " system such as 'HTG 70/55', or the pressure of steam such as '6 bar', taken as gauge;"
          + " the sheet Thickness shows what was used. Condensation pairs the coldest medium with the"
          + " air of the location, also where the two come in different seasons: dry, but thicker than it need"
          + " be.";

  /** How thick. */
  static final List<String> THICKNESS =
      List.of(
          "Each demand gives a thickness of its own: condensation, energy rule, heat loss limit, touch"
              + " temperature, frost time, least cost, specification of the project, least thickness of"
              + " the user. The largest governs. The sheet Thickness shows them side by side.",
          "Condensation: the smallest thickness that keeps the surface at or above dew point plus"
              + " margin, in still air, for level pipes, risers and vertical duct walls, with radiation."
              + " Saturated air has no such thickness; more than 1 m is not looked at.",
          "Energy rule: where one is silent, as nearly all are on ducts, there is a finding. In tables by temperature the row is that of the medium"
              + " temperature, the column that of the nearest nominal size by outside diameter. Where"
              + " the conductivity of the material lies outside the range of the rule, the thickness"
              + " is adjusted to it.",
          "The cells of 90.1 were read in reproductions, not in the standard itself. Hold them"
              + " against it before relying on them. A thickness from this table is a matter of"
              + " energy; it is no condensation control.",
          "What is bought is the next stock build-up at or above the demand: one layer where one"
              + " reaches it, else two. Ducts get sheet; pipes get tube or pipe section where its"
              + " bore fits, else sheet. Two layers count as one material.",
          "A fitting gets the thickness of its own section; one with several ends that of the largest"
              + " end. Insulation already in the model is reported and does not reduce what is"
              + " required.");

  /** How much. */
  static final List<String> QUANTITIES =
      List.of(
          "All quantities are net: no waste, no cutting allowance, no overlap.",
          "Straight and flexible pieces are measured in metres along the centre line, as long as they"
              + " are in the model.",
          "All else is counted in pieces, and its length is in no line in metres.",
          "Outer area is outer girth of the insulation times centre line, volume its cross-section"
              + " times centre line. Round pipes, round and flat-oval ducts: outer girth P + 2 pi t,"
              + " cross-section P t + pi t^2. Rectangular ducts, sheets butted at square corners: P + 8 t"
              + " and P t + 4 t^2. P is the girth of the bare section, t the thickness bought.",
          "Bends: centre line is radius times angle. All other fittings, valves and bodies: area and"
              + " volume of the pieces that their method of making gives; both stand on the sheet"
              + " Elements.",
          "Models seldom tell how wide flanges, valves and threaded bodies are, and not always how long"
              + " the legs of a tee are. These are assumed from the pipe (common practice and from"
              + " memory), flanges that are drawn keep their diameter. What is assumed has a finding."
              + " The limits can be changed in the settings under 'making'.",
          "What is cut on site has area and volume of a straight piece where the model tells its section"
              + " and length, and else none (a dash; 0 in takeoff.json). It is counted, so price it by"
              + " the piece.");

  /** Where elements are. */
  static final List<String> ACCOUNT =
      List.of(
          "Every element read is in exactly one place: on a line, left out with a finding, or out of"
              + " scope with a reason.",
          "What is left out is in no quantity. It stands under 'Questions to decide before pricing' on"
              + " the sheet Summary.",
          "Boilers, chillers, tanks, air handling units and other apparatus are not measured; take them"
              + " off their drawings.",
          "All demands, figures and votes of one element: lagwright explain GLOBALID MODEL; the same"
              + " stands in takeoff.json.");

  /** Cautions of the trade; common practice, no source. */
  static final List<String> CAUTIONS =
      List.of(
          "These results are estimates. Local codes, the authority having jurisdiction and licensed"
              + " engineers decide; have a qualified engineer check them before they are used.",
          "Freedom from condensation holds only for the air stated here. Fog, rain, wash-down and air"
              + " near saturation cannot be met by thickness.",
          "Hot surfaces: without a touch temperature in the settings no thickness here was chosen against"
              + " burns. Check surface temperatures where people can touch, and let plant cool before"
              + " work.",
          "Cold work stands or falls with an unbroken vapour barrier at joints, supports, ends and"
              + " valve stems; fibrous material on cold work needs a vapour retarder.",
          "Check the temperature limits of insulation, adhesive and facing, with a reserve for"
              + " surges.",
          "Fire: check reaction to fire and fire rating of the whole build-up, plenums and escape"
              + " routes, and seal penetrations as tested.",
          "Supports are thermal bridges and carry load; they are not in the result for a straight"
              + " pipe.",
          "Insulation only delays freezing. Where water can stand, trace heating or draining is"
              + " needed.",
          "Moisture under insulation corrodes steel. Choose coating and material for the temperature"
              + " range.",
          "Hygiene: drinking water needs hot lines that stay hot and cold lines that stay cold, not"
              + " for energy alone. Loose fibres have no place in air streams and clean rooms.",
          "Leak test before lagging. Keep nameplates, sensors, drains and test points free; do not"
              + " cover what must stay bare, such as some safety valves and fire-rated joints.",
          "Outdoors, foam needs protection from sun and weather.",
          "Existing work: have old insulation examined for asbestos before it is touched. Wear"
              + " protection against fibre dust.",
          "Solvent adhesives: ventilate, keep flames and sparks away, let joints dry before the plant"
              + " is started. Hot work and work at height need their permits.");

  private BasisText() {}
}
