package org.lagwright.takeoff.service;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import org.lagwright.ifc.model.Kind;
import org.lagwright.ifc.model.MepElement;
import org.lagwright.ifc.model.MepSystem;
import org.lagwright.ifc.model.Port;
import org.lagwright.ifc.model.Property;

/**
 * How warm the medium is by the model itself: properties that tell a service temperature, of the
 * element, its ports or its system, temperatures in what names its system or medium, pressures in
 * the names of steam. The first of them that the service can have counts, and another one is kept
 * beside it. Operating limits are never service temperatures.
 */
final class TemperatureReader {

  /**
   * Figures of one temperature, in sets, files or at ports, that differ by less were rounded,
   * kelvin: no source.
   */
  private static final double SAME_K = 0.5;

  /**
   * Programs write the temperature of a room where nobody gave one; a medium of that temperature
   * cools no room. Common practice, no source.
   */
  private static final VotePack.Range ROOM_C = new VotePack.Range(20, 25);

  /** Nothing in a building is colder; absolute zero stands for a figure that nobody gave. */
  private static final double COLDEST_C = -200;

  /** Rounding of a zero that was turned from one scale into another, kelvin. */
  private static final double ZERO_K = 0.01;

  /** Steam colder than saturated by less has rounded figures, kelvin: no source. */
  private static final double WET_K = 5;

  private static final String PROPERTY = "property ";
  private static final String OF_SYSTEM = "property of its system ";
  private static final String FROM_PORTS = "properties of its ports";
  private static final String HOT = "hot";
  private static final String COLD = "cold";
  private static final String WATER = "water";
  private static final String STEAM = "steam";

  /** IFC types whose values are words. */
  private static final Set<String> TEXTS =
      Set.of("IFCTEXT", "IFCLABEL", "IFCIDENTIFIER", "IFCDESCRIPTIVEMEASURE");

  /** Saturated steam, and what it is at least, degC. */
  private record Steam(ToldTemperature told, double coldestC) {}

  private enum Tells {
    FLOW,
    RETURN,
    MEDIUM
  }

  private final VotePack votes;
  private final Set<String> mediumProperties;
  private final Map<String, Tells> properties = new HashMap<>();
  private final NamedTemperatures names;

  TemperatureReader(VotePack votes, NamedTemperatures names) {
    this.votes = votes;
    this.names = names;
    this.mediumProperties = votes.mediumPropertyNames();
    VotePack.TemperatureProperties telling = votes.temperatureProperties();
    telling.ofFlow().forEach(name -> properties.put(key(name), Tells.FLOW));
    telling.ofReturn().forEach(name -> properties.put(key(name), Tells.RETURN));
    telling.ofMedium().forEach(name -> properties.put(key(name), Tells.MEDIUM));
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
    List<ToldTemperature> all = new ArrayList<>(byProperties(told, PROPERTY, service, false));
    ToldTemperature byPorts = byPorts(element, service, oneMedium);
    if (byPorts != null) {
      all.add(byPorts);
    }
    all.addAll(bySystems(element, service, oneMedium));
    all.addAll(names.of(element, told, service, oneMedium));
    if (mayFreeze(service)) {
      all.addAll(byProperties(told, PROPERTY, service, true));
    }
    ToldTemperature chosen = ToldTemperature.first(all);
    boolean isSteam = service.medium().equals(STEAM);
    Steam steam = isSteam ? bySteamPressure(element, told, service) : null;
    if (steam != null) {
      if (chosen == null || !chosen.believed()) {
        chosen = steam.told;
      } else if (chosen.celsius() < steam.coldestC - WET_K) {
        return chosen.beside(steam.told);
      }
    }
    return chosen == null ? null : withAnother(chosen, all);
  }

  /** True for what is warmer than anything that cools. */
  boolean isWarm(double celsius) {
    VotePack.Range cold = votes.temperatureRangesC().get(COLD);
    return cold != null && celsius > cold.to();
  }

