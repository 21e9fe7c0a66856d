package org.lagwright.ifc.extract.insulation;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.lagwright.ifc.extract.draft.Names;
import org.lagwright.ifc.extract.text.PropertyNames;
import org.lagwright.ifc.extract.text.Thicknesses;
import org.lagwright.ifc.extract.text.WordedThickness;
import org.lagwright.ifc.extract.text.Words;
import org.lagwright.ifc.geometry.Beside;
import org.lagwright.ifc.geometry.Coaxiality.Extent;
import org.lagwright.ifc.model.Form;
import org.lagwright.ifc.model.Kind;
import org.lagwright.ifc.model.Property;
import org.lagwright.ifc.model.Section;

/**
 * The coverings of one element as layers. Coverings beside each other are one layer in pieces, and
 * so are half shells and boards at the same distance from it; coverings around each other are
 * layers, and the same covering drawn twice is one.
 */
final class Layers {

  /** Around a lining that is drawn from the face of its duct inwards, and the duct. */
  private static final double AS_WIDE_M = 0.001;

  /** Outer sizes of one covering drawn twice. */
  private static final double SAME_SIZE_M = 0.001;

  /**
   * One covering.
   *
   * @param outer its outer section, null where its body tells none
   * @param statedM thickness that it states, null where none
   * @param wallM wall of a body that is drawn hollow, null where it is not
   * @param extent the part of the element that it lies along; all of it where nothing tells
   * @param piece a half shell or a board, null if it lies around the element
   */
  record Covering(
      @Nullable Section outer,
      @Nullable Double statedM,
      @Nullable Double wallM,
      Extent extent,
      @Nullable Beside piece) {

    /** One that lies around the element. */
    Covering(
        @Nullable Section outer, @Nullable Double statedM, @Nullable Double wallM, Extent extent) {
      this(outer, statedM, wallM, extent, null);
    }

    /** A half shell or a board, of which several make a layer. */
    static Covering of(Beside piece, @Nullable Double statedM) {
      return new Covering(null, statedM, piece.wallM(), piece.extent(), piece);
    }

    /** True if neither it nor its body tells how thick it is. */
    boolean isOfUnknownThickness() {
      return statedM == null && wallM == null && outer == null;
    }

    /** How thick it is by what it states or by its own walls, null where neither tells. */
    @Nullable Double ownM() {
      return statedM == null ? wallM : statedM;
    }

    /** True if its body is too thin for insulation. */
    boolean isThinAround(@Nullable Section element) {
      Optional<Double> betweenM =
          outer == null || element == null ? Optional.empty() : Thicknesses.between(element, outer);
      double thicknessM =
          betweenM.isPresent() ? betweenM.get() : wallM == null ? Double.NaN : wallM;
      return statedM == null && Thicknesses.isThin(thicknessM);
    }

    /** A covering of an element of some form. */
    static Covering of(
        Form host,
        @Nullable Section outer,
        @Nullable Double statedM,
        @Nullable Double wallM,
        Extent extent) {
      // a box keeps off its pipe, so that only its own walls show how thick it is
      boolean keepsOff = statedM != null ? isBoxed(host) : wallM == null && isWide(host);
      return keepsOff
          ? new Covering(null, statedM, null, extent)
          : new Covering(outer, statedM, wallM, extent);
    }
  }

  /** True for a covering that is called a coat of paint or the like, and not insulation too. */
  static boolean isCalledCoat(Names covering) {
    boolean coat = false;
    for (String name : covering.all()) {
      if (Words.isCoat(name)) {
        coat = true;
      } else if (Words.isInsulation(name)) {
        return false;
      }
    }
    return coat;
  }

  /** True for bodies so wide that what is drawn around them keeps off the pipe. */
  static boolean isWide(Form form) {
    return isBoxed(form) && form != Form.COUPLING && form != Form.UNION;
  }

  /** True for bodies that are wider than the pipe they sit in, which is all that is measured. */
  static boolean isBoxed(Form form) {
    return switch (form) {
      case FLANGE, COUPLING, UNION, VALVE_BODY, STRAINER, DAMPER, PUMP, METER -> true;
      default -> false;
    };
  }

