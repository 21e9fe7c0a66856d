package org.lagwright.ifc.extract.measure;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.lagwright.ifc.extract.draft.BareSizes;
import org.lagwright.ifc.extract.draft.Draft;
import org.lagwright.ifc.extract.draft.DuctShapes;
import org.lagwright.ifc.extract.draft.SizeTexts;
import org.lagwright.ifc.extract.text.InWords;
import org.lagwright.ifc.extract.text.PipeSizes;
import org.lagwright.ifc.extract.text.PropertyLengths;
import org.lagwright.ifc.extract.text.PropertyNames;
import org.lagwright.ifc.extract.text.Sizes;
import org.lagwright.ifc.extract.text.Tolerances;
import org.lagwright.ifc.model.Evidence;
import org.lagwright.ifc.model.How;
import org.lagwright.ifc.model.Kind;
import org.lagwright.ifc.model.Measured;
import org.lagwright.ifc.model.Property;
import org.lagwright.ifc.model.Section;

/**
 * What properties and names say of the outside of a pipe or duct, of straight pieces and of what
 * sits between them alike.
 */
public final class StatedSections {

  static final String NOMINAL = "nominal size";

  static final String PLACEHOLDER = "placeholder";

  /** Two readings of one diameter that were written down, not measured. */
  private static final double SAME_DIAMETER_M = 0.0005;

  private final Placeholders placeholders;
  private final NominalSizes nominals;
  private final ProfileReader profiles;
  private final BareSizes bare;
  private final BareFigures figures;
  private final WrittenSizes texts;
  private final double lengthUnitM;

  /** Reads with these. */
  public StatedSections(
      Placeholders placeholders,
      NominalSizes nominals,
      ProfileReader profiles,
      double lengthUnitM) {
    this.placeholders = placeholders;
    this.nominals = nominals;
    this.profiles = profiles;
    this.bare = new BareSizes(lengthUnitM);
    this.figures = new BareFigures(lengthUnitM);
    this.texts = new WrittenSizes(placeholders, nominals, bare);
    this.lengthUnitM = lengthUnitM;
  }

  /** The first that wins over the body; null if none does. */
  static @Nullable Stated best(List<Stated> stated) {
    for (Stated each : stated) {
      if (each.beatsBody()) {
        return each;
      }
    }
    return null;
  }

  /** Outside diameters that are stated as such, or follow from bore and wall. */
  List<Stated> outsides(Draft draft) {
    List<Stated> stated = new ArrayList<>();
    List<Stated> narrow = new ArrayList<>(0);
    Optional<Stated> byBore = byBore(draft);
    for (Property p :
        PropertyNames.listOf(draft.properties(), PropertyNames.Role.OUTSIDE_DIAMETER)) {
      for (double diameterM : diametersM(draft, p)) {
        boolean last = byBore.isPresent() && isInBore(draft, diameterM, byBore.get());
        (last ? narrow : stated).add(outside(draft, p, diameterM, byBore));
      }
    }
    if (byBore.isPresent()) {
      stated.add(byBore.get());
    }
    stated.addAll(narrow);
    if (!draft.isDuct()) {
      for (SizeTexts.Text text : SizeTexts.of(draft)) {
        Optional<Double> outsideM = Sizes.outsideDiameterAndWall(text.value());
        if (outsideM.isPresent() && PipeSizes.isOutsideDiameter(outsideM.get())) {
          stated.add(outside(draft, text, outsideM.get(), byBore));
        }
      }
    }
    return stated;
  }

  /** True for an outside narrower than the stated bore, which with its walls makes a known pipe. */
  private boolean isInBore(Draft draft, double diameterM, Stated byBore) {
    return diameterM < boreM(draft) - SAME_DIAMETER_M
        && PipeSizes.isOutsideDiameter(byBore.section().largestSideM());
  }

  /** The stated bore; 0 if there is none. */
  private double boreM(Draft draft) {
    Optional<Property> inside = first(draft, PropertyNames.Role.INSIDE_DIAMETER);
    return inside.isPresent() ? sizeM(inside.get()).orElse(0.0) : 0;
  }

  private Stated outside(Draft draft, Property p, double diameterM, Optional<Stated> byBore) {
    return placeholders.contains(p)
        ? round(p, diameterM, false)
        : outside(draft, diameterM, how(p), p.evidence(), byBore);
  }

  private Stated outside(
      Draft draft, SizeTexts.Text text, double diameterM, Optional<Stated> byBore) {
    return placeholders.contains(draft, text.value())
        ? texts.stated(draft, text, new Section.Round(diameterM))
        : outside(draft, diameterM, How.TEXT, text.evidence(), byBore);
  }

