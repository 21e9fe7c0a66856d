package org.lagwright.takeoff.material;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import org.lagwright.takeoff.pack.PackException;
import org.lagwright.takeoff.pack.PackInfo;
import org.lagwright.takeoff.pack.PackReader;

/** The families of insulation that can be chosen. */
public record MaterialPack(
    String id, String version, String source, String status, List<MaterialFamily> families) {

  public MaterialPack {
    families = List.copyOf(families);
    Set<String> seen = new HashSet<>();
    for (MaterialFamily family : families) {
      if (!seen.add(family.id())) {
        throw new IllegalArgumentException("family '" + family.id() + "' is listed twice.");
      }
    }
  }

  /** The pack that belongs to the program. */
  public static MaterialPack bundled() {
    return PackReader.readBundled(MaterialPack.class, "materials.yaml", MaterialPack.class);
  }

  /**
   * The family with this id.
   *
   * @throws PackException if there is none; the message is for the user
   */
  public MaterialFamily family(String familyId) {
    return findFamily(familyId)
        .orElseThrow(
            () ->
                new PackException(
                    "unknown material '"
                        + familyId
                        + "'. Known: "
                        + families.stream()
                            .map(MaterialFamily::id)
                            .collect(Collectors.joining(", "))
                        + ". Correct 'materials' in the settings."));
  }

  /** The family with this id, if any. */
  public Optional<MaterialFamily> findFamily(String familyId) {
    return families.stream().filter(f -> f.id().equals(familyId)).findFirst();
  }

  /** The ids of all families. */
  public Set<String> ids() {
    return families.stream().map(MaterialFamily::id).collect(Collectors.toSet());
  }

  /** The same with these families, which replace those of equal id. */
  public MaterialPack with(List<MaterialFamily> others) {
    List<MaterialFamily> all = new ArrayList<>(families);
    for (MaterialFamily other : others) {
      all.removeIf(known -> known.id().equals(other.id()));
      all.add(other);
    }
    return new MaterialPack(id, version, source, status, all);
  }

  /** How the results name this pack. */
  public PackInfo info() {
    return new PackInfo(id, version, source, status);
  }
}
