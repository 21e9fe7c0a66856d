package org.lagwright.report.bcf;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import org.lagwright.ifc.model.BuildingPart;
import org.lagwright.ifc.model.Effect;
import org.lagwright.ifc.model.ElementKey;
import org.lagwright.ifc.model.Finding;
import org.lagwright.ifc.model.FindingCode;
import org.lagwright.ifc.model.FindingCode.Severity;
import org.lagwright.ifc.model.MepElement;
import org.lagwright.report.Words;
import org.lagwright.takeoff.Question;
import org.lagwright.takeoff.TakenElement;
import org.lagwright.takeoff.Takeoff;
import org.lagwright.takeoff.TakeoffFinding;
import org.lagwright.takeoff.clearance.Cause;
import org.lagwright.takeoff.clearance.Clash;
import org.lagwright.takeoff.clearance.Clearance;
import org.lagwright.takeoff.clearance.Neighbour;
import org.lagwright.takeoff.service.Classification;
import org.lagwright.takeoff.verify.Coverage;
import org.lagwright.takeoff.verify.CoverageStatus;
import org.lagwright.takeoff.verify.ElementCoverage;

/** The topics of a takeoff: one for each cause, never one for each element. */
final class TopicList {

  static final String QUESTION = "Request";
  static final String FINDING = "Issue";
  static final String COVERAGE = "Remark";
  static final String CLEARANCE = "Clash";
  static final List<String> TYPES = List.of(QUESTION, FINDING, COVERAGE, CLEARANCE);

  static final String HIGH = "High";
  static final String NORMAL = "Normal";
  static final List<String> PRIORITIES = List.of(HIGH, NORMAL);

  /** What only the user's own settings and tables can mend; no designer can. */
  private static final Set<FindingCode> OF_THE_USER =
      Set.of(
          TakeoffFinding.PRICE_MISSING,
          TakeoffFinding.LABOUR_NORM_MISSING,
          TakeoffFinding.MAPPING_WITHOUT_EFFECT);

  private final Takeoff takeoff;
  private final Map<ElementKey, MepElement> elements = new HashMap<>();
  private final Map<ElementKey, String> services = new HashMap<>();
  private final List<Topic> topics = new ArrayList<>();
  private final List<Request> requests = new ArrayList<>();

  private TopicList(Takeoff takeoff) {
    this.takeoff = takeoff;
    for (TakenElement taken : takeoff.elements()) {
      Classification service = taken.service();
      elements.put(taken.element().key(), taken.element());
      services.put(
          taken.element().key(), service == null || !service.isKnown() ? "" : service.name());
    }
  }

  /**
   * Questions first, then findings that are more than information, then what is not covered, then
   * what does not fit.
   */
  static List<Topic> of(Takeoff takeoff) {
    TopicList list = new TopicList(takeoff);
    list.request();
    list.requests.forEach(request -> list.topics.add(request.topic()));
    list.coverage();
    list.clearance();
    return list.topics;
  }

  /** Questions first, then findings that are more than information. */
  static List<Request> requests(Takeoff takeoff) {
    TopicList list = new TopicList(takeoff);
    list.request();
    return list.requests;
  }

  private void request() {
    takeoff.questions().forEach(this::question);
    findings();
  }

  private void question(Question question) {
    Topic topic =
        new Topic(
            "question " + question.code() + question.what() + question.size() + question.question(),
            QUESTION,
            HIGH,
            "To decide: " + question.what() + ", " + question.size(),
            question.inFull(),
            "",
            elements(question.elements()));
    requests.add(new Request(topic, spaced(question.code()), Words.effect(Effect.LEFT_OUT)));
  }

  private void findings() {
    Map<String, List<Finding>> byCause = new LinkedHashMap<>();
    Set<String> asked =
        takeoff.questions().stream().map(Question::code).collect(Collectors.toSet());
    for (Finding finding : takeoff.findings()) {
      boolean weighs =
          finding.code().severity() != Severity.INFO && !OF_THE_USER.contains(finding.code());
      if (weighs && !asked.contains(finding.code().name())) {
        String service = service(finding.element());
        byCause
            .computeIfAbsent(finding.code().name() + " " + service, c -> new ArrayList<>())
            .add(finding);
      }
    }
    byCause.forEach((cause, same) -> requests.add(request(cause, same)));
  }

  private Request request(String cause, List<Finding> same) {
    String effects =
        same.stream()
            .map(finding -> Words.effect(finding.effect()))
            .distinct()
            .collect(Collectors.joining(", "));
    return new Request(finding(cause, same), spaced(same.get(0).code().name()), effects);
  }

  private Topic finding(String cause, List<Finding> same) {
    Finding first = same.get(0);
    String service = service(first.element());
    List<ElementKey> keys =
        same.stream().flatMap(f -> Stream.ofNullable(f.element())).distinct().toList();
    return new Topic(
        "finding " + cause,
        FINDING,
        first.code().severity() == Severity.ERROR ? HIGH : NORMAL,
        inWords(first.code()) + (service.isEmpty() ? "" : ": " + service),
        messages(same, keys.size()),
        service,
        elements(keys));
  }

