package org.lagwright.ifc.extract.measure;

import java.util.List;
import org.jspecify.annotations.Nullable;
import org.lagwright.ifc.extract.draft.Draft;
import org.lagwright.ifc.extract.draft.Drawn;
import org.lagwright.ifc.extract.text.PropertyNames;
import org.lagwright.ifc.extract.text.Tolerances;
import org.lagwright.ifc.extract.text.Words;
import org.lagwright.ifc.geometry.frame.ShapeEnd;
import org.lagwright.ifc.geometry.shape.Shape;
import org.lagwright.ifc.model.Effect;
import org.lagwright.ifc.model.Form;
import org.lagwright.ifc.model.Kind;
import org.lagwright.ifc.model.Point;
import org.lagwright.ifc.model.Property;
import org.lagwright.ifc.model.ReadFinding;
import org.lagwright.ifc.model.Section;

/**
 * The form of a fitting. Words tell first, as people choose them; an enumeration is often a
 * leftover, so a body or joints of another form win over it. Run and branch are what was drawn,
 * whatever the words say.
 */
final class FittingForm {

  /** A cross has four ends; nothing that is fitted into a line has more. */
  private static final int MOST_WAYS = 4;

  private final Draft draft;
  private final List<Neighbours.Joint> joints;

  /** What the body makes, else what the joints make; UNKNOWN if neither tells. */
  private final Form built;

  private final @Nullable Shape joined;

  private final StatedEnds statedEnds;

  /** What words, an enumeration or a property call it. */
  private final Form stated;

  /** True if words or a property call it so, not the enumeration of its class. */
  private final boolean worded;

  private FittingForm(
      Draft draft, List<Neighbours.Joint> joints, @Nullable Shape joined, StatedEnds statedEnds) {
    this.draft = draft;
    this.joints = joints;
    this.joined = joined;
    this.statedEnds = statedEnds;
    this.built = built();
    this.stated = stated();
    this.worded = draft.formIsWorded() || stated != draft.form();
  }

  static Form of(
      Draft draft, List<Neighbours.Joint> joints, @Nullable Shape joined, StatedEnds statedEnds) {
    FittingForm reader = new FittingForm(draft, joints, joined, statedEnds);
    Form stated = reader.stated;
    if (joints.size() > MOST_WAYS && !reader.worded && draft.kind() == Kind.PIPE_FITTING) {
      return reader.manifold();
    }
    Form form = stated == Form.UNKNOWN ? reader.unnamed() : reader.settle();
    return form == Form.REDUCER || form == Form.TRANSITION ? reader.byEnds(form) : form;
  }

  /**
   * A junction may be a cross by property, or what has two ends if it is drawn with two; an
   * obstruction closes the line unless it is joined at both sides, as an orifice plate is.
   */
  private Form stated() {
    if (draft.form() == Form.CAP && !draft.formIsWorded() && joints.size() > 1) {
      return Form.UNKNOWN;
    }
    boolean byEnumeration = isJunction();
    if (draft.form() != Form.UNKNOWN && !byEnumeration) {
      return draft.form();
    }
    Form said = inProperties();
    if (byEnumeration && said.ways() == 2 && hasTwoEnds()) {
      note(draft.form().label(), said.label());
      return said;
    }
    return byEnumeration && said.ways() < 3 ? draft.form() : said;
  }

  /** True for a tee or cross by enumeration, which has one word for both. */
  private boolean isJunction() {
    return draft.form() == Form.TEE && !draft.formIsWorded();
  }

  /** True if nothing that is drawn, joined or stated shows a third end. */
  private boolean hasTwoEnds() {
    return draft.shape().ends().size() == 2 && joints.size() < 3 && !statesEnds(3);
  }

  /** True if properties or names give a size for each of so many ends. */
  private boolean statesEnds(int ways) {
    return !statedEnds.anywhere(draft, ways).isEmpty();
  }

  private Form unnamed() {
    return new UnnamedForm(draft, joints, joined, statedEnds).of(built);
  }

  /** What more than four pipes join is no fitting but something that distributes. */
  private Form manifold() {
    note(stated == Form.UNKNOWN ? "fitting" : stated.label(), "manifold");
    return Form.APPARATUS;
  }

  private void note(String said, String built) {
    draft.note(
        ReadFinding.FORM_CONFLICT, Effect.ASSUMED, built, "as it is built", "the file", said);
  }

  /**
   * A body with more or fewer ends than joints has plugs, spindles or walls that look like ends.
   */
  private Form built() {
    Form drawn = draft.shape().form();
    boolean believable =
        drawn != Form.UNKNOWN
            && (joints.isEmpty() || drawn.ways() == joints.size() || areSomeOf(drawn));
    if (believable && drawn != Form.STRAIGHT) {
      return drawn;
    }
    Form byJoints = joined == null || joined.form() == Form.STRAIGHT ? Form.UNKNOWN : joined.form();
    return believable && byJoints == Form.UNKNOWN ? drawn : byJoints;
  }

