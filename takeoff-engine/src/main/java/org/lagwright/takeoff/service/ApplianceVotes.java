package org.lagwright.takeoff.service;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.lagwright.ifc.model.ElementKey;
import org.lagwright.ifc.model.Kind;
import org.lagwright.ifc.model.MepElement;

/**
 * What the appliances at the end of a pipe or duct tell about it: a radiator wants heating water,
 * whatever the pipe is called. A light vote, so that it decides only where nothing better tells.
 */
final class ApplianceVotes {

  /** How the classes of type objects end. */
  private static final String TYPE = "Type";

  private final Connections connections;
  private final ServicePack services;
  private final VotePack votes;
  private final Ballot ballot;

  ApplianceVotes(Connections connections, ServicePack services, VotePack votes, Ballot ballot) {
    this.connections = connections;
    this.services = services;
    this.votes = votes;
    this.ballot = ballot;
  }

  /** The hints of the appliances joined to an element; none for an appliance itself. */
  List<Hint> hintsFor(MepElement element, Map<ElementKey, List<Hint>> told) {
    List<Hint> hints = new ArrayList<>();
    if (isAppliance(element)) {
      return hints;
    }
    for (MepElement neighbour : connections.neighbours(element.key())) {
      String family = isAppliance(neighbour) ? familyOf(neighbour, element, told) : null;
      if (family != null && fits(family, element)) {
        String from = VotePack.FROM_APPLIANCE;
        String text = (neighbour.globalId() + " " + neighbour.name()).strip();
        hints.add(Hint.ofFamily(family, null, from, text, votes.weight(from)));
      }
    }
    return hints;
  }

  private boolean fits(String family, MepElement element) {
    return services.family(family).carriedIn().fits(Carrier.of(element));
  }

  private static boolean isAppliance(MepElement element) {
    return element.kind() == Kind.TERMINAL || element.kind() == Kind.EQUIPMENT;
  }

  /** IFC2X3 tells a radiator by its type only. */
  private static String classOf(MepElement appliance) {
    String ofType = appliance.typeClass();
    String ifcClass =
        ofType != null && ofType.endsWith(TYPE)
            ? ofType.substring(0, ofType.length() - TYPE.length())
            : appliance.ifcClass();
    return ifcClass.toUpperCase(Locale.ROOT);
  }

  /** The service that reaches it; null where several do, as hot and cold water reach a basin. */
  private @Nullable String familyOf(
      MepElement appliance, MepElement element, Map<ElementKey, List<Hint>> told) {
    String byClass = votes.appliances().get(classOf(appliance));
    if (byClass != null || appliance.kind() != Kind.TERMINAL) {
      return byClass;
    }
    Ballot.Outcome own = ballot.count(told.getOrDefault(appliance.key(), List.of()));
    boolean several = own.rival() != null && fits(own.rival().family(), element);
    return own.service() == null || several ? null : own.service().family();
  }
}
