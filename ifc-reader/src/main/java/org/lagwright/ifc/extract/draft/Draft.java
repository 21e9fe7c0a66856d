package org.lagwright.ifc.extract.draft;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.lagwright.ifc.extract.property.PropertyReader;
import org.lagwright.ifc.geometry.shape.Shape;
import org.lagwright.ifc.model.Effect;
import org.lagwright.ifc.model.ElementKey;
import org.lagwright.ifc.model.ExistingInsulation;
import org.lagwright.ifc.model.Finding;
import org.lagwright.ifc.model.Form;
import org.lagwright.ifc.model.Kind;
import org.lagwright.ifc.model.Measured;
import org.lagwright.ifc.model.Port;
import org.lagwright.ifc.model.Property;
import org.lagwright.ifc.model.ReadFinding;
import org.lagwright.ifc.model.Section;
import org.lagwright.ifc.packed.Vocabulary;

/**
 * One element while it is being worked out: what was read, and what has been decided so far. It is
 * open to be worked on by one thread; between the steps of the work all elements are folded into
 * few bytes, from which what is asked is made anew. Folded ones may be asked by several threads.
 */
public final class Draft {

  /** Classes of inline items that sit in ducts. */
  private static final List<String> DUCT_ITEMS =
      List.of("IfcDamper", "IfcDuctSilencer", "IfcAirTerminalBox");

  private final DraftParts parts;

  private final int propertyCount;
  private final boolean generalSegment;

  private @Nullable Kind kind;
  private Form form;

  private final boolean formIsWorded;
  private final boolean isCalledInsulation;
  private final boolean statesInsulation;
  private final boolean isWhollyConnected;
  private final boolean mayLieOtherwise;

  private List<Finding> findings = List.of();

  /** An element as it was read, open. */
  public Draft(
      long step,
      Worded worded,
      Drawn drawn,
      KindReader.Reading reading,
      int propertyCount,
      boolean generalSegment,
      Vocabulary vocabulary,
      boolean folds) {
    this.parts = new DraftParts(step, worded, drawn, vocabulary, folds);
    this.kind = reading.kind();
    this.form = reading.form();
    this.formIsWorded = reading.worded();
    this.propertyCount = propertyCount;
    this.generalSegment = generalSegment;
    this.isWhollyConnected = drawn.isWhollyConnected();
    this.mayLieOtherwise = drawn.mayLieOtherwise();
    this.isCalledInsulation = worded.names().callInsulation();
    this.statesInsulation = worded.statesInsulation();
  }

  /** Makes everything from its bytes, to be asked and changed by one thread until it is folded. */
  public void open() {
    parts.open();
  }

  /** Lets go of what {@link #open} made; for who changed nothing. */
  public void close() {
    parts.close();
  }

  /** Keeps but the bytes. */
  public void fold() {
    parts.fold();
  }

  /** Folds it and lets go of what nobody asks for any more once the figures are decided. */
  public void foldMeasured() {
    parts.foldMeasured();
  }

  /** Where it lies and what it is connected to. */
  public Drawn drawn() {
    return parts.drawn();
  }

  /** Names it among the elements of all files. */
  public ElementKey key() {
    return parts.key();
  }

  /** Instance number of its record. */
  public long step() {
    return parts.step();
  }

  /** What it is, null as long as nothing tells whether it is of pipes or of ducts. */
  public @Nullable Kind kind() {
    return kind;
  }

  /** What it is shaped like, as far as is known by now. */
  public Form form() {
    return form;
  }

  /** Sets what it is. */
  public void setKind(@Nullable Kind nowKind) {
    kind = nowKind;
  }

  /** Sets what it is shaped like. */
  public void setForm(Form nowForm) {
    form = nowForm;
  }

  /** How many properties it has in all, as {@link PropertyReader.Reading#all}. */
  public int propertyCount() {
    return propertyCount;
  }

  /** True for a segment of which the file does not say whether it is a pipe or a duct. */
  public boolean generalSegment() {
    return generalSegment;
  }

  /** True if words told the form, not the enumeration of its class. */
  public boolean formIsWorded() {
    return formIsWorded;
  }

  /** True if one of its names calls it insulation. */
  public boolean isCalledInsulation() {
    return isCalledInsulation;
  }

