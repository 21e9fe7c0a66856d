package org.lagwright.ifc.extract.measure;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import org.lagwright.ifc.extract.draft.Draft;
import org.lagwright.ifc.extract.text.PipeSizes;
import org.lagwright.ifc.extract.text.PropertyNames;
import org.lagwright.ifc.extract.text.PropertyNames.Role;
import org.lagwright.ifc.extract.text.Tolerances;
import org.lagwright.ifc.model.Effect;
import org.lagwright.ifc.model.Finding;
import org.lagwright.ifc.model.Property;
import org.lagwright.ifc.model.ReadFinding;
import org.lagwright.ifc.model.Section;

/**
 * Finds properties that carry one and the same value on elements of different measured size: what
 * an exporter writes when it knows nothing. They are no evidence for anything. Sizes in names of
 * types are looked at likewise.
 */
public final class Placeholders {

  /** Fewer equal values may well be equal in truth. */
  private static final int AT_LEAST = 3;

  /** Names of the placeholder properties. */
  private final Set<Name> names = new HashSet<>();

  /** Names of types that give a size that is none of their pieces. */
  private final Map<String, Integer> types;

  private final List<Finding> findings = new ArrayList<>();

  /** What a property of these roles says should agree with what is drawn. */
  private static final List<Role> ASKED =
      List.of(
          Role.LENGTH,
          Role.OUTSIDE_DIAMETER,
          Role.DIAMETER,
          Role.INSIDE_DIAMETER,
          Role.WIDTH,
          Role.HEIGHT,
          Role.BEND_RADIUS,
          Role.ANGLE,
          Role.NOMINAL);

  /** All of them, as bits. */
  private static final int ROLES = bits(ASKED);

  private static int bits(List<Role> roles) {
    int bits = 0;
    for (Role role : roles) {
      bits |= PropertyNames.bit(role);
    }
    return bits;
  }

  /**
   * Share of elements on which a property must be wrong. A length is wrong on most where it is a
   * placeholder; a nominal size is vague and fits many by chance.
   */
  private static double wrongShare(Role role) {
    return role == Role.INSIDE_DIAMETER || role == Role.NOMINAL ? 0.05 : 0.5;
  }

  /** What is drawn of that, null if nothing is. */
  private static @Nullable Double drawn(Role role, Draft draft) {
    return switch (role) {
      case LENGTH -> drawnLength(draft);
      case WIDTH -> drawnWidth(draft);
      case HEIGHT -> drawnHeight(draft);
      case BEND_RADIUS -> drawnRadius(draft);
      case ANGLE -> drawnAngle(draft);
      default -> drawnDiameter(draft);
    };
  }

  private static boolean agree(Role role, double property, double drawn) {
    return switch (role) {
      case INSIDE_DIAMETER -> fitsInside(property, drawn);
      case ANGLE -> sameAngle(property, drawn);
      case NOMINAL -> nominal(property, drawn);
      default -> sameLength(property, drawn);
    };
  }

  /** What was seen on all elements of the file. */
  private final Seen seen;

  private final int model;

  /**
   * @param seen what was seen on all elements
   * @param others what was seen in other files of the same exporter, which few pieces of this one
   *     may not show
   */
  public Placeholders(Seen seen, List<Seen> others, int model) {
    this.seen = seen;
    this.model = model;
    for (int i = 0; i < ASKED.size(); i++) {
      for (Map.Entry<Name, Sightings> each : seen.byName.get(i).entrySet()) {
        Name name = each.getKey();
        Sightings own = each.getValue();
        Sightings all = isPlaceholder(own, ASKED.get(i)) ? own : own.with(name, i, others);
        if (isPlaceholder(all, ASKED.get(i))) {
          names.add(name);
          note(name.set + "." + name.property, all.first.text(), all.count);
        }
      }
    }
    types = seen.types.without(others);
    for (Map.Entry<String, Integer> type : types.entrySet()) {
      note("Size in the name of the type", type.getKey(), type.getValue());
    }
  }

  private void note(String what, String value, int count) {
    findings.add(
        Finding.ofFile(
            model,
            ReadFinding.PLACEHOLDER_VALUES,
            Effect.NONE,
            what,
            value,
            String.valueOf(count)));
  }

