package org.lagwright.ifc.extract;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.lagwright.ifc.geometry.ShapeEnd;
import org.lagwright.ifc.model.Effect;
import org.lagwright.ifc.model.Evidence;
import org.lagwright.ifc.model.Form;
import org.lagwright.ifc.model.How;
import org.lagwright.ifc.model.Kind;
import org.lagwright.ifc.model.Measured;
import org.lagwright.ifc.model.Point;
import org.lagwright.ifc.model.Port;
import org.lagwright.ifc.model.Property;
import org.lagwright.ifc.model.ReadFinding;
import org.lagwright.ifc.model.Section;

/**
 * Form, sizes, angle and radius of fittings, valves and inline items. Works after the segments,
 * whose sizes it takes over where a body is wider than the pipe it sits in.
 */
final class FittingMeasurer {

  private final Neighbours neighbours;
  private final Placeholders placeholders;
  private final ProfileReader profiles;
  private final double lengthUnitM;

  FittingMeasurer(
      Neighbours neighbours,
      Placeholders placeholders,
      ProfileReader profiles,
      double lengthUnitM) {
    this.neighbours = neighbours;
    this.profiles = profiles;
    this.placeholders = placeholders;
    this.lengthUnitM = lengthUnitM;
  }

  void measure(Draft draft) {
    List<Neighbours.Found> next =
        draft.joints.stream().flatMap(p -> neighbours.behind(draft, p).stream()).toList();
    draft.form = form(draft, next);
    size(draft, next);
    draft.lengthM = length(draft);
    if (draft.form == Form.BEND) {
      bend(draft);
    }
    if (draft.section == null) {
      draft.note(
          ReadFinding.GEOMETRY_ONLY_PARTLY_MEASURED,
          Effect.NONE,
          draft.shape.problems().isEmpty()
              ? "The body gives no size"
              : String.join("; ", draft.shape.problems()));
    }
  }

  private static Form form(Draft draft, List<Neighbours.Found> next) {
    Form shape = draft.shape.form();
    if (draft.form == Form.REDUCER || draft.form == Form.TRANSITION) {
      return reducerOrTransition(draft, next);
    }
    if (draft.form != Form.UNKNOWN) {
      return draft.form;
    }
    Optional<Form> named = formInProperties(draft);
    if (named.isPresent()) {
      return named.get();
    }
    if (shape != Form.UNKNOWN && shape != Form.STRAIGHT) {
      return shape;
    }
    return switch (draft.joints.size()) {
      case 1 -> Form.CAP;
      case 2 -> twoPorts(draft, next, shape);
      case 3 -> Form.TEE;
      case 4 -> Form.CROSS;
      default -> shape == Form.STRAIGHT ? Form.COUPLING : Form.UNKNOWN;
    };
  }

  /** What a property such as ProductType calls a fitting; apparatus does not become one. */
  private static Optional<Form> formInProperties(Draft draft) {
    return PropertyNames.of(draft.properties, PropertyNames.Role.FORM)
        .flatMap(p -> Words.form(p.text()).stream())
        .filter(form -> form.compareTo(Form.BEND) >= 0 && form.compareTo(Form.OFFSET) <= 0)
        .findFirst();
  }

  private static Form twoPorts(Draft draft, List<Neighbours.Found> next, Form shape) {
    if (next.size() == 2 && !Sizes.sameSection(next.get(0).section(), next.get(1).section())) {
      return Form.REDUCER;
    }
    Optional<Double> turn = turnDeg(draft);
    if (turn.isPresent()) {
      return turn.get() > 1 ? Form.BEND : Form.COUPLING;
    }
    return shape == Form.STRAIGHT ? Form.COUPLING : Form.UNKNOWN;
  }

  /**
   * A transition changes the shape of the section, a reducer only its size; pipes are all round.
   */
  private static Form reducerOrTransition(Draft draft, List<Neighbours.Found> next) {
    List<Section> ends =
        draft.shape.ends().size() == 2
            ? draft.shape.ends().stream().map(ShapeEnd::section).toList()
            : next.stream().map(Neighbours.Found::section).toList();
    if (draft.kind == Kind.PIPE_FITTING) {
      return Form.REDUCER;
    }
    if (ends.size() != 2) {
      return draft.form;
    }
    return ends.get(0).getClass() == ends.get(1).getClass() ? Form.REDUCER : Form.TRANSITION;
  }

  /** True for forms whose body need not have the size of the line it sits in. */
  static boolean isWiderThanItsPipe(Form form) {
    return switch (form) {
      case BEND, TEE, LATERAL, CROSS, WYE, REDUCER, TRANSITION, OFFSET -> false;
      default -> true;
    };
  }

  /** How many ends the element has: its form tells, else its ports and what touches it. */
  private static int ways(Draft draft) {
    return switch (draft.form) {
      case CAP -> 1;
      case BEND, REDUCER, TRANSITION, OFFSET -> 2;
      case TEE, LATERAL, WYE -> 3;
      case CROSS -> 4;
      default -> draft.joints.size();
    };
  }

