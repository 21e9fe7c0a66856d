package org.lagwright.takeoff.service;

import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import org.lagwright.ifc.model.ElementKey;
import org.lagwright.ifc.model.Kind;
import org.lagwright.ifc.model.MepElement;
import org.lagwright.ifc.model.Property;
import org.lagwright.takeoff.pack.PackInfo;

/**
 * Finds the service of every element: votes of its systems, properties, names, ports and layers,
 * then what its neighbours tell. Coverings and things that are neither pipe nor duct get none.
 */
public final class ServiceClassifier {

  private final ServicePack services;
  private final WordPack wordPack = WordPack.bundled();
  private final VotePack votes = VotePack.bundled();
  private final Words words;
  private final List<UserMapping> mappings;
  private final Map<String, Double> temperaturesC;
  private final NamedTemperatures namedTemperatures;
  private final TemperatureReader temperatures;
  private final Set<String> tellingProperties;

  /**
   * @param mappings the user's mapping of names to services; the first that fits wins over all
   *     votes
   * @param temperaturesC the user's medium temperatures by service id, degC
   */
  public ServiceClassifier(
      ServicePack services, List<UserMapping> mappings, Map<String, Double> temperaturesC) {
    this.services = services;
    this.words = new Words(wordPack, services);
    this.mappings = List.copyOf(mappings);
    this.temperaturesC = Map.copyOf(temperaturesC);
    this.namedTemperatures = new NamedTemperatures(votes, words, services);
    this.temperatures = new TemperatureReader(votes, namedTemperatures);
    this.tellingProperties = votes.tellingPropertyNames();
  }

  /** The data packs it decides by. */
  public List<PackInfo> packs() {
    return List.of(
        services.info(),
        wordPack.info(),
        new PackInfo(votes.id(), votes.version(), votes.source(), votes.status()));
  }

  /** The service of every element that can carry one. */
  public Map<ElementKey, Classification> classify(List<MepElement> elements) {
    Connections connections = new Connections(elements, words);
    HintCollector collector =
        new HintCollector(
            words, services, votes, namedTemperatures, mappings, connections.portsTowards());
    Map<ElementKey, List<Property>> told = new HashMap<>();
    Map<ElementKey, List<Hint>> hints = new HashMap<>();
    for (MepElement element : elements) {
      if (element.kind() != Kind.COVERING && element.kind() != Kind.OTHER) {
        List<Property> properties = telling(element);
        told.put(element.key(), properties);
        hints.put(element.key(), collector.collect(element, properties));
      }
    }
    for (MepElement element : elements) {
      if (element.repeats() != null) {
        tellOf(element.repeats(), element.key(), told, hints);
      }
    }
    hints = new Circuits(services, temperatures).decided(elements, told, hints);
    Ballot ballot = new Ballot(services, votes);
    hints = withAppliances(elements, hints, connections, ballot);
    Map<ElementKey, Ballot.Outcome> outcomes =
        new NeighbourVotes(connections, services, ballot, votes.neighbourShare(), hints).carry();
    Map<ElementKey, Classification> classified = new LinkedHashMap<>();
    for (MepElement element : elements) {
      Ballot.Outcome outcome = outcomes.get(element.key());
      if (outcome != null) {
        List<Hint> cast = Objects.requireNonNull(hints.get(element.key()));
        boolean oneMedium = connections.passesOn(element.key());
        List<Property> properties = told.getOrDefault(element.key(), List.of());
        classified.put(
            element.key(), classification(element, properties, outcome, cast, oneMedium));
      }
    }
    return classified;
  }

  /** What another file says of an element that counts in this one is heard as its own file is. */
  private static void tellOf(
      ElementKey first,
      ElementKey repetition,
      Map<ElementKey, List<Property>> told,
      Map<ElementKey, List<Hint>> hints) {
    List<Hint> own = hints.get(first);
    List<Hint> other = hints.get(repetition);
    if (own != null && other != null) {
      boolean given = own.stream().anyMatch(hint -> hint.exact() != null);
      hints.put(
          first,
          Stream.concat(own.stream(), other.stream().filter(h -> !given || h.exact() == null))
              .distinct()
              .toList());
      told.put(
          first,
          Stream.concat(
                  told.getOrDefault(first, List.of()).stream(),
                  told.getOrDefault(repetition, List.of()).stream())
              .toList());
    }
  }

  /** The few properties that tell something; a model may read all of them anew when asked. */
  private List<Property> telling(MepElement element) {
    return element.properties().stream()
        .filter(p -> !p.quantity() && tellingProperties.contains(p.plainName()))
        .toList();
  }

  private Map<ElementKey, List<Hint>> withAppliances(
      List<MepElement> elements,
      Map<ElementKey, List<Hint>> told,
      Connections connections,
      Ballot ballot) {
    ApplianceVotes appliances = new ApplianceVotes(connections, services, votes, ballot);
    Map<ElementKey, List<Hint>> all = new HashMap<>();
    for (MepElement element : elements) {
      List<Hint> own = told.get(element.key());
      if (own != null) {
        List<Hint> added = appliances.hintsFor(element, told);
        all.put(
            element.key(),
            added.isEmpty() ? own : Stream.concat(own.stream(), added.stream()).toList());
      }
    }
    return all;
  }

  /** Where several media meet, hints for two services are no contradiction. */
  private Classification classification(
      MepElement element,
      List<Property> properties,
      Ballot.Outcome outcome,
      List<Hint> hints,
      boolean oneMedium) {
    Circuit circuit = Circuit.of(hints);
    List<Vote> cast = hints.stream().map(h -> h.toVote(services, circuit)).toList();
    Service service = outcome.service();
    if (service == null) {
      return new Classification(
          Classification.UNKNOWN, "unknown service", null, null, null, cast, null);
    }
    Service rival = oneMedium ? outcome.rival() : null;
    ToldTemperature told = temperatures.read(element, properties, service, oneMedium);
    return new Classification(
        service.id(),
        service.name(),
        colder(condensationC(service, told), rival == null ? null : condensationC(rival, null)),
        energyC(service, told),
        told,
        cast,
        rival == null ? null : rival.id());
  }

  private static @Nullable Double colder(@Nullable Double one, @Nullable Double other) {
    if (one == null || other == null) {
      return one == null ? other : one;
    }
    return Math.min(one, other);
  }

  private @Nullable Double condensationC(Service service, @Nullable ToldTemperature told) {
    Double better = givenOrTold(service, told);
    return better == null ? services.temperatureRow(service).condensationC() : better;
  }

  /**
   * A fluid with a temperature for the dew point alone is exempt, whatever temperature is given.
   */
  private @Nullable Double energyC(Service service, @Nullable ToldTemperature told) {
    Service row = services.temperatureRow(service);
    if (row.energyC() == null && row.condensationC() != null) {
      return null;
    }
    Double better = givenOrTold(service, told);
    return better == null ? row.energyC() : better;
  }

  /** The user's temperature before the model's; null where neither speaks. */
  private @Nullable Double givenOrTold(Service service, @Nullable ToldTemperature told) {
    Double given = services.findGiven(temperaturesC, service);
    if (given != null) {
      return given;
    }
    return told != null && told.believed() ? told.celsius() : null;
  }
}
