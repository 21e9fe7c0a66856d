package org.lagwright.takeoff;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.lagwright.ifc.model.Effect;
import org.lagwright.ifc.model.ExistingInsulation;
import org.lagwright.ifc.model.Finding;
import org.lagwright.ifc.model.Form;
import org.lagwright.ifc.model.MepElement;
import org.lagwright.takeoff.scope.ElementStatus;
import org.lagwright.takeoff.scope.Scope;
import org.lagwright.takeoff.scope.ScopeDecision;
import org.lagwright.takeoff.scope.ScopeFacts;
import org.lagwright.takeoff.scope.ScopePack;
import org.lagwright.takeoff.scope.ScopeRules;
import org.lagwright.takeoff.service.Classification;
import org.lagwright.takeoff.service.Service;
import org.lagwright.takeoff.service.ServicePack;
import org.lagwright.takeoff.service.ToldTemperature;
import org.lagwright.takeoff.settings.Settings;
import org.lagwright.takeoff.thickness.ThicknessDecision;

/** Decides one element: where it is, whether it is insulated, and if so how thick and how much. */
final class ElementJudge {

  /** For what an earlier file holds already, this stands for the scope rule. */
  private static final String REPEATED_RULE = "repeated";

  private final ServicePack services;
  private final ScopePack scopePack;
  private final ScopeRules scopeRules;
  private final Settings settings;
  private final Locations locations;
  private final ServiceSteps serviceSteps;
  private final InsulationJudge insulation;
  private final OtherElements others;
  private final SharedBoxes boxes;

  /**
   * @param others what they tell of an element
   * @param boxes those over what was judged before
   */
  ElementJudge(
      ServicePack services,
      ScopePack scopePack,
      Settings settings,
      Locations locations,
      InsulationJudge insulation,
      OtherElements others,
      SharedBoxes boxes) {
    this.services = services;
    this.scopePack = scopePack;
    this.scopeRules = new ScopeRules(scopePack);
    this.settings = settings;
    this.locations = locations;
    this.serviceSteps = new ServiceSteps(services, settings.temperaturesC());
    this.insulation = insulation;
    this.others = others;
    this.boxes = boxes;
  }

  Judgement judge(MepElement element, @Nullable Classification classification) {
    Trace.Builder steps = new Trace.Builder();
    steps.later(() -> ReadSteps.of(element));
    if (element.repeats() != null) {
      return repeated(element, classification, steps);
    }
    List<Finding> findings = new ArrayList<>();
    Locations.Choice location = locations.of(element);
    steps.add(location.step());
    if (classification != null) {
      steps.later(() -> serviceSteps.of(classification));
      findContradiction(element, classification).ifPresent(findings::add);
    }
    ScopeFacts facts = facts(element, classification, location.location());
    findOtherStatus(element, facts).ifPresent(findings::add);
    ScopePack.Rule rule = scopeRules.rule(facts);
    ScopeDecision decision = scopeRules.decision(rule, facts);
    String givenFor = isGiven(facts, rule, decision) ? facts.serviceId() : null;
    steps.later(() -> List.of(scopeStep(givenFor, rule, decision)));
    Judgement box =
        decision.scope() == Scope.IN && element.form() == Form.FLANGE ? boxes.over(element) : null;
    if (box != null) {
      return underBox(element, classification, box, findings, steps);
    }
    if (decision.scope() == Scope.IN && classification != null) {
      findExisting(element).ifPresent(findings::add);
      findSteamPressure(element, classification).ifPresent(findings::add);
      findToldTemperature(element, classification).ifPresent(findings::add);
      return insulation.judge(
          element, classification, decision, location.location(), findings, steps);
    }
    return notLagged(element, classification, rule, decision, facts, findings, steps);
  }

