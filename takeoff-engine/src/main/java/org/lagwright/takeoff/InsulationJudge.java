package org.lagwright.takeoff;

import java.util.ArrayList;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import org.lagwright.ifc.model.Effect;
import org.lagwright.ifc.model.Finding;
import org.lagwright.ifc.model.MepElement;
import org.lagwright.ifc.model.Section;
import org.lagwright.takeoff.fitting.CentreLine;
import org.lagwright.takeoff.fitting.Making;
import org.lagwright.takeoff.fitting.MakingChooser;
import org.lagwright.takeoff.material.MaterialFamily;
import org.lagwright.takeoff.measure.QuantityMeasurer;
import org.lagwright.takeoff.measure.Size;
import org.lagwright.takeoff.scope.Scope;
import org.lagwright.takeoff.scope.ScopeDecision;
import org.lagwright.takeoff.service.Classification;
import org.lagwright.takeoff.service.Service;
import org.lagwright.takeoff.service.ServicePack;
import org.lagwright.takeoff.settings.Settings;
import org.lagwright.takeoff.thickness.Conditions;
import org.lagwright.takeoff.thickness.Demand;
import org.lagwright.takeoff.thickness.ThicknessChooser;
import org.lagwright.takeoff.thickness.ThicknessDecision;

/** Decides for one element in scope: material, thickness, quantities; or why it is left out. */
final class InsulationJudge {

  /** Where no demand needs insulation, this stands for the scope rule. */
  private static final String NO_DEMAND_RULE = "no-demand";

  private final ServicePack services;
  private final Settings settings;
  private final ThicknessChooser chooser;
  private final AskedOf asked;
  private final ElementConditions met;
  private final MakingChooser makings;

  /** By identity: equal conditions share one decision, and so its words. */
  private final IdentityHashMap<ThicknessDecision, List<Trace.Step>> demandSteps =
      new IdentityHashMap<>();

  InsulationJudge(
      ServicePack services, Settings settings, ThicknessChooser chooser, MakingChooser makings) {
    this.services = services;
    this.makings = makings;
    this.settings = settings;
    this.chooser = chooser;
    this.asked = new AskedOf(services, settings.demands());
    this.met = new ElementConditions(services, settings, chooser.materials(), asked);
  }

  /** One element on its way through the decisions. */
  private record Case(
      MepElement element,
      Classification classification,
      ScopeDecision scope,
      List<Finding> findings,
      Trace.Builder steps) {

    Judgement leftOut(
        TakeoffFinding code, @Nullable ThicknessDecision thickness, String... values) {
      List<Finding> all = new ArrayList<>(findings);
      all.add(Finding.about(element.key(), code, Effect.LEFT_OUT, values));
      return judgement(scope, thickness, null, Quantities.NONE, null, code, all);
    }

    Judgement judgement(
        ScopeDecision decision,
        @Nullable ThicknessDecision thickness,
        @Nullable Making making,
        Quantities quantities,
        @Nullable LineKey lineKey,
        @Nullable TakeoffFinding leftOutWith,
        List<Finding> all) {
      return new Judgement(
          element,
          classification,
          decision,
          thickness,
          making,
          quantities,
          lineKey,
          leftOutWith,
          all,
          steps.trace());
    }
  }

  Judgement judge(
      MepElement element,
      Classification classification,
      ScopeDecision scope,
      String location,
      List<Finding> findings,
      Trace.Builder steps) {
    Case in = new Case(element, classification, scope, findings, steps);
    Section section = Size.findDecidingSection(element).orElse(null);
    if (section == null) {
      return in.leftOut(TakeoffFinding.SIZE_UNKNOWN, null);
    }
    if (QuantityMeasurer.isMeasuredInMetres(element) && element.lengthM() == null) {
      return in.leftOut(TakeoffFinding.LENGTH_UNKNOWN, null);
    }
    Optional<PlausibleSizes.Doubt> doubt = PlausibleSizes.doubt(element, section);
    if (doubt.isPresent()) {
      return in.leftOut(
          TakeoffFinding.SIZE_IMPLAUSIBLE, null, doubt.get().measured(), doubt.get().limit());
    }
    MaterialFamily material = met.material(classification);
    Double impossibleC = temperatureOutside(classification, material);
    if (impossibleC != null) {
      return in.leftOut(
          TakeoffFinding.MATERIAL_LIMIT,
          null,
          Show.celsius(impossibleC),
          material.name(),
          material.serviceRangeInWords());
    }
    Conditions conditions = met.conditions(element, classification, section, location, material);
    ThicknessDecision thickness = chooser.decide(conditions);
    findSilence(element, classification, section, location).ifPresent(findings::add);
    List<Trace.Step> demands = demandSteps.computeIfAbsent(thickness, ThicknessSteps::ofDemands);
    steps.later(() -> demands);
    return byThickness(in, conditions, thickness, material, section);
  }

