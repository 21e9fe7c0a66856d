package org.lagwright.takeoff.service;

import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import org.lagwright.takeoff.pack.PackReader;

/**
 * How much each hint weighs, and where hints stand.
 *
 * @param weights weight by place of the hint
 * @param neighbourShare part of its strength that a hint keeps from one element to the next, 0 to 1
 * @param contradictionShare part of the winner's weight from which on another service contradicts
 * @param contradictionK temperature difference from which on it does, kelvin
 * @param mediumProperties names of properties that tell the medium, system or service
 * @param temperatureProperties names of properties that tell the medium's temperature in service
 * @param temperatureRangesC where a told temperature is believed, by kind of service, degC
 * @param appliances family by IFC class of the appliance an element is joined to, upper case
 * @param systemTypes family by IfcDistributionSystemEnum value
 */
record VotePack(
    String id,
    String version,
    String source,
    String status,
    Map<String, Double> weights,
    double neighbourShare,
    double contradictionShare,
    double contradictionK,
    List<String> mediumProperties,
    TemperatureProperties temperatureProperties,
    Map<String, Range> temperatureRangesC,
    Map<String, String> appliances,
    Map<String, String> systemTypes) {

  static final String FROM_SETTINGS = "settings";
  static final String FROM_NEIGHBOUR = "neighbour";
  static final String FROM_MEDIUM = "medium";
  static final String FROM_SYSTEM = "system name";
  static final String FROM_SYSTEM_TYPE = "system type";
  static final String FROM_NAME = "element name";
  static final String FROM_TYPE_NAME = "type name";
  static final String FROM_OBJECT_TYPE = "object type";
  static final String FROM_PORT = "port system type";
  static final String FROM_LAYER = "layer";
  static final String FROM_APPLIANCE = "appliance";

  VotePack {
    weights = Map.copyOf(weights);
    mediumProperties = List.copyOf(mediumProperties);
    temperatureRangesC = Map.copyOf(temperatureRangesC);
    appliances = Map.copyOf(appliances);
    systemTypes = Map.copyOf(systemTypes);
    if (!(neighbourShare > 0 && neighbourShare < 1)) {
      throw new IllegalArgumentException("neighbourShare must lie between 0 and 1.");
    }
  }

  /**
   * Names of properties, by what they tell.
   *
   * @param ofFlow temperature of the flow
   * @param ofReturn temperature of the return
   * @param ofMedium temperature in the element itself
   */
  record TemperatureProperties(List<String> ofFlow, List<String> ofReturn, List<String> ofMedium) {
    TemperatureProperties {
      ofFlow = List.copyOf(ofFlow);
      ofReturn = List.copyOf(ofReturn);
      ofMedium = List.copyOf(ofMedium);
    }
  }

  /** From one temperature to another, degC, both included. */
  record Range(double from, double to) {
    Range {
      if (!(from < to)) {
        throw new IllegalArgumentException("a range must rise, from " + from + " to " + to + ".");
      }
    }

    boolean holds(double celsius) {
      return celsius >= from && celsius <= to;
    }
  }

  static VotePack bundled() {
    return PackReader.readBundled(VotePack.class, "votes.yaml", VotePack.class);
  }

  double weight(String from) {
    Double weight = weights.get(from);
    if (weight == null) {
      throw new IllegalStateException("no weight for '" + from + "' in the votes pack");
    }
    return weight;
  }

  /** Names of the properties that tell a medium or its temperature; looks them up without case. */
  Set<String> tellingPropertyNames() {
    Set<String> names = mediumPropertyNames();
    names.addAll(temperatureProperties.ofFlow());
    names.addAll(temperatureProperties.ofReturn());
    names.addAll(temperatureProperties.ofMedium());
    return names;
  }

  /** Names of the properties that tell a medium; looks them up without case. */
  Set<String> mediumPropertyNames() {
    Set<String> names = new TreeSet<>(String.CASE_INSENSITIVE_ORDER);
    names.addAll(mediumProperties);
    return names;
  }
}
