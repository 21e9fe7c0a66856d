package org.lagwright.ifc.extract;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.lagwright.ifc.model.Evidence;
import org.lagwright.ifc.model.How;
import org.lagwright.ifc.model.Kind;
import org.lagwright.ifc.model.Measured;
import org.lagwright.ifc.model.Property;
import org.lagwright.ifc.model.Section;

/**
 * The cross-section of a straight pipe or duct: what its body, material profile, properties and
 * names say, and the choice. The body wins unless it was drawn with the wrong one of the diameters
 * of a pipe: nominal size or bore.
 */
final class SegmentSections {

  /** Two readings of one diameter that were written down, not measured. */
  private static final double SAME_DIAMETER_M = 0.0005;

  private final Placeholders placeholders;
  private final ProfileReader profiles;
  private final NominalSizes nominals;
  private final DrawnInsulation drawnInsulation;
  private final double lengthUnitM;

  SegmentSections(Placeholders placeholders, ProfileReader profiles, double lengthUnitM) {
    this.placeholders = placeholders;
    this.profiles = profiles;
    this.nominals = new NominalSizes(placeholders);
    this.drawnInsulation = new DrawnInsulation(lengthUnitM);
    this.lengthUnitM = lengthUnitM;
  }

  /** An outside diameter that was stated; of a placeholder it must not be used. */
  private record Stated(
      double diameterM, How how, Evidence evidence, boolean placeholder, boolean beatsBody) {

    void addTo(Options<Section> options) {
      if (placeholder) {
        options.rule(new Section.Round(diameterM), how, evidence, "placeholder");
      } else {
        options.add(new Section.Round(diameterM), how, evidence);
      }
    }
  }

  @Nullable Measured<Section> choose(Draft draft) {
    Options<Section> options = new Options.Sections();
    List<Stated> stated = stated(draft);
    Stated best = null;
    for (Stated each : stated) {
      best = best == null && each.beatsBody ? each : best;
    }
    if (best != null) {
      best.addTo(options);
    }
    options.addAll(draft.shape().section());
    options.addAll(profiles.ofMaterial(draft.step()));
    for (Stated each : stated) {
      if (!each.equals(best)) {
        each.addTo(options);
      }
    }
    sides(draft, options);
    diameter(draft, options);
    for (SizeTexts.Text text : SizeTexts.of(draft)) {
      texts(draft, text, options);
    }
    takeInsulationOff(draft, options);
    return Sizes.withoutNoise(options.choose());
  }

  private void takeInsulationOff(Draft draft, Options<Section> options) {
    Measured<Section> drawn = draft.shape().section();
    if (drawn != null) {
      List<Integer> sizes = nominals.of(draft);
      int dn = sizes.isEmpty() ? 0 : sizes.get(0);
      Optional<DrawnInsulation.Bare> bare =
          drawnInsulation.under(draft, drawn, options.stated(), dn);
      if (bare.isPresent()) {
        DrawnInsulation.apply(draft, drawn, bare.get(), options);
      }
    }
  }

  private List<Stated> stated(Draft draft) {
    List<Stated> stated = new ArrayList<>();
    Optional<Stated> byBore = byBore(draft);
    for (Property p :
        PropertyNames.listOf(draft.properties(), PropertyNames.Role.OUTSIDE_DIAMETER)) {
      Optional<Double> sizeM = sizeM(p);
      if (sizeM.isPresent()) {
        stated.add(stated(draft, p, sizeM.get(), byBore));
      }
    }
    if (byBore.isPresent()) {
      stated.add(byBore.get());
    }
    if (draft.kind != Kind.DUCT_SEGMENT) {
      for (SizeTexts.Text text : SizeTexts.of(draft)) {
        Optional<Double> outsideM = Sizes.outsideDiameterAndWall(text.value());
        if (outsideM.isPresent() && PipeSizes.isOutsideDiameter(outsideM.get())) {
          stated.add(stated(draft, outsideM.get(), How.TEXT, text.evidence(), byBore));
        }
      }
    }
    return stated;
  }

  private Stated stated(Draft draft, Property p, double diameterM, Optional<Stated> byBore) {
    How how = p.quantity() ? How.QUANTITY_SET : How.PROPERTY;
    return placeholders.contains(p)
        ? new Stated(diameterM, how, p.evidence(), true, false)
        : stated(draft, diameterM, how, p.evidence(), byBore);
  }

  /**
   * Some exporters draw the nominal size (22 mm drawn as 20): a stated outside diameter that is in
   * a pipe table wins over a drawn one that is in none, or that is the nominal size of the stated
   * one, unless bore and wall say otherwise.
   */
  private static Stated stated(
      Draft draft, double diameterM, How how, Evidence evidence, Optional<Stated> byBore) {
    boolean contradicted = byBore.isPresent() && !same(byBore.get().diameterM, diameterM);
    boolean possible =
        draft.kind != Kind.DUCT_SEGMENT && !contradicted && PipeSizes.isOutsideDiameter(diameterM);
    Optional<Double> drawnM = drawnM(draft);
    boolean beatsBody =
        possible
            && drawnM.isPresent()
            && (byBore.isPresent()
                || !PipeSizes.isOutsideDiameter(drawnM.get())
                || PipeSizes.isNominalOf(drawnM.get(), diameterM));
    return new Stated(diameterM, how, evidence, false, beatsBody);
  }

  private static boolean same(double aM, double bM) {
    return Math.abs(aM - bM) <= SAME_DIAMETER_M;
  }

