package org.lagwright.ifc.geometry.solid;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.lagwright.ifc.geometry.curve.Path;
import org.lagwright.ifc.geometry.frame.Coordinates;
import org.lagwright.ifc.geometry.frame.Frame;
import org.lagwright.ifc.geometry.frame.Item;
import org.lagwright.ifc.geometry.frame.ShapeEnd;
import org.lagwright.ifc.geometry.frame.Vec;
import org.lagwright.ifc.geometry.profile.Bores;
import org.lagwright.ifc.geometry.profile.Outline;
import org.lagwright.ifc.geometry.profile.Profile;
import org.lagwright.ifc.geometry.profile.Profiles;
import org.lagwright.ifc.geometry.shape.Ends;
import org.lagwright.ifc.geometry.shape.Parts;
import org.lagwright.ifc.geometry.shape.Prism;
import org.lagwright.ifc.geometry.shape.Shape;
import org.lagwright.ifc.geometry.shape.ShapeHints;
import org.lagwright.ifc.model.Evidence;
import org.lagwright.ifc.model.Form;
import org.lagwright.ifc.model.How;
import org.lagwright.ifc.model.Measured;
import org.lagwright.ifc.model.Section;
import org.lagwright.ifc.schema.IfcRecord;

/**
 * Measures extruded solids. The length is the depth, because the extrusion direction counts as a
 * unit vector whatever its written length, times the scale of the frame.
 */
public final class Extrusions {

  private final Coordinates coordinates;
  private final Profiles profiles;
  private final Bores bores;

  /** Reads extrusions of one file. */
  public Extrusions(Coordinates coordinates, Profiles profiles, Bores bores) {
    this.coordinates = coordinates;
    this.profiles = profiles;
    this.bores = bores;
  }

  /** What an extrusion tells of sections, length and ends. */
  public Shape measure(Item item, ShapeHints hints) {
    IfcRecord solid = item.record();
    Frame own = coordinates.position(solid, "Position");
    Vec direction = coordinates.direction(solid.ref("ExtrudedDirection"));
    double depth = coordinates.length(solid, "Depth");
    Profile profile = profiles.read(solid, "SweptArea");
    if (own == null || direction == null || !(depth > 0 && Double.isFinite(depth))) {
      return Shape.unmeasured(solid + ": position, direction or depth missing");
    }
    if (profile == null) {
      return Shape.unmeasured(solid + ": profile missing or broken");
    }
    Frame frame = item.frame().times(own);
    Vec axis = frame.vector(direction.times(depth));
    Evidence length = new Evidence(solid.id(), solid.entityName(), "Depth", solid.raw("Depth"));
    if (solid.is("IfcExtrudedAreaSolidTapered")) {
      return tapered(solid, profile, frame, axis, length);
    }
    Outline outline = profile.outline();
    boolean isBox = outline != null && outline.kind() == Outline.Kind.RECTANGULAR;
    Profile whole = isBox ? profile.withBore(bores.of(solid.ref("SweptArea"))) : profile;
    return straight(whole.in(frame), axis, length, hints);
  }

  private static Shape straight(Profile profile, Vec axis, Evidence length, ShapeHints hints) {
    boolean several = hints.straight() && !profile.parts().isEmpty();
    Shape coaxial = several ? coaxial(profile, axis, length, hints) : null;
    if (coaxial != null) {
      return coaxial;
    }
    Outline outline = profile.outline();
    if (outline != null) {
      Outline bore = profile.bore();
      boolean isOpen = bore != null && outline.isBoredBy(bore);
      return new Prism(outline, axis, isOpen, How.SOLID, profile.evidence(), length).measure(hints);
    }
    Path path = profile.path();
    Shape shape = path == null ? null : ProfileBend.measure(path, axis, profile.evidence(), length);
    if (shape == null && path != null) {
      shape = ProfileBranch.measure(path, axis, profile.evidence(), length);
    }
    if (shape == null && path != null && !hints.straight()) {
      shape = ProfileFitting.measure(path, axis, length, hints);
    }
    return shape != null ? shape : unknown(profile, axis, length, hints);
  }

  /** A pipe and what lies around it, drawn as one profile of several parts; null for others. */
  private static @Nullable Shape coaxial(
      Profile profile, Vec axis, Evidence length, ShapeHints hints) {
    List<CoaxialBody.Part> parts = new ArrayList<>();
    List<Shape> shapes = new ArrayList<>();
    for (Profile part : profile.parts()) {
      Shape shape = straight(part, axis, length, hints);
      Outline bore = part.bore();
      boolean hollow = bore != null && bore.isUsable();
      parts.add(new CoaxialBody.Part(shape, bore == null || !hollow ? null : bore.section()));
      shapes.add(shape);
    }
    return CoaxialBody.mayBe(shapes) ? CoaxialBody.of(parts, shapes.get(0), length.step()) : null;
  }

  /**
   * The profile is unknown. The depth is the length of a segment, unless something better turns up;
   * a fitting may as well be drawn as its side view, and the depth be a side of its section.
   */
  private static Shape unknown(Profile profile, Vec axis, Evidence length, ShapeHints hints) {
    return new Shape(
        Form.UNKNOWN,
        null,
        hints.straight() ? Measured.of(axis.norm(), How.SOLID, length) : null,
        null,
        null,
        List.of(),
        List.of("profile " + profile.evidence() + " is neither circle, rectangle nor oval"));
  }

  private Shape tapered(IfcRecord solid, Profile start, Frame frame, Vec axis, Evidence length) {
    Profile far = profiles.read(solid, "EndSweptArea");
    Outline small = start.outline();
    Outline large = far == null ? null : far.outline();
    if (small == null || large == null) {
      return Shape.unmeasured(solid + ": one of its two profiles cannot be read");
    }
    Outline first = small.in(frame);
    Outline last = large.in(frame);
    Vec normal = first.normal().dot(axis) < 0 ? first.normal().times(-1) : first.normal();
    List<ShapeEnd> ends =
        Ends.known(first.end(normal.times(-1)), last.at(last.centre().plus(axis)).end(normal));
    return Parts.fromEnds(ends, How.SOLID, bigger(start, far, ends), length, List.of());
  }

  /** The evidence of the larger of both ends. */
  private static Evidence bigger(Profile start, @Nullable Profile far, List<ShapeEnd> ends) {
    Measured<Section> largest = Parts.largest(ends, How.SOLID, start.evidence());
    boolean first =
        largest == null || ends.isEmpty() || largest.value().equals(ends.get(0).section());
    return first || far == null ? start.evidence() : far.evidence();
  }
}
