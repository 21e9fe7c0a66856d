package org.lagwright.takeoff;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import org.lagwright.ifc.model.Effect;
import org.lagwright.ifc.model.ElementKey;
import org.lagwright.ifc.model.Finding;
import org.lagwright.ifc.model.MepElement;
import org.lagwright.ifc.model.MepModel;
import org.lagwright.takeoff.clearance.ClearancePack;
import org.lagwright.takeoff.fitting.MakingChooser;
import org.lagwright.takeoff.fitting.MakingPack;
import org.lagwright.takeoff.labour.Labour;
import org.lagwright.takeoff.measure.GeometricTruth;
import org.lagwright.takeoff.measure.Measurement;
import org.lagwright.takeoff.measure.MeasurementPack;
import org.lagwright.takeoff.order.LaggedElement;
import org.lagwright.takeoff.order.OrderList;
import org.lagwright.takeoff.order.OrderMaker;
import org.lagwright.takeoff.pack.PackInfo;
import org.lagwright.takeoff.price.Price;
import org.lagwright.takeoff.readiness.RequirementPack;
import org.lagwright.takeoff.scope.ScopePack;
import org.lagwright.takeoff.service.Classification;
import org.lagwright.takeoff.service.ServiceClassifier;
import org.lagwright.takeoff.service.ServicePack;
import org.lagwright.takeoff.service.UserMapping;
import org.lagwright.takeoff.settings.OrderSettings;
import org.lagwright.takeoff.settings.Settings;
import org.lagwright.takeoff.surroundings.LocationWords;
import org.lagwright.takeoff.thickness.ThicknessChooser;
import org.lagwright.takeoff.verify.Coverage;

/** One run over all models: classify, judge each element, put it on a line, add up. */
final class TakeoffRun {

  private final List<MepModel> models;
  private final Settings settings;
  private final ServicePack services = ServicePack.bundled();
  private final ScopePack scopePack = ScopePack.bundled();
  private final LocationWords locationWords = new LocationWords();
  private final ThicknessChooser chooser;
  private final ServiceClassifier classifier;
  private final MakingChooser makings;
  private final OrderMaker orders;

  TakeoffRun(List<MepModel> models, Settings settings) {
    this.models = models;
    this.settings = settings;
    this.chooser = new ThicknessChooser(settings.packs());
    chooser.requireKnown(settings.energyRule(), settings.materials().values());
    this.makings = new MakingChooser(MakingPack.bundled(), settings.making(), settings.methods());
    this.orders = orderMaker(settings.order());
    List<UserMapping> mappings =
        settings.services().stream().map(Settings.ServiceRule::mapping).toList();
    this.classifier = new ServiceClassifier(services, mappings, settings.temperaturesC());
  }

  Takeoff run() {
    List<MepElement> elements = models.stream().flatMap(m -> m.elements().stream()).toList();
    requireUnique(elements);
    SharedBoxes boxes = new SharedBoxes(elements);
    List<Judgement> judgements = judge(elements, boxes);
    LineBook book = new LineBook(judgements);
    LaggedElements lagged = new LaggedElements(services);
    List<TakenElement> withoutHours =
        judgements.stream().map(j -> j.taken(book.lineId(j.element().key()))).toList();
    OrderList order = order(withoutHours, lagged);
    LabourRun labour =
        new LabourRun(lagged, orders, order, settings.labour(), elements, book.lines());
    List<TakenElement> taken = withoutHours.stream().map(labour::withHours).toList();
    Labour hours = labour.labour();
    Price price = price(order, hours);
    return new Takeoff(
        models.stream().map(MepModel::file).toList(),
        settings,
        packs(),
        taken,
        book.lines(),
        QuestionBook.of(judgements),
        measurements(taken, lagged, boxes),
        order,
        hours,
        price,
        findings(judgements, labour, price),
        totals(judgements),
        models.stream().map(MepModel::surroundings).toList());
  }

  private OrderMaker orderMaker(OrderSettings order) {
    return new OrderMaker(
        order.changedFigures(), order.jacketRules(), order.hangerTable(), chooser.materials());
  }

  private @Nullable Price price(OrderList order, Labour hours) {
    return settings.price() == null
        ? null
        : Price.of(order.items(), hours.hours(), settings.price());
  }

  /** What the price list does not know is never worth nothing without a word. */
  private static List<Finding> pricesMissing(@Nullable Price price) {
    return price == null
        ? List.of()
        : price.withoutPrice().stream()
            .map(
                item ->
                    Finding.ofFile(
                        0,
                        TakeoffFinding.PRICE_MISSING,
                        Effect.NONE,
                        item.id() + ", " + item.description(),
                        item.unit()))
            .toList();
  }