  private void size(Draft draft, List<Neighbours.Found> next) {
    Options<Section> options = new Options<>(Sizes::sameSection);
    Measured<Section> drawn = draft.shape.section();
    boolean bodyIsTheSize = !isWiderThanItsPipe(draft.form);
    boolean allKnown = next.size() == ways(draft);
    boolean drawnFirst = bodyIsTheSize && drawn != null && (drawn.how() == How.SOLID || !allKnown);
    if (drawnFirst) {
      options.addAll(drawn);
    }
    next.stream()
        .max(Comparator.comparingDouble(n -> n.section().largestSideM()))
        .ifPresent(n -> options.add(n.section(), How.NEIGHBOUR, n.evidence()));
    if (!drawnFirst && drawn != null) {
      if (bodyIsTheSize || next.isEmpty()) {
        options.addAll(drawn);
      } else {
        options.rule(drawn.value(), drawn.how(), drawn.evidence(), "body, not the pipe in it");
      }
    }
    options.addAll(profiles.ofMaterial(draft.key.step()));
    texts(draft, options);
    draft.section = Sizes.withoutNoise(options.choose());
    draft.ends = ends(draft, next).stream().map(Sizes::withoutNoise).toList();
    nominal(draft);
  }

  private static void texts(Draft draft, Options<Section> options) {
    for (SizeTexts.Text text : SizeTexts.of(draft)) {
      largest(endsInText(draft, text.value()))
          .or(() -> sizeInText(draft, text.value()))
          .ifPresent(s -> options.add(s, How.TEXT, text.evidence()));
    }
  }

  private static Optional<Section> sizeInText(Draft draft, String text) {
    return draft.kind == Kind.DUCT_FITTING
        ? Sizes.sides(text).or(() -> Sizes.diameter(text))
        : Sizes.dn(text).flatMap(PipeSizes::forNominal).map(PipeSizes.Size::section);
  }

  private static List<Section> endsInText(Draft draft, String text) {
    return draft.kind == Kind.DUCT_FITTING
        ? Sizes.ductEnds(text)
        : Sizes.dnEnds(text).stream()
            .flatMap(dn -> PipeSizes.forNominal(dn).stream())
            .map(PipeSizes.Size::section)
            .toList();
  }

  private static Optional<Section> largest(List<Section> sections) {
    return sections.stream().max(Comparator.comparingDouble(Section::largestSideM));
  }

  private static void nominal(Draft draft) {
    if (draft.kind == Kind.DUCT_FITTING || draft.section == null) {
      return;
    }
    Section section = draft.section.value();
    draft.names.ofType().stream()
        .flatMap(t -> Sizes.dn(t).stream())
        .filter(
            dn -> section instanceof Section.Round r && PipeSizes.mayBe(dn, r.outsideDiameterM()))
        .findFirst()
        .ifPresent(dn -> draft.nominalSize = "DN" + dn);
  }

  /**
   * Sizes of the ends: drawn ones if there is one for each port, else those of the neighbours if
   * every port has one, else what a text says.
   */
  private static List<Section> ends(Draft draft, List<Neighbours.Found> next) {
    boolean allKnown = next.size() == ways(draft) && next.size() > 1;
    if (allKnown && isWiderThanItsPipe(draft.form)) {
      return runFirst(draft, next);
    }
    Measured<Section> drawn = draft.shape.section();
    boolean onePerPort = draft.shape.ends().size() == ways(draft);
    boolean drawnExactly = drawn != null && drawn.how() == How.SOLID && onePerPort;
    if (draft.shape.ends().size() > 1 && (drawnExactly || !allKnown)) {
      return draft.shape.ends().stream().map(ShapeEnd::section).toList();
    }
    return allKnown ? runFirst(draft, next) : endsByText(draft);
  }

  /** Sizes of the ends that a text gives, if they do not contradict the size that was chosen. */
  private static List<Section> endsByText(Draft draft) {
    Measured<Section> section = draft.section;
    return SizeTexts.of(draft).stream()
        .map(text -> endsInText(draft, text.value()))
        .filter(ends -> ends.size() > 1)
        .filter(
            ends ->
                section != null
                    && largest(ends).filter(e -> Sizes.sameSection(e, section.value())).isPresent())
        .findFirst()
        .orElse(List.of());
  }

  /** Run, run, branch: the two ports of a tee that are farthest apart are its run. */
  private static List<Section> runFirst(Draft draft, List<Neighbours.Found> next) {
    List<Section> sections = new ArrayList<>(next.stream().map(Neighbours.Found::section).toList());
    if (sections.size() != 3) {
      return sections;
    }
    int branch = 2;
    double farthestM = 0;
    for (int i = 0; i < 3; i++) {
      Point a = draft.joints.get((i + 1) % 3).positionM();
      Point b = draft.joints.get((i + 2) % 3).positionM();
      double apartM = a == null || b == null ? 0 : a.distanceM(b);
      if (apartM > farthestM) {
        farthestM = apartM;
        branch = i;
      }
    }
    sections.add(sections.remove(branch));
    return sections;
  }