  /** What was seen in this file. */
  public Seen seen() {
    return seen;
  }

  /** True if what was seen in other files of the same exporter shows more of them. */
  public boolean areMoreBy(List<Seen> others) {
    Placeholders all = new Placeholders(seen, others, model);
    return all.names.size() > names.size() || all.types.size() > types.size();
  }

  /** What was seen of each question on some elements, by the names of properties. */
  public static final class Seen {
    private final List<Map<Name, Sightings>> byName = new ArrayList<>(ASKED.size());
    final TypeSizes types = new TypeSizes();

    /** Nothing was seen yet. */
    public Seen() {
      for (int i = 0; i < ASKED.size(); i++) {
        byName.add(new LinkedHashMap<>());
      }
    }

    /** Looks at one more element, as it was read. */
    public void look(Draft draft) {
      if (!draft.isSegment() && !draft.isLaggedItem()) {
        return;
      }
      types.look(draft);
      for (Property property : draft.properties()) {
        int roles = property.number() == null ? 0 : PropertyNames.roles(property.name()) & ROLES;
        for (int i = 0; roles != 0 && i < ASKED.size(); i++) {
          if ((roles & PropertyNames.bit(ASKED.get(i))) != 0) {
            look(draft, property, ASKED.get(i), byName.get(i));
          }
        }
      }
    }

    private static void look(
        Draft draft, Property property, Role role, Map<Name, Sightings> byName) {
      Double drawnM = drawn(role, draft);
      Double number = property.number();
      if (drawnM != null && number != null) {
        add(property, drawnM, agree(role, number, drawnM), byName);
      } else if (number != null && role == Role.OUTSIDE_DIAMETER) {
        Double nominalM = statedNominal(draft);
        if (nominalM != null) {
          add(property, nominalM, isOutsideOf(number, nominalM), byName);
        }
      } else if (number != null && role == Role.LENGTH && !property.quantity()) {
        Double lengthM = quantityOfLength(draft);
        if (lengthM != null) {
          add(property, lengthM, sameLength(number, lengthM), byName);
        }
      }
    }

    private static void add(
        Property property, double otherM, boolean agrees, Map<Name, Sightings> byName) {
      Name name = name(property);
      Sightings seen = byName.get(name);
      if (seen == null) {
        seen = new Sightings(property, otherM);
        byName.put(name, seen);
      }
      seen.add(property, otherM, agrees);
    }

    /** Adds what was seen on the elements that follow. */
    public void addAll(Seen later) {
      types.addAll(later.types);
      for (int i = 0; i < byName.size(); i++) {
        for (Map.Entry<Name, Sightings> each : later.byName.get(i).entrySet()) {
          Sightings seen = byName.get(i).putIfAbsent(each.getKey(), each.getValue());
          if (seen != null) {
            seen.addAll(each.getValue());
          }
        }
      }
    }
  }

  private static @Nullable Double drawnLength(Draft draft) {
    return draft.shape().lengthM() == null ? null : draft.shape().lengthM().value();
  }

  private static @Nullable Double drawnDiameter(Draft draft) {
    return draft.shape().section() != null
            && draft.shape().section().value() instanceof Section.Round r
        ? r.outsideDiameterM()
        : null;
  }

  private static @Nullable Double drawnWidth(Draft draft) {
    return draft.shape().section() != null
            && draft.shape().section().value() instanceof Section.Rectangular r
        ? r.widthM()
        : null;
  }

  private static @Nullable Double drawnHeight(Draft draft) {
    return draft.shape().section() != null
            && draft.shape().section().value() instanceof Section.Rectangular r
        ? r.heightM()
        : null;
  }

  private static @Nullable Double drawnRadius(Draft draft) {
    return draft.shape().bendRadiusM() == null ? null : draft.shape().bendRadiusM().value();
  }

  private static @Nullable Double drawnAngle(Draft draft) {
    return draft.shape().angleDeg() == null ? null : draft.shape().angleDeg().value();
  }

  /** Where no diameter is drawn, the nominal size of a pipe tells whether the outside may be so. */
  private static @Nullable Double statedNominal(Draft draft) {
    List<Property> nominals =
        draft.isDuct() ? List.of() : PropertyNames.listOf(draft.properties(), Role.NOMINAL);
    for (Property p : nominals) {
      Optional<Double> mm = NominalSizes.figureMm(p);
      if (mm.isPresent()) {
        return mm.get() / 1000;
      }
    }
    return null;
  }

