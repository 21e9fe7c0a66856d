package org.lagwright.ifc.extract.measure;

import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.lagwright.ifc.extract.draft.Draft;
import org.lagwright.ifc.extract.measure.Neighbours.Found;
import org.lagwright.ifc.extract.text.PipeSizes;
import org.lagwright.ifc.extract.text.Tolerances;
import org.lagwright.ifc.model.How;
import org.lagwright.ifc.model.Measured;
import org.lagwright.ifc.model.Port;
import org.lagwright.ifc.model.Section;

/**
 * The cross-section of a straight pipe or duct: what its body, material profile, properties, names
 * and ports say, and the choice. The body wins unless it was drawn with the wrong one of the
 * diameters of a pipe: nominal size or bore.
 */
public final class SegmentSections {

  private final StatedSections stated;
  private final ProfileReader profiles;
  private final DrawnInsulation drawnInsulation;
  private final OverallSizes overall;
  private final PortSizes ports;

  /** Chooses among what these tell; the unit of length of the file is given in metres. */
  public SegmentSections(
      StatedSections stated, ProfileReader profiles, PortSizes ports, double lengthUnitM) {
    this.stated = stated;
    this.profiles = profiles;
    this.ports = ports;
    this.drawnInsulation = new DrawnInsulation(lengthUnitM);
    this.overall = new OverallSizes(lengthUnitM);
  }

  /**
   * @param nominals nominal sizes that the element states
   */
  @Nullable Measured<Section> choose(Draft draft, List<Nominal> nominals) {
    Options<Section> options = new Options.Sections();
    List<Stated> outsides = stated.outsides(draft);
    Stated best = StatedSections.best(outsides);
    if (best != null) {
      best.addTo(options);
    }
    List<Stated> others = stated.others(draft);
    boolean said = !outsides.isEmpty() || !nominals.isEmpty() || haveRound(others);
    Measured<Section> drawn = said ? drawnRound(draft) : draft.shape().section();
    if (drawn != null && isSquareOf(draft, nominals)) {
      options.rule(drawn.value(), drawn.how(), drawn.evidence(), StatedSections.NOMINAL);
    } else {
      options.addAll(drawn);
    }
    options.addAll(profiles.ofMaterial(draft.step()));
    for (Stated each : outsides) {
      if (each != best) {
        each.addTo(options);
      }
    }
    for (Stated each : others) {
      each.addTo(options);
    }
    overall.addTo(options, draft);
    takeInsulationOff(draft, drawn, nominals, options);
    contradict(draft, nominals, options);
    if (options.leading() != null || nominals.isEmpty()) {
      byPorts(draft, options);
    }
    return Tolerances.withoutNoise(options.choose());
  }

  private static boolean haveRound(List<Stated> stated) {
    for (Stated each : stated) {
      if (each.section() instanceof Section.Round) {
        return true;
      }
    }
    return false;
  }

  /** The section of the body; a square is a simplified pipe where the size of one is stated. */
  private static @Nullable Measured<Section> drawnRound(Draft draft) {
    Measured<Section> drawn = draft.shape().section();
    Optional<Double> squareM = StatedSections.squareM(draft);
    return drawn != null && squareM.isPresent()
        ? Measured.of(new Section.Round(squareM.get()), drawn.how(), drawn.evidence())
        : drawn;
  }

  /** True if the square is as wide as the pipe is called, which a table has of another width. */
  private static boolean isSquareOf(Draft draft, List<Nominal> nominals) {
    Optional<Double> squareM = StatedSections.squareM(draft);
    for (Nominal nominal : nominals) {
      boolean same =
          squareM.isPresent() && Tolerances.sameLength(squareM.get(), nominal.mm() / 1000);
      if (same && nominal.isTabulated()) {
        return true;
      }
    }
    return false;
  }

  private void takeInsulationOff(
      Draft draft,
      @Nullable Measured<Section> drawn,
      List<Nominal> nominals,
      Options<Section> options) {
    if (drawn != null) {
      Optional<DrawnInsulation.Bare> bare =
          drawnInsulation.under(draft, drawn, options.stated(), nominals);
      if (bare.isPresent()) {
        DrawnInsulation.apply(draft, drawn, bare.get(), options);
      }
    } else {
      takeInsulationOffStated(draft, nominals, options);
    }
  }

  private void takeInsulationOffStated(
      Draft draft, List<Nominal> nominals, Options<Section> options) {
    Section outside = options.leading();
    if (outside != null) {
      Optional<DrawnInsulation.Bare> bare = drawnInsulation.underStated(draft, outside, nominals);
      if (bare.isPresent()) {
        DrawnInsulation.applyStated(outside, bare.get(), options);
      }
    }
  }

  /**
   * A nominal size that a pipe of the chosen size cannot have, or that contradicts the one that it
   * has. Nor is a pipe as wide as its nominal size, unless a table has such pipes.
   */
  private void contradict(Draft draft, List<Nominal> nominals, Options<Section> options) {
    Section leading = draft.isDuct() ? null : options.leading();
    if (leading == null) {
      return;
    }
    Nominal meant = Nominal.meant(nominals, leading);
    for (Nominal nominal : nominals) {
      if (nominal.contradicts(leading, meant)) {
        options.add(nominal.section(), nominal.how(), nominal.evidence());
      }
    }
    stated.boreWiderThan(draft, leading, options);
  }

  /** What the ports at its ends state; those of branches at its side state other sizes. */
  private void byPorts(Draft draft, Options<Section> options) {
    for (Port port : draft.ports().size() > 2 ? List.<Port>of() : draft.ports()) {
      Optional<Found> stated = ports.of(port, draft.isDuct());
      if (stated.isPresent()) {
        add(stated.get(), draft, options);
      }
    }
  }

  private static void add(Found stated, Draft draft, Options<Section> options) {
    Section section = stated.section();
    Section leading = options.leading();
    if (leading != null
        && !draft.isDuct()
        && !Tolerances.sameSection(section, leading)
        && PipeSizes.mayBeOfOneNominal(section, leading)) {
      options.rule(section, How.PROPERTY, stated.evidence(), StatedSections.NOMINAL);
    } else {
      options.add(section, How.PROPERTY, stated.evidence());
    }
  }
}
