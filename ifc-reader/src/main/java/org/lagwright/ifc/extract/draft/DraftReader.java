package org.lagwright.ifc.extract.draft;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import org.jspecify.annotations.Nullable;
import org.lagwright.ifc.extract.property.OpenedFile;
import org.lagwright.ifc.extract.property.PropertyReader;
import org.lagwright.ifc.extract.property.Relations;
import org.lagwright.ifc.extract.text.PropertyLengths;
import org.lagwright.ifc.extract.text.PropertyNames;
import org.lagwright.ifc.extract.text.SizeLists;
import org.lagwright.ifc.extract.text.Words;
import org.lagwright.ifc.geometry.ShapeMeasurer;
import org.lagwright.ifc.geometry.shape.Shape;
import org.lagwright.ifc.geometry.shape.ShapeHints;
import org.lagwright.ifc.geometry.shape.StatedSizes;
import org.lagwright.ifc.model.Effect;
import org.lagwright.ifc.model.Form;
import org.lagwright.ifc.model.Kind;
import org.lagwright.ifc.model.Point;
import org.lagwright.ifc.model.Port;
import org.lagwright.ifc.model.Property;
import org.lagwright.ifc.model.ReadFinding;
import org.lagwright.ifc.packed.Vocabulary;
import org.lagwright.ifc.schema.IfcFile;
import org.lagwright.ifc.schema.IfcRecord;

/** Reads one element by itself: names, kind, wanted properties, ports and shape. */
public final class DraftReader {

  private static final String CONTROLLER = "it is a flow controller that nothing names";

  private final IfcFile file;
  private final Relations relations;
  private final PropertyReader properties;
  private final PortReader ports;
  private final ShapeMeasurer shapes;
  private final double lengthUnitM;
  private final Vocabulary vocabulary;
  private final AirLines air;

  /** True if elements are folded while they wait for the next step of the work. */
  private final boolean folding;

  /** Reads elements with these. */
  public DraftReader(
      OpenedFile opened,
      PortReader ports,
      ShapeMeasurer shapes,
      AirLines air,
      Vocabulary vocabulary,
      boolean folding) {
    this.file = opened.file();
    this.relations = opened.relations();
    this.properties = opened.properties();
    this.lengthUnitM = opened.lengthUnitM();
    this.ports = ports;
    this.shapes = shapes;
    this.air = air;
    this.vocabulary = vocabulary;
    this.folding = folding;
  }

  /**
   * Reads an element.
   *
   * @param repeatedToo given the properties that stand twice in a set, if there are any
   */
  public Draft read(IfcRecord record, List<List<PropertyReader.Repeated>> repeatedToo) {
    return read(record, ports.portsOf(record.id()), repeatedToo);
  }

  /**
   * Reads an element.
   *
   * @param itsPorts as the file has them
   * @param repeatedToo given the properties that stand twice in a set, if there are any
   */
  public Draft read(
      IfcRecord record, List<Port> itsPorts, List<List<PropertyReader.Repeated>> repeatedToo) {
    Recognised what = recognised(record);
    PropertyReader.Reading own = properties.wantedOf(record.id());
    if (!own.repeated().isEmpty()) {
      repeatedToo.add(own.repeated());
    }
    List<Property> wanted =
        what.isStraight() ? SizeLists.withoutListed(own.properties()) : own.properties();
    Drawn drawn = drawn(what.kind(), shape(what, wanted, itsPorts), itsPorts, wanted);
    Draft draft =
        new Draft(
            record.id(),
            new Worded(record.entityName(), what.namesAskedOf(drawn), wanted),
            drawn,
            what.reading(),
            own.all(),
            record.is("IfcFlowSegment"),
            vocabulary,
            folding);
    what.noteAssumptions(draft);
    return draft;
  }

  /** What an element is taken for, and what it was recognised by. */
  private record Recognised(
      IfcRecord record,
      @Nullable IfcRecord type,
      Names names,
      KindReader.Reading reading,
      @Nullable String airWhy) {

    @Nullable Kind kind() {
      return reading.kind();
    }

    boolean isStraight() {
      Kind kind = kind();
      return kind == null ? record.is("IfcFlowSegment") : kind.isSegment();
    }

    /** Descriptions, which speak of much, are asked only where no body tells the size. */
    Names namesAskedOf(Drawn drawn) {
      Kind kind = kind();
      boolean unsized = (kind == null || kind.isLagged()) && drawn.shape().section() == null;
      return unsized ? names.described(record, type) : names;
    }

    void noteAssumptions(Draft draft) {
      if (KindReader.isAssumedValve(reading, record, type, names)) {
        draft.note(ReadFinding.KIND_ASSUMED, Effect.ASSUMED, "valve or damper", CONTROLLER);
      }
      if (airWhy != null) {
        String duct = KindReader.inWords(Objects.requireNonNull(kind()));
        draft.note(ReadFinding.KIND_ASSUMED, Effect.ASSUMED, duct, airWhy);
      }
    }
  }

