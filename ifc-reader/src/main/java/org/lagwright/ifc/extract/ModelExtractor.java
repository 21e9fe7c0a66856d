package org.lagwright.ifc.extract;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.DoubleConsumer;
import org.lagwright.ifc.extract.draft.Assembly;
import org.lagwright.ifc.extract.draft.Draft;
import org.lagwright.ifc.extract.draft.Drafts;
import org.lagwright.ifc.extract.graph.Circles;
import org.lagwright.ifc.extract.insulation.InsulationReader;
import org.lagwright.ifc.extract.measure.Placeholders;
import org.lagwright.ifc.extract.measure.SeenValues;
import org.lagwright.ifc.extract.place.PlaceReader;
import org.lagwright.ifc.extract.property.OpenedFile;
import org.lagwright.ifc.extract.text.InWords;
import org.lagwright.ifc.geometry.BoxReader;
import org.lagwright.ifc.model.Effect;
import org.lagwright.ifc.model.Finding;
import org.lagwright.ifc.model.MepElement;
import org.lagwright.ifc.model.MepModel;
import org.lagwright.ifc.model.ModelFile;
import org.lagwright.ifc.model.ReadFinding;
import org.lagwright.ifc.schema.IfcFile;
import org.lagwright.ifc.schema.IfcSchema;
import org.lagwright.ifc.schema.MissingRecords;
import org.lagwright.ifc.step.StepProblem;
import org.lagwright.ifc.threads.Workers;

/**
 * From an indexed file to a measured model. First every element by itself, then what takes several:
 * placeholders among properties, sizes from neighbours, insulation on hosts.
 */
public final class ModelExtractor {

  /** What is taken in; everything else that is an element of the building is counted by class. */
  static final List<String> TAKEN_IN =
      List.of(
          "IfcDistributionElement",
          "IfcCovering",
          "IfcBuildingElementProxy",
          "IfcDiscreteAccessory");

  private static final int SYNTAX_FINDINGS = 20;

  /** A model of more elements than this is folded while it is worked out, and packed for good. */
  private static final int LARGE = 10_000;

  private final OpenedFile opened;
  private final ReadOptions options;
  private final ElementReaders readers;
  private final PlaceReader places;
  private final Workers workers;
  private final Circles circles;
  private final List<Finding> findings = new ArrayList<>();

  /** What was seen in other files of the same exporter. */
  private final List<SeenValues> seenInOthers;

  private final long[] ids;

  /** True if elements are kept as bytes between the steps of the work, and afterwards. */
  private final boolean folding;

  private ModelExtractor(
      IfcFile file,
      ModelFile source,
      ReadOptions options,
      List<SeenValues> seenInOthers,
      Workers workers,
      int large) {
    this.seenInOthers = seenInOthers;
    this.ids = takenIn(file);
    this.folding = ids.length > large;
    this.options = options;
    this.workers = workers;
    this.opened = OpenedFile.of(file, source, workers);
    this.readers = new ElementReaders(opened, folding);
    this.places = new PlaceReader(opened);
    this.circles = new Circles(file, opened.relations());
  }

  private static long[] takenIn(IfcFile file) {
    long[] ids = new long[0];
    for (String entity : TAKEN_IN) {
      long[] more = file.ids(entity);
      ids = Arrays.copyOf(ids, ids.length + more.length);
      System.arraycopy(more, 0, ids, ids.length - more.length, more.length);
    }
    return ids;
  }

  /**
   * Extracts the whole model with the default options.
   *
   * @param progress told how much of the elements is measured, 0 to 1, now and then
   */
  public static MepModel extract(IfcFile file, ModelFile source, DoubleConsumer progress) {
    return extract(file, source, ReadOptions.DEFAULT, progress);
  }

  /**
   * Extracts the whole model.
   *
   * @param progress told how much of the elements is measured, 0 to 1, now and then
   */
  public static MepModel extract(
      IfcFile file, ModelFile source, ReadOptions options, DoubleConsumer progress) {
    try (Workers workers = Workers.forThisMachine()) {
      return extract(file, source, options, progress, workers, LARGE);
    }
  }

  /**
   * @param large a model of more elements than this is folded; that changes nothing but the memory
   */
  static MepModel extract(
      IfcFile file,
      ModelFile source,
      ReadOptions options,
      DoubleConsumer progress,
      Workers workers,
      int large) {
    return new ModelExtractor(file, source, options, List.of(), workers, large).run(progress);
  }

  /**
   * Extracts a model once more.
   *
   * @param seenInOthers what was seen in other files of the same exporter
   */
  static MepModel again(
      IfcFile file, ModelFile source, ReadOptions options, List<SeenValues> seenInOthers) {
    try (Workers workers = Workers.forThisMachine()) {
      return new ModelExtractor(file, source, options, seenInOthers, workers, LARGE)
          .run(done -> {});
    }
  }

