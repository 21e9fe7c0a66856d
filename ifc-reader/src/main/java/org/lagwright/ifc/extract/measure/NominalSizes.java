package org.lagwright.ifc.extract.measure;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import org.lagwright.ifc.extract.draft.BareSizes;
import org.lagwright.ifc.extract.draft.Draft;
import org.lagwright.ifc.extract.draft.SizeTexts;
import org.lagwright.ifc.extract.text.FigureCursor;
import org.lagwright.ifc.extract.text.InchSizes;
import org.lagwright.ifc.extract.text.NominalOutsides;
import org.lagwright.ifc.extract.text.PipeMaterial;
import org.lagwright.ifc.extract.text.PipeSizes;
import org.lagwright.ifc.extract.text.PropertyLengths;
import org.lagwright.ifc.extract.text.PropertyNames;
import org.lagwright.ifc.extract.text.Sizes;
import org.lagwright.ifc.extract.text.Words;
import org.lagwright.ifc.model.How;
import org.lagwright.ifc.model.Measured;
import org.lagwright.ifc.model.Property;
import org.lagwright.ifc.model.Section;

/** Nominal sizes that properties and names give, in millimetres; placeholders are passed over. */
public final class NominalSizes {

  /** What a property says that tells the unit of the nominal size. */
  private static final Set<String> INCHES = Set.of("in", "inch", "inches", "zoll", "\"");

  /** No pipe has a smaller one. */
  private static final int SMALLEST_DN = 6;

  /** Metres as they are written miss whole millimetres by less. */
  private static final double WHOLE_MM = 1e-6;

  private final Placeholders placeholders;
  private final PipeMaterials materials;
  private final BareSizes bare;
  private final double lengthUnitM;

  /** Reads nominal sizes of a file, whose unit of length is given in metres. */
  public NominalSizes(Placeholders placeholders, PipeMaterials materials, double lengthUnitM) {
    this.placeholders = placeholders;
    this.materials = materials;
    this.bare = new BareSizes(lengthUnitM);
    this.lengthUnitM = lengthUnitM;
  }

  /**
   * All that are given, those of the tables before others and properties before texts; of several
   * in one text the first.
   */
  List<Nominal> of(Draft draft) {
    List<Nominal> sizes = new ArrayList<>(4);
    List<Property> properties = draft.properties();
    for (Property p : PropertyNames.listOf(properties, PropertyNames.Role.NOMINAL)) {
      add(p, placeholders.contains(p) ? Optional.empty() : mm(draft, p), sizes);
    }
    for (Property p : PropertyNames.listOf(properties, PropertyNames.Role.SIZE)) {
      boolean whole = PropertyLengths.isTyped(p) && isWhole(p);
      add(p, whole ? figureMm(p) : Optional.empty(), sizes);
    }
    if (InchSizes.isUnit(lengthUnitM)) {
      for (Property p : PropertyNames.listOf(properties, PropertyNames.Role.DIAMETER)) {
        boolean nominal = !placeholders.contains(p) && isPlainInches(p);
        add(p, nominal ? figureMm(p) : Optional.empty(), sizes);
      }
    }
    for (SizeTexts.Text text : SizeTexts.of(draft)) {
      int dn = placeholders.contains(draft, text.value()) ? 0 : inText(draft, text.value());
      if (dn > 0) {
        boolean inInches = isInInches(text.value());
        sizes.add(new Nominal(dn, dn, inInches, How.TEXT, text.evidence(), null));
      }
    }
    setMaterial(draft, sizes);
    return tabulatedFirst(sizes);
  }

  private int inText(Draft draft, String text) {
    int dn = inText(text);
    boolean mayBeBare = dn == 0 && InchSizes.isUnit(lengthUnitM);
    return mayBeBare && !BareSizes.mayBeInMm(draft, text) ? bare.nominal(draft, text) : dn;
  }

  private static List<Nominal> tabulatedFirst(List<Nominal> sizes) {
    List<Nominal> others = new ArrayList<>(0);
    for (int i = sizes.size() > 1 ? sizes.size() - 1 : -1; i >= 0; i--) {
      if (sizes.get(i).called().isEmpty()) {
        others.add(0, sizes.remove(i));
      }
    }
    sizes.addAll(others);
    return sizes;
  }

