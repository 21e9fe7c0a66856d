package org.lagwright.takeoff.readiness;

import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.lagwright.takeoff.pack.PackInfo;
import org.lagwright.takeoff.pack.PackReader;

/**
 * What models must carry.
 *
 * @param classes IFC class names in upper case by label of a kind
 */
public record RequirementPack(
    String id,
    String version,
    String source,
    String status,
    Map<String, List<String>> classes,
    List<Requirement> requirements) {

  public RequirementPack {
    classes = new TreeMap<>(classes);
    requirements = List.copyOf(requirements);
    for (Requirement requirement : requirements) {
      if (!classes.keySet().containsAll(requirement.kinds())) {
        throw new IllegalArgumentException("classes lacks a kind of " + requirement.id() + ".");
      }
    }
  }

  /** The pack that belongs to the program. */
  public static RequirementPack bundled() {
    return PackReader.readBundled(
        RequirementPack.class, "requirements.yaml", RequirementPack.class);
  }

  /** Names the pack in the results. */
  public PackInfo info() {
    return new PackInfo(id, version, source, status);
  }

  /** Class names in upper case that something asked applies to. */
  public List<String> entities(Asked asked) {
    return asked.kinds().isEmpty()
        ? asked.entities()
        : asked.kinds().stream()
            .flatMap(kind -> classes.getOrDefault(kind, List.of()).stream())
            .toList();
  }
}
