package org.lagwright.takeoff.service;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import org.lagwright.ifc.model.ElementKey;
import org.lagwright.ifc.model.Kind;
import org.lagwright.ifc.model.MepElement;
import org.lagwright.ifc.model.MepSystem;
import org.lagwright.ifc.model.Port;
import org.lagwright.ifc.model.Property;
import org.lagwright.takeoff.words.PhraseBook;

/** Gathers what an element itself, its systems and its ports say about its service. */
final class HintCollector {

  private static final String PROPERTY = "property ";

  private final Words words;
  private final ServicePack services;
  private final VotePack votes;
  private final NamedTemperatures temperatures;
  private final Set<String> mediumProperties;
  private final List<UserMapping> mappings;
  private final Map<ElementKey, List<Port>> portsTowards;

  /**
   * @param portsTowards ports of other elements that are connected to an element
   */
  HintCollector(
      Words words,
      ServicePack services,
      VotePack votes,
      NamedTemperatures temperatures,
      List<UserMapping> mappings,
      Map<ElementKey, List<Port>> portsTowards) {
    this.words = words;
    this.services = services;
    this.votes = votes;
    this.temperatures = temperatures;
    this.mediumProperties = votes.mediumPropertyNames();
    this.mappings = mappings;
    this.portsTowards = portsTowards;
  }

  /**
   * The hints of an element.
   *
   * @param properties those of its properties that may tell something
   */
  List<Hint> collect(MepElement element, List<Property> properties) {
    List<Hint> hints = new ArrayList<>();
    Carrier carrier = Carrier.of(element);
    addMapping(hints, element);
    addMedium(hints, element, properties, carrier);
    addSystems(hints, element, carrier);
    addText(hints, element.name(), VotePack.FROM_NAME, carrier);
    addText(hints, element.typeName(), VotePack.FROM_TYPE_NAME, carrier);
    addText(hints, element.objectType(), VotePack.FROM_OBJECT_TYPE, carrier);
    for (Port port : element.ports()) {
      addSystemType(hints, port.systemType(), VotePack.FROM_PORT, carrier);
    }
    for (Port port : portsTowards.getOrDefault(element.key(), List.of())) {
      addSystemType(hints, port.systemType(), VotePack.FROM_PORT, carrier);
    }
    element.layers().forEach(layer -> addText(hints, layer, VotePack.FROM_LAYER, carrier));
    return withoutAntifreeze(hints.stream().distinct().toList());
  }

  private void addMapping(List<Hint> hints, MepElement element) {
    for (UserMapping mapping : mappings) {
      String text = mapping.findIn(element).orElse(null);
      if (text != null) {
        double weight = votes.weight(VotePack.FROM_SETTINGS);
        hints.add(Hint.ofSettings(mapping.service(), mapping.inWords(text), weight));
        return;
      }
    }
  }

  private void addMedium(
      List<Hint> hints, MepElement element, List<Property> properties, Carrier carrier) {
    for (Property property : properties) {
      if (!property.quantity()
          && mediumProperties.contains(property.plainName())
          && !isOfConnectors(element, property, carrier)) {
        String from = PROPERTY + property.name();
        addText(hints, property.text(), from, votes.weight(VotePack.FROM_MEDIUM), carrier);
      }
    }
  }

  /** True for a list of the systems at all connectors of an apparatus, which is of none of them. */
  private boolean isOfConnectors(MepElement element, Property property, Carrier carrier) {
    if (element.kind() != Kind.EQUIPMENT) {
      return false;
    }
    Set<String> families = new HashSet<>();
    for (PhraseBook.Match<Words.Meaning> match : words.read(property.text(), carrier)) {
      String family = match.meaning().family();
      if (family != null) {
        families.add(family);
      }
    }
    return families.size() > 1;
  }

  private void addSystems(List<Hint> hints, MepElement element, Carrier carrier) {
    for (MepSystem system : element.systems()) {
      addText(hints, system.name(), VotePack.FROM_SYSTEM, carrier);
      addText(hints, system.longName(), VotePack.FROM_SYSTEM, carrier);
      addText(hints, system.objectType(), VotePack.FROM_SYSTEM, carrier);
      addSystemType(hints, system.predefinedType(), VotePack.FROM_SYSTEM_TYPE, carrier);
    }
  }

  private void addText(List<Hint> hints, @Nullable String text, String from, Carrier carrier) {
    addText(hints, text, from, votes.weight(from), carrier);
  }

  private void addText(
      List<Hint> hints, @Nullable String text, String from, double weight, Carrier carrier) {
    if (text == null || text.isBlank()) {
      return;
    }
    for (PhraseBook.Match<Words.Meaning> match : words.read(text, carrier)) {
      Words.Meaning meaning = match.meaning();
      if (namesMedium(from)) {
        meaning = byTemperature(meaning, text);
      }
      hints.add(Hint.ofWords(meaning, from, match.text(), weight));
    }
  }

  /** Names of parts and types tell what they are fit for, not what flows in them. */
  private static boolean namesMedium(String from) {
    return from.equals(VotePack.FROM_SYSTEM) || from.startsWith(PROPERTY);
  }

  /** The temperatures beside its words tell a circuit or heat as well as further words do. */
  private Words.Meaning byTemperature(Words.Meaning meaning, String text) {
    Otherwise otherwise = meaning.otherwise();
    String circuit =
        otherwise.withDirection() == null ? otherwise.inCircuit() : otherwise.withDirection();
    if (circuit != null && temperatures.tellsPairOf(text, services.service(circuit, null))) {
      return meaning.as(circuit);
    }
    String hot = meaning.withHeat();
    return hot != null && temperatures.tellsHeat(text) ? meaning.as(hot) : meaning;
  }

  /** Glycol in a hot service is what keeps it from freezing, and tells no service of its own. */
  private List<Hint> withoutAntifreeze(List<Hint> hints) {
    for (Hint hint : hints) {
      if (hint.notBeside() != null && allOthersAre(hint.notBeside(), hints)) {
        return hints.stream().map(h -> h.notBeside() == null ? h : h.weightless()).toList();
      }
    }
    return hints;
  }

  /** True if further words name a service, and only services of this kind. */
  private boolean allOthersAre(String kind, List<Hint> hints) {
    boolean any = false;
    for (Hint hint : hints) {
      if (hint.family() != null && hint.notBeside() == null) {
        if (!services.service(hint.family(), null).kind().equals(kind)) {
          return false;
        }
        any = true;
      }
    }
    return any;
  }

  private void addSystemType(
      List<Hint> hints, @Nullable String type, String from, Carrier carrier) {
    String family = type == null ? null : votes.systemTypes().get(type.toUpperCase(Locale.ROOT));
    if (type != null && family != null && services.family(family).carriedIn().fits(carrier)) {
      hints.add(Hint.ofFamily(family, null, from, type, votes.weight(from)));
    }
  }
}
