package org.lagwright.takeoff;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Objects;
import java.util.Optional;
import org.lagwright.ifc.model.Effect;
import org.lagwright.ifc.model.Finding;
import org.lagwright.takeoff.service.Classification;
import org.lagwright.takeoff.service.Service;
import org.lagwright.takeoff.service.ServicePack;
import org.lagwright.takeoff.service.UserMapping;
import org.lagwright.takeoff.service.Vote;
import org.lagwright.takeoff.settings.Settings;

/** What became of the names that the settings map: nothing, or more than may be meant. */
final class MappingFindings {

  private static final String GIVEN_BY_USER = "settings";
  private static final String NEIGHBOUR = "neighbour";

  private final Settings settings;
  private final ServicePack services;
  private final List<Judgement> judgements;
  private final List<UserMapping> mappings;

  MappingFindings(Settings settings, ServicePack services, List<Judgement> judgements) {
    this.settings = settings;
    this.services = services;
    this.judgements = judgements;
    this.mappings =
        settings.services().stream()
            .map(rule -> new UserMapping(rule.contains(), rule.in(), rule.service()))
            .toList();
  }

  List<Finding> list() {
    List<Finding> findings = new ArrayList<>();
    List<List<Judgement>> taken = takenByMapping();
    for (int i = 0; i < mappings.size(); i++) {
      UserMapping mapping = mappings.get(i);
      if (taken.get(i).isEmpty()) {
        findings.add(without(mapping.contains(), "services", matchesAny(mapping)));
      }
      overruled(mapping, taken.get(i)).ifPresent(findings::add);
    }
    for (Settings.PlaceRule rule : settings.places()) {
      if (judgements.stream().noneMatch(j -> isPlacedBy(j, rule))) {
        findings.add(without(rule.contains(), "places", isIn(rule)));
      }
    }
    return findings;
  }

  /** For each mapping, the elements that got their service from it. */
  private List<List<Judgement>> takenByMapping() {
    List<List<Judgement>> taken = new ArrayList<>();
    mappings.forEach(mapping -> taken.add(new ArrayList<>()));
    for (Judgement judgement : judgements) {
      Classification service = judgement.service();
      boolean mapped =
          service != null
              && service.votes().stream().anyMatch(vote -> vote.from().equals(GIVEN_BY_USER));
      for (int i = 0; mapped && i < mappings.size(); i++) {
        if (mappings.get(i).findIn(judgement.element()).isPresent()) {
          taken.get(i).add(judgement);
          break;
        }
      }
    }
    return taken;
  }

  private boolean matchesAny(UserMapping mapping) {
    return judgements.stream()
        .filter(judgement -> judgement.service() != null)
        .anyMatch(judgement -> mapping.findIn(judgement.element()).isPresent());
  }

  private static Finding without(String contains, String key, boolean matches) {
    String why =
        matches
            ? "earlier ones or the model decide for all that it matches"
            : "no name in the models holds it";
    return Finding.ofFile(
        0, TakeoffFinding.MAPPING_WITHOUT_EFFECT, Effect.NONE, contains, key, why);
  }

  private Optional<Finding> overruled(UserMapping mapping, List<Judgement> taken) {
    Service service = services.findService(mapping.service()).orElse(null);
    List<Judgement> against =
        service == null
            ? List.of()
            : taken.stream().filter(judgement -> against(judgement, service).isPresent()).toList();
    if (service == null || against.isEmpty()) {
      return Optional.empty();
    }
    Judgement example = against.get(0);
    Vote vote = against(example, service).orElseThrow();
    return Optional.of(
        Finding.about(
            example.element().key(),
            TakeoffFinding.MAPPING_OVERRULES,
            Effect.NONE,
            mapping.contains(),
            service.name(),
            String.valueOf(against.size()),
            ElementWords.named(example.element())
                + " with "
                + vote.from()
                + " '"
                + vote.text()
                + "'"));
  }

  /** The first vote of the element itself for another service. */
  private Optional<Vote> against(Judgement judgement, Service service) {
    return Objects.requireNonNull(judgement.service()).votes().stream()
        .filter(vote -> !vote.from().equals(GIVEN_BY_USER) && !vote.from().equals(NEIGHBOUR))
        .filter(vote -> services.speaksAgainst(vote, service))
        .findFirst();
  }

  private static boolean isPlacedBy(Judgement judgement, Settings.PlaceRule rule) {
    String start = "places: '" + rule.contains() + "' in ";
    return judgement
        .trace()
        .held()
        .anyMatch(s -> s instanceof Trace.Given given && given.setting().startsWith(start));
  }

  private boolean isIn(Settings.PlaceRule rule) {
    String wanted = rule.contains().toLowerCase(Locale.ROOT);
    return judgements.stream()
        .map(Judgement::element)
        .flatMap(element -> Locations.names(element).stream())
        .anyMatch(name -> name.toLowerCase(Locale.ROOT).contains(wanted));
  }
}