  /** Out of scope, or asked. */
  private Judgement notLagged(
      MepElement element,
      @Nullable Classification classification,
      ScopePack.Rule rule,
      ScopeDecision decision,
      ScopeFacts facts,
      List<Finding> findings,
      Trace.Builder steps) {
    TakeoffFinding asked = rule.finding() == null ? null : TakeoffFinding.valueOf(rule.finding());
    if (asked != null) {
      findings.add(asked(element, asked, facts, decision));
    }
    return new Judgement(
        element,
        classification,
        decision,
        null,
        null,
        Quantities.NONE,
        null,
        asked,
        findings,
        steps.trace());
  }

  /** Counted where it stands first. */
  private Judgement repeated(
      MepElement element, @Nullable Classification classification, Trace.Builder steps) {
    String reason = "the same as " + others.other(element) + ", which is counted";
    String source = "GlobalId, or body and place";
    return out(element, classification, reason, REPEATED_RULE, source, null, List.of(), steps);
  }

  /** As thick as the box that covers it. */
  private static Judgement underBox(
      MepElement element,
      @Nullable Classification classification,
      Judgement box,
      List<Finding> findings,
      Trace.Builder steps) {
    return out(
        element,
        classification,
        "under the box of " + ElementWords.named(box.element()) + ", which is counted",
        SharedBoxes.RULE,
        "the flanges of a joint, and a valve with its flanges, have one box: common practice",
        box.thickness(),
        findings,
        steps);
  }

  /** Counted with another element. */
  private static Judgement out(
      MepElement element,
      @Nullable Classification classification,
      String reason,
      String rule,
      String source,
      @Nullable ThicknessDecision thickness,
      List<Finding> findings,
      Trace.Builder steps) {
    steps.add(new Trace.Decided("scope", "out: " + reason, "model", rule, source));
    return new Judgement(
        element,
        classification,
        new ScopeDecision(Scope.OUT, reason, rule),
        thickness,
        null,
        Quantities.NONE,
        null,
        null,
        findings,
        steps.trace());
  }

  private ScopeFacts facts(
      MepElement element, @Nullable Classification classification, String location) {
    String serviceId = classification == null ? null : classification.serviceId();
    Service service = serviceId == null ? null : services.findService(serviceId).orElse(null);
    String given = serviceId == null ? null : givenScope(serviceId, service);
    Service rival = findRival(classification);
    String packScope = service == null ? Classification.UNKNOWN : service.scope();
    ElementStatus status = others.statusOf(element);
    return new ScopeFacts(
        element.kind(),
        described(element),
        serviceId,
        classification == null ? "no service" : classification.name(),
        given == null ? packScope : given,
        given,
        rival == null ? null : rival.name(),
        rival == null ? null : scope(rival),
        service == null ? "nothing tells" : service.reason(),
        location,
        status == null ? null : status.text(),
        status == null ? null : status.status(),
        others.other(element));
  }

  private @Nullable Service findRival(@Nullable Classification classification) {
    String rivalId = classification == null ? null : classification.contradiction();
    return rivalId == null ? null : services.service(rivalId);
  }

  private String scope(Service service) {
    String given = givenScope(service.id(), service);
    return given == null ? service.scope() : given;
  }

  /** The class, with the type where there is one: a ditch may be an IfcPipeSegment. */
  private static String described(MepElement element) {
    String type = element.typeName() != null ? element.typeName() : element.objectType();
    return type == null ? element.ifcClass() : element.ifcClass() + " '" + type + "'";
  }

  private @Nullable String givenScope(String serviceId, @Nullable Service service) {
    return service == null
        ? settings.scope().get(serviceId)
        : services.findGiven(settings.scope(), service);
  }

  /** True where the user decided, and not the pack. */
  private static boolean isGiven(ScopeFacts facts, ScopePack.Rule rule, ScopeDecision decision) {
    boolean leftOutByUser = rule.when().settingsScopes() != null;
    boolean takenInByUser = decision.scope() == Scope.IN && facts.settingsScope() != null;
    return leftOutByUser || takenInByUser;
  }

  private Trace.Step scopeStep(
      @Nullable String givenFor, ScopePack.Rule rule, ScopeDecision decision) {
    String value = decision.scope().label() + ": " + decision.reason();
    return givenFor == null
        ? new Trace.Decided("scope", value, scopePack.id(), rule.id(), rule.source())
        : new Trace.Given("scope", value, "scope: " + givenFor);
  }

