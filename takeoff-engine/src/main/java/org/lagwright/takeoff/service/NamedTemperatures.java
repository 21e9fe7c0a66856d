package org.lagwright.takeoff.service;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import org.lagwright.ifc.model.MepElement;
import org.lagwright.ifc.model.MepSystem;
import org.lagwright.ifc.model.Property;
import org.lagwright.takeoff.words.PhraseBook;

/** Temperatures in what names the system or the medium of an element: {@code Heizung 70/55}. */
final class NamedTemperatures {

  /** A cold pair without a unit must look like one: 6/12 and -10/-5 do, circuit 1/4 does not. */
  private static final VotePack.Range COLD_FLOW_WITHOUT_UNIT_C = new VotePack.Range(4, 18);

  /**
   * Flow and return differ by this much, 150/70 by the most, kelvin: common practice, no source.
   */
  private static final VotePack.Range SPREAD_K = new VotePack.Range(2, 80);

  /** The circulation of hot drinking water is colder than its flow by no more than this, kelvin. */
  private static final double CIRCULATION_K = 5;

  /** Numbers of houses and axes are counted upwards, 25/27; a return is colder by more, kelvin. */
  private static final double UPWARDS_K = 5;

  /** The water of a plain heating is not as hot; 180/160 is in degF. Common practice, no source. */
  private static final double TOO_HOT_WITHOUT_UNIT_C = 120;

  private static final String PLAIN_HEATING = "heating";

  /** A pair without a unit that is as hot is no size of a drain: common practice, no source. */
  private static final double HOT_WITHOUT_UNIT_C = 60;

  private static final String HOT = "hot";
  private static final String COLD = "cold";

  private final VotePack votes;
  private final Words words;
  private final ServicePack services;
  private final Set<String> mediumProperties;
  private final Map<String, Optional<TemperatureText.Found>> remembered = new HashMap<>();

  NamedTemperatures(VotePack votes, Words words, ServicePack services) {
    this.votes = votes;
    this.words = words;
    this.services = services;
    this.mediumProperties = votes.mediumPropertyNames();
  }

  /**
   * What the names of systems and media tell, the most demanding first.
   *
   * @param oneMedium false where several media may meet in the element, and each name tells its own
   */
  List<ToldTemperature> of(
      MepElement element, List<Property> told, Service service, boolean oneMedium) {
    List<ToldTemperature> found = new ArrayList<>();
    for (MepSystem system : element.systems()) {
      for (String text : texts(system)) {
        add(found, text, VotePack.FROM_SYSTEM, service);
      }
    }
    for (Property property : told) {
      if (!property.quantity() && mediumProperties.contains(property.plainName())) {
        add(found, property.text(), "property " + property.name(), service);
      }
    }
    if (found.size() < 2) {
      return found;
    }
    found = withoutOthers(found, service, Carrier.of(element));
    Comparator<ToldTemperature> coldest = Comparator.comparingDouble(ToldTemperature::celsius);
    found.sort(service.kind().equals(HOT) ? coldest.reversed() : coldest);
    boolean oneOnly = oneMedium && !service.directionAssumed();
    ToldTemperature first = ToldTemperature.first(found);
    return oneOnly || first == null ? found : List.of(first);
  }

  /** Without what names only other services, unless all do. */
  private List<ToldTemperature> withoutOthers(
      List<ToldTemperature> found, Service service, Carrier carrier) {
    List<ToldTemperature> own = new ArrayList<>();
    for (ToldTemperature each : found) {
      if (mayName(each.text(), service, carrier)) {
        own.add(each);
      }
    }
    return own.isEmpty() ? found : own;
  }

  private boolean mayName(String text, Service service, Carrier carrier) {
    boolean another = false;
    for (PhraseBook.Match<Words.Meaning> match : words.read(text, carrier)) {
      for (String family : match.meaning().families()) {
        if (services.related(family, service.family())) {
          return true;
        }
        another = true;
      }
    }
    return !another;
  }

