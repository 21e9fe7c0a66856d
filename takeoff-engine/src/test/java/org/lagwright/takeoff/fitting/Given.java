package org.lagwright.takeoff.fitting;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.lagwright.takeoff.fitting.pattern.EndCut;
import org.lagwright.takeoff.fitting.pattern.Outline;
import org.lagwright.takeoff.fitting.pattern.TubePiece;
import org.lagwright.takeoff.thickness.Layer;
import org.lagwright.takeoff.thickness.Layer.LayerForm;

/** Named figures of a reference row, millimetres there and metres here, and shapes made of them. */
final class Given {

  private final Map<String, Double> figures = new HashMap<>();

  Given(String inputs) {
    for (String part : inputs.split(" ")) {
      if (part.contains("=")) {
        String number = part.substring(part.indexOf('=') + 1);
        figures.put(part.substring(0, part.indexOf('=')), Double.parseDouble(number));
      }
    }
  }

  /** The figure as written. */
  double plain(String name) {
    Double figure = figures.get(name);
    if (figure == null) {
      throw new IllegalArgumentException("no " + name + " in " + figures);
    }
    return figure;
  }

  double metres(String name) {
    return plain(name) / 1000;
  }

  double radians(String name) {
    return Math.toRadians(plain(name));
  }

  int count(String name) {
    return (int) plain(name);
  }

  /** A layer of sheet on nothing. */
  static LayerOn layer(LayerForm form, double wallM) {
    return new LayerOn(new Layer("fef_nbr", form, wallM), 1, 0);
  }

  /** A tube of outer radius r with wall s. */
  static TubePiece tube(double r, double s, double axisM, EndCut start, EndCut end) {
    return new TubePiece(new Outline.Circle(r), s, axisM, start, end, List.of(), 0);
  }
}