  /** What coverings belong to. */
  record Host(@Nullable Kind kind, Form form, @Nullable Section section) {

    /** True for a covering that is called so, or drawn no wider than the duct it belongs to. */
    boolean isLinedBy(@Nullable Section outer, Form drawn, Names names) {
      boolean within =
          outer != null
              && section != null
              && (kind == Kind.DUCT_SEGMENT || (kind == Kind.DUCT_FITTING && drawn == form))
              && outer.perimeterM() <= section.perimeterM() + AS_WIDE_M;
      return within || names.all().stream().anyMatch(Words::isLining);
    }
  }

  /**
   * Layers around each other.
   *
   * @param statedM sum of what the layers state, empty where one states none or two lie at one
   *     place
   * @param drawnM from the element to the outermost, empty where bodies do not tell
   * @param share part of the element that they lie on
   */
  record Stack(Optional<Double> statedM, Optional<Double> drawnM, double share) {

    /** What is drawn counts where it contradicts what is stated. */
    Optional<Double> thicknessM() {
      boolean agree =
          statedM.isPresent()
              && drawnM.isPresent()
              && Thicknesses.same(statedM.get(), drawnM.get());
      return agree ? statedM : drawnM.or(() -> statedM);
    }
  }

  private Layers() {}

  /** The thickness that a covering states, null where it states none that is possible. */
  static @Nullable Double statedM(List<Property> covering, double lengthUnitM) {
    List<Property> stated =
        new ArrayList<>(
            Thicknesses.stated(covering, PropertyNames.Role.COVERING_THICKNESS, lengthUnitM));
    stated.addAll(
        Thicknesses.stated(covering, PropertyNames.Role.INSULATION_THICKNESS, lengthUnitM));
    return Thicknesses.firstPossible(stated, lengthUnitM)
        .map(p -> Thicknesses.metres(p, lengthUnitM))
        .orElse(null);
  }

  /** The thickness that the names of a covering tell, null where they tell none. */
  static @Nullable Double wordedM(Names covering) {
    for (String name : covering.all()) {
      Optional<Double> thicknessM = WordedThickness.metres(name);
      if (thicknessM.isPresent()) {
        return thicknessM.get();
      }
    }
    return null;
  }

  /**
   * Stacks by the part of the element that they cover, the longest first.
   *
   * @param ends sections of the ends of the element, empty where unknown
   */
  static List<Stack> stacks(
      List<Covering> coverings, @Nullable Section element, List<Section> ends) {
    return Stretches.of(coverings).stream()
        .map(stretch -> stack(stretch, element, ends))
        .sorted(Comparator.comparingDouble(Stack::share).reversed())
        .toList();
  }

  private static Stack stack(
      Stretches.Stretch along, @Nullable Section element, List<Section> ends) {
    List<Covering> group = withoutJackets(along.coverings());
    List<Covering> layers = new ArrayList<>();
    for (Covering covering : group) {
      if (layers.stream().noneMatch(layer -> isSame(layer, covering))) {
        layers.add(covering);
      }
    }
    boolean told = areOfOneThickness(group);
    Double statedM = told && lieAroundEachOther(layers) ? 0.0 : null;
    for (Covering layer : layers) {
      statedM = statedM == null || layer.statedM == null ? null : statedM + layer.statedM;
    }
    Section bare = bare(layers, element, ends, statedM);
    Optional<Double> drawnM = told ? drawnM(layers, bare) : Optional.empty();
    return new Stack(Optional.ofNullable(statedM), drawnM, along.share());
  }

  private static boolean lieAroundEachOther(List<Covering> layers) {
    for (Covering one : layers) {
      for (Covering other : layers) {
        if (areAtSamePlace(one, other)) {
          return false;
        }
      }
    }
    return true;
  }

