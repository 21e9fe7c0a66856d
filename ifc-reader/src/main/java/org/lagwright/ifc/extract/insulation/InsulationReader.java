package org.lagwright.ifc.extract.insulation;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import org.lagwright.ifc.extract.draft.Draft;
import org.lagwright.ifc.extract.draft.DraftReader;
import org.lagwright.ifc.extract.draft.Drafts;
import org.lagwright.ifc.extract.property.Relations;
import org.lagwright.ifc.extract.text.Thicknesses;
import org.lagwright.ifc.extract.text.Tolerances;
import org.lagwright.ifc.geometry.BodyCorners;
import org.lagwright.ifc.geometry.Coaxiality;
import org.lagwright.ifc.geometry.frame.Box;
import org.lagwright.ifc.geometry.frame.ShapeEnd;
import org.lagwright.ifc.geometry.shape.Shape;
import org.lagwright.ifc.model.Effect;
import org.lagwright.ifc.model.ElementKey;
import org.lagwright.ifc.model.ExistingInsulation;
import org.lagwright.ifc.model.Kind;
import org.lagwright.ifc.model.ReadFinding;
import org.lagwright.ifc.model.Section;

/**
 * Insulation that the model already shows: coverings that name what they cover, are a part of it or
 * lie around it; what was drawn into the body of a pipe; or a thickness among the properties. All
 * of them may show the same insulation, so they are compared and never added. A lining lies inside
 * and is kept apart.
 */
public final class InsulationReader {

  private final Relations relations;
  private final Drafts drafts;
  private final CoveringBodies bodies;
  private final DraftReader reader;
  private final InsulationChoice choice;
  private final Map<ElementKey, Set<Draft>> coveringsByHost = new LinkedHashMap<>();
  private final Set<ElementKey> hosted = new LinkedHashSet<>();
  private final List<LooseCovering> loose = new ArrayList<>();
  private final Map<ElementKey, ExistingInsulation> outside = new HashMap<>();
  private final Map<ElementKey, ExistingInsulation> inside = new HashMap<>();

  /**
   * @param coverings of this file
   * @param choice chooses for the elements of this file
   * @param reader reads the parts of elements that are no elements of the model
   */
  public InsulationReader(
      Relations relations,
      Drafts drafts,
      Coverings coverings,
      InsulationChoice choice,
      DraftReader reader) {
    this.relations = relations;
    this.drafts = drafts;
    this.bodies = coverings.bodies();
    this.choice = choice;
    this.reader = reader;
  }

  /** Finds the hosts of all coverings, then reads element by element. */
  public void read() {
    for (Draft draft : drafts.all()) {
      collectNamed(draft);
    }
    collectAround();
    for (Draft draft : drafts.all()) {
      if (draft.kind() != Kind.COVERING && mayHaveInsulation(draft)) {
        read(draft);
      }
    }
  }

  /** Insulation outside an element, null if the model shows none. */
  public @Nullable ExistingInsulation of(ElementKey element) {
    return outside.get(element);
  }

  /** Lining inside a duct, null if the model shows none. */
  public @Nullable ExistingInsulation liningOf(ElementKey element) {
    return inside.get(element);
  }

  private void collectNamed(Draft host) {
    long[] related = relations.coveringsOf(host.step());
    for (long id : related) {
      host(drafts.find(id), host);
    }
    for (long id : relations.partsOf(host.step())) {
      Draft part = drafts.find(id);
      if (part != null && isUndrawnInsulation(part, host)) {
        turn(part);
      }
      host(part == null && host.isLagged() ? reader.insulationPart(id) : part, host);
    }
    if (host.kind() == Kind.COVERING) {
      long wholeId = relations.wholeOf(host.step());
      Draft whole = drafts.find(wholeId);
      if (whole != null) {
        host(host, whole);
      }
    }
  }

  /** Nothing but what it is a part of tells where it lies. */
  private boolean isUndrawnInsulation(Draft part, Draft host) {
    return host.isLagged()
        && isInsulation(part)
        && part.section() == null
        && !bodies.shape(part).isDrawn();
  }

  private void host(@Nullable Draft covering, Draft host) {
    if (covering != null && covering.kind() == Kind.COVERING && host.kind() != Kind.COVERING) {
      hosted.add(covering.key());
      coveringsByHost.computeIfAbsent(host.key(), k -> new LinkedHashSet<>()).add(covering);
    }
  }

  /** Coverings that name no host are looked for by geometry; only then are the hosts indexed. */
  private void collectAround() {
    List<Draft> orphans = new ArrayList<>();
    for (Draft draft : drafts.all()) {
      if (mayLieAround(draft)) {
        orphans.add(draft);
      }
    }
    if (orphans.isEmpty()) {
      return;
    }
    CoveringHosts<Draft> hosts = hosts();
    boolean nothingToInsulate = holdsNothingLagged();
    for (Draft orphan : orphans) {
      hostAround(orphan, hosts);
      boolean piece = isWithoutHost(orphan);
      BodyCorners corners = piece ? bodies.corners(orphan) : null;
      for (Draft host : corners == null ? List.<Draft>of() : hosts.beside(corners)) {
        host(orphan, host);
      }
      if (isWithoutHost(orphan)) {
        leaveWithoutHost(orphan, nothingToInsulate);
      }
      keep(orphan, corners);
    }
  }

