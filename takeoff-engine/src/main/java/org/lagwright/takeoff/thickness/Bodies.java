package org.lagwright.takeoff.thickness;

import java.util.List;
import org.lagwright.ifc.model.Section;
import org.lagwright.ifc.model.Section.Oval;
import org.lagwright.ifc.model.Section.Rectangular;
import org.lagwright.ifc.model.Section.Round;
import org.lagwright.takeoff.heat.Body;
import org.lagwright.takeoff.heat.Body.Cylinder;
import org.lagwright.takeoff.heat.Body.Flat;
import org.lagwright.takeoff.heat.Body.RectangularDuct;

/** Which bodies of heat flow stand for a section. */
final class Bodies {

  private Bodies() {}

  /**
   * The surfaces that may not get wet: the round one, or each side of a duct as a flat surface as
   * high as the side is long. Top and bottom have no form of their own in ISO 12241.
   */
  static List<Body> surfaces(Section section) {
    if (section instanceof Round round) {
      return List.of(new Cylinder(round.outsideDiameterM()));
    } else if (section instanceof Rectangular duct) {
      return List.of(new Flat(duct.widthM()), new Flat(duct.heightM()));
    } else {
      Oval duct = (Oval) section;
      return List.of(new Flat(duct.widthM()), new Flat(duct.heightM()));
    }
  }

  /**
   * The body for the heat flow of a metre of run; flat-oval ducts count as rectangular ones of
   * their perimeter.
   */
  static Body whole(Section section) {
    if (section instanceof Round round) {
      return new Cylinder(round.outsideDiameterM());
    } else if (section instanceof Rectangular duct) {
      return new RectangularDuct(duct.perimeterM(), duct.heightM());
    } else {
      Oval duct = (Oval) section;
      return new RectangularDuct(duct.perimeterM(), duct.heightM());
    }
  }
}
