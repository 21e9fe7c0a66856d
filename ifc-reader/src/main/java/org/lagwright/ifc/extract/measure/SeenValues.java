package org.lagwright.ifc.extract.measure;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.lagwright.ifc.extract.draft.Draft;
import org.lagwright.ifc.extract.text.PropertyNames;
import org.lagwright.ifc.extract.text.PropertyNames.Role;
import org.lagwright.ifc.model.Property;

/**
 * What properties of the same name say on the elements of a file, beside what is drawn of them: by
 * that {@link Placeholders} are known.
 */
public final class SeenValues {

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

  private final List<Map<Name, Sightings>> byName = new ArrayList<>(ASKED.size());
  final TypeSizes types = new TypeSizes();

  /** Nothing was seen yet. */
  public SeenValues() {
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

  private static void look(Draft draft, Property property, Role role, Map<Name, Sightings> byName) {
    Counterpart drawn = Counterpart.of(role, property, draft);
    if (drawn != null) {
      Name name = name(property);
      Sightings seen = byName.get(name);
      if (seen == null) {
        seen = new Sightings(property, drawn);
        byName.put(name, seen);
      }
      seen.add(property, drawn);
    }
  }

  /** Adds what was seen on the elements that follow. */
  public void addAll(SeenValues later) {
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

  /** The names of properties that are placeholders, with what was seen of them. */
  Map<Name, Sightings> placeholders(List<SeenValues> others) {
    Map<Name, Sightings> found = new LinkedHashMap<>();
    for (int i = 0; i < ASKED.size(); i++) {
      for (Map.Entry<Name, Sightings> each : byName.get(i).entrySet()) {
        Name name = each.getKey();
        Sightings own = each.getValue();
        Role role = ASKED.get(i);
        Sightings all = own.showPlaceholder(role) ? own : with(own, name, i, others);
        if (all.showPlaceholder(role)) {
          found.put(name, all);
        }
      }
    }
    return found;
  }

  /** The same with what was seen of a question in other files. */
  private static Sightings with(Sightings own, Name name, int question, List<SeenValues> others) {
    Sightings all = own;
    for (SeenValues other : others) {
      Sightings more = other.byName.get(question).get(name);
      if (more != null) {
        all = all == own ? new Sightings(own) : all;
        all.addAll(more);
      }
    }
    return all;
  }

  /** Names a property among those of its element. */
  record Name(String set, String property) {
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

  static Name name(Property property) {
    return new Name(property.set(), property.name());
  }
}
