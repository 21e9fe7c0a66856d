package org.lagwright.ifc.extract.measure;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.lagwright.ifc.extract.draft.Draft;
import org.lagwright.ifc.extract.text.InWords;
import org.lagwright.ifc.extract.text.PipeSizes;
import org.lagwright.ifc.extract.text.Sizes;
import org.lagwright.ifc.extract.text.Tolerances;
import org.lagwright.ifc.model.Evidence;
import org.lagwright.ifc.model.Form;
import org.lagwright.ifc.model.How;
import org.lagwright.ifc.model.Kind;
import org.lagwright.ifc.model.Measured;
import org.lagwright.ifc.model.Section;

/**
 * The size of fittings, valves and inline items: what their body, the lines they meet, ports,
 * properties and names say, and the choice. A body that is wider than the pipe in it is not the
 * size, and neither is what is stated of it.
 */
public final class FittingSections {

  private static final String OTHER_END = "size of another end";

  /** Times the width of its duct. */
  private static final double WIDEST_SLEEVE = 2;

  /**
   * Times the steel pipe of a nominal size: plastic pipes of that size are up to 5 % wider (63 and
   * 60.3 mm), the threaded ends of valves some 20 % (common practice, no source).
   */
  private static final double WIDEST_PIPE = 1.06;

  private final StatedSections stated;
  private final NominalSizes nominals;
  private final ProfileReader profiles;
  private final OverallSizes overall;
  private final DrawnInsulation drawnInsulation;

  /** Chooses among what these tell. */
  public FittingSections(
      StatedSections stated, NominalSizes nominals, ProfileReader profiles, double lengthUnitM) {
    this.stated = stated;
    this.nominals = nominals;
    this.profiles = profiles;
    this.overall = new OverallSizes(lengthUnitM);
    this.drawnInsulation = new DrawnInsulation(lengthUnitM);
  }

  void choose(Draft draft, List<Neighbours.Joint> joints, FittingEnds ends) {
    Choice choice = new Choice(draft, joints, ends);
    choice.bodyAndLines();
    choice.options.addAll(profiles.ofMaterial(draft.step()));
    choice.written();
    overall.addTo(choice.options, draft);
    choice.takeInsulationOff();
    draft.change().setSection(Tolerances.withoutNoise(choice.options.choose()));
    boolean ofSomeEnds = choice.haveSeveralSizes && choice.met.size() < ends.ways();
    new SizeDoubts(draft, choice.met, choice.sizes, choice.wideForSure, ofSomeEnds).note();
    nominal(draft);
  }

  /** The candidates for the size of one element. */
  private final class Choice {
    final Options<Section> options = new Options.Sections();
    private final Draft draft;
    private final FittingEnds ends;
    private final List<Neighbours.Found> met;
    private final List<Neighbours.Found> byPort;
    private final @Nullable Measured<Section> drawn;
    private final boolean insulated;
    private final boolean wide;
    private final boolean wideForSure;
    private final boolean haveSeveralSizes;
    private final List<Stated> outsides;
    private final @Nullable Stated best;
    private final List<Stated> others;
    private final List<Nominal> sizes;

    Choice(Draft draft, List<Neighbours.Joint> joints, FittingEnds ends) {
      this.draft = draft;
      this.ends = ends;
      this.met = new ArrayList<>(joints.size());
      this.byPort = new ArrayList<>(joints.size());
      for (Neighbours.Joint joint : joints) {
        if (joint.met() != null) {
          met.add(joint.met());
        }
        if (joint.stated() != null) {
          byPort.add(joint.stated());
        }
      }
      this.drawn = draft.shape().section();
      this.insulated = draft.drawnInsulation() != null;
      this.wide = draft.form().isWiderThanItsPipe();
      this.wideForSure = wide && draft.form() != Form.UNKNOWN;
      this.haveSeveralSizes = !wide && draft.form() != Form.BEND && draft.form() != Form.OFFSET;
      this.outsides = stated.outsides(draft);
      this.best = wide || insulated ? null : StatedSections.best(outsides);
      this.others = stated.others(draft);
      this.sizes = draft.isDuct() ? List.of() : nominals.tabulated(draft);
    }

