package org.lagwright.ifc.extract.join;

import java.util.HashMap;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.lagwright.ifc.extract.Measurers;
import org.lagwright.ifc.extract.Remeasurer;
import org.lagwright.ifc.extract.draft.Draft;
import org.lagwright.ifc.extract.draft.DraftLookup;
import org.lagwright.ifc.extract.join.ModelJoiner.Joining;
import org.lagwright.ifc.model.ElementKey;
import org.lagwright.ifc.model.MepElement;

/**
 * Elements of several files that are worked out once more, as they meet some of another file. Each
 * is read from its file when it is first asked for.
 */
final class Redrafts implements DraftLookup {

  private final Joining joining;
  private final Map<ElementKey, Draft> drafts = new HashMap<>();

  Redrafts(Joining joining) {
    this.joining = joining;
  }

  @Override
  public @Nullable Draft find(ElementKey key) {
    Draft draft = drafts.get(key);
    if (draft == null) {
      MepElement element = joining.find(key);
      draft = element == null ? null : read(element);
    }
    return draft;
  }

  /** An element, null if no file was read for its model. */
  @Nullable Draft of(MepElement element) {
    Draft draft = drafts.get(element.key());
    return draft == null ? read(joining.now(element)) : draft;
  }

  private @Nullable Draft read(MepElement element) {
    Remeasurer origin = origin(element.key().model());
    Draft draft = origin == null ? null : origin.draft(element);
    if (draft != null) {
      drafts.put(element.key(), draft);
    }
    return draft;
  }

  /** What reads elements of a file, null if none was read for its model. */
  @Nullable Remeasurer origin(int model) {
    return joining.read().get(model).origin() instanceof Remeasurer own ? own : null;
  }

  /** What decides the figures of an element that was found. */
  Measurers measurersOf(Draft draft) {
    Remeasurer origin = origin(draft.key().model());
    if (origin == null) {
      throw new IllegalArgumentException(draft.key() + " was read from no file");
    }
    return origin.measurers();
  }
}