  private MepModel run(DoubleConsumer progress) {
    noteFile();
    Drafting drafting = new Drafting(opened, readers.drafts, ids, progress);
    workers.inOrder(ids.length, Drafts.RUN, drafting);
    Drafts drafts = new Drafts(drafting.drafts());
    opened.relations().forgetPartners();
    Placeholders placeholders =
        new Placeholders(drafting.seen(), seenInOthers, opened.source().index());
    List<Assembly> assemblies = measure(drafts, placeholders);
    InsulationReader insulation =
        new InsulationReader(
            opened.relations(),
            drafts,
            readers.coverings,
            readers.choice(covering -> readers.coverings),
            readers.drafts);
    insulation.read();
    Making making = make(drafts, insulation);
    List<MepElement> elements = making.elements();
    findings.addAll(drafting.repeated().findings(opened.source().index()));
    noteCircles();
    noteMissingRecords();
    findings.addAll(making.identities().findings(elements));
    opened.relations().forgetBelongings();
    return new MepModel(
        opened.source(),
        elements,
        making.systems(),
        findings,
        OtherProducts.of(opened.file()),
        GeoreferenceReader.read(opened.file(), opened.placements(), opened.units()),
        buildingParts(),
        places,
        new Remeasurer(opened, options, placeholders, insulation.loose(), assemblies));
  }

  private BuildingParts buildingParts() {
    BoxReader boxes = new BoxReader(opened.units().geometry(), opened.placements());
    return new BuildingParts(opened.file(), opened.source().index(), boxes, places);
  }

  /**
   * @return elements of parts
   */
  private List<Assembly> measure(Drafts drafts, Placeholders placeholders) {
    findings.addAll(placeholders.findings());
    Measurers measurers = new Measurers(placeholders, readers, opened);
    int joined = new ModelMeasurer(drafts, measurers, workers).measure(options.joinToleranceM());
    if (joined > 0) {
      note(
          ReadFinding.ENDS_JOINED,
          Effect.ASSUMED,
          String.valueOf(joined),
          InWords.millimetres(options.joinToleranceM()));
    }
    return new CountedByParts(drafts, opened.relations()).leaveOut();
  }

  private Making make(Drafts drafts, InsulationReader insulation) {
    ElementMaker maker = new ElementMaker(opened, places, readers.belongings, insulation, circles);
    Making making =
        new Making(drafts.all(), maker, opened.properties(), folding ? readers.vocabulary : null);
    workers.inOrder(drafts.all().size(), Drafts.RUN, making);
    for (Draft draft : drafts.all()) {
      findings.addAll(draft.findings());
    }
    return making;
  }

  private void noteCircles() {
    List<Long> met = new ArrayList<>(opened.units().unreadable());
    met.addAll(readers.belongings.metAgain());
    Collections.sort(met);
    Optional<Finding> circle = circles.finding(opened.source().index(), met);
    circle.ifPresent(findings::add);
  }

  private void noteMissingRecords() {
    MissingRecords missing = opened.file().missing();
    if (!missing.isEmpty()) {
      note(ReadFinding.RECORDS_MISSING, Effect.NONE, missing.count(), missing.named());
    }
  }

  private void noteFile() {
    IfcFile file = opened.file();
    ModelFile source = opened.source();
    if (!IfcSchema.isReleased(source.schema())) {
      note(ReadFinding.DRAFT_SCHEMA, Effect.NONE, source.schema(), file.schema().name());
    }
    List<StepProblem> problems = file.step().problems();
    for (StepProblem problem : problems.subList(0, Math.min(problems.size(), SYNTAX_FINDINGS))) {
      note(ReadFinding.SYNTAX, Effect.NONE, String.valueOf(problem.line()), problem.what());
    }
    for (Map.Entry<String, Integer> each : file.step().counts().entrySet()) {
      if (!file.schema().knows(each.getKey())) {
        String count = String.valueOf(each.getValue());
        // a record of several classes at once has no keyword of its own
        String entity = each.getKey().isEmpty() ? "A complex instance" : each.getKey();
        note(ReadFinding.UNKNOWN_ENTITY, Effect.NONE, entity, count);
      }
    }
    findings.addAll(opened.units().findings());
    int orphans = readers.ports.orphans();
    if (orphans > 0) {
      note(ReadFinding.PORT_WITHOUT_OWNER, Effect.NONE, String.valueOf(orphans));
    }
  }

  private void note(ReadFinding code, Effect effect, String... values) {
    findings.add(Finding.ofFile(opened.source().index(), code, effect, values));
  }
}
