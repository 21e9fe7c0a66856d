package org.lagwright.testmodels.demo;

import java.util.List;
import java.util.Locale;
import org.jspecify.annotations.Nullable;
import org.lagwright.testmodels.ifc.Body;
import org.lagwright.testmodels.ifc.ElementClass;
import org.lagwright.testmodels.ifc.Frame;

/**
 * One element of the design.
 *
 * @param key names it in every file; its GlobalId follows from it
 * @param what class, form and words
 * @param system null for apparatus that several systems share, and for what carries nothing
 * @param measure what the design says about its size
 * @param section size at its start, null for apparatus
 * @param frame where it is, in millimetres of the world
 * @param bodies its solids in that frame; empty for the one pipe without geometry
 */
public record Piece(
    String key,
    What what,
    @Nullable DemoSystem system,
    Place place,
    Measure measure,
    @Nullable Size section,
    Frame frame,
    List<Body.Placed> bodies) {

  public Piece {
    bodies = List.copyOf(bodies);
  }

  /**
   * What it is.
   *
   * @param predefined IFC4 enumeration value of its class
   * @param form word for its shape, as in quantities.csv
   */
  public record What(ElementClass ifcClass, String predefined, String form, String name) {}

  /**
   * What the design says about its size. Zero where it does not apply.
   *
   * @param size text such as {@code 60.3/60.3/33.7}
   * @param lengthMm length along the centre line, straights only
   * @param degrees angle of a bend
   * @param bendRadiusMm centre-line radius of a bend
   */
  public record Measure(String size, double lengthMm, double degrees, double bendRadiusMm) {

    /** A size without any length or angle. */
    static Measure of(String size) {
      return new Measure(size, 0, 0, 0);
    }
  }

  /** The word for its kind, as in quantities.csv. */
  public String kind() {
    return switch (what.ifcClass()) {
      case PIPE_SEGMENT, PIPE_FITTING, DUCT_SEGMENT, DUCT_FITTING, VALVE ->
          what.ifcClass().name().toLowerCase(Locale.ROOT).replace('_', '-');
      case DAMPER, FLOW_METER, PUMP, FILTER -> "inline";
      case TANK, BOILER, CHILLER, UNITARY_EQUIPMENT -> "equipment";
      case SPACE_HEATER, AIR_TERMINAL, SANITARY_TERMINAL, WASTE_TERMINAL -> "terminal";
      case CABLE_CARRIER_SEGMENT, LIGHT_FIXTURE, DISCRETE_ACCESSORY -> "other";
    };
  }

  /** True for what carries a medium and therefore has ports, if it has a place at all. */
  public boolean isMep() {
    return !kind().equals("other");
  }
}
