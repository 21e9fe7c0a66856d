package org.lagwright.ifc.extract.insulation;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.lagwright.ifc.extract.draft.Draft;
import org.lagwright.ifc.extract.property.MaterialLayers;
import org.lagwright.ifc.extract.text.InWords;
import org.lagwright.ifc.extract.text.PropertyNames;
import org.lagwright.ifc.extract.text.Thicknesses;
import org.lagwright.ifc.geometry.BodyCorners;
import org.lagwright.ifc.geometry.Coaxiality;
import org.lagwright.ifc.geometry.frame.Box;
import org.lagwright.ifc.geometry.frame.ShapeEnd;
import org.lagwright.ifc.geometry.shape.Shape;
import org.lagwright.ifc.model.Effect;
import org.lagwright.ifc.model.Property;
import org.lagwright.ifc.model.ReadFinding;
import org.lagwright.ifc.model.Section;

/** Tells where a covering contradicts itself, or the element that it is said to cover. */
final class CoveringConflicts {

  /** What is drawn further off does not lie on it. Common practice, no source. */
  private static final double FAR_M = 0.5;

  /** Two sizes that are drawn as one. */
  private static final double AS_WIDE_M = 0.001;

  /** A figure in a name that is the diameter of the pipe. */
  private static final double SAME_SIZE_M = 0.0001;

  private final Coverings coverings;
  private final MaterialLayers layers;
  private final double lengthUnitM;

  CoveringConflicts(Coverings coverings, MaterialLayers layers, double lengthUnitM) {
    this.coverings = coverings;
    this.layers = layers;
    this.lengthUnitM = lengthUnitM;
  }

  /**
   * Compares one covering of an element.
   *
   * @param layer how it lies on the element
   * @param drawnM how thick it is by its body, null where that does not tell
   * @param bare sections of the element, all that it has
   */
  void compare(
      Draft host,
      Draft covering,
      Layers.Covering layer,
      @Nullable Double drawnM,
      List<Section> bare) {
    Double statedM = layer.statedM();
    Double takenM = statedM == null ? drawnM : statedM;
    List<String> others = new ArrayList<>();
    if (takenM != null) {
      double otherwiseM = drawnM == null ? takenM : drawnM;
      String named = coverings.named(covering, host);
      addStated(covering, named, takenM, otherwiseM, others);
      addWorded(covering, named, takenM, otherwiseM, bare, others);
    }
    addNarrower(host, covering, layer, bare, others);
    addFar(host, covering, others);
    if (!others.isEmpty()) {
      host.note(
          ReadFinding.INSULATION_CONFLICT,
          Effect.NONE,
          takenM == null ? "not known" : InWords.millimetres(takenM),
          String.join(", ", others));
    }
  }

  private void addStated(
      Draft covering, String named, double takenM, double drawnM, List<String> others) {
    List<Property> stated =
        Thicknesses.stated(
            covering.properties(), PropertyNames.Role.COVERING_THICKNESS, lengthUnitM);
    for (Property p : stated) {
      // among the properties a width may be that of a board
      boolean tells = p.quantity() || !PropertyNames.answers(p, PropertyNames.Role.WIDTH);
      if (tells && isAnother(Thicknesses.metres(p, lengthUnitM), takenM, drawnM)) {
        others.add(p.evidence().toString());
      }
    }
    Double layersM = layers.thicknessM(covering.step());
    if (layersM != null && isAnother(layersM, takenM, drawnM)) {
      others.add(InWords.millimetres(layersM) + " by the material of " + named);
    }
  }

  /** The figure in a name, unless it is the diameter of what the covering is for. */
  private static void addWorded(
      Draft covering,
      String named,
      double takenM,
      double drawnM,
      List<Section> bare,
      List<String> others) {
    Double wordedM = Layers.wordedM(covering.names());
    boolean another = wordedM != null && isAnother(wordedM, takenM, drawnM);
    for (Section section : bare) {
      another &= wordedM != null && Math.abs(section.largestSideM() - wordedM) > SAME_SIZE_M;
    }
    if (another && wordedM != null) {
      others.add(InWords.millimetres(wordedM) + " by the name of " + named);
    }
  }

  /** True for what is neither stated first nor drawn; where those two differ is told by stacks. */
  private static boolean isAnother(double thicknessM, double statedM, double drawnM) {
    return Thicknesses.isPossible(thicknessM)
        && !Thicknesses.same(thicknessM, statedM)
        && !Thicknesses.same(thicknessM, drawnM);
  }

  /** A body that runs along a pipe or duct, but is too narrow to lie around it. */
  private void addNarrower(
      Draft host, Draft covering, Layers.Covering layer, List<Section> bare, List<String> others) {
    Section outer = layer.outer();
    boolean narrower =
        outer != null
            && !bare.isEmpty()
            && Coaxiality.isStraight(host.shape())
            && Coaxiality.runsAlong(coverings.bodies().along(covering, host), host.shape());
    for (Section section : bare) {
      narrower &=
          outer != null
              && outer.getClass() == section.getClass()
              && outer.largestSideM() < section.largestSideM() - AS_WIDE_M;
    }
    if (narrower && outer != null) {
      others.add(
          "that %s is drawn inside of it, %s wide"
              .formatted(coverings.named(covering, host), InWords.section(outer)));
    }
  }

  /** A body that is drawn at another place than the element. */
  private void addFar(Draft host, Draft covering, List<String> others) {
    Shape element = host.shape();
    Shape own = coverings.bodies().shape(covering);
    if (element.ends().size() < 2
        || (!own.ends().isEmpty() && gapM(own.endsBox(), element) < FAR_M)) {
      return;
    }
    BodyCorners drawn = coverings.bodies().corners(covering);
    double gapM = drawn == null ? 0 : gapM(drawn.box(), element);
    if (gapM > FAR_M) {
      others.add(
          "that %s is drawn %s m away from it"
              .formatted(coverings.named(covering, host), InWords.metres(gapM)));
    }
  }

  /** From a body to the surface of an element, at least. */
  private static double gapM(Box body, Shape element) {
    double halfM = 0;
    for (ShapeEnd end : element.ends()) {
      halfM = Math.max(halfM, end.section().largestSideM() / 2);
    }
    return body.gapM(element.endsBox()) - halfM;
  }
}
