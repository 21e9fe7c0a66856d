package org.lagwright.ifc.extract;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.lagwright.ifc.geometry.Shape;
import org.lagwright.ifc.geometry.ShapeEnd;
import org.lagwright.ifc.model.Evidence;
import org.lagwright.ifc.model.How;
import org.lagwright.ifc.model.Kind;
import org.lagwright.ifc.model.Measured;
import org.lagwright.ifc.model.Point;
import org.lagwright.ifc.model.Property;
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

  /**
   * @param insulated true if the body is drawn with its insulation
   */
  FittingEnds(
      Draft draft, List<Neighbours.Joint> joints, @Nullable Shape joined, boolean insulated) {
    this.draft = draft;
    this.joints = joints;
    this.joined = joined;
    this.insulated = insulated;
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
    boolean drawnFirst = !wider && !insulated && isSolid() && draft.shape().ends().size() == ways();
    if (drawnFirst) {
      addDrawn(options);
    }
    if (!met.isEmpty()) {
      options.add(met, How.NEIGHBOUR, metEvidence());
    }
    if (!drawnFirst && draft.shape().ends().size() > 1) {
      if ((met.isEmpty() && !insulated) || sameSections(met, drawn())) {
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
    byProperties(options);
    byText(options);
    return options.choose();
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
      options.add(List.copyOf(known), How.PROPERTY, stated.evidence());
    }
  }

  /** Run, run and branch of nominal sizes that properties state. */
  private void byProperties(Options<List<Section>> options) {
    List<Property> branches =
        PropertyNames.listOf(draft.properties(), PropertyNames.Role.BRANCH_NOMINAL);
    if (branches.isEmpty() || ways() != 3) {
      return;
    }
    Optional<Section> branch = NominalSizes.section(branches.get(0));
    Optional<Section> run = Optional.empty();
    for (Property p : PropertyNames.listOf(draft.properties(), PropertyNames.Role.NOMINAL)) {
      run = run.isEmpty() ? NominalSizes.section(p) : run;
    }
    if (run.isPresent() && branch.isPresent()) {
      options.add(
          List.of(run.get(), run.get(), branch.get()), How.PROPERTY, branches.get(0).evidence());
    }
  }

  /** Sizes of the ends that a text gives, if they do not contradict the size that was chosen. */
  private void byText(Options<List<Section>> options) {
    Measured<Section> section = draft.section();
    for (SizeTexts.Text text : SizeTexts.of(draft)) {
      List<Section> ends = inText(draft, text.value());
      if (ends.size() > 1
          && section != null
          && Sizes.sameSection(largest(ends).orElseThrow(), section.value())) {
        options.add(ends, How.TEXT, text.evidence());
      }
    }
  }

  /** Sections of the ends that a text names, as it names them; empty if it does not. */
  static List<Section> inText(Draft draft, String text) {
    if (draft.kind == Kind.DUCT_FITTING) {
      return Sizes.ductEnds(text);
    }
    List<Section> ends = new ArrayList<>();
    for (int dn : Sizes.dnEnds(text)) {
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
