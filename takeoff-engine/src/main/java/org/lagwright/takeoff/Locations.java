package org.lagwright.takeoff;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.lagwright.ifc.model.MepElement;
import org.lagwright.ifc.model.MepSystem;
import org.lagwright.ifc.model.Place;
import org.lagwright.takeoff.settings.Settings;
import org.lagwright.takeoff.surroundings.LocationWords;

/**
 * Tells in which air an element is: outdoors by the model, by the user's places, by the words in
 * the names of its space and storey, else indoors.
 */
final class Locations {

  static final String OUTDOOR = "outdoor";
  static final String INDOOR = "indoor";
  static final String BURIED = "buried";

  /** A location class and how it came about. */
  record Choice(String location, Trace.Step step) {}

  private final List<Settings.PlaceRule> rules;
  private final LocationWords words;

  Locations(List<Settings.PlaceRule> rules, LocationWords words) {
    this.rules = rules;
    this.words = words;
  }

  Choice of(MepElement element) {
    if (Boolean.TRUE.equals(element.place().external())) {
      return new Choice(
          OUTDOOR,
          new Trace.Decided(
              "location", OUTDOOR, "model", "IsExternal", "IsExternal of the element or space"));
    }
    List<String> names = names(element);
    for (Settings.PlaceRule rule : rules) {
      String wanted = rule.contains().toLowerCase(Locale.ROOT);
      for (String name : names) {
        if (name.toLowerCase(Locale.ROOT).contains(wanted)) {
          String setting = "places: '" + rule.contains() + "' in '" + name + "'";
          return new Choice(rule.location(), new Trace.Given("location", rule.location(), setting));
        }
      }
    }
    return byWords(element.place()).orElseGet(() -> indoors(element.place()));
  }

  private static Choice indoors(Place place) {
    Trace.Step step =
        Boolean.FALSE.equals(place.external())
            ? new Trace.Decided(
                "location", INDOOR, "model", "IsExternal", "IsExternal of the element or space")
            : new Trace.Assumed("location", INDOOR, "neither the model nor 'places' tells");
    return new Choice(INDOOR, step);
  }

  /** What the name of the space tells, else that of the storey. */
  private Optional<Choice> byWords(Place place) {
    return told("space", place.space()).or(() -> told("storey", place.storey()));
  }

  private Optional<Choice> told(String what, @Nullable String name) {
    if (name == null) {
      return Optional.empty();
    }
    return words
        .find(name)
        .map(
            found -> {
              String rule = "'" + found.text() + "' in the " + what + " '" + name + "'";
              String pack = words.info().id();
              return new Choice(
                  found.location(),
                  new Trace.Decided(
                      "location", found.location(), pack, rule, words.info().source()));
            });
  }

  /** The names that the places of the settings are looked for in. */
  static List<String> names(MepElement element) {
    List<String> names = new ArrayList<>();
    addIfPresent(names, element.place().space());
    addIfPresent(names, element.place().storey());
    for (MepSystem system : element.systems()) {
      names.add(system.name());
      addIfPresent(names, system.longName());
    }
    return names;
  }

  private static void addIfPresent(List<String> names, @Nullable String name) {
    if (name != null) {
      names.add(name);
    }
  }
}
