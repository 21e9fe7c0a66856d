package org.lagwright.takeoff.service;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

class ServicePackTest {

  private static final ServicePack PACK = ServicePack.bundled();

  /** Fluids that nothing heats or cools have a temperature for the dew point only. */
  private static final List<String> EXEMPT_FROM_ENERGY_RULES =
      List.of("domestic-cold-water", "condensate-drain");

  @Test
  void everyServiceInScopeHasATemperature() {
    assertThat(PACK.services())
        .filteredOn(s -> s.scope().equals("in"))
        .allSatisfy(
            s -> {
              Service row = PACK.temperatureRow(s);
              assertThat(row.condensationC()).as(s.id()).isNotNull();
              assertThat(row.energyC() == null)
                  .as(s.id())
                  .isEqualTo(EXEMPT_FROM_ENERGY_RULES.contains(s.id()));
            });
  }

  @Test
  void everyServiceOfTheTradeIsThereWithItsScope() {
    assertThat(PACK.services()).hasSizeGreaterThanOrEqualTo(35);
    assertThat(PACK.services())
        .extracting(Service::family)
        .contains(
            "chilled",
            "high-temperature-chilled",
            "heating",
            "low-temperature-heating",
            "medium-temperature-heating",
            "high-temperature-heating",
            "condenser",
            "geothermal",
            "solar",
            "steam",
            "steam-medium",
            "steam-high",
            "steam-condensate",
            "dcw",
            "dhw",
            "circulation",
            "rainwater",
            "waste",
            "condensate",
            "refrigerant",
            "medical-gas",
            "compressed-air",
            "sprinkler",
            "fuel-oil",
            "supply",
            "return",
            "extract",
            "outdoor",
            "exhaust",
            "kitchen",
            "smoke");
    assertThat(PACK.services())
        .filteredOn(service -> service.family().equals("refrigerant"))
        .extracting(Service::direction)
        .contains("suction", "liquid", "hot-gas");
  }

  @Test
  void coldServicesAreColderThanHotOnes() {
    double warmestCold =
        PACK.services().stream()
            .flatMap(s -> temperatures(s, "cold"))
            .max(Double::compare)
            .orElseThrow();
    double coldestHot =
        PACK.services().stream()
            .flatMap(s -> temperatures(s, "hot"))
            .min(Double::compare)
            .orElseThrow();

    assertThat(warmestCold).isLessThan(coldestHot);
  }

  @Test
  void undirectedServiceStandsForTheMoreDemandingOfItsFamily() {
    for (Service service : PACK.services()) {
      if (service.directionAssumed()) {
        Service row = PACK.temperatureRow(service);
        List<Service> family =
            PACK.services().stream().filter(s -> s.family().equals(service.family())).toList();
        assertThat(row.family()).isEqualTo(service.family());
        assertThat(row.material()).isEqualTo(service.material());
        for (Service other : family) {
          Double rowC = row.energyC();
          Double otherC = other.energyC();
          if (rowC != null && otherC != null && other.kind().equals(row.kind())) {
            double sign = row.kind().equals("hot") ? 1 : -1;
            assertThat(sign * rowC).as(service.id()).isGreaterThanOrEqualTo(sign * otherC);
          }
        }
      }
    }
  }

  @Test
  void everyFamilyOfTheWordsAndVotesIsInThePack() {
    Stream<String> words =
        WordPack.bundled().meanings().stream()
            .flatMap(
                m ->
                    Stream.concat(
                        Stream.of(m.family(), m.withDirection(), m.inCircuit()),
                        m.otherwise().whereNamed().stream()))
            .filter(java.util.Objects::nonNull);
    Stream<String> types = VotePack.bundled().systemTypes().values().stream();

    assertThat(Stream.concat(words, types).distinct())
        .allSatisfy(family -> assertThat(PACK.family(family).id()).isEqualTo(family));
  }

  @Test
  void everyDirectionOfTheWordsIsOneOfTheirFamily() {
    assertThat(WordPack.bundled().meanings())
        .filteredOn(m -> m.family() != null && m.direction() != null)
        .allSatisfy(
            m ->
                assertThat(PACK.directions(java.util.Objects.requireNonNull(m.family())))
                    .contains(m.direction()));
  }

  private static Stream<Double> temperatures(Service service, String kind) {
    return service.kind().equals(kind)
        ? Stream.of(service.condensationC(), service.energyC()).filter(java.util.Objects::nonNull)
        : Stream.of();
  }
}
