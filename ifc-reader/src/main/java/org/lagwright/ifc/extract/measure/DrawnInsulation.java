package org.lagwright.ifc.extract.measure;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import org.lagwright.ifc.extract.draft.BareSizes;
import org.lagwright.ifc.extract.draft.Draft;
import org.lagwright.ifc.extract.draft.StatedInsulation;
import org.lagwright.ifc.extract.text.InWords;
import org.lagwright.ifc.extract.text.PipeSizes;
import org.lagwright.ifc.extract.text.PropertyNames;
import org.lagwright.ifc.extract.text.Thicknesses;
import org.lagwright.ifc.extract.text.Tolerances;
import org.lagwright.ifc.geometry.shape.Sheath;
import org.lagwright.ifc.model.Effect;
import org.lagwright.ifc.model.Evidence;
import org.lagwright.ifc.model.ExistingInsulation;
import org.lagwright.ifc.model.How;
import org.lagwright.ifc.model.Kind;
import org.lagwright.ifc.model.Measured;
import org.lagwright.ifc.model.Property;
import org.lagwright.ifc.model.ReadFinding;
import org.lagwright.ifc.model.Section;

/**
 * Finds pipes and ducts that are drawn together with their insulation: the body is wider than the
 * bare size by twice a thickness. The bare size is one that is stated, or one that pipe tables hold
 * and that fits the nominal size; the thickness is one that is stated, or whole millimetres.
 */
final class DrawnInsulation {

  /** Without a property that says so, thinner rests are walls, coats and joints. */
  private static final double THINNEST_GUESS_M = 0.006;

  /** Insulation is sold in whole millimetres; drawn sizes are rounded to a tenth. */
  private static final double WHOLE_MM = 0.06;

  /** Sizes of bodies made of faces are good to half a per cent. */
  private static final double MESH_TOLERANCE = 0.005;

  private static final double TABLE_TOLERANCE_M = 0.00015;

  /** Ducts are insulated no thicker without a property that says so. Common practice, no source. */
  private static final double THICKEST_AROUND_DUCT_M = 0.12;

  private final double lengthUnitM;

  DrawnInsulation(double lengthUnitM) {
    this.lengthUnitM = lengthUnitM;
  }

  /**
   * A pipe or duct without what was drawn around it.
   *
   * @param share part of the length that is covered, above 0, up to 1
   * @param from what tells the thickness
   * @param stated property with the thickness, null where the rest of the size tells it
   */
  record Bare(
      Section section, double thicknessM, double share, String from, @Nullable Property stated) {

    static Bare of(Section section, double thicknessM, @Nullable Property stated) {
      String from = stated == null ? "rest of the drawn size" : stated.set() + "." + stated.name();
      return new Bare(section, thicknessM, 1, from, stated);
    }
  }

  /**
   * Takes the insulation off a drawn section.
   *
   * @param written sizes that properties and names state
   * @param nominals nominal sizes that they state
   */
  Optional<Bare> under(
      Draft draft, Measured<Section> drawn, List<Section> written, List<Nominal> nominals) {
    int dn = nominals.isEmpty() ? 0 : nominals.get(0).dn();
    Optional<Bare> inShell = inShell(draft);
    if (inShell.isPresent()) {
      return inShell;
    }
    boolean nothingTold = dn == 0 && written.isEmpty();
    List<Section> stated = ofMaterialToo(written, nominals);
    if (isLined(draft)
        || isBarePipe(draft, drawn.value(), stated, nominals)
        || (nothingTold && isNominal(drawn.value()))) {
      return Optional.empty();
    }
    double toleranceM = toleranceM(drawn);
    Optional<Bare> byProperty = byProperty(draft, drawn.value(), stated, dn, toleranceM);
    return byProperty.isPresent() || isSaid(drawn.value(), stated, nominals)
        ? byProperty
        : byRest(draft, drawn.value(), stated, dn, toleranceM);
  }

  /** Stated sizes, and those that a pipe of its material and nominal size may have. */
  private static List<Section> ofMaterialToo(List<Section> stated, List<Nominal> nominals) {
    Nominal first = nominals.isEmpty() ? null : nominals.get(0);
    if (first == null || first.byMaterial() == null) {
      return stated;
    }
    List<Section> all = new ArrayList<>(stated);
    all.add(first.section());
    all.addAll(first.alsoCalled());
    return all;
  }

  /**
   * Takes the insulation off a stated outside of a pipe that is not drawn: no pipe of its nominal
   * size is as wide, but one of the tables with twice the stated thickness is.
   *
   * @param nominals nominal sizes that properties and names state
   */
  Optional<Bare> underStated(Draft draft, Section outside, List<Nominal> nominals) {
    boolean contradicted = !nominals.isEmpty() && !nominals.get(0).mayBe(outside);
    return contradicted && !draft.isDuct()
        ? byProperty(draft, outside, List.of(), nominals.get(0).dn(), TABLE_TOLERANCE_M)
        : Optional.empty();
  }