  /**
   * Some exporters draw the nominal size (22 mm drawn as 20) or the bore: a stated outside diameter
   * that is in a pipe table wins over a drawn one that is in none, or that is the nominal size or
   * the stated bore of the stated one, unless bore and wall say otherwise.
   */
  private Stated outside(
      Draft draft, double diameterM, How how, Evidence evidence, Optional<Stated> byBore) {
    boolean contradicted =
        byBore.isPresent() && !same(byBore.get().section().largestSideM(), diameterM);
    boolean possible = !draft.isDuct() && !contradicted && PipeSizes.isOutsideDiameter(diameterM);
    Optional<Double> drawnM = drawnM(draft);
    boolean beatsBody =
        possible
            && drawnM.isPresent()
            && (byBore.isPresent()
                || !PipeSizes.isOutsideDiameter(drawnM.get())
                || PipeSizes.isNominalOf(drawnM.get(), diameterM)
                || (diameterM > drawnM.get() + SAME_DIAMETER_M
                    && same(drawnM.get(), boreM(draft))));
    return new Stated(new Section.Round(diameterM), how, evidence, null, false, beatsBody);
  }

  private static boolean same(double aM, double bM) {
    return Math.abs(aM - bM) <= SAME_DIAMETER_M;
  }

  private static Optional<Double> drawnM(Draft draft) {
    Measured<Section> drawn = draft.shape().section();
    return drawn != null && drawn.value() instanceof Section.Round round
        ? Optional.of(round.outsideDiameterM())
        : squareM(draft);
  }

  /** The side of the square that is drawn in the place of a pipe, which is as wide as that. */
  static Optional<Double> squareM(Draft draft) {
    Measured<Section> drawn = draft.shape().section();
    return draft.kind() == Kind.PIPE_SEGMENT
            && drawn != null
            && drawn.value() instanceof Section.Rectangular sides
            && Tolerances.sameLength(sides.widthM(), sides.heightM())
        ? Optional.of(sides.widthM())
        : Optional.empty();
  }

  /**
   * Inside diameter plus two walls. It wins over the body if that was drawn with the bore; the wall
   * is that of the drawn profile, or of that of the material, if no property gives one. Then both
   * figures were drawn, and the property only tells which of the two diameters the drawn one is.
   */
  private Optional<Stated> byBore(Draft draft) {
    Optional<Property> inside = first(draft, PropertyNames.Role.INSIDE_DIAMETER);
    if (inside.isEmpty() || draft.isDuct()) {
      return Optional.empty();
    }
    double insideM = sizeM(inside.get()).orElse(0.0);
    Optional<Double> drawnM = drawnM(draft);
    boolean boreDrawn = drawnM.isPresent() && same(drawnM.get(), insideM);
    Optional<Property> wall = first(draft, PropertyNames.Role.WALL);
    if (wall.isPresent()) {
      Optional<Double> wallM = PropertyLengths.wallM(wall.get(), lengthUnitM);
      return wallM.isPresent()
          ? Optional.of(byBore(inside.get(), insideM, wallM.get(), wall.get(), boreDrawn))
          : Optional.empty();
    }
    Optional<Double> wallM = boreDrawn ? profiles.wallM(draft) : Optional.empty();
    return wallM.isPresent()
        ? Optional.of(byDrawnBore(draft, inside.get(), wallM.get()))
        : Optional.empty();
  }

  private static Stated byBore(
      Property inside, double insideM, double wallM, Property wall, boolean boreDrawn) {
    return new Stated(
        new Section.Round(insideM + 2 * wallM),
        How.PROPERTY,
        new Evidence(
            inside.step(),
            inside.set() + "." + inside.name() + " + 2 x " + wall.set() + "." + wall.name(),
            sum(insideM, wallM)),
        null,
        false,
        boreDrawn);
  }

  private static Stated byDrawnBore(Draft draft, Property inside, double wallM) {
    double boreM = drawnM(draft).orElseThrow();
    Measured<Section> drawn = Objects.requireNonNull(draft.shape().section());
    return new Stated(
        new Section.Round(boreM + 2 * wallM),
        drawn.how(),
        new Evidence(
            drawn.evidence().step(),
            "drawn bore, as "
                + inside.set()
                + "."
                + inside.name()
                + " says, + 2 x wall of its profile",
            sum(boreM, wallM)),
        null,
        false,
        true);
  }

  /** A bore that does not fit into the outside that would be chosen contradicts it. */
  void boreWiderThan(Draft draft, Section leading, Options<Section> options) {
    Optional<Property> inside = first(draft, PropertyNames.Role.INSIDE_DIAMETER);
    if (inside.isPresent() && leading instanceof Section.Round round) {
      Section bore = new Section.Round(sizeM(inside.get()).orElseThrow());
      if (bore.largestSideM() > round.outsideDiameterM()
          && !Tolerances.sameSection(bore, leading)) {
        options.add(bore, how(inside.get()), inside.get().evidence());
      }
    }
  }

  private static String sum(double boreM, double wallM) {
    return InWords.millimetres(boreM) + " + 2 x " + InWords.millimetres(wallM);
  }

