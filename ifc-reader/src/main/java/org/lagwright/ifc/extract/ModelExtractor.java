package org.lagwright.ifc.extract;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.TreeMap;
import java.util.function.DoubleConsumer;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.lagwright.ifc.geometry.Placements;
import org.lagwright.ifc.geometry.RegionReader;
import org.lagwright.ifc.geometry.Shape;
import org.lagwright.ifc.geometry.ShapeHints;
import org.lagwright.ifc.geometry.ShapeMeasurer;
import org.lagwright.ifc.model.Effect;
import org.lagwright.ifc.model.ElementKey;
import org.lagwright.ifc.model.Finding;
import org.lagwright.ifc.model.Form;
import org.lagwright.ifc.model.Kind;
import org.lagwright.ifc.model.MepElement;
import org.lagwright.ifc.model.MepModel;
import org.lagwright.ifc.model.ModelFile;
import org.lagwright.ifc.model.Point;
import org.lagwright.ifc.model.Port;
import org.lagwright.ifc.model.Property;
import org.lagwright.ifc.model.ReadFinding;
import org.lagwright.ifc.schema.IfcFile;
import org.lagwright.ifc.schema.IfcRecord;
import org.lagwright.ifc.schema.IfcSchema;
import org.lagwright.ifc.step.StepProblem;

/**
 * From an indexed file to a measured model. First every element by itself, then what takes several:
 * placeholders among properties, sizes from neighbours, insulation on hosts.
 */
public final class ModelExtractor {

  /** What is taken in; everything else that is an element of the building is counted by class. */
  private static final List<String> TAKEN_IN =
      List.of(
          "IfcDistributionElement",
          "IfcCovering",
          "IfcBuildingElementProxy",
          "IfcDiscreteAccessory");

  private static final int MAX_SYNTAX_FINDINGS = 20;

  private static final int PROGRESS_EVERY = 1000;

  private static final Shape NOT_MEASURED =
      new Shape(Form.UNKNOWN, null, null, null, null, List.of(), List.of());

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
  private final List<Finding> findings = new ArrayList<>();

  private ModelExtractor(IfcFile file, ModelFile source, ReadOptions options) {
    this.options = options;
    this.file = file;
    this.source = source;
    this.units = new Units(file, source.index());
    this.relations = new Relations(file);
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
    return new ModelExtractor(file, source, options).run(progress);
  }

  private MepModel run(DoubleConsumer progress) {
    noteFile();
    List<IfcRecord> takenIn = TAKEN_IN.stream().flatMap(e -> file.all(e).stream()).toList();
    Map<ElementKey, Draft> drafts = new LinkedHashMap<>();
    Map<ElementKey, IfcRecord> records = new LinkedHashMap<>();
    for (IfcRecord record : takenIn) {
      Draft draft = draft(record);
      drafts.put(draft.key, draft);
      records.put(draft.key, record);
      if (drafts.size() % PROGRESS_EVERY == 0) {
        progress.accept((double) drafts.size() / takenIn.size());
      }
    }
    measure(drafts);
    InsulationReader insulation =
        new InsulationReader(
            relations,
            belongings,
            drafts,
            covering -> body(Objects.requireNonNull(records.get(covering.key))),
            units.lengthM());
    insulation.read();
    List<MepElement> elements = new ArrayList<>();
    for (Draft draft : drafts.values()) {
      findings.addAll(draft.findings());
      elements.add(element(draft, Objects.requireNonNull(records.get(draft.key)), insulation));
    }
    findings.addAll(properties.findings(source.index()));
    noteIdentities(elements);
    return new MepModel(
        source,
        elements,
        belongings.systemsSeen(),
        findings,
        otherProducts(),
        GeoreferenceReader.read(file, placements));
  }