  private static Finding asked(
      MepElement element, TakeoffFinding code, ScopeFacts facts, ScopeDecision decision) {
    if (code == TakeoffFinding.SERVICE_UNKNOWN) {
      return serviceUnknown(element);
    }
    String first =
        code == TakeoffFinding.EQUIPMENT_BY_DRAWING ? facts.serviceName() : decision.reason();
    String id = facts.serviceId() == null ? Classification.UNKNOWN : facts.serviceId();
    return Finding.about(element.key(), code, Effect.LEFT_OUT, first, id);
  }

  private static Finding serviceUnknown(MepElement element) {
    String systems = ElementWords.systems(element);
    boolean named = !systems.isEmpty();
    return Finding.about(
        element.key(),
        TakeoffFinding.SERVICE_UNKNOWN,
        Effect.LEFT_OUT,
        named
            ? "Its system " + systems + " tells no known service"
            : "Nothing tells which service this is",
        named ? "Name that system by what flows in it" : "Name its system in the model");
  }

  private Optional<Finding> findContradiction(MepElement element, Classification classification) {
    String rival = classification.contradiction();
    if (rival == null) {
      return Optional.empty();
    }
    return Optional.of(
        Finding.about(
            element.key(),
            TakeoffFinding.SERVICE_CONTRADICTION,
            Effect.ASSUMED,
            serviceSteps.voteInWords(classification, services.service(classification.serviceId())),
            serviceSteps.voteInWords(classification, services.service(rival))));
  }

  /** Where the files differ about whether an element is new, there already or to go. */
  private Optional<Finding> findOtherStatus(MepElement element, ScopeFacts facts) {
    String used = facts.statusText();
    OtherElements.Told other =
        element.kind().isLagged() ? others.otherStatus(element, facts.status()) : null;
    if (other == null || used == null) {
      return Optional.empty();
    }
    return Optional.of(
        Finding.about(
            element.key(),
            TakeoffFinding.STATUS_CONFLICT,
            Effect.ASSUMED,
            used,
            other.status().text(),
            other.file()));
  }

  private static Optional<Finding> findSteamPressure(
      MepElement element, Classification classification) {
    ToldTemperature told = classification.told();
    if (told == null || told.pressure() == null || !told.gaugeAssumed() || !told.believed()) {
      return Optional.empty();
    }
    return Optional.of(
        Finding.about(
            element.key(),
            TakeoffFinding.STEAM_PRESSURE_ASSUMED,
            Effect.ASSUMED,
            told.pressure(),
            told.text(),
            Show.celsius(told.celsius())));
  }

  /**
   * A temperature that the service cannot have may mean that it is another service; of two that are
   * told one is wrong.
   */
  private Optional<Finding> findToldTemperature(MepElement element, Classification classification) {
    ToldTemperature told = classification.told();
    Service service = services.service(classification.serviceId());
    String other = told != null && told.believed() ? told.otherwise() : null;
    if (told == null
        || (told.believed() && other == null)
        || services.findGiven(settings.temperaturesC(), service) != null) {
      return Optional.empty();
    }
    return Optional.of(
        Finding.about(
            element.key(),
            other == null
                ? TakeoffFinding.TEMPERATURE_NOT_USED
                : TakeoffFinding.TEMPERATURE_CONFLICT,
            Effect.ASSUMED,
            Show.celsius(told.celsius()),
            told.from() + " '" + told.text() + "'",
            other == null ? classification.name() : other));
  }

  private static Optional<Finding> findExisting(MepElement element) {
    ExistingInsulation existing = element.existingInsulation();
    if (existing == null) {
      return Optional.empty();
    }
    Double thicknessM = existing.thicknessM();
    String shown =
        (thicknessM == null ? "thickness not told" : Show.millimetres(thicknessM))
            + (existing.material() == null ? "" : " " + existing.material());
    return Optional.of(
        Finding.about(element.key(), TakeoffFinding.ALREADY_INSULATED, Effect.NONE, shown));
  }
}
