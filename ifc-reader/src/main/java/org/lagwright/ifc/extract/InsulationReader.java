package org.lagwright.ifc.extract;

import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import org.lagwright.ifc.geometry.Beside;
import org.lagwright.ifc.geometry.BodyCorners;
import org.lagwright.ifc.geometry.Coaxiality;
import org.lagwright.ifc.geometry.Shape;
import org.lagwright.ifc.model.Effect;
import org.lagwright.ifc.model.ElementKey;
import org.lagwright.ifc.model.Evidence;
import org.lagwright.ifc.model.ExistingInsulation;
import org.lagwright.ifc.model.Kind;
import org.lagwright.ifc.model.Measured;
import org.lagwright.ifc.model.ReadFinding;
import org.lagwright.ifc.model.Section;
import org.lagwright.ifc.schema.IfcFile;

/**
 * Insulation that the model already shows: coverings that name what they cover, are a part of it or
 * lie around it; what was drawn into the body of a pipe; or a thickness among the properties. All
 * of them may show the same insulation, so they are compared and never added. A lining lies inside
 * and is kept apart.
 */
final class InsulationReader {

  /** Exporters round; a board that nothing relates to a duct touches it. */
  private static final double ON_DUCT_M = 0.005;

  private final Relations relations;
  private final BelongingReader belongings;
  private final Drafts drafts;
  private final CoveringBodies bodies;
  private final ProfileReader profiles;
  private final DraftReader reader;
  private final MaterialLayers layers;
  private final StatedInsulation stated;
  private final InsulationConflicts conflicts;
  private final CoveringConflicts contradictions;
  private final double lengthUnitM;
  private final Map<ElementKey, Set<Draft>> coveringsByHost = new LinkedHashMap<>();
  private final Set<ElementKey> hosted = new LinkedHashSet<>();
  private final Map<ElementKey, ExistingInsulation> outside = new HashMap<>();
  private final Map<ElementKey, ExistingInsulation> inside = new HashMap<>();

  /**
   * @param bodies measures the bodies of coverings
   * @param profiles tells the walls of hollow ones
   * @param reader reads the parts of elements that are no elements of the model
   */
  InsulationReader(
      IfcFile file,
      Relations relations,
      BelongingReader belongings,
      Drafts drafts,
      CoveringBodies bodies,
      ProfileReader profiles,
      DraftReader reader,
      double lengthUnitM) {
    this.relations = relations;
    this.belongings = belongings;
    this.drafts = drafts;
    this.bodies = bodies;
    this.profiles = profiles;
    this.reader = reader;
    this.layers = new MaterialLayers(file, relations, lengthUnitM);
    this.stated = new StatedInsulation(layers, lengthUnitM);
    this.conflicts = new InsulationConflicts(lengthUnitM);
    this.contradictions = new CoveringConflicts(bodies, layers, lengthUnitM);
    this.lengthUnitM = lengthUnitM;
  }

  /** Finds the hosts of all coverings, then reads element by element. */
  void read() {
    for (Draft draft : drafts.all()) {
      collectNamed(draft);
    }
    collectAround();
    for (Draft draft : drafts.all()) {
      if (draft.kind != Kind.COVERING && mayHaveInsulation(draft)) {
        read(draft);
      }
    }
  }

  /** Insulation outside an element, null if the model shows none. */
  @Nullable ExistingInsulation of(ElementKey element) {
    return outside.get(element);
  }

  /** Lining inside a duct, null if the model shows none. */
  @Nullable ExistingInsulation liningOf(ElementKey element) {
    return inside.get(element);
  }

  private void collectNamed(Draft host) {
    long[] related = relations.coveringsOf(host.step());
    for (long id : related) {
      host(drafts.find(id), host);
    }
    for (long id : relations.partsOf(host.step())) {
      Draft part = drafts.find(id);
      host(part == null && host.isLagged() ? reader.insulationPart(id) : part, host);
    }
    if (host.kind == Kind.COVERING) {
      long wholeId = relations.wholeOf(host.step());
      Draft whole = drafts.find(wholeId);
      if (whole != null) {
        host(host, whole);
      }
    }
  }