    void bodyAndLines() {
      Section open = openEnd();
      if (open != null) {
        How how = drawn == null ? How.MESH : drawn.how();
        options.add(open, how, new Evidence(draft.step(), "its other end", InWords.section(open)));
      }
      boolean allKnown = met.size() == ends.ways() || ends.areMet();
      boolean drawnFirst =
          !wide
              && !insulated
              && drawn != null
              && !ends.isDrawnWithNominalSize()
              && !ends.isBlockOnPipes()
              && (drawn.how() == How.SOLID
                  || !allKnown
                  || isInSocket(drawn.value())
                  || (isWritten(drawn.value()) && ends.fitLines()));
      if (best != null) {
        best.addTo(options);
      }
      if (drawnFirst) {
        options.addAll(drawn);
      }
      if (!met.isEmpty()) {
        boolean someEnds = drawnFirst && !allKnown && ends.fitLines();
        addMet(FittingMeasurer.largest(met), open != null || someEnds);
      }
      if (!drawnFirst && drawn != null) {
        addBody(drawn);
      }
    }

    /** The end across from the only one that meets a line, if that is a smaller one. */
    private @Nullable Section openEnd() {
      Section open = insulated || met.size() != 1 ? null : ends.unlikeMet();
      boolean larger =
          open != null && FittingMeasurer.isLarger(open, FittingMeasurer.largest(met).section());
      return larger ? open : null;
    }

    private boolean isInSocket(Section end) {
      return !met.isEmpty() && FittingMeasurer.largest(met).isSocketOf(end);
    }

    /** True if a property or a text gives the size as well. */
    private boolean isWritten(Section size) {
      return isAmong(outsides, size) || isAmong(others, size);
    }

    /**
     * What is met at some of the ends only need not be the largest of them, unless it is as wide as
     * none of them; and the drawn end of a fitting may be its socket.
     */
    private void addMet(Neighbours.Found line, boolean partOfIt) {
      Section leading = options.leading();
      if (partOfIt) {
        options.rule(line.section(), How.NEIGHBOUR, line.evidence(), "met at one end");
      } else if (leading != null && line.mayBeSocketOf(leading)) {
        options.rule(line.section(), How.NEIGHBOUR, line.evidence(), FittingMeasurer.BODY);
      } else {
        options.add(line.section(), How.NEIGHBOUR, line.evidence());
      }
    }

    private void addBody(Measured<Section> body) {
      boolean asMet = allHave(body.value(), met) || ends.isDrawnWithNominalSize();
      if (ends.isBoxOfPipeItem()) {
        options.rule(body.value(), body.how(), body.evidence(), FittingMeasurer.BODY);
      } else if (insulated) {
        options.rule(body.value(), body.how(), body.evidence(), FittingMeasurer.INSULATED);
      } else if ((!asMet && !contradictsFitting())
          || (wideForSure && isWiderThanStated(body.value()))) {
        options.rule(body.value(), body.how(), body.evidence(), FittingMeasurer.BODY);
      } else {
        options.addAll(body);
      }
    }

    /** True for sheet that is drawn, where the size is that of a drawn fitting next door only. */
    private boolean contradictsFitting() {
      Neighbours.Found most = met.isEmpty() ? null : FittingMeasurer.largest(met);
      return most != null && !wide && draft.isDuct() && !most.ofSegment() && most.written() == null;
    }

    private boolean isWiderThanStated(Section body) {
      if (isWiderThanOne(outsides, body) || isWiderThanOne(others, body)) {
        return true;
      }
      for (Nominal each : sizes) {
        if (body.largestSideM() > WIDEST_PIPE * each.section().largestSideM()) {
          return true;
        }
      }
      return false;
    }

    private boolean isWiderThanOne(List<Stated> stated, Section body) {
      for (Stated each : stated) {
        if (isPipeIn(each, body) && !isFarWider(body, each.section())) {
          return true;
        }
      }
      return false;
    }

    /** The sleeve or cap of a duct is hardly wider than the duct: one of the two is wrong. */
    private boolean isFarWider(Section body, Section duct) {
      boolean sleeve =
          draft.form() == Form.CAP || draft.form() == Form.COUPLING || draft.form() == Form.UNION;
      return sleeve && draft.isDuct() && body.largestSideM() > WIDEST_SLEEVE * duct.largestSideM();
    }

    void written() {
      for (Stated each : outsides) {
        if (each != best) {
          add(each);
        }
      }
      List<Measured<Section>> ofEnds = ends.known().largestStated(options.leading());
      for (Measured<Section> each : ofEnds) {
        if (!haveOne(sizes, each.value())) {
          addLargest(each);
        }
      }
      if (!byPort.isEmpty()) {
        addPort(FittingMeasurer.largest(byPort));
      }
      for (Stated each : others) {
        if (!isSaid(each, ofEnds)) {
          add(each);
        }
      }
      for (Nominal each : sizes) {
        add(each);
      }
    }