  private void add(List<ToldTemperature> found, String text, String from, Service service) {
    TemperatureText.Found told = find(text);
    if (told == null) {
      return;
    }
    TemperatureText.Found paired = told.paired();
    boolean asPair = paired.isPair() && circulates(service) && fits(paired, service);
    TemperatureText.Found read = asPair ? paired : told;
    if (readsLike(read, service)) {
      double celsius = pick(read, service);
      boolean believed = range(service).holds(celsius) && !isTooHot(read, service);
      found.add(new ToldTemperature(celsius, from, text, null, false, null, believed));
    }
  }

  private static boolean isTooHot(TemperatureText.Found found, Service service) {
    return service.family().equals(PLAIN_HEATING)
        && !found.unitGiven()
        && found.lower() >= TOO_HOT_WITHOUT_UNIT_C;
  }

  static List<String> texts(MepSystem system) {
    return system.longName() == null
        ? List.of(system.name())
        : List.of(system.name(), system.longName());
  }

  /** True if a name tells flow and return as this service has them: {@code Kaltwasser 6/12}. */
  boolean tellsPairOf(String text, Service service) {
    TemperatureText.Found found = find(text);
    return found != null
        && found.isPair()
        && readsLike(found, service)
        && fits(found, service)
        && (!service.kind().equals(HOT) || found.higher() - found.lower() > CIRCULATION_K);
  }

  /** True if a name tells a temperature that only hot services have. */
  boolean tellsHeat(String text) {
    TemperatureText.Found found = find(text);
    VotePack.Range hot = votes.temperatureRangesC().get(HOT);
    return found != null
        && hot != null
        && hot.holds(found.lower())
        && hot.holds(found.higher())
        && (found.unitGiven() || found.lower() >= HOT_WITHOUT_UNIT_C);
  }

  private TemperatureText.@Nullable Found find(String text) {
    return remembered.computeIfAbsent(text, TemperatureText::find).orElse(null);
  }

  private boolean readsLike(TemperatureText.Found found, Service service) {
    if (!found.isPair()) {
      return true;
    }
    if (!circulates(service) || !SPREAD_K.holds(found.higher() - found.lower())) {
      return false;
    }
    if (found.unitGiven()) {
      return true;
    }
    boolean belowZero = found.lower() < 0 && found.higher() <= 0;
    boolean looksCold = belowZero || COLD_FLOW_WITHOUT_UNIT_C.holds(found.lower());
    boolean counted =
        found.values().get(0) < found.values().get(1) && found.higher() - found.lower() < UPWARDS_K;
    if (service.kind().equals(COLD) && !counted && isHot(found)) {
      return true;
    }
    return fits(found, service) && (service.kind().equals(COLD) ? looksCold : !counted);
  }

  /** What cools cannot have it, which is worth telling: {@code Kühlwasser 27/32}. */
  private boolean isHot(TemperatureText.Found pair) {
    VotePack.Range hot = votes.temperatureRangesC().get(HOT);
    return hot != null && hot.holds(pair.lower()) && hot.holds(pair.higher());
  }

  /** True if both temperatures of a pair are such as the service has. */
  private boolean fits(TemperatureText.Found pair, Service service) {
    VotePack.Range range = range(service);
    return range.holds(pair.lower()) && range.holds(pair.higher());
  }

  private static boolean circulates(Service service) {
    return "flow".equals(service.direction())
        || "return".equals(service.direction())
        || service.directionAssumed();
  }

  private static double pick(TemperatureText.Found found, Service service) {
    boolean flow = !"return".equals(service.direction());
    boolean hot = service.kind().equals(HOT);
    return flow == hot ? found.higher() : found.lower();
  }

  /** Temperatures that a service of this kind may have. */
  VotePack.Range range(Service service) {
    VotePack.Range range = votes.temperatureRangesC().get(service.kind());
    if (range == null) {
      throw new IllegalStateException("no temperature range for " + service.kind());
    }
    return range;
  }
}
