package org.lagwright.ifc.extract.measure;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import org.jspecify.annotations.Nullable;
import org.lagwright.ifc.extract.draft.Draft;
import org.lagwright.ifc.extract.draft.SizeTexts;
import org.lagwright.ifc.extract.text.PipeSizes;
import org.lagwright.ifc.extract.text.Thicknesses;
import org.lagwright.ifc.extract.text.Tolerances;
import org.lagwright.ifc.geometry.frame.ShapeEnd;
import org.lagwright.ifc.geometry.shape.Shape;
import org.lagwright.ifc.model.Evidence;
import org.lagwright.ifc.model.ExistingInsulation;
import org.lagwright.ifc.model.Form;
import org.lagwright.ifc.model.How;
import org.lagwright.ifc.model.Kind;
import org.lagwright.ifc.model.Measured;
import org.lagwright.ifc.model.Section;

/**
 * The sections of the ends of a fitting: drawn, met at the joints, or written. Sockets and flanges
 * make drawn ends wider than the pipe in them, so what is met wins over faces, not over solids.
 */
final class FittingEnds {

  private final Draft draft;
  private final List<Neighbours.Joint> joints;
  private final @Nullable Shape joined;
  private final boolean insulated;
  private final StatedEnds statedEnds;

  /** Sizes of all ends that properties state. */
  private final List<Measured<List<Section>>> stated;

  /**
   * @param insulated true if the body is drawn with its insulation
   */
  FittingEnds(
      Draft draft,
      List<Neighbours.Joint> joints,
      @Nullable Shape joined,
      StatedEnds statedEnds,
      boolean insulated) {
    this.draft = draft;
    this.joints = joints;
    this.joined = joined;
    this.insulated = insulated;
    this.statedEnds = statedEnds;
    this.stated = statedEnds.of(draft, ways());
  }

  /** How many ends the element has: its form tells, else its ports and what touches it. */
  int ways() {
    int byForm = draft.form().ways();
    return byForm > 0 && !draft.form().isWiderThanItsPipe() ? byForm : joints.size();
  }

  /** True if every end meets a line, or is drawn like one that does. */
  boolean areMet() {
    return !met().isEmpty();
  }

  /** The end across from the only one that meets a line, if it is of another shape; else null. */
  @Nullable Section unlikeMet() {
    return draft.form().isWiderThanItsPipe()
        ? new MetEnds(draft, joints, joined, ways()).unlikeMet()
        : null;
  }

  /** The sizes of ends that anything tells of. */
  KnownEnds known() {
    return new KnownEnds(draft, joints, statedEnds, stated);
  }

