package org.lagwright.takeoff.service;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import org.lagwright.takeoff.pack.PackInfo;
import org.lagwright.takeoff.pack.PackReader;

/**
 * The services an estimator meets, in the order in which lines are listed.
 *
 * @param families groups of services told apart by direction only
 */
public record ServicePack(
    String id,
    String version,
    String source,
    String status,
    List<Family> families,
    List<Service> services) {

  public ServicePack {
    families = List.copyOf(families);
    services = List.copyOf(services);
    requireUnique(families.stream().map(Family::id).toList());
    requireUnique(services.stream().map(Service::id).toList());
    requireKnownReferences(families, services);
  }

  /**
   * A group of services.
   *
   * @param carrier pipe or duct
   * @param broader families whose words support this one instead of contradicting it
   */
  public record Family(String id, String name, String carrier, List<String> broader) {
    public Family {
      broader = List.copyOf(broader);
    }

    Carrier carriedIn() {
      return Carrier.of(carrier);
    }
  }

  /** The pack that belongs to the program. */
  public static ServicePack bundled() {
    return PackReader.readBundled(ServicePack.class, "services.yaml", ServicePack.class);
  }

  /** Names the pack in the results. */
  public PackInfo info() {
    return new PackInfo(id, version, source, status);
  }

  /** All service ids, in the order of the pack. */
  public Set<String> serviceIds() {
    return services.stream().map(Service::id).collect(Collectors.toUnmodifiableSet());
  }

  /** The service with this id, empty for {@code unknown} and others. */
  public Optional<Service> findService(String serviceId) {
    return services.stream().filter(s -> s.id().equals(serviceId)).findFirst();
  }

  /**
   * The service with this id.
   *
   * @throws IllegalArgumentException if there is none
   */
  public Service service(String serviceId) {
    return findService(serviceId)
        .orElseThrow(() -> new IllegalArgumentException("no service '" + serviceId + "'"));
  }

  /** Position of a service in the pack; after the last one for ids it does not hold. */
  public int order(String serviceId) {
    for (int i = 0; i < services.size(); i++) {
      if (services.get(i).id().equals(serviceId)) {
        return i;
      }
    }
    return services.size();
  }

  /** The row whose temperatures hold for a service: itself, or the one it is like. */
  public Service temperatureRow(Service service) {
    return service.like() == null ? service : service(service.like());
  }

  /**
   * What the user gave for a service in a map by service id: its own entry, else that of the
   * service it is like; null if none.
   */
  public <T> @Nullable T findGiven(Map<String, T> given, Service service) {
    T own = given.get(service.id());
    return own == null ? given.get(temperatureRow(service).id()) : own;
  }

  /** The family a vote speaks for, null where it tells a direction only. */
  public @Nullable String findFamilyOf(Vote vote) {
    String label = vote.serviceId();
    return findService(label)
        .map(Service::family)
        .orElse(families.stream().anyMatch(f -> f.id().equals(label)) ? label : null);
  }

  Family family(String familyId) {
    return families.stream()
        .filter(f -> f.id().equals(familyId))
        .findFirst()
        .orElseThrow(() -> new IllegalArgumentException("no family '" + familyId + "'"));
  }

  /** The service of a family in a direction; the undirected one where the direction is no help. */
  Service service(String familyId, @Nullable String direction) {
    List<Service> members = services.stream().filter(s -> s.family().equals(familyId)).toList();
    return members.stream()
        .filter(s -> direction != null && direction.equals(s.direction()))
        .findFirst()
        .orElseGet(
            () -> members.stream().filter(s -> s.direction() == null).findFirst().orElseThrow());
  }

  /** The directions in which a family has services of their own. */
  Set<String> directions(String familyId) {
    Set<String> directions = new HashSet<>();
    for (Service service : services) {
      if (service.family().equals(familyId) && service.direction() != null) {
        directions.add(service.direction());
      }
    }
    return directions;
  }

  /** True if a vote is for a family that the service has nothing to do with. */
  public boolean speaksAgainst(Vote vote, Service service) {
    String family = findFamilyOf(vote);
    return family != null && !related(family, service.family());
  }

  /** Families that only say which of several others is to be asked: domestic water, air. */
  Set<String> openFamilies() {
    Set<String> open = new HashSet<>();
    for (Family family : families) {
      for (String broader : family.broader()) {
        if (service(broader, null).scope().equals("ask")) {
          open.add(broader);
        }
      }
    }
    return open;
  }

  /** True if words of one support the other. */
  boolean related(String familyId, String other) {
    return familyId.equals(other)
        || family(familyId).broader().contains(other)
        || family(other).broader().contains(familyId);
  }

  private static void requireUnique(List<String> ids) {
    Set<String> seen = new HashSet<>();
    for (String id : ids) {
      if (!seen.add(id)) {
        throw new IllegalArgumentException("'" + id + "' stands twice.");
      }
    }
  }

  private static void requireKnownReferences(List<Family> families, List<Service> services) {
    Set<String> familyIds = families.stream().map(Family::id).collect(Collectors.toSet());
    Set<String> serviceIds = services.stream().map(Service::id).collect(Collectors.toSet());
    List<String> wrong = new ArrayList<>();
    for (Family family : families) {
      family.broader().stream().filter(b -> !familyIds.contains(b)).forEach(wrong::add);
      if (services.stream().noneMatch(s -> undirectedOf(s, family))) {
        wrong.add(family.id() + " (has no service without direction)");
      }
    }
    for (Service service : services) {
      if (!familyIds.contains(service.family())) {
        wrong.add(service.family());
      }
      if (service.like() != null && !serviceIds.contains(service.like())) {
        wrong.add(service.like());
      }
    }
    if (!wrong.isEmpty()) {
      throw new IllegalArgumentException("names that nothing in the pack carries: " + wrong + ".");
    }
  }

  private static boolean undirectedOf(Service service, Family family) {
    return service.family().equals(family.id()) && service.direction() == null;
  }
}