  private Optional<Finding> findSilence(
      MepElement element, Classification classification, Section section, String location) {
    Service service = services.service(classification.serviceId());
    if (!asked.specificationIsSilent(service, location, section)) {
      return Optional.empty();
    }
    return Optional.of(
        Finding.about(
            element.key(),
            TakeoffFinding.SPECIFICATION_SILENT,
            Effect.NONE,
            service.name(),
            location,
            Size.find(element).orElseThrow().words()));
  }

  private Judgement byThickness(
      Case in,
      Conditions conditions,
      ThicknessDecision thickness,
      MaterialFamily material,
      Section section) {
    if (thickness.governing() == null) {
      return withoutDemand(in, conditions, thickness);
    }
    if (thickness.layers().isEmpty()) {
      return withoutLayers(in, conditions, thickness, thickness.governing(), material);
    }
    boolean duct = LaggedElements.isDuct(in.element(), in.classification(), services);
    Making making = makings.choose(in.element(), section, thickness.layers(), duct);
    in.steps().later(() -> List.of(ThicknessSteps.ofLayers(thickness, material)));
    in.steps().later(() -> MakingSteps.of(making, makings.pack().id()));
    Quantities quantities = quantities(in, section, thickness, making);
    LineKey key = lineKey(in, thickness, material);
    List<Finding> findings = new ArrayList<>(withAssumptions(in, making));
    findTooHotToGlue(in, making).ifPresent(findings::add);
    findings.addAll(
        ThicknessFindings.of(
            in.element().key(), conditions, thickness, material, in.classification().name()));
    if (conditions.exposure().isBuried()) {
      findings.add(buried(in));
    }
    return in.judgement(in.scope(), thickness, making, quantities, key, null, findings);
  }

  /** Nothing that is sold meets what is asked. */
  private static Judgement withoutLayers(
      Case in,
      Conditions conditions,
      ThicknessDecision thickness,
      Demand governing,
      MaterialFamily material) {
    String service = in.classification().name();
    if (Double.isFinite(thickness.requiredM())) {
      return in.leftOut(
          TakeoffFinding.NO_STOCK_THICKNESS,
          thickness,
          Show.millimetres(thickness.requiredM()),
          material.name());
    }
    if (governing.kind() != Demand.Kind.CONDENSATION) {
      return in.leftOut(
          TakeoffFinding.DEMAND_OUT_OF_REACH, thickness, governing.kind().label(), service);
    }
    return in.leftOut(
        TakeoffFinding.CONDENSATION_OUT_OF_REACH,
        thickness,
        service,
        Show.air(conditions.airC(), conditions.relativeHumidityPct()));
  }

  private Finding buried(Case in) {
    Settings.Ground ground = settings.ground();
    return Finding.about(
        in.element().key(),
        TakeoffFinding.BURIED_IN_SOIL,
        Effect.ASSUMED,
        in.classification().name(),
        Show.metres(ground.depthM()),
        Show.conductivity(ground.soilWPerMK()));
  }

  private Quantities quantities(
      Case in, Section section, ThicknessDecision thickness, Making making) {
    MepElement element = in.element();
    if (QuantityMeasurer.isMeasuredByPieces(element, making)) {
      Quantities ofPieces = new Quantities(0, 1, making.outerAreaM2(), making.volumeM3());
      in.steps().later(() -> MakingSteps.ofQuantities(ofPieces));
      return ofPieces;
    }
    Quantities alongLine = QuantityMeasurer.measure(element, section, thickness.totalM());
    in.steps().later(() -> ThicknessSteps.ofQuantities(alongLine, centreLine(element)));
    return alongLine;
  }