  /** Takes it off a fitting that meets no pipe, as thick as a property states and no other. */
  Optional<Bare> underFitting(
      Draft draft, Measured<Section> drawn, List<Section> stated, List<Nominal> nominals) {
    int dn = nominals.isEmpty() ? 0 : nominals.get(0).dn();
    return isLined(draft) || isBarePipe(draft, drawn.value(), stated, nominals)
        ? Optional.empty()
        : byProperty(draft, drawn.value(), stated, dn, toleranceM(drawn));
  }

  private static double toleranceM(Measured<Section> drawn) {
    return drawn.how() == How.MESH
        ? MESH_TOLERANCE * drawn.value().largestSideM()
        : TABLE_TOLERANCE_M;
  }

  /** True if something states the size as it is drawn: then what states another one is wrong. */
  private static boolean isSaid(Section drawn, List<Section> stated, List<Nominal> nominals) {
    for (Section section : stated) {
      if (Tolerances.sameSection(section, drawn)) {
        return true;
      }
    }
    for (Nominal nominal : nominals) {
      // the first is asked for what it leaves around it
      if (nominal.dn() != nominals.get(0).dn() && nominal.mayBe(drawn)) {
        return true;
      }
    }
    return false;
  }

  /** What lies in a shell that the body shows around it. */
  private Optional<Bare> inShell(Draft draft) {
    Sheath sheath = draft.shape().sheath();
    if (sheath == null || isLined(draft) || isWall(draft, sheath)) {
      return Optional.empty();
    }
    Section inner = sheath.inner().value();
    Optional<Double> thicknessM = Thicknesses.between(inner, sheath.outer());
    if (thicknessM.isEmpty() || !Thicknesses.isPossible(thicknessM.get())) {
      return Optional.empty();
    }
    Property says = null;
    for (Property p :
        Thicknesses.stated(
            draft.properties(), PropertyNames.Role.INSULATION_THICKNESS, lengthUnitM)) {
      boolean same = Thicknesses.same(Thicknesses.metres(p, lengthUnitM), thicknessM.get());
      says = says == null && same ? p : says;
    }
    return Optional.of(
        new Bare(inner, thicknessM.get(), sheath.share(), "shell drawn around it", says));
  }

  /** A tabulated pipe around what is none: the wall of the pipe around its bore or its lining. */
  private static boolean isWall(Draft draft, Sheath sheath) {
    return draft.kind() != Kind.DUCT_SEGMENT
        && sheath.inner().value() instanceof Section.Round inner
        && sheath.outer() instanceof Section.Round outer
        && PipeSizes.isOutsideDiameter(outer.outsideDiameterM())
        && !PipeSizes.isOutsideDiameter(inner.outsideDiameterM());
  }

  /** The size of a lined duct is its free size, and the metal is as wide as drawn. */
  private boolean isLined(Draft draft) {
    return StatedInsulation.hasLining(draft.properties()) != null
        || !Thicknesses.stated(draft.properties(), PropertyNames.Role.LINING_THICKNESS, lengthUnitM)
            .isEmpty();
  }

  /** A pipe of a tabulated size, of its own material if that is told, that nothing contradicts. */
  private static boolean isBarePipe(
      Draft draft, Section drawn, List<Section> stated, List<Nominal> nominals) {
    Nominal first = nominals.isEmpty() ? null : nominals.get(0);
    return !draft.isDuct()
        && drawn instanceof Section.Round round
        && PipeSizes.isOutsideDiameter(round.outsideDiameterM())
        && (first == null
            ? !isAround(drawn, stated)
            : PipeSizes.mayBe(first.dn(), round.outsideDiameterM())
                && first.isOfItsMaterial(round));
  }

  /** True if one of the stated sizes leaves room for insulation. */
  private static boolean isAround(Section drawn, List<Section> stated) {
    for (Section section : stated) {
      if (Thicknesses.between(section, drawn).isPresent()) {
        return true;
      }
    }
    return false;
  }

  /** Some exporters draw the nominal size, which is no outside diameter either. */
  private static boolean isNominal(Section drawn) {
    double mm = drawn.largestSideM() * 1000;
    int whole = (int) Math.rint(mm);
    return drawn instanceof Section.Round
        && Math.abs(mm - whole) < WHOLE_MM
        && PipeSizes.forNominal(whole).isPresent();
  }

  private Optional<Bare> byProperty(
      Draft draft, Section drawn, List<Section> stated, int dn, double toleranceM) {
    List<Property> thicknesses =
        Thicknesses.stated(
            draft.properties(), PropertyNames.Role.INSULATION_THICKNESS, lengthUnitM);
    for (Property property : thicknesses) {
      double thicknessM = Thicknesses.metres(property, lengthUnitM);
      List<Section> possible =
          Thicknesses.isPossible(thicknessM) ? possibleByThickness(draft, stated, dn) : List.of();
      for (Section bare : possible) {
        if (isRest(bare, drawn, thicknessM, toleranceM)) {
          return Optional.of(Bare.of(bare, thicknessM, property));
        }
      }
    }
    return Optional.empty();
  }

