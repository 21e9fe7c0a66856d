package org.lagwright.ifc.extract.insulation;

import java.util.List;
import org.jspecify.annotations.Nullable;
import org.lagwright.ifc.extract.draft.Draft;
import org.lagwright.ifc.extract.draft.DraftReader;
import org.lagwright.ifc.extract.measure.ProfileReader;
import org.lagwright.ifc.extract.property.BelongingReader;
import org.lagwright.ifc.extract.property.MaterialLayers;
import org.lagwright.ifc.geometry.Beside;
import org.lagwright.ifc.geometry.Coaxiality;
import org.lagwright.ifc.geometry.shape.Shape;
import org.lagwright.ifc.model.Evidence;
import org.lagwright.ifc.model.How;
import org.lagwright.ifc.model.Kind;
import org.lagwright.ifc.model.Measured;
import org.lagwright.ifc.model.Section;

/**
 * The coverings of one file: how they lie on what they cover, and what they tell of themselves.
 * What they cover may stand in another file. Asked by one thread.
 */
public final class Coverings {

  private final String fileName;
  private final BelongingReader belongings;
  private final CoveringBodies bodies;
  private final ProfileReader profiles;
  private final DraftReader reader;
  private final MaterialLayers layers;
  private final CoveringConflicts contradictions;
  private final double lengthUnitM;

  /**
   * @param fileName as the user gave it
   * @param bodies measures the bodies of coverings
   * @param profiles tells the walls of hollow ones
   * @param reader reads the lengths that they state
   */
  public Coverings(
      String fileName,
      BelongingReader belongings,
      CoveringBodies bodies,
      ProfileReader profiles,
      DraftReader reader,
      MaterialLayers layers,
      double lengthUnitM) {
    this.fileName = fileName;
    this.belongings = belongings;
    this.bodies = bodies;
    this.profiles = profiles;
    this.reader = reader;
    this.layers = layers;
    this.lengthUnitM = lengthUnitM;
    this.contradictions = new CoveringConflicts(this, layers, lengthUnitM);
  }

  /** What their bodies are measured with. */
  public CoveringBodies bodies() {
    return bodies;
  }

  CoveringConflicts contradictions() {
    return contradictions;
  }

  boolean isLining(Draft covering, Draft host) {
    boolean beside = bodies.liesOutside(covering, host);
    Section within = beside ? null : bodies.outer(covering, host);
    return sizeOf(host).isLinedBy(within, bodies.along(covering, host).form(), covering.names());
  }

  /** How a covering lies on an element, and how thick it is. */
  Layers.Covering on(Draft covering, Draft host) {
    Shape along = bodies.along(covering, host);
    Coaxiality.Extent extent = Coaxiality.extent(along, host.shape());
    Section outer = along.section() == null ? null : along.section().value();
    Double wallM = profiles.drawnWallM(along).orElse(null);
    wallM = wallM == null && extent != null ? wallOfFacesM(covering, host, along) : wallM;
    Double statedM = Layers.statedM(covering.properties(), lengthUnitM);
    statedM = statedM == null ? layers.thicknessM(covering.step()) : statedM;
    Beside piece = extent == null && isStraightPiece(host) ? bodies.beside(covering, host) : null;
    if (piece != null) {
      return Layers.Covering.of(piece, statedM);
    }
    boolean drawn = wallM != null || (outer != null && !Layers.isWide(host.form()));
    return Layers.Covering.of(
        host.form(),
        outer,
        statedM == null && !drawn ? Layers.wordedM(covering.names()) : statedM,
        wallM,
        extent == null ? Coaxiality.Extent.WHOLE : extent);
  }

  /** Wall of a ring of faces around a pipe, or of any around a valve, which may keep off it. */
  private @Nullable Double wallOfFacesM(Draft covering, Draft host, Shape along) {
    if (!isStraightPiece(host)) {
      return bodies.ringWallM(covering, along);
    }
    boolean faces = along.section() != null && along.section().how() == How.MESH;
    Beside ring = faces ? bodies.beside(covering, host) : null;
    return ring != null && ring.round() ? ring.wallM() : null;
  }

  private static boolean isStraightPiece(Draft host) {
    return host.kind() == Kind.PIPE_SEGMENT || host.kind() == Kind.DUCT_SEGMENT;
  }

  boolean isDrawn(Draft covering) {
    return bodies.shape(covering).isDrawn();
  }

  /** The length that a covering states, null if it states none. */
  @Nullable Double statedLengthM(Draft covering) {
    return reader.statedLengthM(covering.step());
  }

  /** The first material of a covering, null if it has none. */
  @Nullable String materialOf(Draft covering) {
    List<String> materials = belongings.materialsOf(covering.step());
    return materials.isEmpty() ? null : materials.get(0);
  }

  /** That an element is covered, told by a covering. */
  Evidence evidence(Draft covering, Draft host) {
    return new Evidence(
        covering.step(), covering.ifcClass() + where(covering, host), covering.names().own());
  }

  /** The record of a covering in words. */
  String named(Draft covering, Draft host) {
    return "#" + covering.step() + where(covering, host);
  }

  private String where(Draft covering, Draft host) {
    return covering.key().model() == host.key().model() ? "" : " in " + fileName;
  }

  /** An element as what its coverings are measured against. */
  public static Layers.Host sizeOf(Draft host) {
    return new Layers.Host(host.kind(), host.form(), sectionOf(host));
  }

  static @Nullable Section sectionOf(Draft host) {
    return host.section() == null ? null : host.section().value();
  }

  /** Sections of the ends of an element, empty where unknown. */
  static List<Section> endsOf(Draft host) {
    Measured<List<Section>> ends = host.ends();
    return ends == null ? List.of() : ends.value();
  }
}