  /** The adhesive touches the pipe, so the medium counts and not the surface. */
  private Optional<Finding> findTooHotToGlue(Case in, Making making) {
    double limitC = makings.limit("adhesiveLimitC");
    Double hottestC =
        Stream.of(
                Optional.ofNullable(in.classification().energyC()),
                Optional.ofNullable(in.classification().condensationC()))
            .flatMap(Optional::stream)
            .max(Double::compare)
            .orElse(null);
    if (hottestC == null || hottestC <= limitC || !making.isGlued()) {
      return Optional.empty();
    }
    return Optional.of(
        Finding.about(
            in.element().key(),
            TakeoffFinding.ADHESIVE_LIMIT,
            Effect.NONE,
            Show.celsius(hottestC),
            in.classification().name(),
            Show.celsius(limitC)));
  }

  private static List<Finding> withAssumptions(Case in, Making making) {
    if (making.assumed().isEmpty() || !making.isMeasured()) {
      return in.findings();
    }
    List<Finding> findings = new ArrayList<>(in.findings());
    findings.add(
        Finding.about(
            in.element().key(),
            TakeoffFinding.FITTING_SIZE_ASSUMED,
            Effect.ESTIMATED,
            String.join(", ", making.assumed())));
    return findings;
  }

  /** Out where a demand was tried and is met bare; left out where none says anything. */
  private Judgement withoutDemand(Case in, Conditions conditions, ThicknessDecision thickness) {
    Double mediumC = conditions.condensationC();
    boolean condensationSays = mediumC != null && mediumC < conditions.airC();
    boolean otherSays =
        thickness.demands().stream().anyMatch(d -> d.kind() != Demand.Kind.CONDENSATION);
    String temperature = mediumC == null ? "no temperature known" : Show.celsius(mediumC);
    if (!condensationSays && !otherSays) {
      return in.leftOut(
          TakeoffFinding.NO_DEMAND,
          thickness,
          in.classification().name(),
          temperature,
          in.classification().serviceId());
    }
    String reason = in.classification().name() + ": no demand needs insulation here";
    ScopeDecision out = new ScopeDecision(Scope.OUT, reason, NO_DEMAND_RULE);
    in.steps()
        .add(
            new Trace.Decided(
                "scope", "out: " + reason, "thickness", NO_DEMAND_RULE, "the demands above"));
    List<Finding> findings = new ArrayList<>(in.findings());
    findings.add(
        Finding.about(
            in.element().key(),
            TakeoffFinding.NO_INSULATION_NEEDED,
            Effect.NONE,
            in.classification().name(),
            temperature,
            in.classification().serviceId()));
    return in.judgement(out, thickness, null, Quantities.NONE, null, null, findings);
  }

  private LineKey lineKey(Case in, ThicknessDecision thickness, MaterialFamily material) {
    MepElement element = in.element();
    String serviceId = in.classification().serviceId();
    return new LineKey(
        services.order(serviceId),
        serviceId,
        in.classification().name(),
        element.kind(),
        element.form(),
        Size.find(element).orElseThrow(),
        thickness.location(),
        material.id(),
        material.name(),
        thickness.totalM(),
        thickness.layersInWords());
  }

  private static String centreLine(MepElement element) {
    if (QuantityMeasurer.isMeasuredInMetres(element)) {
      return "length read";
    }
    return CentreLine.of(element).map(CentreLine::formula).orElse("not given by what was read");
  }

  private static @Nullable Double temperatureOutside(
      Classification classification, MaterialFamily material) {
    return Stream.of(
            Optional.ofNullable(classification.condensationC()),
            Optional.ofNullable(classification.energyC()))
        .flatMap(Optional::stream)
        .filter(temperatureC -> !material.stands(temperatureC))
        .findFirst()
        .orElse(null);
  }
}
