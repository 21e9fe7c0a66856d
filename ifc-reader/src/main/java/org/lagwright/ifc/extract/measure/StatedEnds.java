package org.lagwright.ifc.extract.measure;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.lagwright.ifc.extract.draft.BareSizes;
import org.lagwright.ifc.extract.draft.Draft;
import org.lagwright.ifc.extract.draft.DuctShapes;
import org.lagwright.ifc.extract.draft.SizeTexts;
import org.lagwright.ifc.extract.text.InchSizes;
import org.lagwright.ifc.extract.text.PropertyLengths;
import org.lagwright.ifc.extract.text.PropertyNames;
import org.lagwright.ifc.extract.text.Sizes;
import org.lagwright.ifc.extract.text.Tolerances;
import org.lagwright.ifc.model.Evidence;
import org.lagwright.ifc.model.How;
import org.lagwright.ifc.model.Measured;
import org.lagwright.ifc.model.Property;
import org.lagwright.ifc.model.Section;

/**
 * Sizes of the ends of a fitting that texts name and properties state: a nominal size for each end,
 * or one property with a list, of rectangular ducts one for the widths and one for the heights.
 */
public final class StatedEnds {

  private final Placeholders placeholders;
  private final NominalSizes nominals;
  private final ProfileReader profiles;
  private final double lengthUnitM;
  private final BareSizes bare;

  /** Reads a file, whose unit of length is given in metres. */
  public StatedEnds(
      Placeholders placeholders,
      NominalSizes nominals,
      ProfileReader profiles,
      double lengthUnitM) {
    this.profiles = profiles;
    this.nominals = nominals;
    this.bare = new BareSizes(lengthUnitM);
    this.placeholders = placeholders;
    this.lengthUnitM = lengthUnitM;
  }

  /**
   * All that properties, and profiles of the material, state for so many ends.
   *
   * @param ways how many ends the fitting has
   */
  List<Measured<List<Section>>> of(Draft draft, int ways) {
    List<Measured<List<Section>>> stated = new ArrayList<>(1);
    if (ways < 2 || ways > 3) {
      return stated;
    }
    Measured<List<Section>> tapering = ways == 2 ? profiles.endsOfMaterial(draft.step()) : null;
    if (tapering != null) {
      stated.add(tapering);
    }
    if (draft.isDuct()) {
      ofDuct(draft, ways, stated);
      return stated;
    }
    oneByOne(draft, ways, stated);
    for (Property p : asked(draft, PropertyNames.Role.NOMINAL)) {
      list(draft, p, ways, true, stated);
    }
    for (Property p : asked(draft, PropertyNames.Role.OUTSIDE_DIAMETER)) {
      list(draft, p, ways, false, stated);
    }
    return stated;
  }

  /** A size for each of so many ends as properties or names give them; empty if none do. */
  List<Section> anywhere(Draft draft, int ways) {
    List<Measured<List<Section>>> stated = of(draft, ways);
    if (!stated.isEmpty()) {
      return stated.get(0).value();
    }
    for (SizeTexts.Text text : SizeTexts.of(draft)) {
      List<Section> named = inText(draft, text.value());
      if (named.size() == ways) {
        return named;
      }
    }
    return List.of();
  }

  /** Sections of the ends that a text names, as it names them; empty if it does not. */
  List<Section> inText(Draft draft, String text) {
    if (draft.isDuct()) {
      return bare.ends(draft, text);
    }
    List<Section> ends = new ArrayList<>();
    List<Integer> sizes = Sizes.dnEnds(text);
    boolean inInches = sizes.isEmpty();
    sizes = inInches ? InchSizes.in(text) : sizes;
    inInches &= !sizes.isEmpty();
    sizes = sizes.isEmpty() && draft.shape().section() == null ? Sizes.mmEnds(text) : sizes;
    for (int dn : sizes.size() > 1 ? sizes : List.<Integer>of()) {
      Optional<Section> size = nominals.section(draft, dn, inInches);
      if (size.isPresent()) {
        ends.add(size.get());
      }
    }
    return List.copyOf(ends);
  }

  private List<Property> asked(Draft draft, PropertyNames.Role role) {
    List<Property> usable = new ArrayList<>(2);
    for (Property p : PropertyNames.listOf(draft.properties(), role)) {
      if (!placeholders.contains(p)) {
        usable.add(p);
      }
    }
    return usable;
  }

  /** Run, run and branch; the second end of the run has the size of the first if none is stated. */
  private void oneByOne(Draft draft, int ways, List<Measured<List<Section>>> stated) {
    Property run = first(draft, PropertyNames.Role.NOMINAL);
    Property second = first(draft, PropertyNames.Role.SECOND_NOMINAL);
    Property branch = first(draft, PropertyNames.Role.BRANCH_NOMINAL);
    Property last = ways == 3 ? branch : second;
    if (run == null || last == null) {
      return;
    }
    List<Section> ends = new ArrayList<>(ways);
    ends.add(section(draft, run).orElseThrow());
    if (ways == 3) {
      ends.add(section(draft, second == null ? run : second).orElseThrow());
    }
    ends.add(section(draft, last).orElseThrow());
    stated.add(Measured.of(List.copyOf(ends), How.PROPERTY, evidence(run, second, branch, ways)));
  }

