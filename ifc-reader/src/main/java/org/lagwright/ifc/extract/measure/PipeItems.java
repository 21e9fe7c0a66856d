package org.lagwright.ifc.extract.measure;

import org.lagwright.ifc.extract.draft.Draft;
import org.lagwright.ifc.model.Form;
import org.lagwright.ifc.model.Kind;
import org.lagwright.ifc.model.Measured;
import org.lagwright.ifc.model.Section;

/** Which items sit in pipes, whose size is round whatever their body is drawn like. */
final class PipeItems {

  private PipeItems() {}

  /** True for what sits in pipes mostly and is drawn with sides. */
  static boolean isDrawnAsBox(Draft draft) {
    Measured<Section> body = draft.shape().section();
    return isInPipes(draft) && body != null && !(body.value() instanceof Section.Round);
  }

  /** True for valves and inline items that sit in pipes mostly. */
  private static boolean isInPipes(Draft draft) {
    return draft.kind() == Kind.VALVE
        || draft.form() == Form.PUMP
        || draft.form() == Form.METER
        || draft.form() == Form.STRAINER;
  }

  /** True for these and for fittings of pipes. */
  static boolean sitsInPipes(Draft draft) {
    return draft.kind() == Kind.PIPE_FITTING || isInPipes(draft);
  }
}
