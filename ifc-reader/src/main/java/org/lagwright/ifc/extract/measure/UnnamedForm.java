package org.lagwright.ifc.extract.measure;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.lagwright.ifc.extract.draft.Draft;
import org.lagwright.ifc.extract.text.Tolerances;
import org.lagwright.ifc.geometry.shape.Shape;
import org.lagwright.ifc.geometry.solid.PiecesInLine;
import org.lagwright.ifc.model.Effect;
import org.lagwright.ifc.model.Form;
import org.lagwright.ifc.model.Measured;
import org.lagwright.ifc.model.ReadFinding;
import org.lagwright.ifc.model.Section;

/**
 * The form of a fitting that neither words nor an enumeration call anything: by its body, its
 * joints, or the sizes of its ends. Where another form is as likely, it says so.
 */
final class UnnamedForm {

  private static final String ONE_END =
      "Only one open end of the body is recognised, and nothing else calls it a cap";

  private static final String JOINED_ONCE =
      "It meets a line with one side, and nothing tells whether it closes it";

  private static final String TWO_JOINTS =
      "Two joints are known of a body that is not recognised; it may have more";

  private static final String TAPERS =
      "The file has one port of a body with two ends of different size,"
          + " and nothing else calls it a cap";

  private static final String ONE_PORT =
      "The file has one port of a body that is not recognised,"
          + " and nothing else calls it a cap";

  private static final String WIDER_BETWEEN =
      "The body is wider between its two ends, and nothing tells whether it has more of them";

  private final Draft draft;
  private final List<Neighbours.Joint> joints;
  private final @Nullable Shape joined;
  private final StatedEnds statedEnds;

  UnnamedForm(
      Draft draft, List<Neighbours.Joint> joints, @Nullable Shape joined, StatedEnds statedEnds) {
    this.draft = draft;
    this.joints = joints;
    this.joined = joined;
    this.statedEnds = statedEnds;
  }

  /**
   * The form.
   *
   * @param built what the body makes, else what the joints make; UNKNOWN if neither tells
   */
  Form of(Form built) {
    boolean sure = !draft.ports().isEmpty() && draft.shape().problems().isEmpty();
    if (built == Form.CAP && !sure) {
      draft.note(ReadFinding.GEOMETRY_ONLY_PARTLY_MEASURED, Effect.NONE, ONE_END);
    }
    if (built != Form.UNKNOWN && built != Form.STRAIGHT) {
      return built;
    }
    return switch (joints.size()) {
      case 0 -> draft.shape().ends().isEmpty() ? bySizes() : straight();
      case 1 -> joints.get(0).port().isInFile() ? withOnePort() : touchedOnce();
      case 2 -> twoJoints();
      case 3 -> Form.TEE;
      case 4 -> Form.CROSS;
      default -> straight();
    };
  }

  /**
   * What tapers, or is not recognised, may be something of which the file leaves a port out, as
   * well as a cap.
   */
  private Form withOnePort() {
    Shape drawn = draft.shape();
    boolean untold = drawn.form() == Form.UNKNOWN && drawn.isDrawn();
    if (untold || FittingForm.isReducing(drawn.form())) {
      draft.note(
          ReadFinding.GEOMETRY_ONLY_PARTLY_MEASURED, Effect.NONE, untold ? ONE_PORT : TAPERS);
    }
    return Form.CAP;
  }

  /** What is straight and touches a line with one side may be a cap as well as a coupling. */
  private Form touchedOnce() {
    Form form = straight();
    if (form == Form.COUPLING) {
      draft.note(ReadFinding.GEOMETRY_ONLY_PARTLY_MEASURED, Effect.NONE, JOINED_ONCE);
    }
    return form;
  }

  /** Where nothing is drawn or joined, a size for each end tells how many there are. */
  private Form bySizes() {
    if (!statedEnds.anywhere(draft, 3).isEmpty()) {
      return Form.TEE;
    }
    List<Section> two = statedEnds.anywhere(draft, 2);
    boolean reduces = !two.isEmpty() && !Tolerances.sameSection(two.get(0), two.get(1));
    return reduces ? Form.REDUCER : Form.UNKNOWN;
  }

  private Form straight() {
    return draft.shape().form() == Form.STRAIGHT ? aroundLine() : Form.UNKNOWN;
  }

  /**
   * A thin disc that stands out around the line is a flange. Two spigots on a wider box may be the
   * branches of a cross as well.
   */
  private Form aroundLine() {
    Measured<Double> lengthM = draft.shape().lengthM();
    boolean portsTell = draft.ports().size() == 2;
    if (!portsTell && lengthM != null && PiecesInLine.tell(lengthM)) {
      draft.note(ReadFinding.GEOMETRY_ONLY_PARTLY_MEASURED, Effect.NONE, WIDER_BETWEEN);
    }
    return Discs.isOne(draft, met(joints)) ? Form.FLANGE : Form.COUPLING;
  }

  private Form twoJoints() {
    List<Section> met = met(joints);
    if (met.size() == 2 && !Tolerances.sameSection(met.get(0), met.get(1))) {
      return Form.REDUCER;
    }
    if (joined == null || joined.form() != Form.STRAIGHT) {
      return straight();
    }
    Shape drawn = draft.shape();
    if (drawn.form() == Form.UNKNOWN && !drawn.problems().isEmpty()) {
      draft.note(ReadFinding.GEOMETRY_ONLY_PARTLY_MEASURED, Effect.NONE, TWO_JOINTS);
    }
    return aroundLine();
  }

  /** The sizes that are met at joints. */
  static List<Section> met(List<Neighbours.Joint> joints) {
    List<Section> met = new ArrayList<>(joints.size());
    for (Neighbours.Joint joint : joints) {
      if (joint.met() != null) {
        met.add(joint.met().section());
      }
    }
    return met;
  }
}
