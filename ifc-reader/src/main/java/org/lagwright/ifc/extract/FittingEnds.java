package org.lagwright.ifc.extract;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.lagwright.ifc.geometry.Shape;
import org.lagwright.ifc.geometry.ShapeEnd;
import org.lagwright.ifc.model.Evidence;
import org.lagwright.ifc.model.Form;
import org.lagwright.ifc.model.How;
import org.lagwright.ifc.model.Measured;
import org.lagwright.ifc.model.Point;
import org.lagwright.ifc.model.Section;

/**
 * The sections of the ends of a fitting: drawn, met at the joints, or written. Sockets and flanges
 * make drawn ends wider than the pipe in them, so what is met wins over faces, not over solids.
 */
final class FittingEnds {

  /** Joints and drawn ends this near are one. */
  private static final double SAME_PLACE_M = 0.02;

  private final Draft draft;
  private final List<Neighbours.Joint> joints;
  private final @Nullable Shape joined;
  private final boolean insulated;

  /** Sizes of all ends that properties state. */
  private final List<Measured<List<Section>>> stated;

  /**
   * @param insulated true if the body is drawn with its insulation
   */
  FittingEnds(
      Draft draft,
      List<Neighbours.Joint> joints,
      @Nullable Shape joined,
      StatedEnds byProperties,
      boolean insulated) {
    this.draft = draft;
    this.joints = joints;
    this.joined = joined;
    this.insulated = insulated;
    this.stated = byProperties.of(draft, ways());
  }

  /** How many ends the element has: its form tells, else its ports and what touches it. */
  int ways() {
    int byForm = FittingForm.ways(draft.form);
    return byForm > 0 && !FittingMeasurer.isWiderThanItsPipe(draft.form) ? byForm : joints.size();
  }

  /** True if every end meets a line, or is drawn like one that does. */
  boolean areMet() {
    return !met().isEmpty();
  }

  /** The sections, run and run before branch; null if unknown. */
  @Nullable Measured<List<Section>> choose() {
    Options<List<Section>> options = new EndSections();
    List<Section> met = met();
    boolean wider = FittingMeasurer.isWiderThanItsPipe(draft.form);
    boolean nominal = isDrawnWithNominalSize();
    boolean allDrawn = isSolid() && draft.shape().ends().size() == ways();
    boolean drawnFirst = !wider && !insulated && !nominal && allDrawn;
    asStated(options);
    if (drawnFirst) {
      addDrawn(options);
    }
    if (!met.isEmpty()) {
      addMet(options, met);
    }
    if (!drawnFirst && draft.shape().ends().size() > 1) {
      boolean alone = met.isEmpty() && !insulated && !isBodyOnly();
      if (alone || nominal || sameSections(met, drawn())) {
        addDrawn(options);
      } else {
        options.rule(
            drawn(),
            drawnHow(),
            drawnEvidence(),
            insulated ? FittingMeasurer.INSULATED : FittingMeasurer.BODY);
      }
    }
    byPorts(options);
    for (Measured<List<Section>> each : stated) {
      addStated(options, each.value(), each.how(), each.evidence());
    }
    byText(options);
    return options.choose();
  }

  /** The drawn end of a fitting next door may be its socket, which is wider than the line. */
  private void addMet(Options<List<Section>> options, List<Section> met) {
    List<Section> leading = options.leading();
    if (leading != null && !sameSections(leading, met) && meetsSocket(leading)) {
      options.rule(met, How.NEIGHBOUR, metEvidence(), FittingMeasurer.BODY);
    } else {
      options.add(met, How.NEIGHBOUR, metEvidence());
    }
  }

  private boolean meetsSocket(List<Section> ends) {
    for (Neighbours.Joint joint : joints) {
      boolean isEnd = false;
      for (Section end : ends) {
        isEnd |= joint.met() == null || Sizes.sameSection(end, joint.met().section());
      }
      if (joint.met() != null && !isEnd && joint.met().mayBeSocketOf(ends.get(0))) {
        return true;
      }
    }
    return false;
  }

