package org.lagwright.ifc.extract.property;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import org.lagwright.ifc.extract.text.InWords;
import org.lagwright.ifc.model.Effect;
import org.lagwright.ifc.model.Finding;
import org.lagwright.ifc.model.Property;
import org.lagwright.ifc.model.ReadFinding;

/** Properties that stand twice in one set with different values; one finding for each name. */
public final class RepeatedProperties {

  private record InSet(long set, boolean fromType, Property second) {}

  private final Set<InSet> seen = new HashSet<>();
  private final Map<String, List<PropertyReader.Repeated>> byName = new LinkedHashMap<>();

  /** Adds what reading the properties of one element brought up; a shared set counts once. */
  public void addAll(List<PropertyReader.Repeated> repeated) {
    for (PropertyReader.Repeated each : repeated) {
      if (seen.add(new InSet(each.set(), each.fromType(), each.second()))) {
        Property first = each.first();
        String name = (first.set() + "\n" + first.name()).toLowerCase(Locale.ROOT);
        List<PropertyReader.Repeated> before = byName.get(name);
        if (before == null) {
          before = new ArrayList<>();
          byName.put(name, before);
        }
        before.add(each);
      }
    }
  }

  /** What is told of them, for the model of this number. */
  public List<Finding> findings(int model) {
    List<Finding> findings = new ArrayList<>(byName.size());
    for (List<PropertyReader.Repeated> repeated : byName.values()) {
      findings.add(finding(model, repeated));
    }
    return findings;
  }

  private static Finding finding(int model, List<PropertyReader.Repeated> repeated) {
    PropertyReader.Repeated first = repeated.get(0);
    return Finding.ofFile(
        model,
        ReadFinding.DUPLICATE_PROPERTY,
        Effect.NONE,
        first.first().set() + "." + first.first().name(),
        InWords.quoted(first.first().text()),
        InWords.quoted(first.second().text()),
        String.valueOf(repeated.size()));
  }
}
