package org.lagwright.testmodels.ifc;

import java.util.List;

/** A solid in its own frame. All lengths in millimetres. */
public sealed interface Body {

  /** The profile moved along z. */
  record Extrusion(Profile profile, double depth) implements Body {}

  /**
   * The profile turned from z towards x about an axis parallel to y at x = radius: a bend that
   * starts in direction z.
   */
  record Revolution(Profile profile, double radius, double degrees) implements Body {}

  /**
   * From one section to another along z, both centred: circles or rectangles only. IFC4 and later
   * write a tapered extrusion, IFC2X3 flat faces with {@link Faces#SIDES} corners on a circle.
   */
  record Taper(Profile from, Profile to, double depth) implements Body {}

  /** Flat faces, counter-clockwise seen from outside, that enclose a volume. */
  record Faceted(List<List<Vec>> faces) implements Body {
    public Faceted {
      faces = List.copyOf(faces);
    }
  }

  /** Two bodies made one by a boolean operation. */
  record Union(Placed first, Placed second) implements Body {}

  /** A body put somewhere. */
  record Placed(Frame frame, Body body) {}

  /** A body in the frame of its element. */
  default Placed inPlace() {
    return new Placed(Frame.WORLD, this);
  }
}
