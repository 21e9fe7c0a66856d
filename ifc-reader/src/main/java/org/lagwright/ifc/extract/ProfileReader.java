package org.lagwright.ifc.extract;

import java.util.Comparator;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import org.lagwright.ifc.geometry.Shape;
import org.lagwright.ifc.geometry.ShapeMeasurer;
import org.lagwright.ifc.model.Evidence;
import org.lagwright.ifc.model.How;
import org.lagwright.ifc.model.Measured;
import org.lagwright.ifc.model.Section;
import org.lagwright.ifc.schema.IfcFile;
import org.lagwright.ifc.schema.IfcRecord;

/**
 * Profile definitions outside the body: those of the material of an element, which some exporters
 * give instead of a body or beside it; and the wall of the profile of a body.
 */
final class ProfileReader {

  /** Share by which a section may differ from that of its profile and be no other. */
  private static final double NOISE = 1e-3;

  private final IfcFile file;
  private final Relations relations;
  private final ShapeMeasurer shapes;
  private final double lengthUnitM;
  private final Map<Long, Optional<Measured<Section>>> byMaterial = new ConcurrentHashMap<>();

  ProfileReader(IfcFile file, Relations relations, ShapeMeasurer shapes, double lengthUnitM) {
    this.file = file;
    this.relations = relations;
    this.shapes = shapes;
    this.lengthUnitM = lengthUnitM;
  }

  /** The largest section of the material profiles of an element; null if it has none. */
  @Nullable Measured<Section> ofMaterial(long element) {
    for (long id : relations.materialsOf(element)) {
      Optional<Measured<Section>> section = byMaterial.computeIfAbsent(id, this::sectionOf);
      if (section.isPresent()) {
        return section.get();
      }
    }
    return null;
  }

  private Optional<Measured<Section>> sectionOf(long material) {
    return profiles(file.find(material))
        .map(p -> p.ref("Profile"))
        .filter(Objects::nonNull)
        .flatMap(p -> measured(p).stream())
        .max(Comparator.comparingDouble(m -> m.value().perimeterM()));
  }

  /** From a usage to its set, from a set to its profiles; those of insulation are no pipe. */
  private static Stream<IfcRecord> profiles(@Nullable IfcRecord material) {
    if (material == null) {
      return Stream.of();
    }
    IfcRecord set =
        material.is("IfcMaterialProfileSetUsage") ? material.ref("ForProfileSet") : null;
    IfcRecord at = set == null ? material : set;
    Stream<IfcRecord> found =
        at.is("IfcMaterialProfileSet") ? at.refs("MaterialProfiles").stream() : Stream.of(at);
    return found
        .filter(p -> p.is("IfcMaterialProfile"))
        .filter(p -> !isInsulation(p.text("Name")) && !isInsulation(p.text("Category")));
  }

  private static boolean isInsulation(@Nullable String name) {
    return name != null && Words.isInsulation(name);
  }

  private Optional<Measured<Section>> measured(IfcRecord profile) {
    return shapes
        .sectionOf(profile)
        .map(
            m ->
                Measured.of(
                    m.value(),
                    How.PROPERTY,
                    new Evidence(
                        m.evidence().step(),
                        "material profile " + m.evidence().path(),
                        m.evidence().raw())));
  }

  /**
   * Wall of the hollow profile or disk that a body was drawn with, in metres, as scaled as the body
   * is; empty if it has none, or if the section of the body is not that of the profile.
   */
  Optional<Double> drawnWallM(Shape shape) {
    Measured<Section> section = shape.section();
    return section == null || section.how() != How.SOLID ? Optional.empty() : wallM(section);
  }

  /** Wall likewise, or that of the profile of the material if that is as wide as the body. */
  Optional<Double> wallM(Draft draft) {
    Optional<Double> drawnWallM = drawnWallM(draft.shape());
    Measured<Section> drawn = draft.shape().section();
    if (drawnWallM.isPresent() || drawn == null) {
      return drawnWallM;
    }
    Measured<Section> ofMaterial = ofMaterial(draft.step());
    return ofMaterial != null && Sizes.sameSection(ofMaterial.value(), drawn.value())
        ? wallM(ofMaterial)
        : Optional.empty();
  }

  private Optional<Double> wallM(Measured<Section> drawn) {
    IfcRecord hollow = file.find(drawn.evidence().step());
    double wallM = hollow == null ? Double.NaN : ownWallM(hollow);
    if (hollow == null || !(wallM > 0)) {
      return Optional.empty();
    }
    Section own = ownSection(hollow);
    double factor = own == null ? Double.NaN : factor(own, drawn.value());
    return factor > 0 ? Optional.of(wallM * factor) : Optional.empty();
  }

  /**
   * Wall that a profile or a hollow disk has by itself: as written, or between the two curves of a
   * free profile.
   */
  private double ownWallM(IfcRecord hollow) {
    if (isDisk(hollow)) {
      return (hollow.number("Radius") - hollow.number("InnerRadius")) * lengthUnitM;
    }
    return hollow.is("IfcArbitraryProfileDefWithVoids")
        ? shapes.wallM(hollow).orElse(Double.NaN)
        : hollow.number("WallThickness") * lengthUnitM;
  }

  private @Nullable Section ownSection(IfcRecord hollow) {
    return isDisk(hollow)
        ? new Section.Round(2 * hollow.number("Radius") * lengthUnitM)
        : shapes.sectionOf(hollow).map(Measured::value).orElse(null);
  }

  private static boolean isDisk(IfcRecord hollow) {
    return hollow.is("IfcSweptDiskSolid");
  }

  /** How many times as wide and as high a section is as another; NaN if not of the same shape. */
  private static double factor(Section from, Section to) {
    double factor = to.perimeterM() / from.perimeterM();
    double sideways = to.largestSideM() / from.largestSideM();
    boolean similar = from.getClass() == to.getClass() && isOne(sideways / factor);
    return similar ? (isOne(factor) ? 1 : factor) : Double.NaN;
  }

  private static boolean isOne(double factor) {
    return Math.abs(factor - 1) < NOISE;
  }
}
