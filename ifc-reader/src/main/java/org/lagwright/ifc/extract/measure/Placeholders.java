package org.lagwright.ifc.extract.measure;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.lagwright.ifc.extract.draft.Draft;
import org.lagwright.ifc.extract.measure.SeenValues.Name;
import org.lagwright.ifc.model.Effect;
import org.lagwright.ifc.model.Finding;
import org.lagwright.ifc.model.Property;
import org.lagwright.ifc.model.ReadFinding;

/**
 * Finds properties that carry one and the same value on elements of different measured size: what
 * an exporter writes when it knows nothing. They are no evidence for anything. Sizes in names of
 * types are looked at likewise.
 */
public final class Placeholders {

  /** Names of the placeholder properties. */
  private final Set<Name> names = new HashSet<>();

  /** Names of types that give a size that is none of their pieces. */
  private final Map<String, Integer> types;

  private final List<Finding> findings = new ArrayList<>();

  /** What was seen on all elements of the file. */
  private final SeenValues seen;

  private final int model;

  /**
   * @param seen what was seen on all elements
   * @param others what was seen in other files of the same exporter, which few pieces of this one
   *     may not show
   */
  public Placeholders(SeenValues seen, List<SeenValues> others, int model) {
    this.seen = seen;
    this.model = model;
    for (Map.Entry<Name, Sightings> each : seen.placeholders(others).entrySet()) {
      Name name = each.getKey();
      Sightings all = each.getValue();
      names.add(name);
      note(name.set() + "." + name.property(), all.first().text(), all.count());
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
  public SeenValues seen() {
    return seen;
  }

  /** True if what was seen in other files of the same exporter shows more of them. */
  public boolean areMoreBy(List<SeenValues> others) {
    Placeholders all = new Placeholders(seen, others, model);
    return all.names.size() > names.size() || all.types.size() > types.size();
  }

  boolean contains(Property property) {
    return !names.isEmpty() && names.contains(SeenValues.name(property));
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