  /** Foil and sheet around a layer are none; all of them if there is nothing else. */
  private static List<Covering> withoutJackets(List<Covering> group) {
    List<Covering> insulation = new ArrayList<>();
    for (Covering covering : group) {
      if (!isJacket(covering, group)) {
        insulation.add(covering);
      }
    }
    return insulation.isEmpty() ? group : insulation;
  }

  /** True for a thin wall, and for a full body hardly wider than another one. */
  private static boolean isJacket(Covering one, List<Covering> group) {
    if (one.piece != null || one.statedM != null) {
      return false;
    }
    if (one.wallM != null) {
      return Thicknesses.isThin(one.wallM);
    }
    for (Covering other : group) {
      Optional<Double> overM =
          one.outer == null || other.outer == null
              ? Optional.empty()
              : Thicknesses.between(other.outer, one.outer);
      if (overM.isPresent() && Thicknesses.isThin(overM.get())) {
        return true;
      }
    }
    return false;
  }

  /** False if pieces of one layer differ, so that nobody can say how thick it is. */
  private static boolean areOfOneThickness(List<Covering> group) {
    for (Covering one : group) {
      for (Covering other : group) {
        if (isSameRing(one, other) && !isAsThick(one, other)) {
          return false;
        }
      }
    }
    return true;
  }

  private static boolean isAsThick(Covering one, Covering other) {
    return one.wallM == null
        || other.wallM == null
        || Math.abs(one.wallM - other.wallM) < SAME_SIZE_M;
  }

  static boolean isSameRing(Covering one, Covering other) {
    return one.piece != null
        && other.piece != null
        && Math.abs(one.piece.gapM() - other.piece.gapM()) < SAME_SIZE_M;
  }

  /**
   * What the outermost layer lies around. Its body shows one diameter, and where the ends of an
   * element differ that may be any of theirs: the one that makes the layers as thick as they state.
   */
  private static @Nullable Section bare(
      List<Covering> layers,
      @Nullable Section element,
      List<Section> ends,
      @Nullable Double statedM) {
    if (statedM != null) {
      for (Section end : ends) {
        Optional<Double> drawnM = drawnM(layers, end);
        if (drawnM.isPresent() && Thicknesses.same(statedM, drawnM.get())) {
          return end;
        }
      }
    }
    return element;
  }

  /** From the element to the outermost layer, less the gaps in which walls do not lie close. */
  private static Optional<Double> drawnM(List<Covering> layers, @Nullable Section element) {
    double wallsM = 0;
    for (Covering layer : layers) {
      wallsM += layer.wallM == null ? Double.NaN : layer.wallM;
    }
    Optional<Double> betweenM =
        layers.stream()
            .flatMap(layer -> Optional.ofNullable(layer.outer).stream())
            .max(Comparator.comparingDouble(Section::largestSideM))
            .flatMap(
                outer -> element == null ? Optional.empty() : Thicknesses.between(element, outer))
            .filter(Thicknesses::isPossible);
    return Thicknesses.isPossible(wallsM)
        ? Optional.of(Math.min(wallsM, betweenM.orElse(wallsM)))
        : betweenM;
  }

  /**
   * True for two hollow bodies of insulation that differ, lie along the same part of an element,
   * and both from its surface on.
   */
  static boolean areAtSamePlace(Covering one, Covering other) {
    Double insideM = insideM(one);
    Double otherInsideM = insideM(other);
    return insideM != null
        && otherInsideM != null
        && one.extent.overlaps(other.extent)
        && Math.abs(insideM - otherInsideM) < SAME_SIZE_M
        && Thicknesses.differ(one.wallM, other.wallM);
  }

  /** How wide a hollow body is within, null where nothing tells. */
  private static @Nullable Double insideM(Covering covering) {
    return covering.outer == null || covering.wallM == null
        ? null
        : covering.outer.largestSideM() - 2 * covering.wallM;
  }

  private static boolean isSame(Covering one, Covering other) {
    if (one.piece != null || other.piece != null) {
      return isSameRing(one, other);
    }
    return one.outer != null
        && other.outer != null
        && Math.abs(one.outer.largestSideM() - other.outer.largestSideM()) < SAME_SIZE_M;
  }
}