  private static Evidence evidence(
      Property run, @Nullable Property second, @Nullable Property branch, int ways) {
    StringBuilder names = new StringBuilder(run.name());
    StringBuilder texts = new StringBuilder(run.text());
    for (Property p : new @Nullable Property[] {second, ways == 3 ? branch : null}) {
      if (p != null) {
        names.append(", ").append(p.name());
        texts.append(", ").append(p.text());
      }
    }
    return new Evidence(run.step(), run.set(), names.toString(), texts.toString());
  }

  private @Nullable Property first(Draft draft, PropertyNames.Role role) {
    for (Property p : asked(draft, role)) {
      if (section(draft, p).isPresent()) {
        return p;
      }
    }
    return null;
  }

  /** The outside of a pipe of a stated nominal size, by table. */
  private Optional<Section> section(Draft draft, Property p) {
    Optional<Double> mm = nominals.mm(draft, p);
    return mm.isPresent() ? nominals.section(draft, mm.get()) : Optional.empty();
  }

  private void list(
      Draft draft, Property p, int ways, boolean nominal, List<Measured<List<Section>>> stated) {
    double firstM =
        nominal
            ? nominals.mm(draft, p).orElse(0.0) / 1000
            : PropertyLengths.diameterM(p, lengthUnitM).orElse(0.0);
    List<Double> figuresM = figuresM(p, firstM);
    List<Section> ends = new ArrayList<>(ways);
    for (double endM : figuresM) {
      Optional<Section> end =
          nominal ? nominals.section(draft, endM * 1000) : Optional.of(new Section.Round(endM));
      if (end.isPresent()) {
        ends.add(end.get());
      }
    }
    if (ends.size() == ways && figuresM.size() == ways) {
      stated.add(Measured.of(FittingEnds.withoutNoise(ends), How.PROPERTY, p.evidence()));
    }
  }

  /**
   * The figures of a list, which holds one for each end, all in the unit of the first; empty if one
   * of them is none.
   */
  private static List<Double> figuresM(Property p, double firstM) {
    double[] figures = PropertyLengths.leadingNumbers(p.text());
    double first = figures[0];
    List<Double> figuresM = new ArrayList<>(figures.length);
    for (double figure : figures) {
      double figureM = figure / first * firstM;
      if (!(first > 0 && figureM > 0)) {
        return List.of();
      }
      figuresM.add(figureM);
    }
    return figuresM;
  }

  /** Lists of widths and heights, else of diameters. */
  private void ofDuct(Draft draft, int ways, List<Measured<List<Section>>> stated) {
    Property width = firstSide(draft, PropertyNames.Role.WIDTH);
    Property height = firstSide(draft, PropertyNames.Role.HEIGHT);
    Measured<Section> drawn = draft.shape().section();
    boolean drawnRound = drawn != null && drawn.value() instanceof Section.Round;
    if (width != null && height != null) {
      List<Section> ends = drawnRound ? List.of() : sides(draft, sidesM(width), sidesM(height));
      if (ends.size() == ways) {
        stated.add(Measured.of(ends, How.PROPERTY, evidence(width, height)));
      }
      return;
    }
    Property diameter = firstSide(draft, PropertyNames.Role.DIAMETER);
    if (diameter != null && (drawn == null || drawnRound) && !isSided(DuctShapes.of(draft))) {
      list(draft, diameter, ways, false, stated);
    }
  }

  private @Nullable Property firstSide(Draft draft, PropertyNames.Role role) {
    for (Property p : asked(draft, role)) {
      if (PropertyLengths.sizeM(p, lengthUnitM).isPresent()) {
        return p;
      }
    }
    return null;
  }

  private List<Double> sidesM(Property p) {
    return figuresM(p, PropertyLengths.sizeM(p, lengthUnitM).orElse(0.0));
  }

  private static boolean isSided(String shape) {
    return shape.contains("oval") || shape.contains("rect");
  }

  /**
   * An end as wide as high beside one that is not may be a round one: then nothing is told, unless
   * the fitting is said to be rectangular.
   */
  private static List<Section> sides(Draft draft, List<Double> widthsM, List<Double> heightsM) {
    String shape = DuctShapes.of(draft);
    List<Section> ends = new ArrayList<>(widthsM.size());
    int square = 0;
    for (int i = 0; i < widthsM.size() && widthsM.size() == heightsM.size(); i++) {
      boolean same = Tolerances.sameLength(widthsM.get(i), heightsM.get(i));
      square += same ? 1 : 0;
      ends.add(
          same && DuctShapes.isRound(shape)
              ? new Section.Round(widthsM.get(i))
              : DuctShapes.shaped(draft, new Section.Rectangular(widthsM.get(i), heightsM.get(i))));
    }
    boolean mayBeRound = square > 0 && square < ends.size() && !shape.contains("rect");
    return mayBeRound ? List.of() : FittingEnds.withoutNoise(ends);
  }

  private static Evidence evidence(Property width, Property height) {
    return new Evidence(
        width.step(),
        width.set(),
        width.name() + ", " + height.name(),
        width.text() + ", " + height.text());
  }
}
