package org.lagwright.takeoff;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Collectors;
import org.lagwright.ifc.model.MepElement;
import org.lagwright.takeoff.measure.QuantityMeasurer;
import org.lagwright.takeoff.measure.Size;
import org.lagwright.takeoff.scope.ScopePack;
import org.lagwright.takeoff.service.Vote;

/** Groups what was left out into questions that an estimator can put to the designer. */
final class QuestionBook {

  private static final Size UNKNOWN_SIZE = new Size("size unknown", List.of());

  private record Group(TakeoffFinding code, String question, String what, Size size)
      implements Comparable<Group> {

    private static final Comparator<Group> ORDER =
        Comparator.comparing(Group::code)
            .thenComparing(Group::question)
            .thenComparing(Group::what)
            .thenComparing(Group::size);

    @Override
    public int compareTo(Group other) {
      return ORDER.compare(this, other);
    }
  }

  private QuestionBook() {}

  static List<Question> of(List<Judgement> judgements) {
    Map<Group, List<MepElement>> groups = new TreeMap<>();
    for (Judgement judgement : judgements) {
      TakeoffFinding code = judgement.leftOutWith();
      if (code != null) {
        MepElement element = judgement.element();
        Group group =
            new Group(
                code,
                question(code, judgement),
                ElementWords.plural(element),
                Size.find(element).orElse(UNKNOWN_SIZE));
        groups.computeIfAbsent(group, g -> new ArrayList<>()).add(element);
      }
    }
    return groups.entrySet().stream().map(e -> question(e.getKey(), e.getValue())).toList();
  }

  private static Question question(Group group, List<MepElement> elements) {
    List<MepElement> sorted =
        elements.stream().sorted(Comparator.comparing(MepElement::key)).toList();
    double lengthM = 0;
    for (MepElement element : sorted) {
      if (QuantityMeasurer.isMeasuredInMetres(element) && element.lengthM() != null) {
        lengthM += element.lengthM().value();
      }
    }
    return new Question(
        group.code().name(),
        group.question(),
        group.what(),
        group.size().words(),
        sorted.size(),
        lengthM,
        ElementWords.named(sorted.get(0)),
        sorted.stream().map(MepElement::key).toList());
  }

  private static String question(TakeoffFinding code, Judgement judgement) {
    String service = judgement.service() == null ? "it" : judgement.service().name();
    return switch (code) {
      case SERVICE_UNKNOWN -> serviceQuestion(judgement);
      case SCOPE_UNDECIDED -> scopeQuestion(judgement, service);
      case EQUIPMENT_BY_DRAWING ->
          "Apparatus on " + service + ": is it insulated on site, and how thick?";
      case SIZE_UNKNOWN -> "What size is it?";
      case LENGTH_UNKNOWN -> "How long is it?";
      case SIZE_IMPLAUSIBLE -> "In which unit are its sizes?";
      case MATERIAL_LIMIT -> "Which material stands the temperature of " + service + "?";
      case CONDENSATION_OUT_OF_REACH -> "In which air is " + service + " to stay dry?";
      case DEMAND_OUT_OF_REACH -> "What may be asked of the insulation of " + service + "?";
      case NO_STOCK_THICKNESS -> "Which material is thick enough for " + service + "?";
      case NO_DEMAND -> "How thick is " + service + " insulated, if at all?";
      case SERVICE_CONTRADICTION,
          ALREADY_INSULATED,
          COVERING_WITHOUT_BODY,
          NO_INSULATION_NEEDED,
          VAPOUR_BARRIER_NEEDED,
          BELOW_CRITICAL_RADIUS,
          BURIED_IN_SOIL,
          NO_STOCK_BORE,
          ENERGY_RULE_SILENT,
          STEAM_PRESSURE_ASSUMED,
          TEMPERATURE_NOT_USED,
          TEMPERATURE_CONFLICT,
          STATUS_CONFLICT,
          SPECIFICATION_SILENT,
          MAPPING_WITHOUT_EFFECT,
          MAPPING_OVERRULES,
          LOCATION_ASSUMED,
          FITTING_SIZE_ASSUMED,
          WIDTH_ASSUMED,
          LABOUR_NORM_MISSING,
          HEIGHT_UNKNOWN,
          ADHESIVE_LIMIT,
          PRICE_MISSING ->
          throw new IllegalArgumentException(code + " leaves nothing out");
    };
  }

  private static String scopeQuestion(Judgement judgement, String service) {
    if (judgement.scope().rule().equals(ScopePack.EXISTING)) {
      return "Does the existing " + service + " get new insulation?";
    }
    if (judgement.scope().rule().equals(ScopePack.TEMPORARY)) {
      return "Does the temporary " + service + " get insulation?";
    }
    String rivalId = judgement.service() == null ? null : judgement.service().contradiction();
    return rivalId == null
        ? "Is " + service + " insulated?"
        : "Is this " + service + " or " + rivalId.replace('-', ' ') + "?";
  }

  /** Names the systems, else the direction if that is all that was told. */
  private static String serviceQuestion(Judgement judgement) {
    String systems = ElementWords.systems(judgement.element());
    if (!systems.isEmpty()) {
      return "Which service flows in system " + systems + "?";
    }
    String told =
        judgement.service() == null
            ? ""
            : judgement.service().votes().stream()
                .map(Vote::serviceId)
                .distinct()
                .sorted()
                .collect(Collectors.joining(" and "));
    return told.isEmpty()
        ? "Which service is this? No system is named."
        : "Of which service is this the " + told + "? No system is named.";
  }
}
