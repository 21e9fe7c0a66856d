package org.lagwright.ifc.extract.join;

import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.EnumSet;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.TreeMap;
import org.jspecify.annotations.Nullable;
import org.lagwright.ifc.extract.Remeasurer;
import org.lagwright.ifc.extract.draft.Draft;
import org.lagwright.ifc.extract.insulation.CoveringBodies;
import org.lagwright.ifc.extract.insulation.CoveringFiles;
import org.lagwright.ifc.extract.insulation.CoveringHosts;
import org.lagwright.ifc.extract.insulation.Coverings;
import org.lagwright.ifc.extract.insulation.InsulationChoice;
import org.lagwright.ifc.extract.insulation.InsulationReader;
import org.lagwright.ifc.extract.insulation.LooseCovering;
import org.lagwright.ifc.extract.join.ModelJoiner.Joining;
import org.lagwright.ifc.geometry.BodyCorners;
import org.lagwright.ifc.geometry.shape.Shape;
import org.lagwright.ifc.model.ElementKey;
import org.lagwright.ifc.model.ExistingInsulation;
import org.lagwright.ifc.model.Kind;
import org.lagwright.ifc.model.MepElement;
import org.lagwright.ifc.model.ReadFinding;

/**
 * Finds what coverings that name nothing they cover lie around in other files: insulation is often
 * modelled in a file of its own. They are judged as those of one file, by {@link CoveringHosts} and
 * {@link InsulationChoice}.
 */
final class CrossHosts implements CoveringFiles {

  /** Told anew of every element that a covering of another file was found for. */
  private static final Set<ReadFinding> CHOSEN = Set.of(ReadFinding.INSULATION_CONFLICT);

  /** What was said of a pipe, fitting or proxy does not hold for what lies around one. */
  private static final Set<ReadFinding> TURNED = EnumSet.allOf(ReadFinding.class);

  /**
   * What a covering may lie around.
   *
   * @param insulation true if it is called so, as its like may be
   */
  private record Host(ElementKey key, boolean insulation) {}

  private final Joining joining;
  private final Redrafts drafts;
  private final CoveringHosts<Host> hosts = new CoveringHosts<>(Comparator.comparing(Host::key));
  private final Map<ElementKey, Draft> coverings = new HashMap<>();

  /** Coverings of other files by what they lie around. */
  private final Map<ElementKey, Set<Draft>> found = new TreeMap<>();

  /** Coverings that are none of an element of their file, as another one draws a pipe between. */
  private final Map<ElementKey, Set<ElementKey>> lost = new HashMap<>();

  private final Map<Integer, InsulationChoice> choices = new HashMap<>();

  private CrossHosts(Joining joining, Redrafts drafts) {
    this.joining = joining;
    this.drafts = drafts;
  }

  /**
   * @param repeated repetitions that show insulation or a lining
   */
  static void find(Joining joining, Redrafts drafts, Collection<ElementKey> repeated) {
    CrossHosts hosts = new CrossHosts(joining, drafts);
    repeated.forEach(hosts::takeOver);
    LooseCoverings loose = new LooseCoverings(joining, drafts);
    loose.forEachNear(hosts::addHost);
    loose.wanted().forEach(hosts::look);
    hosts.found.forEach(hosts::insulate);
  }

  /** The coverings of a repetition, unless both files hold them, cover the element that counts. */
  private void takeOver(ElementKey repetition) {
    MepElement element = joining.find(repetition);
    ElementKey key = element == null ? null : element.repeats();
    MepElement first = key == null ? null : joining.find(key);
    if (element == null || first == null) {
      return;
    }
    Set<String> known = new HashSet<>();
    for (ElementKey covering : coveringsOf(first)) {
      if (covering.model() == first.key().model()) {
        known.add(globalId(covering));
      }
    }
    Set<Draft> others = new LinkedHashSet<>();
    for (ElementKey each : coveringsOf(element)) {
      Draft covering = known.add(globalId(each)) ? covering(each) : null;
      if (covering != null) {
        others.add(covering);
      }
    }
    if (!others.isEmpty()) {
      found.computeIfAbsent(first.key(), host -> new LinkedHashSet<>()).addAll(others);
    }
  }

  private static List<ElementKey> coveringsOf(MepElement element) {
    List<ElementKey> all = new ArrayList<>();
    ExistingInsulation around = element.existingInsulation();
    ExistingInsulation lining = element.lining();
    all.addAll(around == null ? List.of() : around.coverings());
    all.addAll(lining == null ? List.of() : lining.coverings());
    return all;
  }

  /** A name of its own for a record that has none. */
  private String globalId(ElementKey covering) {
    Remeasurer origin = drafts.origin(covering.model());
    String globalId = origin == null ? "" : origin.globalId(covering.step());
    return globalId.isEmpty() ? covering.toString() : globalId;
  }

  private void addHost(MepElement element) {
    Draft host = decided(element);
    if (host != null) {
      Host added = new Host(host.key(), InsulationReader.isInsulation(host));
      hosts.add(added, Coverings.sizeOf(host), host.shape());
    }
  }

  private @Nullable Draft decided(MepElement element) {
    int model = element.key().model();
    Remeasurer origin = drafts.origin(model);
    return origin == null ? null : origin.decided(element, choice(model, origin));
  }