  private static Optional<Double> drawnM(Draft draft) {
    Measured<Section> drawn = draft.shape().section();
    return drawn != null && drawn.value() instanceof Section.Round round
        ? Optional.of(round.outsideDiameterM())
        : Optional.empty();
  }

  /**
   * Inside diameter plus two walls. It wins over the body if that was drawn with the bore; the wall
   * is that of the drawn profile if no property gives one. Then both figures were drawn, and the
   * property only tells which of the two diameters the drawn one is.
   */
  private Optional<Stated> byBore(Draft draft) {
    Optional<Property> inside = first(draft, PropertyNames.Role.INSIDE_DIAMETER);
    if (inside.isEmpty() || draft.kind == Kind.DUCT_SEGMENT) {
      return Optional.empty();
    }
    double insideM = sizeM(inside.get()).orElse(0.0);
    Optional<Double> drawnM = drawnM(draft);
    boolean boreDrawn = drawnM.isPresent() && same(drawnM.get(), insideM);
    Optional<Property> wall = first(draft, PropertyNames.Role.WALL);
    if (wall.isPresent()) {
      Optional<Double> wallM = PropertyNames.wallM(wall.get(), lengthUnitM);
      return wallM.isPresent()
          ? Optional.of(byBore(inside.get(), insideM, wallM.get(), wall.get(), boreDrawn))
          : Optional.empty();
    }
    Optional<Double> drawnWallM = boreDrawn ? profiles.drawnWallM(draft.shape()) : Optional.empty();
    return drawnWallM.isPresent()
        ? Optional.of(byDrawnBore(draft, inside.get(), drawnWallM.get()))
        : Optional.empty();
  }

  private static Stated byBore(
      Property inside, double insideM, double wallM, Property wall, boolean boreDrawn) {
    return new Stated(
        insideM + 2 * wallM,
        How.PROPERTY,
        new Evidence(
            inside.step(),
            inside.set() + "." + inside.name() + " + 2 x " + wall.set() + "." + wall.name(),
            sum(insideM, wallM)),
        false,
        boreDrawn);
  }

  private static Stated byDrawnBore(Draft draft, Property inside, double wallM) {
    double boreM = drawnM(draft).orElseThrow();
    Measured<Section> drawn = Objects.requireNonNull(draft.shape().section());
    return new Stated(
        boreM + 2 * wallM,
        drawn.how(),
        new Evidence(
            drawn.evidence().step(),
            "drawn bore, as " + inside.set() + "." + inside.name() + " says, + 2 x drawn wall",
            sum(boreM, wallM)),
        false,
        true);
  }

  private static String sum(double boreM, double wallM) {
    return Sizes.millimetres(boreM) + " + 2 x " + Sizes.millimetres(wallM);
  }

  private Optional<Double> sizeM(Property property) {
    return PropertyNames.sizeM(property, lengthUnitM);
  }

  private void addRound(Options<Section> options, Property p) {
    How how = p.quantity() ? How.QUANTITY_SET : How.PROPERTY;
    Optional<Double> sizeM = sizeM(p);
    if (sizeM.isPresent()) {
      new Stated(sizeM.get(), how, p.evidence(), placeholders.contains(p), false).addTo(options);
    }
  }

  /** Width and height; equal ones on a pipe are a diameter written twice. */
  private void sides(Draft draft, Options<Section> options) {
    Optional<Property> width = first(draft, PropertyNames.Role.WIDTH);
    Optional<Property> height = first(draft, PropertyNames.Role.HEIGHT);
    if (width.isEmpty() || height.isEmpty()) {
      return;
    }
    double widthM = sizeM(width.get()).orElse(0.0);
    double heightM = sizeM(height.get()).orElse(0.0);
    boolean roundPipe = draft.kind != Kind.DUCT_SEGMENT && Sizes.sameLength(widthM, heightM);
    if (roundPipe || drawnM(draft).isPresent()) {
      addRound(options, width.get());
    } else {
      Evidence evidence =
          new Evidence(
              width.get().step(),
              width.get().set() + "." + width.get().name() + ", " + height.get().name(),
              width.get().text() + ", " + height.get().text());
      options.add(new Section.Rectangular(widthM, heightM), How.PROPERTY, evidence);
    }
  }

  private Optional<Property> first(Draft draft, PropertyNames.Role role) {
    for (Property p : PropertyNames.listOf(draft.properties(), role)) {
      if (!placeholders.contains(p) && sizeM(p).isPresent()) {
        return Optional.of(p);
      }
    }
    return Optional.empty();
  }

  /** A plain diameter, which for pipes may be any of three: used only where nothing better is. */
  private void diameter(Draft draft, Options<Section> options) {
    boolean hasSides =
        first(draft, PropertyNames.Role.WIDTH).isPresent()
            && first(draft, PropertyNames.Role.HEIGHT).isPresent();
    if (!hasSides) {
      for (Property p : PropertyNames.listOf(draft.properties(), PropertyNames.Role.DIAMETER)) {
        addRound(options, p);
      }
    }
  }

  private static void texts(Draft draft, SizeTexts.Text text, Options<Section> options) {
    Optional<Section> round = Sizes.diameter(text.value());
    boolean duct = draft.kind == Kind.DUCT_SEGMENT;
    Optional<Section> sides = duct ? Sizes.sides(text.value()) : Optional.empty();
    if (sides.isPresent()) {
      options.add(sides.get(), How.TEXT, text.evidence());
    }
    if (round.isPresent() && (duct || PipeSizes.isOutsideDiameter(round.get().largestSideM()))) {
      options.add(round.get(), How.TEXT, text.evidence());
    }
  }
}