  /** The sections, run and run before branch; null if unknown. */
  @Nullable Measured<List<Section>> choose() {
    EndOptions options = new EndOptions();
    List<Section> met = met();
    boolean wider = draft.form().isWiderThanItsPipe();
    boolean nominal = isDrawnWithNominalSize();
    boolean allDrawn = (isSolid() || isDrawnAsWritten()) && draft.shape().ends().size() == ways();
    boolean drawnFirst = !wider && !insulated && !nominal && allDrawn && !isBlockOnPipes();
    asStated(options);
    if (insulated && met.isEmpty()) {
      addBare(options);
    }
    if (drawnFirst) {
      addDrawn(options);
    }
    if (!met.isEmpty()) {
      addMet(options, met);
    }
    if (!drawnFirst && draft.shape().section() != null && draft.shape().ends().size() > 1) {
      boolean alone = met.isEmpty() && !insulated && !isBodyOnly() && !isBoxOfPipeItem();
      if (alone || nominal || EndOptions.same(met, drawn())) {
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
      options.addStated(each.value(), each.how(), each.evidence());
    }
    byText(options);
    return options.choose();
  }

  /** True if something agrees with the body on the size, and no straight piece contradicts it. */
  private boolean isDrawnAsWritten() {
    Measured<Section> size = draft.section();
    return size != null
        && size.how() == How.MESH
        && Options.firstAgreeing(size).isPresent()
        && fitLines();
  }

  /**
   * True if each straight piece that is met, which is surer than another fitting, is as wide as one
   * of the drawn ends.
   */
  boolean fitLines() {
    for (Neighbours.Joint joint : joints) {
      Neighbours.Found met = joint.met();
      if (met != null && met.ofSegment() && !isDrawn(met.section())) {
        return false;
      }
    }
    return true;
  }

  private boolean isDrawn(Section section) {
    for (ShapeEnd end : draft.shape().ends()) {
      if (Tolerances.sameSection(end.section(), section)) {
        return true;
      }
    }
    return false;
  }

  /** The drawn ends without the insulation that was taken off the size. */
  private void addBare(EndOptions options) {
    Measured<Section> size = draft.section();
    ExistingInsulation around = draft.drawnInsulation();
    Double thicknessM = around == null ? null : around.thicknessM();
    List<Section> bare = new ArrayList<>();
    for (Section end : thicknessM == null ? List.<Section>of() : drawn()) {
      Section without = thicknessM == null ? null : Thicknesses.off(end, thicknessM);
      if (without == null) {
        return;
      }
      bare.add(without);
    }
    if (size != null && bare.size() > 1) {
      options.add(withoutNoise(bare), drawnHow(), size.evidence());
    }
  }

  /** The drawn end of a fitting next door may be its socket, which is wider than the line. */
  private void addMet(EndOptions options, List<Section> met) {
    List<Section> leading = options.leading();
    if (leading != null && !EndOptions.same(leading, met) && meetsSocket(leading)) {
      options.rule(met, How.NEIGHBOUR, metEvidence(), FittingMeasurer.BODY);
    } else {
      options.add(met, How.NEIGHBOUR, metEvidence());
    }
  }

  private boolean meetsSocket(List<Section> ends) {
    for (Neighbours.Joint joint : joints) {
      boolean isEnd = false;
      for (Section end : ends) {
        isEnd |= joint.met() == null || Tolerances.sameSection(end, joint.met().section());
      }
      if (joint.met() != null && !isEnd && joint.met().mayBeSocketOf(ends.get(0))) {
        return true;
      }
    }
    return false;
  }

  /** Ends that are all drawn as wide as the body, where another size than that was chosen. */
  private void asStated(EndOptions options) {
    Measured<Section> chosen = draft.section();
    Measured<Section> body = draft.shape().section();
    if (chosen == null
        || body == null
        || (chosen.how() != How.PROPERTY && chosen.how() != How.TEXT)
        || draft.shape().ends().size() != 2
        || Tolerances.sameSection(chosen.value(), body.value())) {
      return;
    }
    for (Section end : drawn()) {
      if (!Tolerances.sameSection(end, body.value())) {
        return;
      }
    }
    options.add(List.of(chosen.value(), chosen.value()), chosen.how(), chosen.evidence());
  }

  /** True if the size is that of the pipe, and the body was ruled out as wider. */
  private boolean isBodyOnly() {
    Measured<Section> chosen = draft.section();
    Measured<Section> body = draft.shape().section();
    return draft.form().isWiderThanItsPipe()
        && chosen != null
        && body != null
        && (chosen.how() == How.PROPERTY || chosen.how() == How.TEXT)
        && chosen.value().largestSideM() < body.value().largestSideM()
        && !Tolerances.sameSection(chosen.value(), body.value());
  }

  /** What sits in a pipe has no sides, only its body has; unless it meets ducts of such sides. */
  boolean isBoxOfPipeItem() {
    if (!PipeItems.isDrawnAsBox(draft)) {
      return false;
    }
    for (Neighbours.Joint joint : joints) {
      if (joint.met() != null) {
        return false;
      }
    }
    return true;
  }

  /** True for a pipe fitting drawn with sides, all of whose ends meet round pipes: a block. */
  boolean isBlockOnPipes() {
    Measured<Section> body = draft.shape().section();
    if (draft.kind() != Kind.PIPE_FITTING
        || body == null
        || body.value() instanceof Section.Round) {
      return false;
    }
    List<Section> met = met();
    for (Section pipe : met) {
      if (!(pipe instanceof Section.Round)) {
        return false;
      }
    }
    return !met.isEmpty();
  }

  /**
   * True for a bend that is drawn as wide as the nominal size of the pipes that it joins, which
   * some exporters do.
   */
  boolean isDrawnWithNominalSize() {
    Measured<Section> drawn = draft.shape().section();
    if (draft.form() != Form.BEND || drawn == null || joints.isEmpty()) {
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

  private boolean isSolid() {
    return draft.shape().section() != null && draft.shape().section().how() == How.SOLID;
  }

  private void addDrawn(EndOptions options) {
    options.add(drawn(), drawnHow(), drawnEvidence());
  }

  private List<Section> drawn() {
    return withoutNoise(sections(draft.shape().ends()));
  }

  static List<Section> sections(List<ShapeEnd> ends) {
    List<Section> sections = new ArrayList<>(ends.size());
    for (ShapeEnd end : ends) {
      sections.add(end.section());
    }
    return sections;
  }

  static List<Section> withoutNoise(List<Section> sections) {
    List<Section> clean = new ArrayList<>(sections.size());
    for (Section section : sections) {
      clean.add(Tolerances.withoutNoise(section));
    }
    return List.copyOf(clean);
  }

  private How drawnHow() {
    return isSolid() ? How.SOLID : How.MESH;
  }

  private Evidence drawnEvidence() {
    return Objects.requireNonNull(draft.shape().section()).evidence();
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
    return new MetEnds(draft, joints, joined, ways()).sections();
  }

  /** Sizes that the ports state themselves, where one of the ends meets nothing that tells. */
  private void byPorts(EndOptions options) {
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
      options.addStated(List.copyOf(known), How.PROPERTY, stated.evidence());
    }
  }

  /** Sizes of the ends that a text gives, if they do not contradict the size that was chosen. */
  private void byText(EndOptions options) {
    Measured<Section> section = draft.section();
    for (SizeTexts.Text text : SizeTexts.of(draft)) {
      List<Section> ends = ofAllWays(statedEnds.inText(draft, text.value()));
      if (ends.size() > 1
          && section != null
          && Tolerances.sameSection(KnownEnds.largest(ends).orElseThrow(), section.value())) {
        options.addStated(ends, How.TEXT, text.evidence());
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
}