  private void host(@Nullable Draft covering, Draft host) {
    if (covering != null && covering.kind == Kind.COVERING && host.kind != Kind.COVERING) {
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
    CoveringHosts<Draft> hosts = orphans.isEmpty() ? null : hosts();
    for (Draft orphan : orphans) {
      if (hosts != null) {
        hostAround(orphan, hosts);
      }
      if (hosts != null && isWithoutHost(orphan)) {
        hostPiece(orphan, hosts);
      }
      if (isWithoutHost(orphan)) {
        orphan.note(ReadFinding.COVERING_WITHOUT_HOST, Effect.NONE);
        // another file may hold what it lies around
        Shape drawn = bodies.shape(orphan);
        orphan.open();
        orphan.measured(drawn);
        orphan.change().section = Sizes.withoutNoise(drawn.section());
        orphan.fold();
      }
    }
  }

  private void hostAround(Draft orphan, CoveringHosts<Draft> hosts) {
    Shape body = bodies.shape(orphan);
    List<CoveringHosts.Inside<Draft>> inside = new ArrayList<>();
    for (CoveringHosts.Inside<Draft> each : hosts.inside(body)) {
      if (each.host() != orphan && mayBeHost(each.host(), orphan)) {
        inside.add(each);
      }
    }
    for (CoveringHosts.Inside<Draft> each : CoveringHosts.outermost(inside, body, orphan.names())) {
      lieAround(orphan, each.host());
    }
  }

  private boolean isWithoutHost(Draft orphan) {
    return orphan.kind == Kind.COVERING && !hosted.contains(orphan.key());
  }

  /** Half shells and boards share no end with what they lie on, but they follow its surface. */
  private void hostPiece(Draft orphan, CoveringHosts<Draft> hosts) {
    BodyCorners body = bodies.corners(orphan);
    for (Draft host : body == null ? List.<Draft>of() : hosts.near(body.box())) {
      Beside piece = body == null ? null : body.beside(host.shape());
      boolean board = piece != null && piece.liesOn(ON_DUCT_M) && isInsulating(piece);
      if (board || (piece != null && piece.round())) {
        host(orphan, host);
      }
    }
  }

  private static boolean isInsulating(Beside board) {
    return Thicknesses.isPossible(board.wallM());
  }

  private CoveringHosts<Draft> hosts() {
    CoveringHosts<Draft> hosts = new CoveringHosts<>(Comparator.comparing(draft -> draft.key()));
    for (Draft draft : drafts.all()) {
      if (draft.isLagged()) {
        hosts.add(draft, new Layers.Host(draft.kind, draft.form, section(draft)), draft.shape());
      }
    }
    return hosts;
  }

  /** A pipe called insulated may be what a covering lies around, but not what its like does. */
  private static boolean mayBeHost(Draft host, Draft orphan) {
    return orphan.kind == Kind.COVERING || !isInsulation(host);
  }

  private boolean mayLieAround(Draft draft) {
    return draft.kind == Kind.COVERING ? !hosted.contains(draft.key()) : isInsulation(draft);
  }

  /** Proxies and pipes that are called insulation; they are that only around something else. */
  private static boolean isInsulation(Draft draft) {
    boolean drawnAsOther =
        draft.kind == Kind.OTHER
            || draft.kind == Kind.PIPE_SEGMENT
            || draft.kind == Kind.DUCT_SEGMENT;
    return drawnAsOther && draft.isCalledInsulation;
  }

  private void lieAround(Draft covering, Draft host) {
    if (covering.kind != Kind.COVERING) {
      Section outer = bodies.outer(covering, host);
      boolean wider =
          outer != null
              && host.section() != null
              && Thicknesses.between(host.section().value(), outer).isPresent();
      if (!wider) {
        return;
      }
      covering.kind = Kind.COVERING;
    }
    host(covering, host);
  }

  /** Most elements of most files have none, and are passed over without asking further. */
  private boolean mayHaveInsulation(Draft draft) {
    return draft.drawnInsulation() != null
        || coveringsByHost.containsKey(draft.key())
        || stated.mayBeOf(draft);
  }

  private void read(Draft draft) {
    List<Draft> around = new ArrayList<>();
    List<Draft> lining = new ArrayList<>();
    for (Draft covering : coveringsByHost.getOrDefault(draft.key(), Set.of())) {
      (isLining(covering, draft) ? lining : around).add(covering);
    }
    Optional<ExistingInsulation> byCovering =
        areCoats(around, draft) ? Optional.empty() : byCoverings(draft, around);
    Optional<ExistingInsulation> byBody = Optional.ofNullable(draft.drawnInsulation());
    Optional<ExistingInsulation> chosen = first(byCovering, first(byBody, stated.on(draft)));
    if (chosen.isPresent()) {
      outside.put(draft.key(), chosen.get());
    }
    if (byCovering.isPresent()) {
      for (Draft covering : around) {
        compare(draft, covering, around.size() == 1);
      }
    }
    conflicts.compare(draft, chosen, List.of(byBody, layers.insulationOn(draft.step())));
    Optional<ExistingInsulation> lined = first(byCoverings(draft, lining), stated.in(draft));
    if (lined.isPresent()) {
      inside.put(draft.key(), lined.get());
    }
  }

  private static Optional<ExistingInsulation> first(
      Optional<ExistingInsulation> one, Optional<ExistingInsulation> other) {
    return one.isPresent() ? one : other;
  }

  /** True if there is nothing but paint, foil and the like. */
  private boolean areCoats(List<Draft> coverings, Draft host) {
    for (Draft covering : coverings) {
      Layers.Covering layer = covering(covering, host);
      boolean thin =
          layer.isThinAround(section(host))
              || (layer.isOfUnknownThickness() && Layers.isCalledCoat(covering.names()));
      if (!thin) {
        return false;
      }
    }
    return true;
  }

  private boolean isLining(Draft covering, Draft host) {
    Layers.Host bare = new Layers.Host(host.kind, host.form, section(host));
    boolean beside = bodies.liesOutside(covering, host);
    Section within = beside ? null : bodies.outer(covering, host);
    return bare.isLinedBy(within, bodies.along(covering, host).form(), covering.names());
  }

  private static @Nullable Section section(Draft host) {
    return host.section() == null ? null : host.section().value();
  }

  private static List<Section> ends(Draft host) {
    Measured<List<Section>> ends = host.ends();
    return ends == null ? List.of() : ends.value();
  }

  private Optional<ExistingInsulation> byCoverings(Draft host, List<Draft> coverings) {
    if (coverings.isEmpty()) {
      return Optional.empty();
    }
    List<Layers.Stack> stacks = Layers.stacks(layers(coverings, host), section(host), ends(host));
    conflicts.noteStacks(host, coverings.get(0), stacks);
    Draft first = coverings.get(0);
    return Optional.of(
        new ExistingInsulation(
            stacks.get(0).thicknessM().orElse(null),
            materialOf(coverings),
            Math.min(1, stacks.stream().mapToDouble(Layers.Stack::share).sum()),
            new Evidence(first.step(), first.ifcClass(), first.names().own()),
            coverings.stream().map(c -> c.key()).toList()));
  }

  /**
   * @param alone false where other coverings may lie between a full body and the element
   */
  private void compare(Draft host, Draft covering, boolean alone) {
    Layers.Covering layer = covering(covering, host);
    List<Section> bare = new ArrayList<>(ends(host));
    if (host.section() != null) {
      bare.add(host.section().value());
    }
    boolean told = alone || layer.wallM() != null;
    Optional<Double> drawnM =
        told
            ? Layers.stacks(List.of(layer), section(host), ends(host)).get(0).drawnM()
            : Optional.empty();
    contradictions.compare(host, covering, layer, drawnM.orElse(null), bare);
  }

  private List<Layers.Covering> layers(List<Draft> coverings, Draft host) {
    List<Layers.Covering> layers = new ArrayList<>();
    List<Undrawn> undrawn = new ArrayList<>();
    for (Draft covering : coverings) {
      Layers.Covering layer = covering(covering, host);
      if (bodies.shape(covering).isDrawn()) {
        layers.add(layer);
      } else {
        Double lengthM = coverings.size() == 1 ? null : reader.statedLengthM(covering.step());
        undrawn.add(new Undrawn(layer, covering.names(), lengthM));
      }
    }
    Measured<Double> length = host.lengthM();
    List<Layers.Covering> arranged =
        Undrawn.arranged(undrawn, length == null ? null : length.value());
    if (arranged.size() < undrawn.size()) {
      conflicts.noteAlike(host, undrawn);
    }
    layers.addAll(arranged);
    return layers;
  }

  private Layers.Covering covering(Draft covering, Draft host) {
    Shape along = bodies.along(covering, host);
    Coaxiality.Extent extent = Coaxiality.extent(along, host.shape());
    Section outer = along.section() == null ? null : along.section().value();
    Double wallM = profiles.drawnWallM(along).orElse(null);
    Double statedM = Layers.statedM(covering.properties(), lengthUnitM);
    statedM = statedM == null ? layers.thicknessM(covering.step()) : statedM;
    Beside piece = extent == null && isStraightPiece(host) ? bodies.beside(covering, host) : null;
    if (piece != null) {
      return Layers.Covering.of(piece, statedM);
    }
    boolean drawn = wallM != null || (outer != null && !Layers.isWide(host.form));
    return Layers.Covering.of(
        host.form,
        outer,
        statedM == null && !drawn ? Layers.wordedM(covering.names()) : statedM,
        wallM,
        extent == null ? Coaxiality.Extent.WHOLE : extent);
  }

  private static boolean isStraightPiece(Draft host) {
    return host.kind == Kind.PIPE_SEGMENT || host.kind == Kind.DUCT_SEGMENT;
  }

  private @Nullable String materialOf(Collection<Draft> coverings) {
    return coverings.stream()
        .flatMap(c -> belongings.materialsOf(c.step()).stream())
        .findFirst()
        .orElse(null);
  }
}
