package org.lagwright.ifc.extract;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.lagwright.ifc.extract.draft.Assembly;
import org.lagwright.ifc.extract.draft.Draft;
import org.lagwright.ifc.extract.draft.Drafts;
import org.lagwright.ifc.extract.draft.Drawn;
import org.lagwright.ifc.extract.graph.BracketJoints;
import org.lagwright.ifc.extract.insulation.InsulationReader;
import org.lagwright.ifc.extract.property.Relations;
import org.lagwright.ifc.geometry.frame.ShapeEnd;
import org.lagwright.ifc.model.Effect;
import org.lagwright.ifc.model.Form;
import org.lagwright.ifc.model.Kind;
import org.lagwright.ifc.model.Measured;
import org.lagwright.ifc.model.ReadFinding;

/**
 * Finds elements that are but the bracket around their parts: nothing is drawn of them but what
 * their parts draw again, and parts of the same kind are counted, or a fitting is put together of
 * straight pieces. A pipe that only holds a valve is none, nor a valve that only holds its flanges.
 * What other elements are connected to stays counted, as services are followed through it, unless
 * parts are drawn where it is joined.
 */
public final class CountedByParts {

  /** Parts need not make up all of a length, as joints lie between them. */
  private static final double LENGTH_SHARE = 0.9;

  /** No assembly of a building has more parts within parts. */
  private static final int MOST_WHOLES = 100;

  private final Drafts drafts;
  private final Relations relations;
  private final BracketJoints joints;

  CountedByParts(Drafts drafts, Relations relations) {
    this.drafts = drafts;
    this.joints = new BracketJoints(drafts);
    this.relations = relations;
  }

  /**
   * Leaves them out, each with a finding.
   *
   * @return all elements of parts, also those that stay counted
   */
  List<Assembly> leaveOut() {
    Map<Draft, List<Draft>> partsByWhole = partsByWhole();
    List<Draft> brackets = new ArrayList<>(0);
    for (Map.Entry<Draft, List<Draft>> each : partsByWhole.entrySet()) {
      if (areWhole(each.getValue(), each.getKey())
          && drawWhole(each.getValue(), each.getKey())
          && joints.giveTo(each.getValue(), each.getKey())) {
        brackets.add(each.getKey());
      }
    }
    for (Draft bracket : brackets) {
      leaveOut(bracket, partsByWhole.getOrDefault(bracket, List.of()));
    }
    List<Assembly> assemblies = new ArrayList<>(partsByWhole.size());
    for (Map.Entry<Draft, List<Draft>> each : partsByWhole.entrySet()) {
      assemblies.add(Assembly.of(each.getKey(), each.getValue()));
    }
    return assemblies;
  }

  /** The whole counts no more, as its parts do; their names are noted. */
  public static void leaveOut(Draft bracket, List<Draft> parts) {
    bracket.setKind(Kind.OTHER);
    bracket.setForm(Form.UNKNOWN);
    bracket.forgetFindings();
    bracket.note(
        ReadFinding.COUNTED_BY_PARTS,
        Effect.NONE,
        String.valueOf(parts.size()),
        named(parts.get(0)));
  }

  private Map<Draft, List<Draft>> partsByWhole() {
    Map<Draft, List<Draft>> found = new LinkedHashMap<>();
    for (Draft part : drafts.all()) {
      long step = part.isLagged() ? relations.wholeOf(part.step()) : 0;
      Draft whole = step == 0 ? null : drafts.find(step);
      if (whole != null
          && whole.isLagged()
          && !InsulationReader.isInsulationOf(whole, part)
          && !isPartOf(step, part.step())) {
        List<Draft> parts = found.get(whole);
        if (parts == null) {
          parts = new ArrayList<>(2);
          found.put(whole, parts);
        }
        parts.add(part);
      }
    }
    return found;
  }

  /** True in a circle, which broken files have. */
  private boolean isPartOf(long step, long other) {
    long at = step;
    for (int i = 0; i < MOST_WHOLES && at != 0; i++) {
      if (at == other) {
        return true;
      }
      at = relations.wholeOf(at);
    }
    return at != 0;
  }

  /** True if a part is what the whole is called, and no length of the whole is lost. */
  public static boolean areWhole(List<Draft> parts, Draft whole) {
    double lengthM = 0;
    boolean alike = false;
    int pieces = 0;
    for (Draft part : parts) {
      alike |= part.kind() == whole.kind() && part.section() != null;
      pieces += isPieceOf(part, whole) ? 1 : 0;
      lengthM += orNothing(part.lengthM());
    }
    return (alike || pieces > 1) && lengthM >= LENGTH_SHARE * orNothing(whole.lengthM());
  }

  /** True if nothing is drawn of the whole, or parts end wherever it ends. */
  public static boolean drawWhole(List<Draft> parts, Draft whole) {
    List<ShapeEnd> ends = whole.shape().ends();
    boolean drawn = !whole.shape().isDrawn() || ends.size() > 1;
    for (ShapeEnd end : ends) {
      boolean met = false;
      for (Draft part : parts) {
        met |= Drawn.isAnEnd(part.shape().ends(), end.centreM());
      }
      drawn &= met;
    }
    return drawn;
  }

  /** True for a straight piece of the pipe or duct that a fitting belongs to. */
  private static boolean isPieceOf(Draft part, Draft fitting) {
    Kind ofLine = fitting.kind() == Kind.PIPE_FITTING ? Kind.PIPE_SEGMENT : Kind.DUCT_SEGMENT;
    boolean fitted = fitting.kind() != null && fitting.kind().isFitting();
    return fitted && part.kind() == ofLine && part.section() != null;
  }

  private static double orNothing(@Nullable Measured<Double> lengthM) {
    return lengthM == null ? 0 : lengthM.value();
  }

  private static String named(Draft part) {
    String name = part.names().own();
    return name.isEmpty() ? "#" + part.step() : name;
  }
}