  /** Ends that are all drawn as wide as the body, where another size than that was chosen. */
  private void asStated(Options<List<Section>> options) {
    Measured<Section> chosen = draft.section();
    Measured<Section> body = draft.shape().section();
    if (chosen == null
        || body == null
        || (chosen.how() != How.PROPERTY && chosen.how() != How.TEXT)
        || draft.shape().ends().size() != 2
        || Sizes.sameSection(chosen.value(), body.value())) {
      return;
    }
    for (Section end : drawn()) {
      if (!Sizes.sameSection(end, body.value())) {
        return;
      }
    }
    options.add(List.of(chosen.value(), chosen.value()), chosen.how(), chosen.evidence());
  }

  /** True if the size is that of the pipe, and the body was ruled out as wider. */
  private boolean isBodyOnly() {
    Measured<Section> chosen = draft.section();
    Measured<Section> body = draft.shape().section();
    return FittingMeasurer.isWiderThanItsPipe(draft.form)
        && chosen != null
        && body != null
        && (chosen.how() == How.PROPERTY || chosen.how() == How.TEXT)
        && chosen.value().largestSideM() < body.value().largestSideM()
        && !Sizes.sameSection(chosen.value(), body.value());
  }

  /**
   * True for a bend that is drawn as wide as the nominal size of the pipes that it joins, which
   * some exporters do.
   */
  boolean isDrawnWithNominalSize() {
    Measured<Section> drawn = draft.shape().section();
    if (draft.form != Form.BEND || drawn == null || joints.isEmpty()) {
      return false;
    }
    for (Neighbours.Joint joint : joints) {
      Neighbours.Found met = joint.met();
      if (met == null
          || !met.ofSegment()
          || !(drawn.value() instanceof Section.Round own)
          || !(met.section() instanceof Section.Round pipe)
          || !PipeSizes.isOutsideDiameter(pipe.outsideDiameterM())
          || !NominalSizes.isNominalOf(own.outsideDiameterM(), pipe.outsideDiameterM())) {
        return false;
      }
    }
    return true;
  }

  /** The largest of the ends that properties and texts state, of each statement. */
  List<Measured<Section>> largestStated() {
    List<Measured<Section>> largest = new ArrayList<>(stated.size());
    for (Measured<List<Section>> each : stated) {
      Section section = largest(each.value()).orElseThrow();
      largest.add(Measured.of(section, each.how(), each.evidence()));
    }
    for (SizeTexts.Text text : SizeTexts.of(draft)) {
      Optional<Section> section = largest(inText(draft, text.value()));
      if (section.isPresent()) {
        largest.add(Measured.of(section.get(), How.TEXT, text.evidence()));
      }
    }
    return largest;
  }

  /** True if one of the ends has a size, as far as something tells. */
  boolean haveOne(Section section) {
    for (Section end : known()) {
      if (Sizes.sameSection(end, section)) {
        return true;
      }
    }
    return false;
  }

  /** True if one of the ends may have a nominal size, as far as something tells. */
  boolean mayHaveOne(NominalSizes.Nominal nominal) {
    for (Section end : known()) {
      if (nominal.mayBe(end)) {
        return true;
      }
    }
    return false;
  }

  private List<Section> known() {
    List<Section> known = new ArrayList<>(sections(draft.shape().ends()));
    for (Neighbours.Joint joint : joints) {
      if (joint.known() != null) {
        known.add(joint.known().section());
      }
    }
    for (Measured<List<Section>> each : stated) {
      known.addAll(each.value());
    }
    for (SizeTexts.Text text : SizeTexts.of(draft)) {
      known.addAll(inText(draft, text.value()));
    }
    return known;
  }

  private boolean isSolid() {
    return draft.shape().section() != null && draft.shape().section().how() == How.SOLID;
  }

  private void addDrawn(Options<List<Section>> options) {
    options.add(drawn(), drawnHow(), drawnEvidence());
  }

