package org.lagwright.takeoff.service;

import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import org.lagwright.ifc.model.Kind;
import org.lagwright.ifc.model.MepElement;
import org.lagwright.ifc.model.MepSystem;
import org.lagwright.ifc.model.Port;
import org.lagwright.ifc.model.Property;

/**
 * How warm the medium is by the model itself: properties that tell a service temperature, of the
 * element or its ports, temperatures in the names of systems, pressures in the names of steam.
 * Operating limits are never service temperatures.
 */
final class TemperatureReader {

  /** A cold pair without a unit must look like one: 6/12 and -10/-5 do, circuit 1/4 does not. */
  private static final VotePack.Range COLD_FLOW_WITHOUT_UNIT_C = new VotePack.Range(4, 18);

  /** Flow and return differ by this much, kelvin: common practice, no source. */
  private static final VotePack.Range SPREAD_K = new VotePack.Range(2, 60);

  /** The circulation of hot drinking water is colder than its flow by no more than this, kelvin. */
  private static final double CIRCULATION_K = 5;

  /**
   * Figures of one temperature, in sets, files or at ports, that differ by less were rounded,
   * kelvin: no source.
   */
  private static final double SAME_K = 0.5;

  /** A pair without a unit that is as hot is no size of a drain: common practice, no source. */
  private static final double HOT_WITHOUT_UNIT_C = 60;

  private static final String FROM_PORTS = "properties of its ports";
  private static final String HOT = "hot";
  private static final String STEAM = "steam";

  /** IFC types whose values are words. */
  private static final Set<String> TEXTS =
      Set.of("IFCTEXT", "IFCLABEL", "IFCIDENTIFIER", "IFCDESCRIPTIVEMEASURE");

  private enum Tells {
    FLOW,
    RETURN,
    MEDIUM
  }

  private final VotePack votes;
  private final Set<String> mediumProperties;
  private final Map<String, Tells> properties = new HashMap<>();
  private final Map<String, Optional<TemperatureText.Found>> remembered = new HashMap<>();

  TemperatureReader(VotePack votes) {
    this.votes = votes;
    this.mediumProperties = votes.mediumPropertyNames();
    VotePack.TemperatureProperties names = votes.temperatureProperties();
    names.ofFlow().forEach(name -> properties.put(key(name), Tells.FLOW));
    names.ofReturn().forEach(name -> properties.put(key(name), Tells.RETURN));
    names.ofMedium().forEach(name -> properties.put(key(name), Tells.MEDIUM));
  }

  /**
   * What the model tells of the medium's temperature, null where it is silent.
   *
   * @param told those properties of the element that may tell something
   * @param oneMedium false where several media may meet in the element
   */
  @Nullable ToldTemperature read(
      MepElement element, List<Property> told, Service service, boolean oneMedium) {
    if (!votes.temperatureRangesC().containsKey(service.kind())) {
      return null;
    }
    ToldTemperature byProperty = byProperty(told, service);
    if (byProperty != null) {
      return byProperty;
    }
    ToldTemperature byPorts = byPorts(element, service, oneMedium);
    if (byPorts != null && byPorts.believed()) {
      return byPorts;
    }
    ToldTemperature found = bySystem(element, service);
    if (found == null && service.medium().equals(STEAM)) {
      found = bySteamPressure(element, told, service);
    }
    // what no medium of this service has is shown where nothing else tells
    return found == null ? byPorts : found;
  }

  /**
   * Saturated steam by the pressure in what names its medium or system, else in the name of a
   * straight pipe; names of valves and types tell what they are fit for.
   */
  private @Nullable ToldTemperature bySteamPressure(
      MepElement element, List<Property> told, Service service) {
    for (Property property : told) {
      if (!property.quantity() && mediumProperties.contains(property.plainName())) {
        ToldTemperature found = steam(property.text(), "property " + property.name(), service);
        if (found != null) {
          return found;
        }
      }
    }
    for (MepSystem system : element.systems()) {
      for (String text : texts(system)) {
        ToldTemperature found = steam(text, VotePack.FROM_SYSTEM, service);
        if (found != null) {
          return found;
        }
      }
    }
    return element.kind() == Kind.PIPE_SEGMENT
        ? steam(element.name(), VotePack.FROM_NAME, service)
        : null;
  }

