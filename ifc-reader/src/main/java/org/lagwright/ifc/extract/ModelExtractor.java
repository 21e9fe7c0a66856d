package org.lagwright.ifc.extract;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.TreeMap;
import java.util.function.DoubleConsumer;
import org.lagwright.ifc.geometry.BoxReader;
import org.lagwright.ifc.geometry.Placements;
import org.lagwright.ifc.geometry.RegionReader;
import org.lagwright.ifc.geometry.Shape;
import org.lagwright.ifc.geometry.ShapeHints;
import org.lagwright.ifc.geometry.ShapeMeasurer;
import org.lagwright.ifc.model.Effect;
import org.lagwright.ifc.model.Finding;
import org.lagwright.ifc.model.Form;
import org.lagwright.ifc.model.Kind;
import org.lagwright.ifc.model.MepElement;
import org.lagwright.ifc.model.MepModel;
import org.lagwright.ifc.model.MepSystem;
import org.lagwright.ifc.model.ModelFile;
import org.lagwright.ifc.model.Point;
import org.lagwright.ifc.model.Port;
import org.lagwright.ifc.model.Property;
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

  private static final int MAX_SYNTAX_FINDINGS = 20;

  /** Elements that one thread works on before it hands them on. */
  private static final int PIECE = 64;

  private final IfcFile file;
  private final ReadOptions options;
  private final ModelFile source;
  private final Units units;
  private final Relations relations;
  private final PropertyReader properties;
  private final Placements placements;
  private final PlaceReader places;
  private final PortReader ports;
  private final BelongingReader belongings;
  private final ShapeMeasurer shapes;
  private final Workers workers;
  private final List<Finding> findings = new ArrayList<>();
  private final RepeatedProperties repeated = new RepeatedProperties();
  private final Circles circles;
  private final Vocabulary vocabulary;
  private final Placeholders.Seen seen = new Placeholders.Seen();

  private ModelExtractor(IfcFile file, ModelFile source, ReadOptions options, Workers workers) {
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
            placements,
            new Storeys(file, relations, placements, units.lengthM()),
            new Spaces(file, new RegionReader(file, units.geometry(), placements)));
    this.ports = new PortReader(file, relations, placements, source.index());
    this.belongings = new BelongingReader(file, relations);
    this.shapes = new ShapeMeasurer(file, units.geometry(), placements);
    this.circles = new Circles(file, relations);
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
    return extract(file, source, options, progress, Runtime.getRuntime().availableProcessors());
  }

  static MepModel extract(
      IfcFile file, ModelFile source, ReadOptions options, DoubleConsumer progress, int threads) {
    try (Workers workers = new Workers(threads)) {
      return new ModelExtractor(file, source, options, workers).run(progress);
    }
  }

  private MepModel run(DoubleConsumer progress) {
    noteFile();
    Drafts drafts = drafts(progress);
    relations.forgetPartners();
    measure(drafts);
    Identities identities = new Identities();
    Set<MepSystem> systems = new LinkedHashSet<>();
    List<MepElement> elements = elements(drafts, identities, systems);
    findings.addAll(repeated.findings(source.index()));
    List<Long> met = new ArrayList<>(units.unreadable());
    met.addAll(belongings.metAgain());
    Collections.sort(met);
    circles.finding(source.index(), met).ifPresent(findings::add);
    findings.addAll(identities.findings(elements));
    relations.forgetBelongings();
    return new MepModel(
        source,
        elements,
        List.copyOf(systems),
        findings,
        otherProducts(),
        GeoreferenceReader.read(file, placements),
        new BuildingParts(
            file, source.index(), new BoxReader(units.geometry(), placements), places));
  }

  private Drafts drafts(DoubleConsumer progress) {
    long[] ids = TAKEN_IN.stream().flatMapToLong(e -> Arrays.stream(file.ids(e))).toArray();
    List<Draft> drafts = new ArrayList<>(ids.length);
    workers.inOrder(
        ids.length,
        PIECE,
        (from, to) -> draft(ids, from, to),
        piece -> {
          drafts.addAll(piece.drafts);
          piece.repeated.forEach(repeated::addAll);
          seen.addAll(piece.seen);
          progress.accept((double) drafts.size() / ids.length);
        });
    return new Drafts(drafts);
  }

  /** Some drafts, and what was seen on them that concerns all. */
  private static final class Drafted {
    final List<Draft> drafts = new ArrayList<>(PIECE);
    final List<List<PropertyReader.Repeated>> repeated = new ArrayList<>();
    final Placeholders.Seen seen = new Placeholders.Seen();
  }

  private Drafted draft(long[] ids, int from, int to) {
    Drafted drafted = new Drafted();
    for (int i = from; i < to; i++) {
      IfcRecord record = file.find(ids[i]);
      if (record != null) {
        Draft draft = draft(record, drafted.repeated);
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

  /**
   * Makes the elements, some at a time.
   *
   * @param identities told the GlobalId of each
   * @param systems given every system that an element belongs to, in the order they turn up
   */
  private List<MepElement> elements(Drafts drafts, Identities identities, Set<MepSystem> systems) {
    InsulationReader insulation =
        new InsulationReader(file, relations, belongings, drafts, shapes, units.lengthM());
    insulation.read();
    List<Draft> ordered = drafts.all();
    List<PackedElements.Packed> packed = new ArrayList<>();
    workers.inOrder(
        ordered.size(),
        PIECE,
        (from, to) -> piece(ordered.subList(from, to), insulation),
        piece -> {
          packed.add(piece.packed);
          piece.globalIds.forEach(identities::add);
          systems.addAll(piece.systems);
        });
    for (Draft draft : ordered) {
      findings.addAll(draft.findings());
    }
    return new PackedElements(vocabulary, properties::propertiesOf, packed);
  }

  /** Some elements, and what is wanted of all. */
  private record Piece(
      PackedElements.Packed packed, List<String> globalIds, Set<MepSystem> systems) {}

  private Piece piece(List<Draft> drafts, InsulationReader insulation) {
    PackedElements.Piece piece = new PackedElements.Piece(vocabulary, drafts.size());
    List<String> globalIds = new ArrayList<>(drafts.size());
    Set<MepSystem> systems = new LinkedHashSet<>();
    for (Draft draft : drafts) {
      draft.open();
      MepElement element = element(draft, insulation);
      piece.add(element, draft.propertyCount);
      globalIds.add(element.globalId());
      systems.addAll(element.systems());
      KindReader.noteProxy(draft);
      draft.finish();
    }
    return new Piece(piece.packed(), globalIds, systems);
  }

  private Draft draft(IfcRecord record, List<List<PropertyReader.Repeated>> repeatedToo) {
    long typeId = relations.typeOf(record.id());
    IfcRecord type = typeId == 0 ? null : file.find(typeId);
    Names names = Names.of(record, type);
    KindReader.Reading reading = KindReader.read(record, type, names);
    PropertyReader.Reading own = properties.wantedOf(record.id());
    List<Port> itsPorts = ports.portsOf(record.id());
    if (!own.repeated().isEmpty()) {
      repeatedToo.add(own.repeated());
    }
    return new Draft(
        record.id(),
        new Worded(record.entityName(), names, own.properties()),
        Drawn.of(shape(record, names, reading, own.properties(), itsPorts), itsPorts),
        reading,
        own.all(),
        record.is("IfcFlowSegment"),
        vocabulary);
  }

  /**
   * Only what is lagged is measured; apparatus, terminals and coverings would cost and not count.
   */
  private Shape shape(
      IfcRecord record,
      Names names,
      KindReader.Reading reading,
      List<Property> own,
      List<Port> itsPorts) {
    Kind kind = reading.kind();
    if (kind != null && !kind.isLagged()) {
      return Shape.NOTHING;
    }
    List<Point> portsM = new ArrayList<>(itsPorts.size());
    for (Port port : itsPorts) {
      if (port.positionM() != null) {
        portsM.add(port.positionM());
      }
    }
    Double lengthM = null;
    for (Property p : PropertyNames.listOf(own, PropertyNames.Role.LENGTH)) {
      lengthM = lengthM == null ? PropertyNames.lengthM(p, units.lengthM()).orElse(null) : lengthM;
    }
    boolean straight = record.is("IfcFlowSegment");
    return shapes.measure(
        record,
        new ShapeHints(
            portsM,
            lengthM,
            straight,
            () -> SizeTexts.sides(own, names, units.lengthM()),
            () ->
                PropertyNames.of(own, PropertyNames.Role.OUTSIDE_DIAMETER)
                    .flatMap(p -> PropertyNames.lengthM(p, units.lengthM()).stream())
                    .toList()));
  }

  /** Segments first, as fittings take over their sizes. */
  private void measure(Drafts drafts) {
    Placeholders placeholders = new Placeholders(seen, source.index());
    findings.addAll(placeholders.findings());
    double lengthUnitM = units.lengthM();
    ProfileReader profiles = new ProfileReader(file, relations, shapes, lengthUnitM);
    SegmentSections sections = new SegmentSections(placeholders, profiles, lengthUnitM);
    SegmentMeasurer segments = new SegmentMeasurer(placeholders, sections, lengthUnitM);
    Neighbours neighbours = new Neighbours(drafts, new PortSizes(properties, lengthUnitM));
    FittingMeasurer fittings = new FittingMeasurer(neighbours, placeholders, profiles, lengthUnitM);
    List<Draft> ordered = drafts.all();
    workers.inOrder(
        ordered.size(),
        PIECE,
        (from, to) -> {
          List<Draft> piece = ordered.subList(from, to);
          for (Draft draft : piece) {
            if (draft.kind == null || draft.isSegment()) {
              measure(draft, segments);
            }
          }
          return piece;
        },
        piece -> {});
    int joined =
        TouchingEnds.join(drafts.all(), options.joinToleranceM())
            + Taps.join(drafts.all(), options.joinToleranceM());
    if (joined > 0) {
      note(
          ReadFinding.ENDS_JOINED,
          Effect.ASSUMED,
          String.valueOf(joined),
          Sizes.millimetres(options.joinToleranceM()));
    }
    List<Draft> items = new ArrayList<>();
    for (Draft draft : ordered) {
      if (draft.isSegment()) {
        segments.takeOver(draft, neighbours);
      }
      if (draft.isLaggedItem()) {
        items.add(draft);
      }
    }
    measureItems(items, fittings);
  }

  private static void measure(Draft draft, SegmentMeasurer segments) {
    draft.open();
    if (draft.isSegment()) {
      segments.measure(draft);
    }
    segments.settleKind(draft);
    if (draft.isLaggedItem()) {
      draft.fold();
    } else {
      draft.foldMeasured();
    }
  }

  /** First the forms of all, as the size of one is taken through others; then all sizes. */
  private void measureItems(List<Draft> items, FittingMeasurer fittings) {
    List<Form> forms = new ArrayList<>(items.size());
    workers.inOrder(
        items.size(),
        PIECE,
        (from, to) -> {
          List<Form> piece = new ArrayList<>(to - from);
          for (Draft item : items.subList(from, to)) {
            item.open();
            piece.add(fittings.formOf(item));
            item.close();
          }
          return piece;
        },
        forms::addAll);
    for (int i = 0; i < items.size(); i++) {
      items.get(i).form = forms.get(i);
    }
    workers.inOrder(
        items.size(),
        PIECE,
        (from, to) -> {
          for (Draft item : items.subList(from, to)) {
            item.open();
            fittings.measure(item);
            item.foldMeasured();
          }
          return to;
        },
        done -> {});
  }

  private MepElement element(Draft draft, InsulationReader insulation) {
    IfcRecord record = Objects.requireNonNull(file.find(draft.step()));
    String globalId = record.text("GlobalId");
    MepElement element =
        MepElement.builder(draft.key(), globalId == null ? "" : globalId, draft.ifcClass())
            .named(
                draft.names().own(),
                draft.names().objectType(),
                draft.names().typeName(),
                draft.names().tag())
            .is(Objects.requireNonNull(draft.kind), draft.form)
            .section(draft.section())
            .width(SectionWidth.of(draft))
            .ends(draft.ends())
            .nominalSize(draft.nominalSize())
            .lengthM(draft.lengthM())
            .bend(draft.angleDeg(), draft.bendRadiusM())
            .eccentricityM(draft.eccentricityM())
            .branchLengthM(draft.branchLengthM())
            .ports(draft.joints())
            .systems(belongings.systemsOf(draft.step()))
            .place(places.placeOf(record, draft))
            .properties(properties.propertiesOf(draft.step(), draft.propertyCount))
            .materials(belongings.materialsOf(draft.step()))
            .layers(belongings.layersOf(record))
            .existingInsulation(insulation.of(draft.key()))
            .lining(insulation.liningOf(draft.key()))
            .openEnds(OpenEnds.of(draft))
            .build();
    circles.suspect(record, element, draft);
    return element;
  }

  private void noteFile() {
    if (!IfcSchema.isReleased(source.schema())) {
      note(ReadFinding.DRAFT_SCHEMA, Effect.NONE, source.schema(), file.schema().name());
    }
    for (StepProblem problem :
        file.step().problems().stream().limit(MAX_SYNTAX_FINDINGS).toList()) {
      note(ReadFinding.SYNTAX, Effect.NONE, String.valueOf(problem.line()), problem.what());
    }
    file.step()
        .counts()
        .forEach(
            (keyword, count) -> {
              if (!file.schema().knows(keyword)) {
                note(ReadFinding.UNKNOWN_ENTITY, Effect.NONE, keyword, String.valueOf(count));
              }
            });
    findings.addAll(units.findings());
    int orphans = ports.orphans();
    if (orphans > 0) {
      note(ReadFinding.PORT_WITHOUT_OWNER, Effect.NONE, String.valueOf(orphans));
    }
  }

  private void note(ReadFinding code, Effect effect, String... values) {
    findings.add(Finding.ofFile(source.index(), code, effect, values));
  }

  /** Elements of the building that are no services, by class as the standard spells it. */
  private Map<String, Integer> otherProducts() {
    Map<String, Integer> others = new TreeMap<>();
    file.step()
        .counts()
        .forEach(
            (keyword, count) -> {
              boolean takenIn = TAKEN_IN.stream().anyMatch(e -> file.schema().isA(keyword, e));
              if (file.schema().isA(keyword, "IfcElement") && !takenIn) {
                others.put(file.schema().spelling(keyword), count);
              }
            });
    return others;
  }
}
