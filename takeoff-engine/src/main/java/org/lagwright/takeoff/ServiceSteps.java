package org.lagwright.takeoff;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.lagwright.takeoff.service.Classification;
import org.lagwright.takeoff.service.Service;
import org.lagwright.takeoff.service.ServicePack;
import org.lagwright.takeoff.service.ToldTemperature;
import org.lagwright.takeoff.service.Vote;

/** The steps of a trace that say which service an element carries, and how warm. */
final class ServiceSteps {

  private static final String GIVEN_BY_USER = "settings";

  private final ServicePack pack;
  private final Map<String, Double> temperaturesC;

  ServiceSteps(ServicePack pack, Map<String, Double> temperaturesC) {
    this.pack = pack;
    this.temperaturesC = temperaturesC;
  }

  List<Trace.Step> of(Classification classification) {
    List<Trace.Step> steps = new ArrayList<>();
    Service service = pack.findService(classification.serviceId()).orElse(null);
    if (service == null) {
      steps.add(new Trace.Assumed("service", "unknown", "no word, system or neighbour tells"));
      return steps;
    }
    steps.add(serviceStep(classification, service));
    if (service.directionAssumed()) {
      Service row = pack.temperatureRow(service);
      steps.add(
          new Trace.Assumed(
              "direction", row.name(), "nothing tells which; the more demanding one stands in"));
    }
    addCondensation(steps, classification, service);
    addTemperature(steps, "medium for energy", classification.energyC(), service, classification);
    addDisbelieved(steps, classification);
    return steps;
  }

  /** The strongest vote for a service, in words for a finding. */
  String voteInWords(Classification classification, Service service) {
    return service.name()
        + findStrongest(classification, service)
            .map(v -> " by " + v.from() + " '" + v.text() + "'")
            .orElse("");
  }

  private Trace.Step serviceStep(Classification classification, Service service) {
    Optional<Vote> strongest = findStrongest(classification, service);
    String by = strongest.map(v -> v.from() + " '" + v.text() + "'").orElse("votes");
    if (strongest.isPresent() && strongest.get().from().equals(GIVEN_BY_USER)) {
      return new Trace.Given("service", service.name(), "services: " + strongest.get().text());
    }
    return new Trace.Decided("service", service.name(), pack.id(), by, service.basis());
  }

  private Optional<Vote> findStrongest(Classification classification, Service service) {
    return classification.votes().stream()
        .filter(v -> service.family().equals(pack.findFamilyOf(v)))
        .max(Comparator.comparingDouble(Vote::weight));
  }

  private void addCondensation(
      List<Trace.Step> steps, Classification classification, Service service) {
    String what = "medium for condensation";
    Double condensationC = classification.condensationC();
    if (classification.contradiction() != null && condensationC != null) {
      String why = "votes contradict, " + classification.contradiction() + "; the colder is kept";
      steps.add(new Trace.Assumed(what, Show.celsius(condensationC), why));
    } else {
      addTemperature(steps, what, condensationC, service, classification);
    }
  }

  private void addTemperature(
      List<Trace.Step> steps,
      String what,
      @Nullable Double temperatureC,
      Service service,
      Classification classification) {
    if (temperatureC == null) {
      return;
    }
    Service row = pack.temperatureRow(service);
    for (Service named : List.of(service, row)) {
      if (temperaturesC.containsKey(named.id())) {
        steps.add(
            new Trace.Given(what, Show.celsius(temperatureC), "temperaturesC: " + named.id()));
        return;
      }
    }
    ToldTemperature told = classification.told();
    if (told != null && told.believed()) {
      String source = told.from() + " '" + told.text() + "'" + saturated(told);
      steps.add(new Trace.Decided(what, Show.celsius(temperatureC), "model", told.from(), source));
      return;
    }
    steps.add(
        new Trace.Decided(what, Show.celsius(temperatureC), pack.id(), row.id(), row.basis()));
  }

  /** How a pressure of steam was read; empty where the temperature itself stands there. */
  private static String saturated(ToldTemperature told) {
    if (told.pressure() == null) {
      return "";
    }
    String read = told.gaugeAssumed() ? ", read as gauge," : "";
    return ": saturated steam of " + told.pressure() + read + " after IAPWS-IF97";
  }

  private static void addDisbelieved(List<Trace.Step> steps, Classification classification) {
    ToldTemperature told = classification.told();
    if (told != null && !told.believed()) {
      String why = "not used: no " + classification.name() + " is that warm or cold";
      String what = "temperature by " + told.from() + " '" + told.text() + "'";
      steps.add(new Trace.Assumed(what, Show.celsius(told.celsius()), why));
    }
  }
}