  private static @Nullable Measured<Double> length(Draft draft) {
    Options<Double> options = new Options<>(Sizes::sameLength);
    options.addAll(draft.shape.lengthM());
    List<Port> joints = draft.joints;
    if (joints.size() == 2 && draft.form != Form.BEND) {
      Point a = joints.get(0).positionM();
      Point b = joints.get(1).positionM();
      if (a != null && b != null && a.distanceM(b) > 0) {
        boolean inFile = joints.stream().allMatch(Port::isInFile);
        Evidence evidence =
            new Evidence(
                inFile ? joints.get(0).step() : draft.key.step(),
                inFile ? "distance of ports" : "distance of touching ends",
                Sizes.metres(a.distanceM(b)) + " m");
        options.add(a.distanceM(b), inFile ? How.PORTS : How.NEIGHBOUR, evidence);
      }
    }
    return options.choose();
  }

  private void bend(Draft draft) {
    Options<Double> angle = new Options<>(Sizes::sameAngle);
    angle.addAll(draft.shape.angleDeg());
    turnDeg(draft)
        .filter(deg -> deg > 1)
        .ifPresent(
            deg ->
                angle.add(
                    deg, How.PORTS, new Evidence(draft.key.step(), "axes of ports", deg + "")));
    PropertyNames.of(draft.properties, PropertyNames.Role.ANGLE)
        .flatMap(p -> degrees(p).map(deg -> new Degrees(p, deg)).stream())
        .forEach(d -> angle.add(d.value, How.PROPERTY, d.property.evidence()));
    for (String text : draft.names.all()) {
      Sizes.angleDeg(text)
          .ifPresent(deg -> angle.add(deg, How.TEXT, new Evidence(draft.key.step(), "name", text)));
    }
    draft.angleDeg = angle.choose();
    draft.bendRadiusM = radius(draft);
    arc(draft);
  }

  private record Degrees(Property property, double value) {}

  /**
   * Angles typed as angles are in radians by now; bare numbers are degrees in every file we met.
   */
  private static Optional<Double> degrees(Property p) {
    Double number = p.number();
    boolean typed = p.measure() != null && p.measure().contains("PLANEANGLE");
    double deg =
        number == null
            ? PropertyNames.leadingNumber(p.text())
            : typed ? Math.toDegrees(number) : number;
    return deg > 0 && deg <= 180 ? Optional.of(deg) : Optional.empty();
  }

  private @Nullable Measured<Double> radius(Draft draft) {
    Options<Double> options = new Options<>(Sizes::sameLength);
    options.addAll(draft.shape.bendRadiusM());
    chordRadius(draft, options);
    PropertyNames.of(draft.properties, PropertyNames.Role.BEND_RADIUS)
        .filter(p -> !placeholders.contains(p))
        .forEach(
            p ->
                PropertyNames.lengthM(p, lengthUnitM)
                    .ifPresent(r -> options.add(r, How.PROPERTY, p.evidence())));
    return options.choose();
  }

  /** Radius from the distance of the ports and the angle: chord / (2 sin(angle / 2)). */
  private static void chordRadius(Draft draft, Options<Double> options) {
    if (draft.ports.size() != 2 || draft.angleDeg == null) {
      return;
    }
    Point a = draft.ports.get(0).positionM();
    Point b = draft.ports.get(1).positionM();
    if (a != null && b != null && a.distanceM(b) > 0) {
      double radiusM = a.distanceM(b) / (2 * Math.sin(Math.toRadians(draft.angleDeg.value()) / 2));
      Evidence evidence =
          new Evidence(
              draft.ports.get(0).step(),
              "chord of ports and angle",
              Sizes.metres(a.distanceM(b)) + " m");
      options.add(radiusM, How.PORTS, evidence);
    }
  }

  /** The centre line of a bend that only ports or properties describe. */
  private static void arc(Draft draft) {
    if (draft.lengthM == null && draft.angleDeg != null && draft.bendRadiusM != null) {
      double arcM = Math.toRadians(draft.angleDeg.value()) * draft.bendRadiusM.value();
      draft.lengthM =
          Measured.of(
              arcM,
              draft.bendRadiusM.how(),
              new Evidence(
                  draft.bendRadiusM.evidence().step(), "radius x angle", Sizes.metres(arcM)));
    }
  }

  /** The angle a two-port fitting turns through, from the axes of its ports; empty if unknown. */
  private static Optional<Double> turnDeg(Draft draft) {
    if (draft.ports.size() != 2) {
      return Optional.empty();
    }
    Point a = draft.ports.get(0).direction();
    Point b = draft.ports.get(1).direction();
    if (a == null || b == null) {
      return Optional.empty();
    }
    double cosine = -(a.x() * b.x() + a.y() * b.y() + a.z() * b.z());
    return Optional.of(Math.toDegrees(Math.acos(Math.max(-1, Math.min(1, cosine)))));
  }
}
