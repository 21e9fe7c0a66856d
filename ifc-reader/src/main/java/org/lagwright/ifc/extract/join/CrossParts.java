package org.lagwright.ifc.extract.join;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import org.lagwright.ifc.extract.CountedByParts;
import org.lagwright.ifc.extract.Remeasurer;
import org.lagwright.ifc.extract.draft.Assembly;
import org.lagwright.ifc.extract.draft.Draft;
import org.lagwright.ifc.extract.graph.BracketJoints;
import org.lagwright.ifc.extract.graph.OpenEnds;
import org.lagwright.ifc.extract.join.ModelJoiner.Joining;
import org.lagwright.ifc.model.ElementKey;
import org.lagwright.ifc.model.Form;
import org.lagwright.ifc.model.Kind;
import org.lagwright.ifc.model.MepElement;
import org.lagwright.ifc.model.MepModel;
import org.lagwright.ifc.model.Port;
import org.lagwright.ifc.model.ReadFinding;

/**
 * Leaves out elements that several files hold by one GlobalId and that are but the bracket around
 * parts, some of which stand in another file; as {@link CountedByParts} does in one file.
 */
final class CrossParts {

  private static final Set<ReadFinding> ALL = EnumSet.allOf(ReadFinding.class);

  private final Joining joining;
  private final Redrafts drafts;

  /** By the GlobalId of the whole. */
  private final Map<String, List<Assembly>> assemblies = new HashMap<>();

  private CrossParts(Joining joining) {
    this.joining = joining;
    this.drafts = new Redrafts(joining);
  }

  static void leaveOut(Joining joining) {
    CrossParts parts = new CrossParts(joining);
    joining.read().forEach(parts::collect);
    if (!parts.assemblies.isEmpty()) {
      joining.read().forEach(parts::look);
    }
  }

  private void collect(MepModel model) {
    Remeasurer origin = drafts.origin(model.file().index());
    for (Assembly each : origin == null ? List.<Assembly>of() : origin.assemblies()) {
      MepElement whole = joining.find(each.whole());
      if (whole != null && !whole.globalId().isEmpty()) {
        assemblies.computeIfAbsent(whole.globalId(), id -> new ArrayList<>(1)).add(each);
      }
    }
  }

  private void look(MepModel model) {
    for (MepElement element : model.elements()) {
      List<Assembly> same = assemblies.getOrDefault(element.globalId(), List.of());
      MepElement whole = same.isEmpty() ? element : joining.now(element);
      List<MepElement> parts = whole.kind().isLagged() ? partsOf(whole, same) : List.of();
      if (!parts.isEmpty()) {
        judge(whole, parts);
      }
    }
  }

  /** Those of all files, each once; none if all stand in its own file, where it was judged. */
  private List<MepElement> partsOf(MepElement whole, List<Assembly> same) {
    int model = whole.key().model();
    Set<String> known = new HashSet<>();
    List<MepElement> parts = new ArrayList<>();
    boolean inOther = false;
    for (Assembly each : same) {
      MepElement other = joining.find(each.whole());
      boolean one =
          other != null
              && other.ifcClass().equals(whole.ifcClass())
              && joining.haveOneOrigin(model, each.whole().model());
      for (ElementKey key : one ? each.parts() : List.<ElementKey>of()) {
        MepElement part = joining.find(key);
        if (part != null && part.kind().isLagged() && known.add(part.globalId())) {
          parts.add(part);
          inOther |= key.model() != model;
        }
      }
    }
    return inOther ? parts : List.of();
  }

  private void judge(MepElement whole, List<MepElement> parts) {
    Draft bracket = settled(whole);
    List<Draft> pieces = new ArrayList<>();
    boolean placed = false;
    for (MepElement part : parts) {
      Draft piece = settled(part);
      placed |= Bodies.isPlacedAt(part, whole);
      if (piece != null) {
        pieces.add(piece);
      }
    }
    if (bracket == null
        || pieces.size() < parts.size()
        || !(placed || bracket.shape().isDrawn())
        || !CountedByParts.areWhole(pieces, bracket)
        || !CountedByParts.drawWhole(pieces, bracket)) {
      return;
    }
    List<Port> before = bracket.joints();
    if (new BracketJoints(drafts).giveTo(pieces, bracket)) {
      CountedByParts.leaveOut(bracket, pieces);
      leaveOut(whole, bracket, before, pieces);
    }
  }

  private @Nullable Draft settled(MepElement element) {
    Draft draft = drafts.of(element);
    if (draft != null) {
      Remeasurer.settle(draft, element);
    }
    return draft;
  }

  /**
   * @param before what it was joined to
   */
  private void leaveOut(MepElement whole, Draft bracket, List<Port> before, List<Draft> pieces) {
    joining.change(
        joining.now(whole).toBuilder()
            .is(Kind.OTHER, Form.UNKNOWN)
            .ports(bracket.joints())
            .build());
    joining.forget(whole.key(), ALL);
    bracket.findings().forEach(joining::note);
    pieces.forEach(this::changeJoints);
    for (Port joint : before) {
      Draft next = joint.connectedTo() == null ? null : drafts.find(joint.connectedTo());
      if (next != null) {
        changeJoints(next);
      }
    }
  }

  private void changeJoints(Draft draft) {
    MepElement element = joining.find(draft.key());
    if (element != null && !element.ports().equals(draft.joints())) {
      joining.change(
          element.toBuilder().ports(draft.joints()).openEnds(OpenEnds.of(draft)).build());
    }
  }
}