  /** Sides and plain diameters, as far as an element of its kind has them, and sizes in texts. */
  List<Stated> others(Draft draft) {
    List<Stated> stated = new ArrayList<>(2);
    Optional<Property> width = first(draft, PropertyNames.Role.WIDTH);
    Optional<Property> height = first(draft, PropertyNames.Role.HEIGHT);
    if (width.isEmpty() || height.isEmpty()) {
      diameters(draft, stated);
    } else if (draft.isDuct() || draft.isSegment()) {
      sides(draft, width.get(), height.get(), stated);
    }
    texts.addTo(draft, stated);
    return stated;
  }

  private void sides(Draft draft, Property width, Property height, List<Stated> stated) {
    List<Double> unitsM = figures.unitsM(draft, width, height);
    if (unitsM.isEmpty()) {
      double heightM = sizeM(height).orElse(0.0);
      sides(draft, width, height, sizeM(width).orElse(0.0), heightM, stated);
    }
    for (double unitM : unitsM) {
      double widthM = PropertyLengths.figure(width) * unitM;
      sides(draft, width, height, widthM, PropertyLengths.figure(height) * unitM, stated);
    }
  }

  /** Width and height; equal ones on a pipe that is not square are a diameter written twice. */
  private void sides(
      Draft draft,
      Property width,
      Property height,
      double widthM,
      double heightM,
      List<Stated> stated) {
    boolean same = Tolerances.sameLength(widthM, heightM);
    String shape = DuctShapes.of(draft);
    boolean oval = DuctShapes.isOval(draft, shape);
    boolean square = squareM(draft).isPresent();
    boolean round = same && (draft.isDuct() ? DuctShapes.isRound(shape) : !square);
    if (!oval && (round || (!square && drawnM(draft).isPresent()))) {
      stated.add(round(width, widthM, false));
      return;
    }
    Evidence evidence =
        new Evidence(
            width.step(),
            width.set() + "." + width.name() + ", " + height.name(),
            width.text() + ", " + height.text());
    Section section =
        oval ? new Section.Oval(widthM, heightM) : new Section.Rectangular(widthM, heightM);
    stated.add(new Stated(section, How.PROPERTY, evidence, null, false, false));
  }

  /** A plain diameter, which for pipes may be any of three: used only where nothing better is. */
  private void diameters(Draft draft, List<Stated> stated) {
    boolean duct = draft.isDuct();
    String shape = duct ? DuctShapes.of(draft) : "";
    boolean sided = shape.contains("oval") || shape.contains("rect");
    for (Property p : PropertyNames.listOf(draft.properties(), PropertyNames.Role.DIAMETER)) {
      boolean side = sided && PropertyNames.answers(p, PropertyNames.Role.WIDTH);
      for (double diameterM : side ? List.<Double>of() : diametersM(draft, p)) {
        Stated plain = round(p, diameterM, !duct);
        boolean nominal = !duct && nominals.isNominal(draft, p, diameterM);
        stated.add(nominal ? plain.asNominal() : plain);
      }
    }
    Section drawn = draft.shape().section() == null ? null : draft.shape().section().value();
    if (duct && (drawn == null || drawn instanceof Section.Round)) {
      nominalDiameters(draft, stated);
    }
  }

  /** Of round ducts the nominal size is the diameter. */
  private void nominalDiameters(Draft draft, List<Stated> stated) {
    for (Property p : PropertyNames.listOf(draft.properties(), PropertyNames.Role.NOMINAL)) {
      Optional<Double> mm = nominals.mm(draft, p);
      if (mm.isPresent() && mm.get() >= 1000 * Sizes.SMALLEST_SIDE_M) {
        double diameterM = mm.get() / 1000;
        boolean unit = !PropertyLengths.isBare(p);
        stated.add(round(p, unit ? diameterM : bare.diameterM(draft, diameterM), false));
      }
    }
    texts.addNominal(draft, stated);
  }

  private Stated round(Property p, double diameterM, boolean plain) {
    return new Stated(
        new Section.Round(diameterM),
        how(p),
        p.evidence(),
        placeholders.contains(p) ? PLACEHOLDER : null,
        plain,
        false);
  }

  private static How how(Property p) {
    return p.quantity() ? How.QUANTITY_SET : How.PROPERTY;
  }

  private Optional<Property> first(Draft draft, PropertyNames.Role role) {
    for (Property p : PropertyNames.listOf(draft.properties(), role)) {
      if (!placeholders.contains(p) && sizeM(p).isPresent()) {
        return Optional.of(p);
      }
    }
    return Optional.empty();
  }

  private Optional<Double> sizeM(Property property) {
    return PropertyLengths.sizeM(property, lengthUnitM);
  }

  /** What a property says of a diameter; of a bare figure in doubt both that it may mean. */
  private List<Double> diametersM(Draft draft, Property property) {
    List<Double> unitsM = figures.unitsM(draft, property);
    if (unitsM.isEmpty()) {
      Optional<Double> diameterM = PropertyLengths.diameterM(property, lengthUnitM);
      return diameterM.isPresent() ? List.of(diameterM.get()) : List.of();
    }
    List<Double> diametersM = new ArrayList<>(2);
    for (double unitM : unitsM) {
      diametersM.add(PropertyLengths.figure(property) * unitM);
    }
    return diametersM;
  }
}