  private Draft draft(IfcRecord record) {
    long typeId = relations.typeOf(record.id());
    IfcRecord type = typeId == 0 ? null : file.find(typeId);
    Names names = Names.of(record, type);
    KindReader.Reading reading = KindReader.read(record, type, names);
    List<Property> own = properties.propertiesOf(record.id());
    List<Port> itsPorts = ports.portsOf(record.id());
    String globalId = record.text("GlobalId");
    return new Draft(
        new ElementKey(source.index(), record.id()),
        globalId == null ? "" : globalId,
        record.entityName(),
        names,
        own,
        itsPorts,
        shape(record, names, reading, own, itsPorts),
        reading,
        record.is("IfcFlowSegment"));
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
      return NOT_MEASURED;
    }
    List<Point> portsM = itsPorts.stream().map(Port::positionM).filter(Objects::nonNull).toList();
    Double lengthM =
        PropertyNames.of(own, PropertyNames.Role.LENGTH)
            .flatMap(p -> PropertyNames.lengthM(p, units.lengthM()).stream())
            .findFirst()
            .orElse(null);
    boolean straight = record.is("IfcFlowSegment");
    return shapes.measure(
        record,
        new ShapeHints(
            portsM, lengthM, straight, () -> SizeTexts.sides(own, names, units.lengthM())));
  }

  private Shape body(IfcRecord covering) {
    return shapes.measure(covering, ShapeHints.NONE);
  }

  /** Segments first, as fittings take over their sizes. */
  private void measure(Map<ElementKey, Draft> drafts) {
    Placeholders placeholders = new Placeholders(drafts.values(), source.index());
    findings.addAll(placeholders.findings());
    double lengthUnitM = units.lengthM();
    ProfileReader profiles = new ProfileReader(file, relations, shapes, lengthUnitM);
    SegmentSections sections = new SegmentSections(placeholders, profiles, lengthUnitM);
    SegmentMeasurer segments = new SegmentMeasurer(placeholders, sections, lengthUnitM);
    FittingMeasurer fittings =
        new FittingMeasurer(new Neighbours(drafts), placeholders, profiles, lengthUnitM);
    drafts.values().stream().filter(Draft::isSegment).forEach(segments::measure);
    drafts.values().forEach(segments::settleKind);
    int joined = TouchingEnds.join(drafts.values(), options.joinToleranceM());
    if (joined > 0) {
      note(
          ReadFinding.ENDS_JOINED,
          Effect.ASSUMED,
          String.valueOf(joined),
          Sizes.millimetres(options.joinToleranceM()));
    }
    drafts.values().stream().filter(Draft::isLaggedItem).forEach(fittings::measure);
  }

  private MepElement element(Draft draft, IfcRecord record, InsulationReader insulation) {
    return MepElement.builder(draft.key, draft.globalId, draft.ifcClass)
        .named(
            draft.names.own(), draft.names.objectType(), draft.names.typeName(), draft.names.tag())
        .is(Objects.requireNonNull(draft.kind), draft.form)
        .section(draft.section)
        .ends(draft.ends)
        .nominalSize(draft.nominalSize)
        .lengthM(draft.lengthM)
        .bend(draft.angleDeg, draft.bendRadiusM)
        .ports(draft.joints)
        .systems(belongings.systemsOf(draft.key.step()))
        .place(places.placeOf(record, draft))
        .properties(draft.properties)
        .materials(belongings.materialsOf(draft.key.step()))
        .layers(belongings.layersOf(record))
        .existingInsulation(insulation.of(draft.key))
        .lining(insulation.liningOf(draft.key))
        .openEnds(OpenEnds.of(draft))
        .build();
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

  private void noteIdentities(List<MepElement> elements) {
    Map<String, Long> uses =
        elements.stream()
            .collect(
                Collectors.groupingBy(MepElement::globalId, TreeMap::new, Collectors.counting()));
    Map<String, MepElement> first =
        elements.stream()
            .collect(Collectors.toMap(MepElement::globalId, Function.identity(), (a, b) -> a));
    uses.forEach(
        (globalId, count) -> {
          ElementKey key = Objects.requireNonNull(first.get(globalId)).key();
          if (globalId.isEmpty()) {
            findings.add(Finding.about(key, ReadFinding.MISSING_GLOBAL_ID, Effect.NONE));
          } else if (count > 1) {
            findings.add(
                Finding.about(
                    key,
                    ReadFinding.DUPLICATE_GLOBAL_ID,
                    Effect.NONE,
                    globalId,
                    String.valueOf(count)));
          }
        });
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
