package org.lagwright.report.templates;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.stream.Collectors;
import org.lagwright.takeoff.fitting.Piece;
import org.lagwright.takeoff.fitting.pattern.ConePiece;
import org.lagwright.takeoff.fitting.pattern.EndCut;
import org.lagwright.takeoff.fitting.pattern.NotchedTube;
import org.lagwright.takeoff.fitting.pattern.Outline;
import org.lagwright.takeoff.fitting.pattern.TorusGore;
import org.lagwright.takeoff.fitting.pattern.TubePiece;

/** What a drawing says about its piece, in words and millimetres. */
final class TemplateText {

  /** Cautions of the trade; common practice, no source. */
  static final List<String> CAUTIONS =
      List.of(
          "Check both 100 mm bars of each sheet before cutting; where one is off, set the printer to"
              + " 100 %, no fit to page, and print again. Hold the first piece against the pipe.",
          "Dimensions come from a model. Measure on site before cutting in numbers, above all where a"
              + " dimension is marked as assumed.",
          "Let hot plant cool and switch it off; cut away from the hand, on a firm board; glove the"
              + " other hand. Contact adhesives burn and harm: ventilate, no sparks, protect skin and"
              + " breath. Wear protection against fibre dust.",
          "On cold pipes every joint is glued and vapour tight; nothing here stands for a vapour"
              + " barrier. Have old insulation examined for asbestos before it is touched.",
          "Limits of the rules of making are common practice or from memory, no standard, and can be"
              + " changed in the settings. Local codes and licensed practice go before this sheet.");

  private TemplateText() {}

  static String mm(double lengthM) {
    return String.format(Locale.ROOT, "%.1f mm", lengthM * 1000);
  }

  private static String deg(double angle) {
    return String.format(Locale.ROOT, "%.2f", angle);
  }

  /** Facts of a template by name. */
  static Map<String, String> facts(Template template) {
    Piece piece = template.piece();
    Map<String, String> facts = new LinkedHashMap<>();
    facts.put("Cut", template.count() + " pieces of this template");
    facts.put(
        "Material",
        piece.layer().materialId()
            + ", "
            + mm(piece.shape().wallM())
            + " "
            + piece.layer().form().label()
            + ", layer "
            + piece.layerNumber());
    facts.put("Method", template.making().method().words());
    facts.put("Because", template.making().reason());
    facts.put("Source of the rule", template.making().source());
    facts.put("Adhesive", template.making().bonding().words());
    addShape(piece, facts);
    facts.put(
        "Area, one piece",
        String.format(Locale.ROOT, "%.4f m2 outer face, laid flat", piece.shape().areaM2()));
    facts.put("Volume, one piece", String.format(Locale.ROOT, "%.5f m3", piece.volumeM3()));
    facts.put("Length of cuts", mm(piece.shape().cutLengthM()));
    if (piece.tubeLengthM() > 0) {
      facts.put("Tube used up", mm(piece.tubeLengthM()) + " each, kerf extra");
    }
    List<String> assumed =
        template.uses().stream().flatMap(use -> use.assumed().stream()).distinct().toList();
    if (!assumed.isEmpty()) {
      facts.put("ASSUMED", String.join("; ", assumed) + ": measure before cutting");
    }
    return facts;
  }

  private static void addShape(Piece piece, Map<String, String> facts) {
    if (piece.shape() instanceof TubePiece tube) {
      addTube(piece, tube, facts);
    } else if (piece.shape() instanceof NotchedTube notched) {
      facts.put(
          "Wedges", notched.wedges() + ", opening " + mm(notched.openingM()) + " at the throat");
      facts.put("Hinge", "the heel stays whole; seam at the throat");
    } else if (piece.shape() instanceof TorusGore gore) {
      facts.put("Stretch", "the middle of each strip has to give " + mm(gore.bulgeM()));
    } else if (piece.shape() instanceof ConePiece cone) {
      facts.put("Angle laid flat", deg(Math.toDegrees(cone.angleRad())) + " degrees");
      facts.put("Slant", mm(cone.slantM(0)) + " at the seam");
    }
  }

  private static void addTube(Piece piece, TubePiece tube, Map<String, String> facts) {
    if (piece.boreM() > 0) {
      facts.put("Tube", "bore " + mm(piece.boreM()) + ", wall " + mm(tube.wallM()));
    }
    if (tube.outer() instanceof Outline.Circle circle) {
      facts.put("Outside diameter", mm(2 * circle.radiusM()));
    }
    facts.put("Girth", mm(tube.outer().girthM()) + ", stepped by arc");
    facts.put(
        "Length",
        mm(tube.axisM())
            + " on the axis, "
            + mm(tube.lengthAtM(0))
            + " at 0°, "
            + mm(tube.lengthAtM(0.25))
            + " at 90°, "
            + mm(tube.lengthAtM(0.5))
            + " at 180°");
    List<Double> angles = angles(piece);
    if (!angles.isEmpty()) {
      facts.put("Saw cuts", cuts(piece));
    }
    if (tube.start() instanceof EndCut.Saddle || tube.end() instanceof EndCut.Saddle) {
      facts.put(
          "Saddle", "cut on the outer face along the full line, bevel to the dashed bore line");
    }
    if (angles.size() == 1 && tube.holes().isEmpty()) {
      facts.put("Saving tube", "turn alternate pieces by 180°: neighbours share one saw cut");
    }
    facts.put("Seam", seam(tube.seamTurn()));
  }

  private static List<Double> angles(Piece piece) {
    return piece.cutAnglesDeg().stream()
        .map(angle -> Math.round(angle * 1000) / 1000.0)
        .filter(angle -> angle > 0)
        .distinct()
        .toList();
  }

  /** Angles of the saw cuts in words, empty where there are none but square ones. */
  static String cuts(Piece piece) {
    return angles(piece).stream().map(TemplateText::cut).collect(Collectors.joining("; "));
  }

  private static String cut(double offSquareDeg) {
    return deg(offSquareDeg)
        + "° off square = "
        + deg(90 + offSquareDeg)
        + "° / "
        + deg(90 - offSquareDeg)
        + "° to the base line";
  }

  private static String seam(double turn) {
    return "at " + Math.round(turn * 360) + "° from heel or front; turn it to the blind side";
  }

  /** A plain piece in one line. */
  static String plain(Piece piece) {
    if (piece.shape() instanceof TubePiece tube) {
      String from =
          piece.boreM() > 0
              ? "tube of bore " + mm(piece.boreM())
              : "sheet, girth " + mm(tube.outer().girthM());
      return from + ", length " + mm(tube.axisM()) + ", wall " + mm(tube.wallM());
    }
    var box = piece.shape().pattern().bounds();
    return "sheet "
        + mm(box.widthM())
        + " x "
        + mm(box.heightM())
        + ", "
        + mm(piece.shape().wallM());
  }
}
