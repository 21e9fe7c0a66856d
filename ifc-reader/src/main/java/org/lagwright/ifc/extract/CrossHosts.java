package org.lagwright.ifc.extract;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import org.lagwright.ifc.extract.ModelJoiner.Joining;
import org.lagwright.ifc.geometry.Box;
import org.lagwright.ifc.geometry.Coaxiality;
import org.lagwright.ifc.geometry.Shape;
import org.lagwright.ifc.geometry.ShapeEnd;
import org.lagwright.ifc.model.Effect;
import org.lagwright.ifc.model.Evidence;
import org.lagwright.ifc.model.ExistingInsulation;
import org.lagwright.ifc.model.Finding;
import org.lagwright.ifc.model.Form;
import org.lagwright.ifc.model.Kind;
import org.lagwright.ifc.model.Measured;
import org.lagwright.ifc.model.MepElement;
import org.lagwright.ifc.model.MepModel;
import org.lagwright.ifc.model.OpenEnd;
import org.lagwright.ifc.model.Point;
import org.lagwright.ifc.model.Port;
import org.lagwright.ifc.model.ReadFinding;
import org.lagwright.ifc.model.Section;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.index.strtree.STRtree;

/**
 * Finds what coverings lie around that found nothing in their own file: straight pieces of another
 * file on the same axis. Insulation is often modelled in a file of its own.
 */
final class CrossHosts {

  /** A covering along a part of a host. */
  private record Cover(MepElement covering, Coaxiality.Extent extent) {}

  private record Host(MepElement element, Shape shape) {}

  private final Joining joining;
  private final Map<MepElement, Shape> orphans = new LinkedHashMap<>();
  private final STRtree hosts = new STRtree();
  private final Map<Host, List<Cover>> covers = new LinkedHashMap<>();

  private CrossHosts(Joining joining) {
    this.joining = joining;
  }

  static void find(Joining joining) {
    CrossHosts hosts = new CrossHosts(joining);
    joining.read().forEach(hosts::collectOrphans);
    if (!hosts.orphans.isEmpty()) {
      joining.read().forEach(hosts::collectHosts);
      hosts.orphans.forEach(hosts::look);
      hosts.covers.forEach(hosts::insulate);
    }
  }

  /** Only coverings without a host keep their ends. */
  private void collectOrphans(MepModel model) {
    for (MepElement element : model.elements()) {
      boolean orphan = element.kind() == Kind.COVERING && element.openEnds().size() == 2;
      Measured<Section> outer = element.section();
      if (orphan && outer != null && joining.now(element).repeats() == null) {
        List<Point> ends = element.openEnds().stream().map(OpenEnd::positionM).toList();
        orphans.put(element, straight(ends.get(0), ends.get(1), outer));
      }
    }
  }

  private void collectHosts(MepModel model) {
    for (MepElement element : model.elements()) {
      Measured<Section> section = element.section();
      boolean straight = element.kind().isSegment() && element.form() == Form.STRAIGHT;
      if (straight && section != null && joining.now(element).repeats() == null) {
        List<Point> ends = ends(joining.now(element));
        if (ends.size() == 2) {
          Host host = new Host(element, straight(ends.get(0), ends.get(1), section));
          hosts.insert(envelope(host.shape, 0), host);
        }
      }
    }
  }

  /** Where a straight piece ends: at its joints, and where nothing is joined. */
  private static List<Point> ends(MepElement element) {
    return Stream.concat(
            element.openEnds().stream().map(OpenEnd::positionM),
            element.ports().stream()
                .filter(port -> !port.tap() && port.connectedTo() != null)
                .map(Port::positionM)
                .filter(Objects::nonNull))
        .distinct()
        .toList();
  }