  private static void add(Property p, Optional<Double> mm, List<Nominal> to) {
    if (mm.isPresent() && dn(mm.get()) >= SMALLEST_DN) {
      boolean inInches = InchSizes.dn(mm.get()) > 0;
      to.add(new Nominal(dn(mm.get()), mm.get(), inInches, How.PROPERTY, p.evidence(), null));
    }
  }

  /** Asked only where a nominal size is given, as most elements give none. */
  private void setMaterial(Draft draft, List<Nominal> sizes) {
    PipeMaterial material = sizes.isEmpty() ? null : materials.of(draft);
    for (int i = 0; material != null && i < sizes.size(); i++) {
      sizes.set(i, sizes.get(i).of(material));
    }
  }

  /** True for a text that has a nominal size, but none in millimetres. */
  private static boolean isInInches(String text) {
    return Sizes.dn(text).isEmpty();
  }

  /** A size of a connection is a nominal one if tables have it as such. */
  private static boolean isWhole(Property p) {
    double mm = figureMm(p).orElse(0.0);
    return section(mm).isPresent() && (InchSizes.dn(mm) > 0 || Math.abs(mm - Math.rint(mm)) < 0.01);
  }

  /** True for a plain diameter of a file in feet or inches that is a nominal size. */
  private boolean isPlainInches(Property p) {
    return PropertyLengths.isTyped(p)
        && InchSizes.isUnit(lengthUnitM)
        && InchSizes.dn(figureMm(p).orElse(0.0)) > 0;
  }

  /**
   * True if a plain diameter is the nominal size: in a file in inches, or where a property states
   * the same figure as nominal.
   */
  boolean isNominal(Draft draft, @Nullable Property p, double diameterM) {
    if (p != null && isPlainInches(p)) {
      return true;
    }
    for (Property each : PropertyNames.listOf(draft.properties(), PropertyNames.Role.NOMINAL)) {
      Optional<Double> mm = placeholders.contains(each) ? Optional.empty() : mm(draft, each);
      if (mm.isPresent() && Math.abs(mm.get() - diameterM * 1000) < 0.05) {
        return true;
      }
    }
    return false;
  }

  /** The nominal size in a text, the only one if it is in inches; 0 if there is none. */
  static int inText(String text) {
    Optional<Integer> dn = Sizes.dn(text);
    if (dn.isPresent()) {
      return dn.get();
    }
    int only = 0;
    for (int inches : InchSizes.in(text)) {
      if (only > 0 && only != inches) {
        return 0;
      }
      only = inches;
    }
    return only;
  }

  /** Those that tables have. */
  List<Nominal> tabulated(Draft draft) {
    List<Nominal> sizes = of(draft);
    List<Nominal> known = new ArrayList<>(sizes.size());
    for (Nominal size : sizes) {
      if (size.isTabulated()) {
        known.add(size);
      }
    }
    return known;
  }

  /** True if a diameter is a nominal size, and the other an outside diameter of that size. */
  static boolean isNominalOf(double diameterM, double outsideDiameterM) {
    int dn = InchSizes.dn(diameterM * 1000);
    boolean inches =
        dn > 0 && outsideDiameterM > diameterM && PipeSizes.mayBe(dn, outsideDiameterM);
    return inches || PipeSizes.isNominalOf(diameterM, outsideDiameterM);
  }

  /**
   * The figure of a nominal size in millimetres. A bare one is in inches in a file in feet or
   * inches, or where a property or a text beside it says so, unless it is called DN or only such a
   * pipe is drawn.
   */
  Optional<Double> mm(Draft draft, Property p) {
    Optional<Double> mm = inMmOrInches(draft, p);
    return mm.isPresent() ? mm : inMetres(p);
  }

  private Optional<Double> inMmOrInches(Draft draft, Property p) {
    Optional<Double> asDn = figureMm(p);
    if (draft.isDuct() || !PropertyLengths.isBare(p) || Words.fold(p.name()).contains("dn")) {
      return asDn;
    }
    double inchesMm = PropertyLengths.figure(p) * 1000 * InchSizes.METRES_PER_INCH;
    int dn = InchSizes.dn(inchesMm);
    return dn > 0 && saysInches(draft, dn) && !isOnlyMm(draft, asDn, dn)
        ? Optional.of(inchesMm)
        : asDn;
  }