  private static boolean isRest(Section bare, Section drawn, double thicknessM, double toleranceM) {
    Optional<Double> restM = Thicknesses.between(bare, drawn);
    return restM.isPresent() && Math.abs(restM.get() - thicknessM) <= toleranceM;
  }

  /** What a property need not say: the rest is whole millimetres of insulation. */
  private static Optional<Bare> byRest(
      Draft draft, Section drawn, List<Section> stated, int dn, double toleranceM) {
    if (toleranceM > TABLE_TOLERANCE_M
        || (dn == 0 && stated.isEmpty())
        || isRadiusOfAny(drawn, stated)) {
      return Optional.empty();
    }
    for (Section bare : possible(draft, stated, dn)) {
      Optional<Double> restM = Thicknesses.between(bare, drawn);
      if (restM.isPresent()
          && mayBeGuessed(restM.get())
          && !isRadiusOf(drawn, bare)
          && !(draft.isDuct() && isTooThick(restM.get(), bare))) {
        return Optional.of(Bare.of(bare, restM.get(), null));
      }
    }
    return Optional.empty();
  }

  /** True if one of the stated sizes is half the drawn one, whatever else they may fit. */
  private static boolean isRadiusOfAny(Section drawn, List<Section> stated) {
    for (Section section : stated) {
      if (isRadiusOf(drawn, section)) {
        return true;
      }
    }
    return false;
  }

  /**
   * True for half the drawn diameter: somebody wrote down the radius, or drew a diameter as one.
   */
  private static boolean isRadiusOf(Section drawn, Section bare) {
    return bare instanceof Section.Round radius
        && Math.abs(2 * radius.outsideDiameterM() - drawn.largestSideM()) < TABLE_TOLERANCE_M;
  }

  /** True if a duct would be narrower than any, or more insulation than duct. */
  private static boolean isTooThick(double thicknessM, Section duct) {
    return thicknessM > THICKEST_AROUND_DUCT_M
        || thicknessM > duct.largestSideM()
        || duct.largestSideM() < BareSizes.NARROWEST_M;
  }

  private static boolean mayBeGuessed(double thicknessM) {
    double mm = thicknessM * 1000;
    return thicknessM >= THINNEST_GUESS_M
        && Thicknesses.isPossible(thicknessM)
        && Math.abs(mm - Math.rint(mm)) < WHOLE_MM;
  }

  /** A stated thickness may leave any tabulated pipe where nothing states a size. */
  private static List<Section> possibleByThickness(Draft draft, List<Section> stated, int dn) {
    boolean anyPipe = !draft.isDuct() && dn == 0 && stated.isEmpty();
    return anyPipe ? PipeSizes.all() : possible(draft, stated, dn);
  }

  /** Stated sizes first, then those that tables give for the nominal size. */
  private static List<Section> possible(Draft draft, List<Section> stated, int dn) {
    if (draft.isDuct()) {
      return stated;
    }
    List<Section> pipes = new ArrayList<>();
    for (Section section : stated) {
      if (mayBePipe(section, dn)) {
        pipes.add(section);
      }
    }
    if (dn != 0) {
      pipes.addAll(PipeSizes.ofNominal(dn));
    }
    return pipes;
  }

  private static boolean mayBePipe(Section section, int dn) {
    return section instanceof Section.Round round
        && PipeSizes.isOutsideDiameter(round.outsideDiameterM())
        && (dn == 0 || PipeSizes.mayBe(dn, round.outsideDiameterM()));
  }

  /** Puts the bare size before the stated one, which stays as one that contradicts. */
  static void applyStated(Section outside, Bare bare, Options<Section> options) {
    Property thickness = Objects.requireNonNull(bare.stated);
    Evidence evidence =
        new Evidence(
            thickness.step(),
            "stated outside - 2 x " + bare.from,
            InWords.section(outside) + " - 2 x " + InWords.millimetres(bare.thicknessM));
    options.prefer(bare.section, How.PROPERTY, evidence);
  }

  /** Puts the bare size first, rules out the drawn one and notes what was done. */
  static void apply(Draft draft, Measured<Section> drawn, Bare bare, Options<Section> options) {
    String thickness = InWords.millimetres(bare.thicknessM);
    Property stated = bare.stated;
    Evidence evidence =
        new Evidence(
            drawn.evidence().step(),
            drawn.evidence().path() + " - 2 x " + bare.from,
            InWords.section(drawn.value()) + " - 2 x " + thickness);
    options.ruleOut(Set.of(How.SOLID, How.MESH), "drawn with its insulation");
    options.prefer(bare.section, drawn.how(), evidence);
    draft
        .change()
        .setDrawnInsulation(
            new ExistingInsulation(
                bare.thicknessM,
                null,
                bare.share,
                stated == null ? evidence : stated.evidence(),
                List.of()));
    draft.note(
        ReadFinding.INSULATION_IN_BODY,
        stated == null ? Effect.ESTIMATED : Effect.NONE,
        InWords.section(drawn.value()),
        InWords.section(bare.section),
        thickness,
        stated == null ? "nothing states the thickness" : stated.evidence().toString());
  }
}
