package org.lagwright.ifc.extract.measure;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;
import org.jspecify.annotations.Nullable;
import org.lagwright.ifc.extract.draft.Draft;
import org.lagwright.ifc.extract.text.InWords;
import org.lagwright.ifc.extract.text.NominalOutsides;
import org.lagwright.ifc.extract.text.PipeMaterial;
import org.lagwright.ifc.extract.text.PipeSizes;
import org.lagwright.ifc.extract.text.Tolerances;
import org.lagwright.ifc.model.Effect;
import org.lagwright.ifc.model.Evidence;
import org.lagwright.ifc.model.How;
import org.lagwright.ifc.model.ReadFinding;
import org.lagwright.ifc.model.Section;

/**
 * A nominal size and where it stands.
 *
 * @param dn in millimetres
 * @param mm the figure as it is written, which of inches is another one
 * @param inInches true if it is written in inches
 * @param byMaterial the outside of such a pipe of its material, null if that of steel holds
 */
record Nominal(
    int dn,
    double mm,
    boolean inInches,
    How how,
    Evidence evidence,
    NominalOutsides.@Nullable Outside byMaterial) {

  /** Names of sizes, which stand on every pipe of a model and are few. */
  private static final Map<Integer, String> NAMES = new ConcurrentHashMap<>();

  /**
   * Of pipes that are called by their outside, sewers of plastic, the tables have no wider ones.
   */
  private static final double WIDEST_OUTSIDE_M = 0.2;

  /** {@code DN50}; the same text each time. */
  static String named(int dn) {
    String known = NAMES.get(dn);
    if (known == null) {
      String name = "DN" + dn;
      String before = NAMES.putIfAbsent(dn, name);
      known = before == null ? name : before;
    }
    return known;
  }

  /**
   * The nominal size of a pipe of this section: the first that it may have, but of those that
   * contradict each other that of which a table has such a pipe. Null if it can have none of them.
   */
  static @Nullable Nominal meant(List<Nominal> sizes, Section section) {
    Nominal meant = null;
    boolean several = false;
    for (Nominal size : sizes) {
      meant = meant == null && size.mayBe(section) ? size : meant;
      several |= meant != null && size.contradicts(meant);
    }
    for (int i = 0; several && i < sizes.size(); i++) {
      if (PipeSizes.has(sizes.get(i).dn(), section)) {
        return sizes.get(i);
      }
    }
    return meant;
  }

  /** The same of a pipe of a material. */
  Nominal of(PipeMaterial material) {
    NominalOutsides.Outside outside = NominalOutsides.of(material, dn, inInches).orElse(null);
    return new Nominal(dn, mm, inInches, how, evidence, outside);
  }

  /** True if tables have pipes of this size; what else is called so is none. */
  boolean isTabulated() {
    return byMaterial != null || PipeSizes.forNominal(dn).isPresent();
  }

  /**
   * The outside of such a pipe by table.
   *
   * @throws java.util.NoSuchElementException if no table has it
   */
  Section section() {
    return byMaterial != null
        ? byMaterial.section()
        : PipeSizes.forNominal(dn).orElseThrow().section();
  }

  /** The outside of what is called so: also of what tables size by it; empty if none have it. */
  Optional<Section> called() {
    return byMaterial != null
        ? Optional.of(byMaterial.section())
        : PipeSizes.called(dn).map(PipeSizes.Size::section);
  }

  /** The others that pipes of its material have that are called so as well. */
  List<Section> alsoCalled() {
    List<Section> also = new ArrayList<>(1);
    for (double outsideM : byMaterial == null ? List.<Double>of() : byMaterial.alsoM()) {
      also.add(new Section.Round(outsideM));
    }
    return also;
  }

  /** Tells of a size that is taken from a table, as no outside is known. */
  void noteFrom(Draft draft) {
    String series =
        byMaterial == null ? PipeSizes.called(dn).orElseThrow().series() : byMaterial.series();
    StringBuilder from = new StringBuilder(series);
    for (Section also : alsoCalled()) {
      from.append(", or ").append(InWords.section(also));
    }
    draft.note(
        ReadFinding.SIZE_FROM_NOMINAL,
        Effect.ESTIMATED,
        named(dn),
        InWords.section(called().orElseThrow()).replace(" mm", ""),
        from.toString());
  }

  /** False for a pipe that its material has in no size. */
  boolean isOfItsMaterial(Section.Round pipe) {
    return byMaterial == null || byMaterial.isOfItsMaterial(pipe.outsideDiameterM());
  }

  /** True if a pipe of this nominal size may have this section; some are named by it. */
  boolean mayBe(Section section) {
    return PipeSizes.mayBe(dn, section)
        || Tolerances.sameSection(section, new Section.Round(mm / 1000));
  }

  /** True if no pipe is called by both of two nominal sizes. */
  boolean contradicts(@Nullable Nominal other) {
    return other != null && dn != other.dn && isTabulated() && other.isTabulated();
  }

  /**
   * True if tables have this nominal size, and no such pipe has the section.
   *
   * @param meant the nominal size of the section, null if none is known
   */
  boolean contradicts(Section section, @Nullable Nominal meant) {
    boolean fits =
        mayBe(section)
            && !isOnlyNamed(section)
            && !contradicts(meant)
            && !(section instanceof Section.Round round
                && PipeSizes.isOfOtherNominal(dn, round.outsideDiameterM()));
    return !fits && isTabulated();
  }

  /** True for the figure of this nominal size as an outside, which no table has. */
  boolean isOnlyNamed(Section section) {
    return section instanceof Section.Round round
        && round.outsideDiameterM() <= WIDEST_OUTSIDE_M
        && Tolerances.sameLength(round.outsideDiameterM(), mm / 1000)
        && !PipeSizes.isOutsideDiameter(round.outsideDiameterM());
  }
}