  /** A bare figure below one that is whole millimetres, and no eighth of an inch, is in metres. */
  private Optional<Double> inMetres(Property p) {
    if (!PropertyLengths.isBare(p) || InchSizes.isUnit(lengthUnitM)) {
      return Optional.empty();
    }
    double metres = PropertyLengths.figure(p);
    double mm = Math.rint(metres * 1000);
    boolean whole = Math.abs(metres * 1000 - mm) < WHOLE_MM;
    boolean eighth = metres * 8 == Math.rint(metres * 8);
    return metres < 1 && mm >= SMALLEST_DN && whole && !eighth ? Optional.of(mm) : Optional.empty();
  }

  private boolean saysInches(Draft draft, int dn) {
    if (InchSizes.isUnit(lengthUnitM)) {
      return true;
    }
    for (Property p : PropertyNames.listOf(draft.properties(), PropertyNames.Role.NOMINAL_UNIT)) {
      if (INCHES.contains(Words.fold(p.text().trim()))) {
        return true;
      }
    }
    for (SizeTexts.Text text : SizeTexts.of(draft)) {
      if (InchSizes.in(text.value()).contains(dn)) {
        return true;
      }
    }
    return false;
  }

  /** True if a text calls the figure DN, or the drawn pipe can have no other of both sizes. */
  private static boolean isOnlyMm(Draft draft, Optional<Double> asDn, int dnOfInches) {
    int dn = asDn.isEmpty() ? 0 : (int) Math.round(asDn.get());
    if (dn == 0 || PipeSizes.forNominal(dn).isEmpty()) {
      return false;
    }
    for (SizeTexts.Text text : SizeTexts.of(draft)) {
      if (Sizes.dn(text.value()).orElse(0) == dn) {
        return true;
      }
    }
    Measured<Section> drawn = draft.shape().section();
    return drawn != null
        && PipeSizes.mayBe(dn, drawn.value())
        && !PipeSizes.mayBe(dnOfInches, drawn.value());
  }

  /** True if a diameter is about a nominal size that tables have. */
  static boolean isTabulated(double diameterM) {
    return PipeSizes.forNominal((int) Math.round(diameterM * 1000)).isPresent();
  }

  /** The outside of a pipe of a material by table, of steel where nothing else is told. */
  Optional<Section> section(Draft draft, double mm) {
    return section(draft, dn(mm), InchSizes.dn(mm) > 0);
  }

  /** The outside of a pipe of a nominal size, which was written in inches or not. */
  Optional<Section> section(Draft draft, int dn, boolean inInches) {
    PipeMaterial material = materials.of(draft);
    Optional<NominalOutsides.Outside> outside =
        material == null ? Optional.empty() : NominalOutsides.of(material, dn, inInches);
    return outside.isPresent()
        ? Optional.of(outside.get().section())
        : PipeSizes.forNominal(dn).map(PipeSizes.Size::section);
  }

  /** The outside of a pipe by the first table. */
  static Optional<Section> section(double mm) {
    Optional<PipeSizes.Size> size = PipeSizes.forNominal(dn(mm));
    return size.isPresent() ? Optional.of(size.get().section()) : Optional.empty();
  }

  /** Nominal sizes are millimetres even where they are written as bare numbers. */
  static Optional<Double> figureMm(Property p) {
    if (PropertyLengths.measuresOther(p)) {
      return Optional.empty();
    }
    Double number = p.number();
    boolean length = PropertyLengths.isTyped(p);
    double mm = number == null ? written(p.text()) : length ? number * 1000 : number;
    if (!isNominalMm(mm)) {
      mm = PropertyLengths.asNamedM(p) * 1000;
    }
    return isNominalMm(mm) ? Optional.of(mm) : Optional.empty();
  }

  private static boolean isNominalMm(double mm) {
    return mm >= 1 && mm < 5000;
  }

  private static double written(String text) {
    int dn = inText(text);
    double number = dn > 0 ? dn : PropertyLengths.leadingNumber(text);
    return Double.isNaN(number) ? FigureCursor.wholeM(text.trim()) * 1000 : number;
  }

  private static int dn(double mm) {
    int inches = InchSizes.dn(mm);
    return inches > 0 ? inches : (int) Math.round(mm);
  }
}