  /** True if a property or a name states insulation on it or a lining in it. */
  public boolean statesInsulation() {
    return statesInsulation;
  }

  /** True if the file connects all its ports, and it has no more ends than ports. */
  public boolean isWhollyConnected() {
    return isWhollyConnected;
  }

  /** True if it is drawn as a box that may run along another edge, as no port tells. */
  public boolean mayLieOtherwise() {
    return mayLieOtherwise;
  }

  /** Name of its class in the schema of its file. */
  public String ifcClass() {
    return parts.worded().ifcClass();
  }

  /** What it is called. */
  public Names names() {
    return parts.worded().names();
  }

  /** Those that answer some question about the element. */
  public List<Property> properties() {
    return parts.worded().properties();
  }

  /** What was measured on its body, in the coordinates of the world. */
  public Shape shape() {
    return drawn().shape();
  }

  /** Its ports, as the file has them. */
  public List<Port> ports() {
    return drawn().ports();
  }

  /** The ports, and the ends that touch other elements; the ports first, in their order. */
  public List<Port> joints() {
    return drawn().joints();
  }

  /** Sets what {@link #joints} gives. */
  public void join(List<Port> joints) {
    Drawn before = drawn();
    parts.redraw(new Drawn(before.shape(), before.ports(), List.copyOf(joints)));
  }

  /** Sets the shape of what was not measured at first. */
  public void measured(Shape shape) {
    Drawn before = drawn();
    parts.redraw(new Drawn(shape, before.ports(), before.joints()));
  }

  /** Its section as decided so far. */
  public @Nullable Measured<Section> section() {
    return parts.section();
  }

  /** Insulation that was drawn into the body. */
  public @Nullable ExistingInsulation drawnInsulation() {
    return parts.drawnInsulation();
  }

  /** The sections of its ends as decided so far. */
  public @Nullable Measured<List<Section>> ends() {
    return parts.figures().ends();
  }

  /** Its nominal size, in the words of the trade. */
  public @Nullable String nominalSize() {
    return parts.figures().nominalSize();
  }

  /** Its length as decided so far. */
  public @Nullable Measured<Double> lengthM() {
    return parts.figures().lengthM();
  }

  /** The angle of a bend or branch as decided so far. */
  public @Nullable Measured<Double> angleDeg() {
    return parts.figures().angleDeg();
  }

  /** The radius of the axis of a bend as decided so far. */
  public @Nullable Measured<Double> bendRadiusM() {
    return parts.figures().bendRadiusM();
  }

  /** How far the axes of the ends of a reducer lie apart. */
  public @Nullable Measured<Double> eccentricityM() {
    return parts.figures().eccentricityM();
  }

  /** From the axis of the run to the end of a branch. */
  public @Nullable Measured<Double> branchLengthM() {
    return parts.figures().branchLengthM();
  }

  /**
   * The figures, to be set.
   *
   * @throws NullPointerException if the element is folded
   */
  public Figures change() {
    return parts.change();
  }

  /** True for what belongs to ducts and has their sizes. */
  public boolean isDuct() {
    return kind == Kind.DUCT_SEGMENT
        || kind == Kind.DUCT_FITTING
        || (kind == Kind.INLINE && DUCT_ITEMS.contains(ifcClass()));
  }

  /** True for a straight piece, of whatever line. */
  public boolean isSegment() {
    return kind == null ? generalSegment : kind.isSegment();
  }

  /** True if it is known to be something that gets insulation. */
  public boolean isLagged() {
    return kind != null && kind.isLagged();
  }

  /** True for {@link Kind#isLaggedItem}, and for a general element that is no segment. */
  public boolean isLaggedItem() {
    return kind == null ? !generalSegment : kind.isLaggedItem();
  }

  /** Adds a finding about it. */
  public void note(ReadFinding code, Effect effect, String... values) {
    if (findings.isEmpty()) {
      findings = new ArrayList<>(2);
    }
    findings.add(Finding.about(key(), code, effect, values));
  }

  /** Lets go of what was noted, where the figures that it is about count no more. */
  public void forgetFindings() {
    findings = List.of();
  }

  /** Lets go of everything but the findings, once the element is made. */
  public void finish() {
    parts.finish();
  }

  /** What was noted so far. */
  public List<Finding> findings() {
    return findings;
  }
}
