package org.lagwright.ifc.extract.measure;

import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import org.lagwright.ifc.extract.draft.Draft;
import org.lagwright.ifc.extract.property.MaterialLayers;
import org.lagwright.ifc.extract.property.Relations;
import org.lagwright.ifc.extract.text.Tolerances;
import org.lagwright.ifc.geometry.ShapeMeasurer;
import org.lagwright.ifc.geometry.shape.Shape;
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
public final class ProfileReader {

  /** Share by which a section may differ from that of its profile and be no other. */
  private static final double NOISE = 1e-3;

  /** The set of a usage, and that of the other end of one that tapers. */
  private static final String START = "ForProfileSet";

  private static final String END = "ForProfileEndSet";

  private final IfcFile file;
  private final Relations relations;
  private final ShapeMeasurer shapes;
  private final double lengthUnitM;
  private final Map<Long, Optional<Measured<Section>>> byMaterial = new ConcurrentHashMap<>();

  /** Reads profiles of one file, whose unit of length is given in metres. */
  public ProfileReader(
      IfcFile file, Relations relations, ShapeMeasurer shapes, double lengthUnitM) {
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

  /** Sections of the two ends of an element whose material tapers; null if it does not. */
  @Nullable Measured<List<Section>> endsOfMaterial(long element) {
    for (long id : relations.materialsOf(element)) {
      IfcRecord usage = file.find(id);
      if (usage != null && usage.is("IfcMaterialProfileSetUsageTapering")) {
        Optional<Measured<Section>> start = largest(profiles(usage.ref(START)));
        Optional<Measured<Section>> end = largest(profiles(usage.ref(END)));
        if (start.isPresent() && end.isPresent()) {
          List<Section> ends = List.of(start.get().value(), end.get().value());
          return Measured.of(ends, How.PROPERTY, start.get().evidence());
        }
      }
    }
    return null;
  }

  private Optional<Measured<Section>> sectionOf(long material) {
    IfcRecord at = file.find(material);
    boolean usage = at != null && at.is("IfcMaterialProfileSetUsage");
    return at != null && usage
        ? largest(Stream.concat(profiles(at.ref(START)), profiles(at.ref(END))))
        : largest(profiles(at));
  }

  private Optional<Measured<Section>> largest(Stream<IfcRecord> profiles) {
    return profiles
        .map(p -> p.ref("Profile"))
        .filter(Objects::nonNull)
        .flatMap(p -> measured(p).stream())
        .max(Comparator.comparingDouble(m -> m.value().perimeterM()));
  }

  /** The profiles of a set, or a single one; those of insulation are no pipe. */
  private static Stream<IfcRecord> profiles(@Nullable IfcRecord at) {
    if (at == null) {
      return Stream.of();
    }
    Stream<IfcRecord> found =
        at.is("IfcMaterialProfileSet") ? at.refs("MaterialProfiles").stream() : Stream.of(at);
    return found
        .filter(p -> p.is("IfcMaterialProfile"))
        .filter(p -> !MaterialLayers.isInsulation(p));
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
  public Optional<Double> drawnWallM(Shape shape) {
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
    return ofMaterial != null && Tolerances.sameSection(ofMaterial.value(), drawn.value())
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