  /**
   * True if the joints lie at ends that are drawn, and the other ends meet nothing, because the
   * next piece is in another file or was not drawn: where nothing but touch tells of joints, or the
   * file has a single port of what no cap looks like. Not so if it is called a form that has no
   * more ends than joints were found; a junction may be a cross.
   */
  private boolean areSomeOf(Form drawn) {
    boolean told = draft.ports().isEmpty() || (joints.size() == 1 && isNoCap(drawn));
    boolean areAll = joints.size() == draft.form().ways() && !isJunction();
    if (!told || areAll || joints.size() > drawn.ways()) {
      return false;
    }
    List<ShapeEnd> ends = draft.shape().ends();
    for (Neighbours.Joint joint : joints) {
      Point atM = joint.port().positionM();
      if (atM != null && !Drawn.isAnEnd(ends, atM)) {
        return false;
      }
    }
    return true;
  }

  /** A cap may be tapered or straight, but it neither turns nor branches. */
  private static boolean isNoCap(Form drawn) {
    return drawn == Form.BEND || drawn == Form.OFFSET || drawn.ways() > 2;
  }

  /** What a property such as ProductType calls a fitting; apparatus does not become one. */
  private Form inProperties() {
    for (Property p : PropertyNames.listOf(draft.properties(), PropertyNames.Role.FORM)) {
      Form form = Words.form(p.text()).orElse(Form.UNKNOWN);
      if (form.compareTo(Form.BEND) >= 0 && form.compareTo(Form.OFFSET) <= 0) {
        return form;
      }
    }
    return Form.UNKNOWN;
  }

  private Form settle() {
    boolean silent = built == Form.UNKNOWN || built == Form.STRAIGHT || built == stated;
    if (silent || stated.ways() == 0 || stated == Form.CAP) {
      return stated.ways() == 3 ? branched() : stated;
    }
    if (stated.ways() == built.ways()) {
      return sameWays();
    }
    if (mayBeJoinedInPart() || isBranchedForSure()) {
      return branched();
    }
    boolean joinedSo = joints.size() == built.ways();
    return worded && !joinedSo ? stated : contradicted();
  }

  /**
   * True for a tee or cross by words, or by a size for each of its ends, of which fewer ends are
   * joined, and drawn so that they cannot be told: ports that the file leaves out prove nothing.
   */
  private boolean isBranchedForSure() {
    boolean fewer = stated.ways() > 2 && built.ways() < stated.ways();
    boolean drawnSo =
        draft.shape().ends().size() > 1 && draft.shape().form().ways() == built.ways();
    return fewer && !drawnSo && (worded || statesEnds(stated.ways()));
  }

  /** Joints found by touch are not all that there are, where words or the body show more ends. */
  private boolean mayBeJoinedInPart() {
    return joints.size() < stated.ways()
        && isTouched()
        && (worded || draft.shape().ends().size() >= stated.ways());
  }

  /** True if some joint was found by touch. */
  private boolean isTouched() {
    for (Neighbours.Joint joint : joints) {
      if (!joint.port().isInFile()) {
        return true;
      }
    }
    return false;
  }

  /** As it is drawn with all its ends: a slanting branch makes a lateral of a tee. */
  private Form branched() {
    Form drawn = draft.shape().form();
    return drawn.ways() == stated.ways() ? drawn : stated;
  }

  /** Both have two ends, or both have three. */
  private Form sameWays() {
    if (stated.ways() == 3) {
      // a slanting branch makes a lateral of a tee
      return built;
    }
    if (isReducing(built) && !mayReduce()) {
      return stated;
    }
    if (!worded) {
      // an enumeration has one word for reducers and transitions
      return isReducing(stated) && isReducing(built) ? built : contradicted();
    }
    if (stated == Form.COUPLING && isReducing(built)) {
      return built;
    }
    return stated == Form.BEND && built == Form.OFFSET ? built : stated;
  }

  /** A neck or a collar is drawn tapered too; only a change of the line's size is a reducer. */
  private boolean mayReduce() {
    List<Section> met = UnnamedForm.met(joints);
    boolean sameLine = met.size() == 2 && Tolerances.sameSection(met.get(0), met.get(1));
    return !sameLine && (!worded || (stated == Form.COUPLING && met.size() == 2));
  }

  private Form contradicted() {
    note(stated.label(), built.label());
    return built;
  }

  static boolean isReducing(Form form) {
    return form == Form.REDUCER || form == Form.TRANSITION;
  }

  /**
   * A transition changes the shape of the section, a reducer only its size; pipes are all round.
   */
  private Form byEnds(Form stated) {
    if (draft.kind() == Kind.PIPE_FITTING) {
      return Form.REDUCER;
    }
    List<ShapeEnd> drawn = draft.shape().ends();
    List<Section> ends =
        drawn.size() == 2
            ? List.of(drawn.get(0).section(), drawn.get(1).section())
            : UnnamedForm.met(joints);
    if (ends.size() != 2) {
      return stated;
    }
    return ends.get(0).getClass() == ends.get(1).getClass() ? Form.REDUCER : Form.TRANSITION;
  }
}