    /** Where no pipe is met, a stated thickness tells that the body is drawn with it. */
    void takeInsulationOff() {
      if (drawn != null && met.isEmpty() && !wide && !insulated && draft.statesInsulation()) {
        Optional<DrawnInsulation.Bare> bare =
            drawnInsulation.underFitting(draft, drawn, options.stated(), sizes);
        if (bare.isPresent()) {
          DrawnInsulation.apply(draft, drawn, bare.get(), options);
        }
      }
    }

    /** True for the size of one end in a text that names those of all. */
    private boolean isSaid(Stated each, List<Measured<Section>> ofEnds) {
      for (Measured<Section> ends : ofEnds) {
        if (each.how() == How.TEXT && ends.evidence().equals(each.evidence())) {
          return true;
        }
      }
      return false;
    }

    /** The ends of pipes are stated by their nominal sizes. */
    private void addLargest(Measured<Section> end) {
      Section leading = options.leading();
      if (leading != null
          && !Tolerances.sameSection(end.value(), leading)
          && PipeSizes.mayBeOfOneNominal(end.value(), leading)) {
        options.rule(end.value(), end.how(), end.evidence(), StatedSections.NOMINAL);
      } else {
        options.add(end.value(), end.how(), end.evidence());
      }
    }

    /** Ports are asked only where nothing is met, which may be the smaller end. */
    private void addPort(Neighbours.Found port) {
      Section leading = options.leading();
      boolean ofOneEnd = byPort.size() < ends.ways() && haveSeveralSizes;
      if (leading != null && ofOneEnd && isWithin(port.section(), leading)) {
        options.rule(port.section(), How.PROPERTY, port.evidence(), OTHER_END);
      } else {
        addLargest(Measured.of(port.section(), How.PROPERTY, port.evidence()));
      }
    }

    /** What is stated of a wide body may be its own size, and of a reducer that of one end. */
    private void add(Stated each) {
      Section leading = options.leading();
      if (leading == null
          || each.ruledOut() != null
          || Tolerances.sameSection(each.section(), leading)) {
        each.addTo(options);
      } else if (wide && isWithin(leading, each.section())) {
        options.rule(each.section(), each.how(), each.evidence(), FittingMeasurer.BODY);
      } else if (ends.known().haveOne(each.section())) {
        options.rule(each.section(), each.how(), each.evidence(), OTHER_END);
      } else {
        each.addTo(options);
      }
    }

    /** Of what has one size, other nominal sizes than its own are wrong. */
    private @Nullable Nominal meant(Section leading) {
      return haveSeveralSizes ? null : Nominal.meant(sizes, leading);
    }

    private void add(Nominal each) {
      Section leading = options.leading();
      Section section = each.section();
      if (leading == null || Tolerances.sameSection(section, leading)) {
        options.add(section, each.how(), each.evidence());
      } else if (!each.contradicts(leading, meant(leading))) {
        options.rule(section, each.how(), each.evidence(), StatedSections.NOMINAL);
      } else if (haveSeveralSizes ? ends.known().mayHaveOne(each) : ends.known().haveOne(section)) {
        options.rule(section, each.how(), each.evidence(), OTHER_END);
      } else {
        options.add(section, each.how(), each.evidence());
      }
    }
  }

  private static boolean haveOne(List<Nominal> sizes, Section section) {
    for (Nominal each : sizes) {
      if (Tolerances.sameSection(each.section(), section)) {
        return true;
      }
    }
    return false;
  }

  private static boolean isAmong(List<Stated> stated, Section size) {
    for (Stated each : stated) {
      if (each.ruledOut() == null && Tolerances.sameSection(each.section(), size)) {
        return true;
      }
    }
    return false;
  }

  private static boolean allHave(Section section, List<Neighbours.Found> sizes) {
    for (Neighbours.Found size : sizes) {
      if (!Tolerances.sameSection(size.section(), section)) {
        return false;
      }
    }
    return true;
  }

  private static boolean isPipeIn(Stated each, Section body) {
    return each.ruledOut() == null && !each.isNominalOf(body) && isWithin(each.section(), body);
  }

  private static boolean isWithin(Section section, Section body) {
    return section.largestSideM() < body.largestSideM() && !Tolerances.sameSection(section, body);
  }

  private static void nominal(Draft draft) {
    if (draft.kind() == Kind.DUCT_FITTING || draft.section() == null) {
      return;
    }
    if (!(draft.section().value() instanceof Section.Round round)) {
      return;
    }
    for (String text : draft.names().ofType()) {
      Optional<Integer> dn = Sizes.dn(text);
      if (dn.isPresent() && PipeSizes.mayBe(dn.get(), round.outsideDiameterM())) {
        draft.change().setNominalSize("DN" + dn.get());
        return;
      }
    }
  }
}
