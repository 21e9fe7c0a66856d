package org.lagwright.report.templates;

import java.util.ArrayList;
import java.util.List;

/** How to go about it on site, and what to look out for. Common practice, no source. */
final class SiteText {

  /** Cautions of every sheet. */
  static final List<String> CAUTIONS =
      List.of(
          "Hot surfaces: work on lines that are shut off and cool; check before you touch.",
          "Solvent adhesive and cleaner burn and harm: ventilate, no flame or spark, close the tin,"
              + " protect skin, eyes and breath. Follow the safety sheet of the product.",
          "Knives: cut away from the hand, on a firm board, with a sharp blade; retract it after each"
              + " cut. Glove the other hand.",
          "Height: work from a platform or scaffold that stands level and has guard rails; never from"
              + " pipes or ducts.",
          "Asbestos: do not touch, cut or tear off old insulation before it was surveyed.",
          "Fibre dust: protect breath and eyes where wool or board is cut.",
          "Local rules, the safety plan of the site and the instructions of the products go before"
              + " this sheet; licensed persons decide where the law asks for them.");

  private SiteText() {}

  /** The order of work. */
  static List<String> steps(SiteWork work) {
    List<String> steps = new ArrayList<>();
    steps.add(
        "Check that the line is tested, shut off and at the temperature of the room, and that the"
            + " size on the pipe is the one on this sheet.");
    steps.add("Clean and dry the surface: no rust scale, oil, dust or dew.");
    steps.add("Cut the pieces by their templates and lay them out; try the first one on the pipe.");
    if (work.isGlued()) {
      steps.add(
          "Spread the adhesive thin on both faces. Let it dry through its open time, as the tin says,"
              + " until it no longer draws threads; then press the faces together once and firmly.");
    }
    steps.add(
        "Close every joint without tension: pieces a little long, pushed together, never pulled.");
    steps.add("Turn seams to the side that is not seen and not to the top of level lines.");
    if (work.isLayered()) {
      steps.add(
          "Second layer: stagger its joints and seams against those of the first, and glue its ends"
              + " to the first layer.");
    }
    steps.add(
        "Tape every joint, after the adhesive has set; no joint, end, hanger or valve stem stays"
            + " open. On cold lines glue the ends to the pipe as well.");
    steps.add("Mark what is behind covers that come off, and keep name plates in sight.");
    return steps;
  }
}