  /** That of the first element stands for all; what is said of a whole file is said in full. */
  private static String messages(List<Finding> same, int elements) {
    List<String> messages = new ArrayList<>();
    same.stream()
        .filter(finding -> finding.element() != null)
        .findFirst()
        .map(
            finding ->
                elements > 1
                    ? elements + " elements. The first: " + finding.message()
                    : finding.message())
        .ifPresent(messages::add);
    same.stream()
        .filter(finding -> finding.element() == null)
        .map(Finding::message)
        .distinct()
        .forEach(messages::add);
    return String.join("\n", messages);
  }

  /** {@code Size unknown} of SIZE_UNKNOWN. */
  private static String inWords(FindingCode code) {
    String words = spaced(code.name());
    return words.substring(0, 1).toUpperCase(Locale.ROOT) + words.substring(1);
  }

  /** {@code size unknown} of SIZE_UNKNOWN. */
  private static String spaced(String code) {
    return code.toLowerCase(Locale.ROOT).replace('_', ' ');
  }

  private String service(@Nullable ElementKey key) {
    return key == null ? "" : services.getOrDefault(key, "");
  }

  /**
   * What the model shows too thin, bare or wrong; where nothing is shown at all, nothing is said.
   */
  private void coverage() {
    Coverage coverage = Coverage.of(takeoff);
    boolean shown = coverage.elements().stream().anyMatch(e -> e.share() > 0);
    Map<String, List<ElementCoverage>> byCause = new LinkedHashMap<>();
    for (ElementCoverage element : shown ? coverage.elements() : List.<ElementCoverage>of()) {
      CoverageStatus status = element.status();
      if (status != CoverageStatus.COVERED && status != CoverageStatus.UNKNOWN) {
        byCause
            .computeIfAbsent(
                status.label() + " " + element.group().service(), c -> new ArrayList<>())
            .add(element);
      }
    }
    byCause.forEach((cause, same) -> topics.add(coverage(cause, same)));
  }

  private Topic coverage(String cause, List<ElementCoverage> same) {
    ElementCoverage first = same.get(0);
    return new Topic(
        "coverage " + cause,
        COVERAGE,
        NORMAL,
        "Insulation " + first.status().label() + ": " + first.group().service(),
        same.size()
            + " elements are "
            + first.status().label()
            + " in the model; the sheet Coverage lists required and shown thickness of each.",
        first.group().service(),
        elements(same.stream().map(ElementCoverage::key).toList()));
  }

  /** One topic for each cause and pair of services. */
  private void clearance() {
    Map<String, List<Clash>> byCause = new LinkedHashMap<>();
    for (Clash clash : Clearance.of(takeoff).clashes()) {
      byCause
          .computeIfAbsent(
              clash.cause().label() + ": " + services(clash), cause -> new ArrayList<>())
          .add(clash);
    }
    byCause.forEach((cause, same) -> topics.add(clearance(cause, same)));
  }

  /** The pair of services, the same whichever of the two elements was read first. */
  private String services(Clash clash) {
    String first = named(service(clash.first().element().key()));
    if (clash.second() instanceof Neighbour.Part part) {
      return first + " against " + Words.building(part.part().ifcClass());
    }
    return Stream.of(first, named(service(clash.second().key())))
        .sorted()
        .collect(Collectors.joining(" against "));
  }

  private static String named(String service) {
    return service.isEmpty() ? "service not known" : service;
  }

  private Topic clearance(String cause, List<Clash> same) {
    Clash worst = same.get(0);
    return new Topic(
        "clearance " + cause,
        CLEARANCE,
        worst.cause() == Cause.TOO_CLOSE ? NORMAL : HIGH,
        cause.substring(0, 1).toUpperCase(Locale.ROOT) + cause.substring(1),
        Words.counted(same.size(), "place")
            + " where insulation does not fit. The worst: gap "
            + Words.millimetres(worst.gapM())
            + " mm, wanted "
            + Words.millimetres(worst.wantedM())
            + " mm, without insulation "
            + Words.millimetres(worst.bareGapM())
            + " mm; below 0 is overlap. "
            + worst.suggestion()
            + " The sheet Clearance lists each pair.",
        service(worst.first().element().key()),
        elements(
            same.stream()
                .flatMap(clash -> Stream.of(clash.first().element().key(), clash.second().key()))
                .distinct()
                .toList()),
        same.stream().flatMap(TopicList::part).distinct().toList());
  }

  private static Stream<BuildingPart> part(Clash clash) {
    return clash.second() instanceof Neighbour.Part part ? Stream.of(part.part()) : Stream.empty();
  }

  private List<MepElement> elements(List<ElementKey> keys) {
    return keys.stream().map(elements::get).filter(Objects::nonNull).toList();
  }
}
