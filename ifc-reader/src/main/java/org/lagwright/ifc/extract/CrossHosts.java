package org.lagwright.ifc.extract;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.lagwright.ifc.extract.ModelJoiner.Joining;
import org.lagwright.ifc.geometry.Coaxiality;
import org.lagwright.ifc.geometry.Shape;
import org.lagwright.ifc.model.Effect;
import org.lagwright.ifc.model.ElementKey;
import org.lagwright.ifc.model.Evidence;
import org.lagwright.ifc.model.ExistingInsulation;
import org.lagwright.ifc.model.Finding;
import org.lagwright.ifc.model.Kind;
import org.lagwright.ifc.model.Measured;
import org.lagwright.ifc.model.MepElement;
import org.lagwright.ifc.model.MepModel;
import org.lagwright.ifc.model.ReadFinding;
import org.lagwright.ifc.model.Section;

/**
 * Finds what coverings lie around that found nothing in their own file: pieces and fittings of
 * another file on the same axis, or with the same ends. Insulation is often modelled in a file of
 * its own.
 */
final class CrossHosts {

  private record Orphan(MepElement covering, Shape body) {}

  /** A covering along a part of a host. */
  private record Cover(MepElement host, Orphan orphan, Coaxiality.Extent extent) {
    MepElement covering() {
      return orphan.covering;
    }
  }

  private final Joining joining;
  private final List<Orphan> orphans = new ArrayList<>();
  private final CoveringHosts<MepElement> hosts =
      new CoveringHosts<>(Comparator.comparing(MepElement::key));
  private final Map<ElementKey, List<Cover>> covers = new LinkedHashMap<>();

  private CrossHosts(Joining joining) {
    this.joining = joining;
  }

  static void find(Joining joining) {
    CrossHosts hosts = new CrossHosts(joining);
    joining.read().forEach(hosts::collectOrphans);
    if (!hosts.orphans.isEmpty()) {
      joining.read().forEach(hosts::collectHosts);
      hosts.orphans.forEach(hosts::look);
      hosts.covers.values().forEach(hosts::insulate);
    }
  }

  /** Only coverings without a host keep their ends. */
  private void collectOrphans(MepModel model) {
    for (MepElement element : model.elements()) {
      if (element.kind() == Kind.COVERING && joining.now(element).repeats() == null) {
        Shape body = ReadEnds.shapeOf(element, element.openEnds());
        if (body != null) {
          orphans.add(new Orphan(element, body));
        }
      }
    }
  }

  private void collectHosts(MepModel model) {
    for (MepElement element : model.elements()) {
      MepElement now = joining.now(element);
      if (now.kind().isLagged() && now.repeats() == null) {
        Shape body = ReadEnds.shapeOf(now, ReadEnds.of(now));
        if (body != null) {
          hosts.add(now, sizeOf(now), body);
        }
      }
    }
  }

  private void look(Orphan orphan) {
    ElementKey covering = orphan.covering.key();
    List<CoveringHosts.Inside<MepElement>> inside = new ArrayList<>();
    for (CoveringHosts.Inside<MepElement> each : hosts.inside(orphan.body)) {
      int model = each.host().key().model();
      if (model != covering.model() && joining.haveOneOrigin(model, covering.model())) {
        inside.add(each);
      }
    }
    for (CoveringHosts.Inside<MepElement> each :
        CoveringHosts.outermost(inside, orphan.body, namesOf(orphan.covering))) {
      covers
          .computeIfAbsent(each.host().key(), key -> new ArrayList<>())
          .add(new Cover(each.host(), orphan, each.extent()));
      joining.hosted(covering);
    }
  }

  private void insulate(List<Cover> covers) {
    MepElement host = covers.get(0).host;
    List<Cover> around = new ArrayList<>();
    List<Cover> lining = new ArrayList<>();
    for (Cover cover : covers) {
      (isLining(cover) ? lining : around).add(cover);
    }
    if (!lining.isEmpty()) {
      MepElement element = joining.now(host);
      joining.change(element.toBuilder().lining(shown(lining)).build());
    }
    if (!around.isEmpty()) {
      cover(joining.now(host), shown(around));
    }
  }

  /** As in one file, coverings come before what the body or a property of the element tells. */
  private void cover(MepElement element, ExistingInsulation shown) {
    ExistingInsulation own = element.existingInsulation();
    ExistingInsulation taken = shown;
    if (own != null && (!own.coverings().isEmpty() || shown.thicknessM() == null)) {
      compare(element, own, shown);
      taken = withCoverings(own, shown.coverings());
    } else if (own != null) {
      compare(element, shown, own);
    }
    joining.change(element.toBuilder().existingInsulation(taken).build());
  }

  private static ExistingInsulation withCoverings(ExistingInsulation own, List<ElementKey> others) {
    List<ElementKey> all = new ArrayList<>(own.coverings());
    all.addAll(others);
    return new ExistingInsulation(
        own.thicknessM(), own.material(), own.share(), own.evidence(), all);
  }

  private ExistingInsulation shown(List<Cover> covers) {
    MepElement host = covers.get(0).host;
    List<Layers.Stack> stacks =
        Layers.stacks(covers.stream().map(CrossHosts::layer).toList(), section(host), host.ends());
    MepElement first = covers.get(0).covering();
    return new ExistingInsulation(
        stacks.get(0).thicknessM().orElse(null),
        covers.stream().flatMap(c -> c.covering().materials().stream()).findFirst().orElse(null),
        Math.min(1, stacks.stream().mapToDouble(Layers.Stack::share).sum()),
        new Evidence(
            first.key().step(),
            first.ifcClass() + " in " + joining.file(first.key().model()),
            first.name()),
        covers.stream().map(cover -> cover.covering().key()).toList());
  }

  private static @Nullable Section section(MepElement element) {
    Measured<Section> section = element.section();
    return section == null ? null : section.value();
  }

  private static boolean isLining(Cover cover) {
    MepElement covering = cover.covering();
    MepElement host = cover.host;
    return sizeOf(host).isLinedBy(section(covering), cover.orphan.body.form(), namesOf(covering));
  }

  private static Layers.Host sizeOf(MepElement host) {
    return new Layers.Host(host.kind(), host.form(), section(host));
  }

  private static Names namesOf(MepElement covering) {
    return new Names(covering.name(), covering.objectType(), covering.typeName(), covering.tag());
  }

  private static Layers.Covering layer(Cover cover) {
    MepElement covering = cover.covering();
    return Layers.Covering.of(
        cover.host.form(),
        section(covering),
        Layers.statedM(covering.properties(), 1),
        null,
        cover.extent);
  }

  /** Another thickness than the one that is taken is a contradiction. */
  private void compare(MepElement element, ExistingInsulation taken, ExistingInsulation other) {
    Optional<Double> takenM = Optional.ofNullable(taken.thicknessM());
    @Nullable Double otherM = other.thicknessM();
    if (takenM.isPresent() && otherM != null && !Thicknesses.same(takenM.get(), otherM)) {
      joining.note(
          Finding.about(
              element.key(),
              ReadFinding.INSULATION_CONFLICT,
              Effect.NONE,
              Sizes.millimetres(takenM.get()) + " (" + taken.evidence() + ")",
              Sizes.millimetres(otherM) + " (" + other.evidence() + ")"));
    }
  }
}