  private static Shape straight(Point a, Point b, Measured<Section> section) {
    Axis axis = Axis.between(a, b);
    Point unit = axis.unit();
    Point back = new Point(-unit.x(), -unit.y(), -unit.z());
    return new Shape(
        Form.STRAIGHT,
        section,
        null,
        null,
        null,
        List.of(new ShapeEnd(a, back, section.value()), new ShapeEnd(b, unit, section.value())),
        List.of());
  }

  private static Envelope envelope(Shape shape, double marginM) {
    Box box = Box.around(shape.ends().stream().map(ShapeEnd::centreM).toList());
    Envelope envelope = new Envelope(box.low().x(), box.high().x(), box.low().y(), box.high().y());
    envelope.expandBy(marginM);
    return envelope;
  }

  private void look(MepElement orphan, Shape body) {
    List<Host> near = new ArrayList<>();
    hosts.query(envelope(body, Coaxiality.toleranceM(body)), found -> near.add((Host) found));
    near.sort(Comparator.comparing(host -> host.element.key()));
    for (Host host : near) {
      boolean otherFile = host.element.key().model() != orphan.key().model();
      Coaxiality.Extent extent = otherFile ? Coaxiality.extent(body, host.shape) : null;
      if (extent != null) {
        covers.computeIfAbsent(host, h -> new ArrayList<>()).add(new Cover(orphan, extent));
        joining.hosted(orphan.key());
      }
    }
  }

  private void insulate(Host host, List<Cover> around) {
    MepElement element = joining.now(host.element);
    Section bare = Objects.requireNonNull(element.section()).value();
    boolean lining = around.stream().allMatch(cover -> isLining(cover.covering, element, bare));
    List<Layers.Stack> stacks =
        Layers.stacks(around.stream().map(CrossHosts::layer).toList(), bare);
    MepElement first = around.get(0).covering;
    ExistingInsulation shown =
        new ExistingInsulation(
            stacks.get(0).thicknessM().orElse(null),
            around.stream()
                .flatMap(cover -> cover.covering.materials().stream())
                .findFirst()
                .orElse(null),
            Math.min(1, stacks.stream().mapToDouble(Layers.Stack::share).sum()),
            new Evidence(
                first.key().step(),
                first.ifcClass() + " in " + joining.file(first.key().model()),
                first.name()),
            around.stream().map(cover -> cover.covering.key()).toList());
    if (lining) {
      joining.change(element.toBuilder().lining(shown).build());
    } else if (element.existingInsulation() == null) {
      joining.change(element.toBuilder().existingInsulation(shown).build());
    } else {
      compare(element, element.existingInsulation(), shown);
    }
  }

  private static boolean isLining(MepElement covering, MepElement host, Section bare) {
    Section outer = Objects.requireNonNull(covering.section()).value();
    return host.kind() == Kind.DUCT_SEGMENT && outer.perimeterM() < bare.perimeterM();
  }

  private static Layers.Covering layer(Cover cover) {
    MepElement covering = cover.covering;
    Double statedM =
        Thicknesses.firstPossible(
                Thicknesses.stated(covering.properties(), PropertyNames.Role.COVERING_THICKNESS, 1),
                1)
            .map(p -> Thicknesses.metres(p, 1))
            .orElse(null);
    Section outer = Objects.requireNonNull(covering.section()).value();
    return new Layers.Covering(outer, statedM, cover.extent);
  }

  /** What its own file shows stays; another thickness here is a contradiction. */
  private void compare(MepElement element, ExistingInsulation own, ExistingInsulation other) {
    Optional<Double> ownM = Optional.ofNullable(own.thicknessM());
    @Nullable Double otherM = other.thicknessM();
    if (ownM.isPresent() && otherM != null && !Thicknesses.same(ownM.get(), otherM)) {
      joining.note(
          Finding.about(
              element.key(),
              ReadFinding.INSULATION_CONFLICT,
              Effect.NONE,
              Sizes.millimetres(ownM.get()) + " (" + own.evidence() + ")",
              Sizes.millimetres(otherM) + " (" + other.evidence() + ")"));
    }
  }
}