  /** Where no length is drawn, what the quantities of the piece itself say. */
  private static @Nullable Double quantityOfLength(Draft draft) {
    for (Property p : PropertyNames.listOf(draft.properties(), Role.LENGTH)) {
      if (p.quantity() && p.number() != null && p.number() > 0) {
        return p.number();
      }
    }
    return null;
  }

  private static boolean isOutsideOf(double property, double nominalM) {
    return PipeSizes.mayBe((int) Math.round(nominalM * 1000), diameterM(property));
  }

  /** A diameter may come in metres or as a bare number of millimetres. */
  private static double diameterM(double property) {
    return property < 5 ? property : property / 1000;
  }

  private static boolean fitsInside(double property, double drawnM) {
    double boreM = diameterM(property);
    return boreM <= drawnM * 1.02 && boreM > 0.5 * drawnM;
  }

  /** Written in degrees or radians. */
  private static boolean sameAngle(double property, double drawnDeg) {
    return Tolerances.sameAngle(property, drawnDeg)
        || Tolerances.sameAngle(Math.toDegrees(property), drawnDeg);
  }

  private static boolean sameLength(double property, double drawnM) {
    return Math.abs(property - drawnM) <= 0.02 * drawnM;
  }

  /** A nominal size may come in metres or as a bare number of millimetres. */
  private static boolean nominal(double property, double drawnM) {
    return PipeSizes.mayBe((int) Math.round(property < 5 ? property * 1000 : property), drawnM);
  }

  /** What was seen of one property, on all elements. */
  private static final class Sightings {
    final Property first;
    final long firstDrawnMm;
    int count;
    int wrong;
    boolean sameValue = true;
    boolean sameSize = true;

    Sightings(Property first, double drawnM) {
      this.first = first;
      this.firstDrawnMm = Math.round(drawnM * 1000);
    }

    private Sightings(Sightings same) {
      first = same.first;
      firstDrawnMm = same.firstDrawnMm;
      addAll(same);
    }

    void add(Property property, double drawnM, boolean agrees) {
      count++;
      wrong += agrees ? 0 : 1;
      sameValue &= Objects.equals(first.number(), property.number());
      sameSize &= firstDrawnMm == Math.round(drawnM * 1000);
    }

    /** The same with what was seen of a question in other files. */
    Sightings with(Name name, int question, List<Seen> others) {
      Sightings all = this;
      for (Seen other : others) {
        Sightings more = other.byName.get(question).get(name);
        if (more != null) {
          all = all == this ? new Sightings(this) : all;
          all.addAll(more);
        }
      }
      return all;
    }

    void addAll(Sightings later) {
      count += later.count;
      wrong += later.wrong;
      sameValue &= later.sameValue && Objects.equals(first.number(), later.first.number());
      sameSize &= later.sameSize && firstDrawnMm == later.firstDrawnMm;
    }
  }

  private static boolean isPlaceholder(Sightings seen, Role role) {
    boolean oftenWrong = seen.wrong > wrongShare(role) * seen.count;
    return seen.count >= AT_LEAST && seen.sameValue && !seen.sameSize && oftenWrong;
  }

  private record Name(String set, String property) {
    /** Spelled out: the compiler's own is put together when first asked, which takes long. */
    @Override
    public boolean equals(@Nullable Object other) {
      return other instanceof Name o && set.equals(o.set) && property.equals(o.property);
    }

    @Override
    public int hashCode() {
      return set.hashCode() * 31 + property.hashCode();
    }
  }

  private static Name name(Property property) {
    return new Name(property.set(), property.name());
  }

  boolean contains(Property property) {
    return !names.isEmpty() && names.contains(name(property));
  }

  /** True for the name of such a type, or a name of a piece that holds it. */
  boolean contains(Draft draft, String text) {
    for (String type : types.isEmpty() ? List.<String>of() : draft.names().ofType()) {
      if (types.containsKey(type) && text.contains(type)) {
        return true;
      }
    }
    return false;
  }

  /** What is told of them. */
  public List<Finding> findings() {
    return List.copyOf(findings);
  }
}
