package org.lagwright.ifc.extract;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.DoubleConsumer;
import org.jspecify.annotations.Nullable;
import org.lagwright.ifc.geometry.BoxReader;
import org.lagwright.ifc.geometry.CornerReader;
import org.lagwright.ifc.geometry.Placements;
import org.lagwright.ifc.geometry.RegionReader;
import org.lagwright.ifc.geometry.ShapeMeasurer;
import org.lagwright.ifc.model.Effect;
import org.lagwright.ifc.model.Finding;
import org.lagwright.ifc.model.MepElement;
import org.lagwright.ifc.model.MepModel;
import org.lagwright.ifc.model.MepSystem;
import org.lagwright.ifc.model.ModelFile;
import org.lagwright.ifc.model.ReadFinding;
import org.lagwright.ifc.packed.PackedElements;
import org.lagwright.ifc.packed.Vocabulary;
import org.lagwright.ifc.schema.IfcFile;
import org.lagwright.ifc.schema.IfcRecord;
import org.lagwright.ifc.schema.IfcSchema;
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

  /** Elements that one thread works on before it hands them on. */
  static final int RUN = 32;

  /** A model of more elements than this is folded while it is worked out, and packed for good. */
  private static final int LARGE = 10_000;

  private final IfcFile file;
  private final ReadOptions options;
  private final ModelFile source;
  private final Units units;
  private final Relations relations;
  private final PropertyReader properties;
  private final Placements placements;
  private final PlaceReader places;
  private final PortReader ports;
  private final DraftReader reader;
  private final BelongingReader belongings;
  private final ShapeMeasurer shapes;
  private final ProfileReader profiles;
  private final Workers workers;
  private final List<Finding> findings = new ArrayList<>();
  private final RepeatedProperties repeated = new RepeatedProperties();
  private final Circles circles;
  private final Vocabulary vocabulary;
  private final Placeholders.Seen seen = new Placeholders.Seen();

  /** What was seen in other files of the same exporter. */
  private final List<Placeholders.Seen> seenInOthers;

  private final long[] ids;

  /** True if elements are kept as bytes between the steps of the work, and afterwards. */
  private final boolean folding;

  private ModelExtractor(
      IfcFile file,
      ModelFile source,
      ReadOptions options,
      List<Placeholders.Seen> seenInOthers,
      Workers workers,
      int large) {
    this.seenInOthers = seenInOthers;
    this.ids = takenIn(file);
    this.folding = ids.length > large;
    this.options = options;
    this.workers = workers;
    this.file = file;
    this.source = source;
    this.vocabulary = new Vocabulary(source.index());
    this.units = new Units(file, source.index());
    this.relations = new Relations(file, workers);
    this.properties = new PropertyReader(file, relations, units);
    this.placements = new Placements(file, units.geometry());
    this.places =
        new PlaceReader(
            file,
            relations,
            properties,
            new Middles(file, placements, new CornerReader(units.geometry(), placements)),
            new Storeys(file, relations, placements, units.lengthM()),
            new Spaces(file, new RegionReader(file, units.geometry(), placements)));
    this.ports = new PortReader(file, relations, properties, placements, source.index());
    this.belongings = new BelongingReader(file, relations);
    this.shapes = new ShapeMeasurer(file, units.geometry(), placements);
    this.profiles = new ProfileReader(file, relations, shapes, units.lengthM());
    this.reader =
        new DraftReader(
            file,
            relations,
            properties,
            ports,
            shapes,
            units.lengthM(),
            vocabulary,
            belongings,
            folding);
    this.circles = new Circles(file, relations);
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
      IfcFile file, ModelFile source, ReadOptions options, List<Placeholders.Seen> seenInOthers) {
    try (Workers workers = Workers.forThisMachine()) {
      return new ModelExtractor(file, source, options, seenInOthers, workers, LARGE)
          .run(done -> {});
    }
  }

  private MepModel run(DoubleConsumer progress) {
    noteFile();
    Drafts drafts = drafts(progress);
    relations.forgetPartners();
    Placeholders placeholders = new Placeholders(seen, seenInOthers, source.index());
    List<Assembly> assemblies = measure(drafts, placeholders);
    Identities identities = new Identities();
    Set<MepSystem> systems = new LinkedHashSet<>();
    InsulationReader insulation = insulation(drafts);
    insulation.read();
    List<MepElement> elements = elements(drafts, insulation, identities, systems);
    findings.addAll(repeated.findings(source.index()));
    List<Long> met = new ArrayList<>(units.unreadable());
    met.addAll(belongings.metAgain());
    Collections.sort(met);
    Optional<Finding> circle = circles.finding(source.index(), met);
    if (circle.isPresent()) {
      findings.add(circle.get());
    }
    findings.addAll(identities.findings(elements));
    relations.forgetBelongings();
    return new MepModel(
        source,
        elements,
        List.copyOf(systems),
        findings,
        OtherProducts.of(file),
        GeoreferenceReader.read(file, placements, units),
        new BuildingParts(
            file, source.index(), new BoxReader(units.geometry(), placements), places),
        places,
        new Remeasurer(
            file,
            source,
            options,
            units,
            relations,
            properties,
            placements,
            placeholders,
            insulation.loose(),
            assemblies));
  }

  private Drafts drafts(DoubleConsumer progress) {
    Drafting drafting = new Drafting(progress);
    workers.inOrder(ids.length, RUN, drafting);
    return new Drafts(drafting.drafts);
  }

  /** Some drafts, and what was seen on them that concerns all. */
  private static final class Drafted {
    final List<Draft> drafts = new ArrayList<>(RUN);
    final List<List<PropertyReader.Repeated>> repeated = new ArrayList<>();
    final Placeholders.Seen seen = new Placeholders.Seen();
  }

  /** Reads every element by itself. */
  private final class Drafting implements Workers.Work<Drafted> {
    private final DoubleConsumer progress;
    final List<Draft> drafts = new ArrayList<>(ids.length);

    Drafting(DoubleConsumer progress) {
      this.progress = progress;
    }

    @Override
    public Drafted on(int from, int to) {
      Drafted drafted = new Drafted();
      for (int i = from; i < to; i++) {
        IfcRecord record = file.find(ids[i]);
        if (record != null && !relations.onlyDeclares(ids[i])) {
          Draft draft = reader.read(record, drafted.repeated);
          drafted.seen.look(draft);
          if (draft.kind == null || draft.kind.isLagged()) {
            draft.fold();
          } else {
            draft.foldMeasured();
          }
          drafted.drafts.add(draft);
        }
      }
      return drafted;
    }

    @Override
    public void take(Drafted done) {
      drafts.addAll(done.drafts);
      for (List<PropertyReader.Repeated> each : done.repeated) {
        repeated.addAll(each);
      }
      seen.addAll(done.seen);
      progress.accept((double) drafts.size() / ids.length);
    }
  }

  /**
   * @return elements of parts
   */
  private List<Assembly> measure(Drafts drafts, Placeholders placeholders) {
    findings.addAll(placeholders.findings());
    Measurers measurers = new Measurers(placeholders, profiles, properties, units.lengthM());
    int joined = new ModelMeasurer(drafts, measurers, workers).measure(options.joinToleranceM());
    if (joined > 0) {
      note(
          ReadFinding.ENDS_JOINED,
          Effect.ASSUMED,
          String.valueOf(joined),
          Sizes.millimetres(options.joinToleranceM()));
    }
    return new CountedByParts(drafts, relations).leaveOut();
  }

  /**
   * Makes the elements, some at a time.
   *
   * @param identities told the GlobalId of each
   * @param systems given every system that an element belongs to, in the order they turn up
   */
  private List<MepElement> elements(
      Drafts drafts, InsulationReader insulation, Identities identities, Set<MepSystem> systems) {
    Making making =
        new Making(
            drafts.all(),
            new ElementMaker(file, relations, properties, places, belongings, insulation, circles),
            identities,
            systems);
    workers.inOrder(drafts.all().size(), RUN, making);
    for (Draft draft : drafts.all()) {
      findings.addAll(draft.findings());
    }
    return folding ? new PackedElements(vocabulary, properties, making.packed) : making.elements;
  }

  private InsulationReader insulation(Drafts drafts) {
    MaterialLayers layers = new MaterialLayers(file, relations, units.lengthM());
    Coverings coverings =
        new Coverings(
            source.name(),
            belongings,
            new CoveringBodies(file, shapes, new CornerReader(units.geometry(), placements)),
            profiles,
            reader,
            layers,
            units.lengthM());
    InsulationChoice choice = new InsulationChoice(covering -> coverings, layers, units.lengthM());
    return new InsulationReader(relations, drafts, coverings, choice, reader);
  }

  /** Some elements, and what is wanted of all; packed if the model is large. */
  private record Made(
      List<MepElement> elements,
      PackedElements.@Nullable Packed packed,
      List<String> globalIds,
      Set<MepSystem> systems) {}

  /** Makes the elements. */
  private final class Making implements Workers.Work<Made> {
    private final List<Draft> drafts;
    private final ElementMaker maker;
    private final Identities identities;
    private final Set<MepSystem> systems;
    final List<MepElement> elements = new ArrayList<>();
    final List<PackedElements.Packed> packed = new ArrayList<>();

    Making(List<Draft> drafts, ElementMaker maker, Identities identities, Set<MepSystem> systems) {
      this.drafts = drafts;
      this.maker = maker;
      this.identities = identities;
      this.systems = systems;
    }

    @Override
    public Made on(int from, int to) {
      List<MepElement> made = new ArrayList<>(to - from);
      PackedElements.Piece piece = folding ? new PackedElements.Piece(vocabulary, to - from) : null;
      List<String> globalIds = new ArrayList<>(to - from);
      Set<MepSystem> itsSystems = new LinkedHashSet<>();
      for (Draft draft : drafts.subList(from, to)) {
        draft.open();
        MepElement element = maker.element(draft);
        if (piece == null) {
          made.add(element);
        } else {
          piece.add(element, draft.propertyCount);
        }
        globalIds.add(element.globalId());
        itsSystems.addAll(element.systems());
        KindReader.noteProxy(draft);
        draft.finish();
      }
      return new Made(made, piece == null ? null : piece.packed(), globalIds, itsSystems);
    }

    @Override
    public void take(Made done) {
      elements.addAll(done.elements);
      if (done.packed != null) {
        packed.add(done.packed);
      }
      for (String globalId : done.globalIds) {
        identities.add(globalId);
      }
      systems.addAll(done.systems);
    }
  }

  private void noteFile() {
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
    findings.addAll(units.findings());
    int orphans = ports.orphans();
    if (orphans > 0) {
      note(ReadFinding.PORT_WITHOUT_OWNER, Effect.NONE, String.valueOf(orphans));
    }
  }

  private void note(ReadFinding code, Effect effect, String... values) {
    findings.add(Finding.ofFile(source.index(), code, effect, values));
  }
}