  private @Nullable ToldTemperature steam(String text, String from, Service service) {
    return SteamPressureText.find(text)
        .map(
            found ->
                new ToldTemperature(
                    found.saturatedC(),
                    from,
                    text,
                    found.text(),
                    found.gaugeAssumed(),
                    null,
                    range(service).holds(found.saturatedC())))
        .orElse(null);
  }

  private @Nullable ToldTemperature byProperty(List<Property> told, Service service) {
    for (Property property : told) {
      Tells tells = properties.get(key(property.plainName()));
      if (tells != null && !property.quantity() && fits(tells, service)) {
        Double celsius = number(property);
        if (celsius != null) {
          return new ToldTemperature(
              celsius,
              "property " + property.name(),
              property.text(),
              null,
              false,
              otherwise(property, celsius, told),
              range(service).holds(celsius));
        }
      }
    }
    return null;
  }

  /** Another set, or another file that holds the element, may say something else. */
  private static @Nullable String otherwise(Property used, double celsius, List<Property> told) {
    for (Property property : told) {
      boolean asked = !property.quantity() && property.name().equalsIgnoreCase(used.name());
      Double other = asked ? number(property) : null;
      if (other != null && Math.abs(other - celsius) > SAME_K) {
        return property.text();
      }
    }
    return null;
  }

  /** A return takes no flow temperature; where the direction is not told, the flow's counts. */
  private static boolean fits(Tells tells, Service service) {
    return switch (tells) {
      case MEDIUM -> true;
      case FLOW -> "flow".equals(service.direction()) || service.directionAssumed();
      case RETURN -> "return".equals(service.direction());
    };
  }

  /** The figures of a number that the reader could not turn into degC tell nothing. */
  private static @Nullable Double number(Property property) {
    boolean isText = property.measure() == null || TEXTS.contains(property.measure());
    if (property.number() != null || !isText) {
      return property.number();
    }
    return TemperatureText.number(property.text()).orElse(null);
  }

  /**
   * What all ports agree on that state a temperature, of figures nearly the same the more demanding
   * one; null where they do not agree. Where several media may meet, every port must state it.
   */
  private @Nullable ToldTemperature byPorts(
      MepElement element, Service service, boolean oneMedium) {
    double coldestC = Double.POSITIVE_INFINITY;
    double warmestC = Double.NEGATIVE_INFINITY;
    for (Port port : element.ports()) {
      Double celsius = port.temperatureC();
      if (celsius != null) {
        coldestC = Math.min(coldestC, celsius);
        warmestC = Math.max(warmestC, celsius);
      } else if (!oneMedium && port.isInFile()) {
        return null;
      }
    }
    if (coldestC > warmestC || warmestC - coldestC > SAME_K) {
      return null;
    }
    double celsius = service.kind().equals(HOT) ? warmestC : coldestC;
    return told(celsius, FROM_PORTS, Math.round(celsius * 10) / 10.0 + " degC", service);
  }

  private @Nullable ToldTemperature bySystem(MepElement element, Service service) {
    for (MepSystem system : element.systems()) {
      for (String text : texts(system)) {
        TemperatureText.Found found = find(text);
        if (found != null && readsLike(found, service)) {
          return told(pick(found, service), VotePack.FROM_SYSTEM, text, service);
        }
      }
    }
    return null;
  }

  private static List<String> texts(MepSystem system) {
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
    VotePack.Range range = range(service);
    boolean bothFit = range.holds(found.lower()) && range.holds(found.higher());
    boolean belowZero = found.lower() < 0 && found.higher() <= 0;
    boolean looksCold = belowZero || COLD_FLOW_WITHOUT_UNIT_C.holds(found.lower());
    return bothFit && (found.unitGiven() || !service.kind().equals("cold") || looksCold);
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

  private ToldTemperature told(double celsius, String from, String text, Service service) {
    boolean believed = range(service).holds(celsius);
    return new ToldTemperature(celsius, from, text, null, false, null, believed);
  }

  private VotePack.Range range(Service service) {
    VotePack.Range range = votes.temperatureRangesC().get(service.kind());
    if (range == null) {
      throw new IllegalStateException("no temperature range for " + service.kind());
    }
    return range;
  }

  private static String key(String name) {
    return name.toLowerCase(Locale.ROOT);
  }
}