  /**
   * Where nothing is that could be insulated, as in the file of an architect, coverings are of
   * eaves and walls unless they are called insulation.
   */
  private void leaveWithoutHost(Draft orphan, boolean nothingToInsulate) {
    boolean ofBuilding = nothingToInsulate && !reader.isCalledInsulation(orphan);
    if (!ofBuilding && !relations.isOfRoom(orphan.step())) {
      orphan.note(ReadFinding.COVERING_WITHOUT_HOST, Effect.NONE);
    }
    Shape drawn = bodies.shape(orphan);
    orphan.open();
    orphan.measured(drawn);
    orphan.change().setSection(Tolerances.withoutNoise(drawn.section()));
    orphan.fold();
  }

  /** Another file may hold what it lies around, or more of it. */
  private void keep(Draft orphan, @Nullable BodyCorners corners) {
    Shape drawn = bodies.shape(orphan);
    Box reach = corners == null ? null : corners.box();
    if (drawn.ends().size() > 1) {
      Box axis = Coaxiality.box(drawn).wider(Coaxiality.toleranceM(drawn));
      reach = reach == null ? axis : reach.and(axis);
    }
    if (reach != null) {
      loose.add(new LooseCovering(orphan.key(), reach, isWithoutHost(orphan)));
    }
  }

  /** What names nothing that it covers, wherever that may stand. */
  public List<LooseCovering> loose() {
    return List.copyOf(loose);
  }

  /** A short box may run along another of its edges than the longest. */
  private void hostAround(Draft orphan, CoveringHosts<Draft> hosts) {
    Shape body = bodies.shape(orphan);
    if (!hostAround(orphan, body, hosts)) {
      for (Shape other : body.otherReadings()) {
        if (hostAround(orphan, other, hosts)) {
          return;
        }
      }
    }
  }

  /**
   * @return true if something is found that it lies around
   */
  private boolean hostAround(Draft orphan, Shape body, CoveringHosts<Draft> hosts) {
    List<CoveringHosts.Inside<Draft>> inside = new ArrayList<>();
    boolean found = false;
    for (CoveringHosts.Inside<Draft> each : hosts.inside(body)) {
      if (each.host() != orphan && mayBeHost(each.host(), orphan)) {
        inside.add(each);
      }
    }
    for (CoveringHosts.Inside<Draft> each : CoveringHosts.outermost(inside, body, orphan.names())) {
      if (orphan.kind() == Kind.COVERING || bodies.isWider(orphan, each)) {
        turn(orphan);
        host(orphan, each.host());
        found = true;
      }
    }
    return found;
  }

  /** What was said of a pipe or fitting does not hold for what lies around one. */
  private static void turn(Draft orphan) {
    if (orphan.kind() != Kind.COVERING) {
      orphan.setKind(Kind.COVERING);
      orphan.forgetFindings();
    }
  }

  private boolean isWithoutHost(Draft orphan) {
    return orphan.kind() == Kind.COVERING && !hosted.contains(orphan.key());
  }

  private CoveringHosts<Draft> hosts() {
    CoveringHosts<Draft> hosts = new CoveringHosts<>(Comparator.comparing(draft -> draft.key()));
    for (Draft draft : drafts.all()) {
      if (draft.isLagged()) {
        hosts.add(draft, Coverings.sizeOf(draft), draft.shape());
      }
    }
    return hosts;
  }

  private boolean holdsNothingLagged() {
    for (Draft draft : drafts.all()) {
      if (draft.isLagged()) {
        return false;
      }
    }
    return true;
  }

  /** A pipe called insulated may be what a covering lies around, but not what its like does. */
  private static boolean mayBeHost(Draft host, Draft orphan) {
    return orphan.kind() == Kind.COVERING || !isInsulation(host);
  }

  private boolean mayLieAround(Draft draft) {
    return draft.kind() == Kind.COVERING ? !hosted.contains(draft.key()) : isInsulation(draft);
  }

  /**
   * Proxies, pipes, ducts and fittings that are called insulation; they are that only around
   * something else. An insulating flange or union is none.
   */
  public static boolean isInsulation(Draft draft) {
    Kind kind = draft.kind();
    boolean fitting = kind != null && kind.isFitting();
    boolean insulating = fitting && draft.formIsWorded() && Layers.isBoxed(draft.form());
    boolean drawnAsOther = kind == Kind.OTHER || fitting || (kind != null && kind.isSegment());
    return drawnAsOther && draft.isCalledInsulation() && !insulating;
  }

  /** True if a part of a pipe, duct or fitting is not that once more, but drawn around it. */
  public static boolean isInsulationOf(Draft whole, Draft part) {
    Section bare = widest(whole.shape().ends());
    Section outer = widest(part.shape().ends());
    return isInsulation(part)
        && bare != null
        && outer != null
        && Thicknesses.between(bare, outer).isPresent()
        && Coaxiality.runsAlong(part.shape(), whole.shape());
  }

  private static @Nullable Section widest(List<ShapeEnd> ends) {
    Section widest = null;
    for (ShapeEnd end : ends) {
      boolean wider = widest == null || end.section().largestSideM() > widest.largestSideM();
      widest = wider ? end.section() : widest;
    }
    return widest;
  }

  /** Most elements of most files have none, and are passed over without asking further. */
  private boolean mayHaveInsulation(Draft draft) {
    return draft.drawnInsulation() != null
        || coveringsByHost.containsKey(draft.key())
        || choice.stated().mayBeOf(draft);
  }

  private void read(Draft draft) {
    InsulationChoice.Chosen chosen =
        choice.choose(draft, coveringsByHost.getOrDefault(draft.key(), Set.of()));
    if (chosen.outside() != null) {
      outside.put(draft.key(), chosen.outside());
    }
    if (chosen.inside() != null) {
      inside.put(draft.key(), chosen.inside());
    }
  }
}