  private List<Judgement> judge(List<MepElement> elements, SharedBoxes boxes) {
    Map<ElementKey, Classification> classified = classifier.classify(elements);
    ElementJudge judge =
        new ElementJudge(
            services,
            scopePack,
            settings,
            new Locations(settings.places(), locationWords),
            new InsulationJudge(services, settings, chooser, makings),
            OtherElements.of(models, elements, scopePack),
            boxes);
    Map<ElementKey, Judgement> judged = new HashMap<>();
    for (MepElement element : boxes.inOrder(elements)) {
      Judgement judgement = judge.judge(element, classified.get(element.key()));
      boxes.add(judgement);
      judged.put(element.key(), judgement);
    }
    return elements.stream().map(e -> Objects.requireNonNull(judged.get(e.key()))).toList();
  }

  private List<Measurement> measurements(
      List<TakenElement> taken, LaggedElements lagged, SharedBoxes boxes) {
    List<GeometricTruth> truths = new GeometricTruths(makings, lagged, boxes).of(taken);
    return settings.measurement().stream().map(method -> Measurement.of(method, truths)).toList();
  }

  private OrderList order(List<TakenElement> taken, LaggedElements lagged) {
    List<LaggedElement> elements =
        taken.stream().flatMap(element -> lagged.find(element).stream()).toList();
    List<MepElement> all = taken.stream().map(TakenElement::element).toList();
    return orders.make(elements, all, SharedBoxes.under(taken));
  }

  private List<PackInfo> packs() {
    return packs(chooser.packsInUse(settings.energyRule()));
  }

  /** Every pack that settings can choose from. */
  List<PackInfo> availablePacks() {
    List<PackInfo> packs = packs(chooser.listPacks());
    packs.add(RequirementPack.bundled().info());
    return packs;
  }

  private List<PackInfo> packs(List<PackInfo> ofThickness) {
    List<PackInfo> packs = new ArrayList<>(classifier.packs());
    packs.add(scopePack.info());
    packs.add(locationWords.info());
    packs.addAll(ofThickness);
    packs.add(makings.pack().info());
    packs.add(MeasurementPack.bundled().info());
    packs.addAll(orders.packs());
    packs.add(ClearancePack.bundled().info());
    packs.add(Coverage.materialWords());
    packs.addAll(settings.labour().packs());
    return packs;
  }

  /** What concerns all first, then model by model. */
  private List<Finding> findings(
      List<Judgement> judgements, LabourRun labour, @Nullable Price price) {
    return Stream.of(
            overall(judgements),
            labour.findings(),
            pricesMissing(price),
            findings(judgements, labour))
        .flatMap(List::stream)
        .toList();
  }

  /** What concerns the settings or many elements at once. */
  private List<Finding> overall(List<Judgement> judgements) {
    List<Finding> overall = new ArrayList<>();
    if (!models.isEmpty()) {
      overall.addAll(new MappingFindings(settings, services, judgements).list());
      overall.addAll(SharedAssumptions.findings(judgements));
      overall.addAll(SilentRules.findings(judgements, settings.energyRule(), services));
    }
    return overall;
  }

  /** Findings model by model: about the file, then element by element, the reader's first. */
  private List<Finding> findings(List<Judgement> judgements, LabourRun labour) {
    List<Finding> findings = new ArrayList<>();
    for (MepModel model : models) {
      Set<ElementKey> known = new HashSet<>();
      model.elements().forEach(element -> known.add(element.key()));
      Map<ElementKey, List<Finding>> byElement = new HashMap<>();
      for (Finding finding : model.findings()) {
        ElementKey element = finding.element();
        if (element == null || !known.contains(element)) {
          findings.add(finding);
        } else {
          byElement.computeIfAbsent(element, k -> new ArrayList<>()).add(finding);
        }
      }
      for (Judgement judgement : judgements) {
        if (known.contains(judgement.element().key())) {
          findings.addAll(byElement.getOrDefault(judgement.element().key(), List.of()));
          findings.addAll(judgement.findings());
          findings.addAll(labour.findings(judgement.element().key()));
        }
      }
    }
    return findings;
  }

  private static Totals totals(List<Judgement> judgements) {
    int onLines = 0;
    int leftOut = 0;
    int out = 0;
    Quantities sum = Quantities.NONE;
    for (Judgement judgement : judgements) {
      if (judgement.lineKey() != null) {
        onLines++;
        sum = sum.plus(judgement.quantities());
      } else if (judgement.leftOutWith() != null) {
        leftOut++;
      } else {
        out++;
      }
    }
    return new Totals(
        judgements.size(),
        onLines,
        leftOut,
        out,
        sum.lengthM(),
        sum.pieces(),
        sum.outerAreaM2(),
        sum.volumeM3());
  }

  private static void requireUnique(List<MepElement> elements) {
    Set<ElementKey> seen = new HashSet<>();
    for (MepElement element : elements) {
      if (!seen.add(Objects.requireNonNull(element.key()))) {
        throw new IllegalArgumentException("two elements share the key " + element.key());
      }
    }
  }
}