  private Recognised recognised(IfcRecord record) {
    IfcRecord type = typeOf(record.id());
    Names names = Names.of(record, type);
    KindReader.Reading reading = KindReader.read(record, type, names);
    String airWhy = KindReader.isOpen(reading, record, type, names) ? air.why(record) : null;
    if (airWhy != null) {
      Kind duct = KindReader.byShape(record.is("IfcFlowSegment"), false);
      reading = new KindReader.Reading(duct, reading.form(), reading.worded());
    }
    return new Recognised(record, type, names, reading, airWhy);
  }

  private @Nullable IfcRecord typeOf(long id) {
    long typeId = relations.typeOf(id);
    return typeId == 0 ? null : file.find(typeId);
  }

  /**
   * A part of a pipe or duct that is its insulation, as a covering; it is no element of the model.
   *
   * @return null if the record is none
   */
  public @Nullable Draft insulationPart(long id) {
    IfcRecord record = file.find(id);
    if (record == null || !record.is("IfcBuildingElementPart")) {
      return null;
    }
    Names names = Names.of(record, typeOf(id));
    boolean insulation = "INSULATION".equals(record.enumeration("PredefinedType"));
    if (!insulation && names.all().stream().noneMatch(Words::isInsulation)) {
      return null;
    }
    PropertyReader.Reading own = properties.wantedOf(id);
    Draft part =
        new Draft(
            id,
            new Worded(record.entityName(), names, own.properties()),
            Drawn.of(Shape.NOTHING, List.of()),
            new KindReader.Reading(Kind.COVERING, Form.UNKNOWN),
            own.all(),
            false,
            vocabulary,
            folding);
    part.foldMeasured();
    return part;
  }

  /** True for a covering that its enumeration or a name of it calls insulation. */
  public boolean isCalledInsulation(Draft covering) {
    if (covering.isCalledInsulation()) {
      return true;
    }
    IfcRecord record = file.find(covering.step());
    return record != null && KindReader.isInsulation(record, typeOf(covering.step()));
  }

  /** The bodies of valves and the like are often symbols, which say nothing against a port. */
  private Drawn drawn(@Nullable Kind kind, Shape shape, List<Port> ports, List<Property> own) {
    if (ports.isEmpty() || (kind != null && !kind.isSegment() && !kind.isFitting())) {
      return Drawn.of(shape, ports);
    }
    List<Port> placed = FarPorts.withoutPlace(ports, shape);
    return placed == ports || FarPorts.areApart(ports, lengthM(own))
        ? Drawn.of(shape, ports)
        : Drawn.of(shape.withProblem(FarPorts.OUTSIDE), placed);
  }

  /**
   * Only what is lagged is measured; apparatus, terminals and coverings would cost and not count.
   */
  private Shape shape(Recognised what, List<Property> own, List<Port> itsPorts) {
    Kind kind = what.kind();
    if (kind != null && !kind.isLagged()) {
      return Shape.NOTHING;
    }
    List<Point> portsM = placesOf(itsPorts);
    if (portsM.size() < leastEnds(what.reading())) {
      // those that the file leaves out may lie at any of the drawn ends
      portsM = List.of();
    }
    Double lengthM = lengthM(own);
    IfcRecord record = what.record();
    boolean straight = record.is("IfcFlowSegment");
    StatedSizes stated = new WordedSizes(own, what.names(), lengthUnitM);
    return shapes.measure(record, new ShapeHints(portsM, lengthM, straight, stated));
  }

  private static List<Point> placesOf(List<Port> ports) {
    List<Point> placesM = new ArrayList<>(ports.size());
    for (Port port : ports) {
      if (port.positionM() != null) {
        placesM.add(port.positionM());
      }
    }
    return placesM;
  }

  /**
   * How many ends there are at least, as it is called; some exporters write joined ports only. What
   * is not called anything may be a cap, but then its body shows it.
   */
  private static int leastEnds(KindReader.Reading reading) {
    Kind kind = reading.kind();
    boolean inLine = kind == Kind.VALVE || kind == Kind.INLINE;
    boolean unnamed = kind != null && kind.isFitting() && reading.form() == Form.UNKNOWN;
    return inLine || unnamed ? 2 : reading.form().ways();
  }

  /** The length that the properties of an element state, null if none do; reads them anew. */
  public @Nullable Double statedLengthM(long id) {
    return lengthM(properties.wantedOf(id).properties());
  }

  private @Nullable Double lengthM(List<Property> own) {
    Double lengthM = null;
    for (Property p : PropertyNames.listOf(own, PropertyNames.Role.LENGTH)) {
      lengthM = lengthM == null ? PropertyLengths.lengthM(p, lengthUnitM).orElse(null) : lengthM;
    }
    return lengthM;
  }
}