  private static ToldTemperature withAnother(ToldTemperature chosen, List<ToldTemperature> all) {
    for (ToldTemperature each : all) {
      if (Math.abs(each.celsius() - chosen.celsius()) > SAME_K) {
        return chosen.beside(each);
      }
    }
    return chosen;
  }

  /**
   * Saturated steam by the pressure in what names its medium or system, else in the name of a
   * straight pipe; names of valves and types tell what they are fit for.
   */
  private @Nullable Steam bySteamPressure(
      MepElement element, List<Property> told, Service service) {
    for (Property property : told) {
      if (!property.quantity() && mediumProperties.contains(property.plainName())) {
        Steam found = steam(property.text(), PROPERTY + property.name(), service);
        if (found != null) {
          return found;
        }
      }
    }
    for (MepSystem system : element.systems()) {
      for (String text : NamedTemperatures.texts(system)) {
        Steam found = steam(text, VotePack.FROM_SYSTEM, service);
        if (found != null) {
          return found;
        }
      }
    }
    return element.kind() == Kind.PIPE_SEGMENT
        ? steam(element.name(), VotePack.FROM_NAME, service)
        : null;
  }

  private @Nullable Steam steam(String text, String from, Service service) {
    return SteamPressureText.find(text)
        .map(
            found ->
                new Steam(
                    new ToldTemperature(
                        found.saturatedC(),
                        from,
                        text,
                        found.text(),
                        found.gaugeAssumed(),
                        null,
                        names.range(service).holds(found.saturatedC())),
                    found.coldestC()))
        .orElse(null);
  }

  /**
   * What properties of the element or its system tell.
   *
   * @param from whose they are, in words
   * @param zero true for zeros alone, which stand for a figure that nobody gave unless the medium
   *     may be as cold and nothing else tells; false for all others
   */
  private List<ToldTemperature> byProperties(
      List<Property> told, String from, Service service, boolean zero) {
    List<ToldTemperature> found = new ArrayList<>();
    for (Property property : told) {
      Tells tells = properties.get(key(property.plainName()));
      boolean asked = tells != null && !property.quantity() && fits(tells, service);
      Double celsius = asked ? number(property) : null;
      if (celsius != null && celsius > COLDEST_C && isZero(celsius, property.text()) == zero) {
        found.add(figure(celsius, from + property.name(), property.text(), service));
      }
    }
    return found;
  }

  /** What its systems state; of several, where several media may meet, nobody knows which. */
  private List<ToldTemperature> bySystems(MepElement element, Service service, boolean oneMedium) {
    if (!oneMedium && element.systems().size() > 1) {
      return List.of();
    }
    List<ToldTemperature> found = new ArrayList<>();
    for (MepSystem system : element.systems()) {
      found.addAll(byProperties(system.properties(), OF_SYSTEM, service, false));
    }
    return found;
  }

  private static boolean isZero(double celsius, String text) {
    return Math.abs(celsius) < ZERO_K
        || TemperatureText.number(text).filter(figure -> figure == 0).isPresent();
  }

  private static boolean mayFreeze(Service service) {
    return service.kind().equals(COLD) && !service.medium().equals(WATER);
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
    return figure(celsius, FROM_PORTS, Math.round(celsius * 10) / 10.0 + " degC", service);
  }

  /** A figure of a property, which stands there whether somebody gave one or not. */
  private ToldTemperature figure(double celsius, String from, String text, Service service) {
    boolean asRoom = cools(service) && ROOM_C.holds(celsius);
    boolean believed = names.range(service).holds(celsius) && !asRoom;
    return new ToldTemperature(celsius, from, text, null, false, null, believed);
  }

  /** Drinking water and drains have no direction, and may be as warm as the room. */
  private static boolean cools(Service service) {
    return service.kind().equals(COLD)
        && (service.direction() != null || service.directionAssumed());
  }

  private static String key(String name) {
    return name.toLowerCase(Locale.ROOT);
  }
}