  private InsulationChoice choice(int model, Remeasurer origin) {
    InsulationChoice choice = choices.get(model);
    if (choice == null) {
      choice = origin.choice(this);
      choices.put(model, choice);
    }
    return choice;
  }

  @Override
  public Coverings of(Draft covering) {
    return Objects.requireNonNull(drafts.origin(covering.key().model())).coverings();
  }

  private @Nullable Draft covering(ElementKey key) {
    Draft covering = coverings.get(key);
    Remeasurer origin = covering == null ? drafts.origin(key.model()) : null;
    if (origin != null) {
      covering = origin.covering(key.step(), joining.find(key));
      if (covering != null) {
        coverings.put(key, covering);
      }
    }
    return covering;
  }

  private void look(LooseCovering loose) {
    MepElement element = joining.find(loose.key());
    Draft covering = element == null || element.repeats() != null ? null : covering(loose.key());
    if (covering != null && !lieAround(covering) && loose.withoutHost()) {
      lieBeside(covering);
    }
  }

  /**
   * @return true if something is found that it lies around
   */
  private boolean lieAround(Draft covering) {
    CoveringBodies bodies = of(covering).bodies();
    Shape body = bodies.shape(covering);
    List<CoveringHosts.Inside<Host>> inside = new ArrayList<>();
    for (CoveringHosts.Inside<Host> each : hosts.inside(body)) {
      if (mayCover(covering, each.host())) {
        inside.add(each);
      }
    }
    List<CoveringHosts.Inside<Host>> on = CoveringHosts.outermost(inside, body, covering.names());
    boolean any = false;
    for (CoveringHosts.Inside<Host> each : on) {
      if (covering.kind() == Kind.COVERING || bodies.isWider(covering, each)) {
        any |= host(covering, each.host());
      }
    }
    inside.removeAll(on);
    for (CoveringHosts.Inside<Host> each : inside) {
      uncover(covering, each.host());
    }
    return any;
  }

  /** A pipe of another file lies between the covering and what it lies around in its own. */
  private void uncover(Draft covering, Host host) {
    MepElement element = joining.find(host.key);
    if (element != null && coveringsOf(element).contains(covering.key())) {
      lost.computeIfAbsent(host.key, key -> new HashSet<>()).add(covering.key());
      found.computeIfAbsent(host.key, key -> new LinkedHashSet<>());
    }
  }

  private void lieBeside(Draft covering) {
    BodyCorners piece = of(covering).bodies().corners(covering);
    for (Host host : piece == null ? List.<Host>of() : hosts.beside(piece)) {
      if (mayCover(covering, host)) {
        host(covering, host);
      }
    }
  }

  private boolean mayCover(Draft covering, Host host) {
    ElementKey key = covering.key();
    return !key.equals(host.key)
        && joining.haveOneOrigin(key.model(), host.key.model())
        && (covering.kind() == Kind.COVERING || !host.insulation);
  }

  /**
   * What its own file holds was found when that was read.
   *
   * @return true unless the host has turned out to be a covering itself
   */
  private boolean host(Draft covering, Host host) {
    MepElement element = joining.find(host.key);
    if (element == null || element.kind() == Kind.COVERING) {
      return false;
    }
    if (host.key.model() != covering.key().model()) {
      found.computeIfAbsent(host.key, key -> new LinkedHashSet<>()).add(covering);
      joining.hosted(covering.key());
      if (covering.kind() != Kind.COVERING) {
        turn(covering);
      }
    }
    return true;
  }

  /** What is called insulation and lies around something is that. */
  private void turn(Draft covering) {
    covering.setKind(Kind.COVERING);
    MepElement element = joining.find(covering.key());
    if (element != null) {
      joining.change(
          element.toBuilder()
              .is(Kind.COVERING, element.form())
              .existingInsulation(null)
              .lining(null)
              .build());
      joining.forget(covering.key(), TURNED);
    }
  }

  private void insulate(ElementKey key, Collection<Draft> others) {
    MepElement element = joining.find(key);
    Draft host = element == null || element.kind() == Kind.COVERING ? null : decided(element);
    Remeasurer origin = drafts.origin(key.model());
    if (element == null || host == null || origin == null) {
      return;
    }
    Set<Draft> all = new LinkedHashSet<>();
    Set<ElementKey> gone = lost.getOrDefault(key, Set.of());
    for (ElementKey each : coveringsOf(element)) {
      Draft covering = gone.contains(each) ? null : covering(each);
      if (covering != null) {
        all.add(covering);
      }
    }
    all.addAll(others);
    InsulationChoice.Chosen chosen = choice(key.model(), origin).choose(host, once(all));
    ExistingInsulation before = element.existingInsulation();
    boolean told = before != null && before.coverings().isEmpty();
    joining.change(
        element.toBuilder()
            .existingInsulation(chosen.outside() == null && told ? before : chosen.outside())
            .lining(chosen.inside())
            .build());
    joining.forget(key, CHOSEN);
    host.findings().forEach(joining::note);
  }

  /** Without coverings that several files hold, but for the first of each. */
  private List<Draft> once(Set<Draft> all) {
    Set<String> known = new HashSet<>();
    List<Draft> once = new ArrayList<>();
    for (Draft covering : all) {
      if (known.add(globalId(covering.key()))) {
        once.add(covering);
      }
    }
    return once;
  }
}
