package org.lagwright.takeoff;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.jspecify.annotations.Nullable;
import org.lagwright.ifc.model.MepElement;
import org.lagwright.ifc.model.MepSystem;
import org.lagwright.takeoff.settings.Settings;

/** Tells in which air an element is: outdoors by the model, by the user's places, else indoors. */
final class Locations {

  static final String OUTDOOR = "outdoor";
  static final String INDOOR = "indoor";

  /** A location class and how it came about. */
  record Choice(String location, Trace.Step step) {}

  private final List<Settings.PlaceRule> rules;

  Locations(List<Settings.PlaceRule> rules) {
    this.rules = rules;
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
    return new Choice(
        INDOOR, new Trace.Assumed("location", INDOOR, "neither the model nor 'places' tells"));
  }

  private static List<String> names(MepElement element) {
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
