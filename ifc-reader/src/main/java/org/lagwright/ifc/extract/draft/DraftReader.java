package org.lagwright.ifc.extract.draft;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import org.jspecify.annotations.Nullable;
import org.lagwright.ifc.extract.property.OpenedFile;
import org.lagwright.ifc.extract.property.PropertyReader;
import org.lagwright.ifc.extract.property.Relations;
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
    long typeId = relations.typeOf(record.id());
    IfcRecord type = typeId == 0 ? null : file.find(typeId);
    Names names = Names.of(record, type);
    KindReader.Reading reading = KindReader.read(record, type, names);
    String aired = KindReader.isOpen(reading, record, type, names) ? air.why(record) : null;
    if (aired != null) {
      Kind duct = KindReader.byShape(record.is("IfcFlowSegment"), false);
      reading = new KindReader.Reading(duct, reading.form(), reading.worded());
    }
    PropertyReader.Reading own = properties.wantedOf(record.id());
    Kind kind = reading.kind();
    boolean straight = kind == null ? record.is("IfcFlowSegment") : kind.isSegment();
    List<Property> wanted = straight ? SizeLists.withoutListed(own.properties()) : own.properties();
    if (!own.repeated().isEmpty()) {
      repeatedToo.add(own.repeated());
    }
    Drawn drawn = drawn(kind, shape(record, names, reading, wanted, itsPorts), itsPorts, wanted);
    boolean unsized = (kind == null || kind.isLagged()) && drawn.shape().section() == null;
    Names asked = unsized ? names.described(record, type) : names;
    Draft draft =
        new Draft(
            record.id(),
            new Worded(record.entityName(), asked, wanted),
            drawn,
            reading,
            own.all(),
            record.is("IfcFlowSegment"),
            vocabulary,
            folding);
    if (KindReader.isAssumedValve(reading, record, type, names)) {
      draft.note(ReadFinding.KIND_ASSUMED, Effect.ASSUMED, "valve or damper", CONTROLLER);
    }
    if (aired != null) {
      draft.note(
          ReadFinding.KIND_ASSUMED,
          Effect.ASSUMED,
          KindReader.inWords(Objects.requireNonNull(kind)),
          aired);
    }
    return draft;
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
    long typeId = relations.typeOf(id);
    Names names = Names.of(record, typeId == 0 ? null : file.find(typeId));
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
    long typeId = relations.typeOf(covering.step());
    return record != null
        && KindReader.isInsulation(record, typeId == 0 ? null : file.find(typeId));
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
    List<Point> portsM = placesOf(itsPorts);
    if (portsM.size() < leastEnds(reading)) {
      // those that the file leaves out may lie at any of the drawn ends
      portsM = List.of();
    }
    Double lengthM = lengthM(own);
    boolean straight = record.is("IfcFlowSegment");
    StatedSizes stated = new WordedSizes(own, names, lengthUnitM);
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

  /** How many ends there are at least, as it is called; some exporters write joined ports only. */
  private static int leastEnds(KindReader.Reading reading) {
    Kind kind = reading.kind();
    boolean inLine = kind == Kind.VALVE || kind == Kind.INLINE;
    return inLine ? 2 : reading.form().ways();
  }

  /** The length that the properties of an element state, null if none do; reads them anew. */
  public @Nullable Double statedLengthM(long id) {
    return lengthM(properties.wantedOf(id).properties());
  }

  private @Nullable Double lengthM(List<Property> own) {
    Double lengthM = null;
    for (Property p : PropertyNames.listOf(own, PropertyNames.Role.LENGTH)) {
      lengthM = lengthM == null ? PropertyNames.lengthM(p, lengthUnitM).orElse(null) : lengthM;
    }
    return lengthM;
  }
}