  private List<Section> drawn() {
    return withoutNoise(sections(draft.shape().ends()));
  }

  private static List<Section> sections(List<ShapeEnd> ends) {
    List<Section> sections = new ArrayList<>(ends.size());
    for (ShapeEnd end : ends) {
      sections.add(end.section());
    }
    return sections;
  }

  private static List<Section> withoutNoise(List<Section> sections) {
    List<Section> clean = new ArrayList<>(sections.size());
    for (Section section : sections) {
      clean.add(Sizes.withoutNoise(section));
    }
    return List.copyOf(clean);
  }

  private How drawnHow() {
    return isSolid() ? How.SOLID : How.MESH;
  }

  private Evidence drawnEvidence() {
    Measured<Section> section = draft.shape().section();
    return section == null
        ? new Evidence(draft.step(), "ends of the body", draft.shape().ends().size() + "")
        : section.evidence();
  }

  private Evidence metEvidence() {
    for (Neighbours.Joint joint : joints) {
      if (joint.met() != null) {
        return joint.met().evidence();
      }
    }
    throw new IllegalStateException("nothing is met at " + draft.key());
  }

  /** The sizes met, in the order of the ends; empty unless every end is known. */
  private List<Section> met() {
    List<Section> sections =
        FittingMeasurer.isWiderThanItsPipe(draft.form) || draft.shape().ends().size() != ways()
            ? metAtJoints()
            : metAtEnds();
    return withoutNoise(sections);
  }

  private List<Section> metAtJoints() {
    List<Section> known = new ArrayList<>(joints.size());
    for (Neighbours.Joint joint : joints) {
      if (joint.met() != null) {
        known.add(joint.met().section());
      }
    }
    if (known.size() == joints.size() && joints.size() == ways() && joints.size() > 1) {
      return joined == null || joined.ends().size() != joints.size()
          ? known
          : sections(joined.ends());
    }
    if (!FittingMeasurer.isWiderThanItsPipe(draft.form)) {
      return List.of();
    }
    // what sits in a line has its size at both ends, also where only one of them is joined
    if (known.size() == 1 && joints.size() <= 2) {
      return List.of(known.get(0), known.get(0));
    }
    // drains and taps of a valve that lead nowhere are no ends of the line
    return known.size() > 1 ? known : List.of();
  }

  /** At each drawn end what is met there, or what is met at an end drawn alike. */
  private List<Section> metAtEnds() {
    List<ShapeEnd> ends = draft.shape().ends();
    List<@Nullable Section> direct = new ArrayList<>();
    for (ShapeEnd end : ends) {
      direct.add(metNear(end.centreM()));
    }
    List<Section> sections = new ArrayList<>();
    for (int i = 0; i < ends.size(); i++) {
      Section met = direct.get(i);
      for (int j = 0; j < ends.size() && met == null; j++) {
        met = Sizes.sameSection(ends.get(i).section(), ends.get(j).section()) ? direct.get(j) : met;
      }
      if (met != null) {
        sections.add(met);
      }
    }
    return sections.size() == ends.size() ? sections : metAtJoints();
  }

  private @Nullable Section metNear(Point atM) {
    Section nearest = null;
    double leastM = SAME_PLACE_M;
    for (Neighbours.Joint joint : joints) {
      if (joint.met() != null && distanceM(joint, atM) < leastM) {
        nearest = joint.met().section();
        leastM = distanceM(joint, atM);
      }
    }
    return nearest;
  }

  private static double distanceM(Neighbours.Joint joint, Point atM) {
    Point at = joint.port().positionM();
    return at == null ? Double.MAX_VALUE : at.distanceM(atM);
  }

  /**
   * Ends of pipes are stated by their nominal sizes, which other pipes than tables say may have.
   */
  private static void addStated(
      Options<List<Section>> options, List<Section> ends, How how, Evidence evidence) {
    List<Section> leading = options.leading();
    if (leading != null && !sameSections(ends, leading) && areOfOneNominal(ends, leading)) {
      options.rule(ends, how, evidence, StatedSections.NOMINAL);
    } else {
      options.add(ends, how, evidence);
    }
  }

