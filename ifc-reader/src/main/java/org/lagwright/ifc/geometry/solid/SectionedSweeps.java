package org.lagwright.ifc.geometry.solid;

import java.util.List;
import org.jspecify.annotations.Nullable;
import org.lagwright.ifc.geometry.curve.Alignment;
import org.lagwright.ifc.geometry.curve.Curves;
import org.lagwright.ifc.geometry.curve.Path;
import org.lagwright.ifc.geometry.frame.Coordinates;
import org.lagwright.ifc.geometry.frame.Frame;
import org.lagwright.ifc.geometry.frame.Item;
import org.lagwright.ifc.geometry.frame.ShapeEnd;
import org.lagwright.ifc.geometry.frame.Vec;
import org.lagwright.ifc.geometry.profile.Outline;
import org.lagwright.ifc.geometry.profile.Profile;
import org.lagwright.ifc.geometry.profile.Profiles;
import org.lagwright.ifc.geometry.shape.Ends;
import org.lagwright.ifc.geometry.shape.Parts;
import org.lagwright.ifc.geometry.shape.Shape;
import org.lagwright.ifc.model.Evidence;
import org.lagwright.ifc.model.Form;
import org.lagwright.ifc.model.Measured;
import org.lagwright.ifc.model.Section;
import org.lagwright.ifc.schema.IfcRecord;

/** Measures what runs through sections that stand along a curve. */
public final class SectionedSweeps {

  /** Offsets that differ by less are the same: the tolerance of lengths. */
  private static final double SAME_OFFSET_M = 1e-4;

  private final Coordinates coordinates;
  private final Curves curves;
  private final Profiles profiles;

  /** Reads such bodies of one file. */
  public SectionedSweeps(Coordinates coordinates, Curves curves, Profiles profiles) {
    this.coordinates = coordinates;
    this.curves = curves;
    this.profiles = profiles;
  }

  /**
   * IfcSectionedSolidHorizontal between its first and its last section, which stand upright across
   * the directrix.
   */
  public Shape solid(Item item) {
    IfcRecord solid = item.record();
    Path whole = curves.read(solid.ref("Directrix"));
    List<IfcRecord> sections = solid.refs("CrossSections");
    List<IfcRecord> positions = solid.refs("CrossSectionPositions");
    Profile first = sections.isEmpty() ? null : profiles.read(sections.get(0));
    Outline outline = first == null ? null : first.outline();
    boolean usable = outline != null && outline.isUsable();
    if (whole == null || first == null || outline == null || !usable || positions.size() < 2) {
      return Shape.unmeasured(solid + ": directrix, section or positions cannot be read");
    }
    double fromM = distanceM(positions.get(0));
    double toM = distanceM(positions.get(positions.size() - 1));
    if (!(toM > fromM)) {
      return Shape.unmeasured(solid + ": positions along the directrix cannot be read");
    }
    Vec aside = aside(positions);
    Path path =
        aside == null
            ? null
            : Alignment.beside(whole.betweenM(fromM, toM), aside.plus(outline.centre()));
    if (path == null) {
      return Shape.unmeasured(solid + ": offsets from the directrix change or cannot be followed");
    }
    Vec tangent = path.first().startTangent();
    Vec level = Vec.Z.cross(tangent);
    Vec x = level.norm() < 1e-6 ? tangent.anyNormal() : level.unit();
    Frame start = Frame.of(path.first().start(), x, tangent.cross(x), tangent);
    Shape shape =
        SweptPath.measure(
            path.in(item.frame()),
            outline.at(Vec.ZERO).in(start).in(item.frame()),
            first.evidence(),
            Sweeps.evidence(solid));
    Vec end = path.last().end().minus(start.vector(outline.centre()));
    Frame finish = new Frame(end.point(), start.ex(), start.ey(), start.ez());
    return areSame(outline, sections)
        ? shape
        : between(item, shape, finish, sections, "the directrix");
  }

  /** How far the sections stand to the left of the directrix and above it; null if that changes. */
  private @Nullable Vec aside(List<IfcRecord> positions) {
    Vec first = null;
    for (IfcRecord position : positions) {
      IfcRecord location = position.ref("Location");
      Vec aside = location == null ? null : aside(location);
      if (aside == null || (first != null && aside.distanceTo(first) > SAME_OFFSET_M)) {
        return null;
      }
      first = first == null ? aside : first;
    }
    return first;
  }

  private @Nullable Vec aside(IfcRecord location) {
    double leftM = offsetM(location, "OffsetLateral");
    double upM = offsetM(location, "OffsetVertical");
    double alongM = offsetM(location, "OffsetLongitudinal");
    return alongM == 0 && Double.isFinite(leftM + upM) ? new Vec(leftM, upM, 0) : null;
  }

  private double offsetM(IfcRecord location, String attribute) {
    return location.has(attribute) ? coordinates.length(location, attribute) : 0;
  }

  /** IfcSectionedSpine: sections at placements along a curve, the first of them at its start. */
  public Shape spine(Item item) {
    IfcRecord spine = item.record();
    Path path = curves.read(spine.ref("SpineCurve"));
    List<IfcRecord> sections = spine.refs("CrossSections");
    List<IfcRecord> positions = spine.refs("CrossSectionPositions");
    Profile first = sections.isEmpty() ? null : profiles.read(sections.get(0));
    Outline outline = first == null ? null : first.outline();
    Frame start = positions.isEmpty() ? null : coordinates.axes(positions.get(0));
    if (path == null || first == null || outline == null || start == null) {
      return Shape.unmeasured(spine + ": curve, section or positions cannot be read");
    }
    Evidence along =
        new Evidence(spine.id(), spine.entityName() + ".SpineCurve", spine.raw("SpineCurve"));
    Shape shape =
        SweptPath.measure(
            path.in(item.frame()), outline.in(start).in(item.frame()), first.evidence(), along);
    Frame finish = coordinates.axes(positions.get(positions.size() - 1));
    return areSame(outline, sections) ? shape : between(item, shape, finish, sections, "the spine");
  }

  /**
   * A reducer between the first section and the last; what is curved keeps its first section. With
   * more sections between them, how it narrows is not told.
   */
  private Shape between(
      Item item, Shape first, @Nullable Frame finish, List<IfcRecord> sections, String along) {
    Profile last = profiles.read(sections.get(sections.size() - 1));
    String differ = "sections differ along " + along;
    Outline outline = last == null ? null : last.outline();
    Measured<Section> section = first.section();
    Measured<Double> lengthM = first.lengthM();
    ShapeEnd end =
        outline == null || finish == null || first.ends().size() != 2
            ? null
            : outline.in(finish).in(item.frame()).end(first.ends().get(1).out());
    return end == null || section == null || lengthM == null || first.form() != Form.STRAIGHT
        ? Parts.withProblem(first, differ)
        : Parts.fromEnds(
            List.of(first.ends().get(0), end),
            section.how(),
            section.evidence(),
            lengthM.evidence(),
            sections.size() > 2 ? List.of(differ) : first.problems());
  }

  private boolean areSame(Outline first, List<IfcRecord> sections) {
    for (IfcRecord section : sections) {
      Profile other = profiles.read(section);
      if (other == null
          || other.outline() == null
          || !Ends.same(first.section(), other.outline().section())) {
        return false;
      }
    }
    return true;
  }

  private double distanceM(IfcRecord position) {
    IfcRecord location = position.ref("Location");
    return location == null ? Double.NaN : coordinates.length(location, "DistanceAlong");
  }
}