  private static boolean areOfOneNominal(List<Section> stated, List<Section> others) {
    List<Section> left = new ArrayList<>(others);
    for (Section section : stated) {
      Section match = null;
      for (Section other : left) {
        boolean may = match == null && PipeSizes.mayBeOfOneNominal(section, other);
        match = may ? other : match;
      }
      if (match == null || !left.remove(match)) {
        return false;
      }
    }
    return left.isEmpty();
  }

  /** Sizes that the ports state themselves, where one of the ends meets nothing that tells. */
  private void byPorts(Options<List<Section>> options) {
    List<Section> known = new ArrayList<>(joints.size());
    Neighbours.Found stated = null;
    for (Neighbours.Joint joint : joints) {
      Neighbours.Found its = joint.known();
      if (its != null) {
        known.add(its.section());
      }
      stated = stated == null ? joint.stated() : stated;
    }
    if (stated != null && known.size() == ways() && known.size() > 1) {
      addStated(options, List.copyOf(known), How.PROPERTY, stated.evidence());
    }
  }

  /** Sizes of the ends that a text gives, if they do not contradict the size that was chosen. */
  private void byText(Options<List<Section>> options) {
    Measured<Section> section = draft.section();
    for (SizeTexts.Text text : SizeTexts.of(draft)) {
      List<Section> ends = ofAllWays(inText(draft, text.value()));
      if (ends.size() > 1
          && section != null
          && Sizes.sameSection(largest(ends).orElseThrow(), section.value())) {
        addStated(options, ends, How.TEXT, text.evidence());
      }
    }
  }

  /**
   * Two sizes of a tee or cross are those of run and branch; none where a text gives another number
   * of ends than there are.
   */
  private List<Section> ofAllWays(List<Section> named) {
    int ways = ways();
    if (named.size() == 2 && ways == 3) {
      return List.of(named.get(0), named.get(0), named.get(1));
    }
    if (named.size() == 2 && ways == 4) {
      return List.of(named.get(0), named.get(0), named.get(1), named.get(1));
    }
    return ways < 2 || named.size() == ways ? named : List.of();
  }

  /** Sections of the ends that a text names, as it names them; empty if it does not. */
  static List<Section> inText(Draft draft, String text) {
    if (draft.isDuct()) {
      return Sizes.ductEnds(text);
    }
    List<Section> ends = new ArrayList<>();
    List<Integer> sizes = Sizes.dnEnds(text);
    sizes = sizes.isEmpty() ? InchSizes.in(text) : sizes;
    sizes = sizes.isEmpty() && draft.shape().section() == null ? Sizes.mmEnds(text) : sizes;
    for (int dn : sizes.size() > 1 ? sizes : List.<Integer>of()) {
      Optional<PipeSizes.Size> size = PipeSizes.forNominal(dn);
      if (size.isPresent()) {
        ends.add(size.get().section());
      }
    }
    return List.copyOf(ends);
  }

  static Optional<Section> largest(List<Section> sections) {
    Section largest = null;
    for (Section section : sections) {
      largest =
          largest == null || section.largestSideM() > largest.largestSideM() ? section : largest;
    }
    return Optional.ofNullable(largest);
  }

  /** What is found for the ends together. */
  private static final class EndSections extends Options<List<Section>> {

    @Override
    boolean agree(List<Section> some, List<Section> others) {
      return sameSections(some, others);
    }
  }

  /** The same sizes, in whatever order. */
  private static boolean sameSections(List<Section> some, List<Section> others) {
    List<Section> left = new ArrayList<>(others);
    for (Section section : some) {
      Section match = null;
      for (Section other : left) {
        match = match == null && Sizes.sameSection(section, other) ? other : match;
      }
      if (match == null || !left.remove(match)) {
        return false;
      }
    }
    return left.isEmpty();
  }
}
