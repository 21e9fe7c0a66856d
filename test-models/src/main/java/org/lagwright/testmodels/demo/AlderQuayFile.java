package org.lagwright.testmodels.demo;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.function.Function;
import java.util.function.Predicate;
import org.jspecify.annotations.Nullable;
import org.lagwright.testmodels.ifc.Body;
import org.lagwright.testmodels.ifc.BuildingWriter;
import org.lagwright.testmodels.ifc.Frame;
import org.lagwright.testmodels.ifc.IfcWriter;
import org.lagwright.testmodels.ifc.MepWriter;
import org.lagwright.testmodels.ifc.Profile;
import org.lagwright.testmodels.ifc.PropertyWriter;
import org.lagwright.testmodels.ifc.Schema;
import org.lagwright.testmodels.ifc.ShapeWriter;
import org.lagwright.testmodels.ifc.Units;
import org.lagwright.testmodels.step.Ref;

/** Writes the design as one IFC file. IFC2X3 gets degrees, the later schemas radians. */
final class AlderQuayFile {

  /** Forms that are drawn once per type and repeated as mapped items. */
  private static final Set<String> MAPPED = Set.of("valve-body", "flange");

  private final Plan plan;
  private final boolean withPorts;
  private final IfcWriter ifc;
  private final ShapeWriter shapes;
  private final MepWriter mep;
  private final BuildingWriter building;
  private final PropertyWriter properties;
  private final AlderQuayRooms rooms;
  private final Map<Piece, Ref> elements = new LinkedHashMap<>();
  private final Map<Piece, Ref> placements = new HashMap<>();
  private final Map<Plan.Port, Ref> ports = new HashMap<>();
  private final Map<String, Ref> maps = new HashMap<>();

  AlderQuayFile(Schema schema, Plan plan, boolean withPorts) {
    this.plan = plan;
    this.withPorts = withPorts;
    Units units = schema.isOld() ? Units.MILLIMETRE_DEGREE : Units.MILLIMETRE_RADIAN;
    ifc = new IfcWriter(schema, units, AlderQuay.NAME);
    shapes = new ShapeWriter(ifc);
    mep = new MepWriter(ifc);
    building = new BuildingWriter(ifc);
    properties = new PropertyWriter(ifc);
    rooms = new AlderQuayRooms(ifc);
  }

  String write() {
    plan.pieces().forEach(this::element);
    if (withPorts) {
      ports();
    }
    types();
    systems();
    materials();
    contents();
    plan.insulations().forEach(this::insulation);
    flaws();
    return ifc.text();
  }

  private void element(Piece piece) {
    boolean drawn = !piece.bodies().isEmpty();
    Ref placement = drawn ? rooms.place(piece.place(), piece.frame()) : null;
    if (placement != null) {
      placements.put(piece, placement);
    }
    Piece.What what = piece.what();
    String tag = Integer.toString(1001 + elements.size());
    elements.put(
        piece,
        mep.element(
            what.ifcClass(),
            new MepWriter.Label(piece.key(), what.name(), what.name(), tag),
            placement,
            drawn ? shape(piece) : null,
            isTyped(piece) ? null : what.predefined()));
  }

  private Ref shape(Piece piece) {
    if (!MAPPED.contains(piece.what().form())) {
      return shapes.shape(piece.bodies());
    }
    return shapes.mapped(maps.computeIfAbsent(typeKey(piece), key -> shapes.map(piece.bodies())));
  }

  private void ports() {
    plan.ports().forEach(this::port);
    for (Piece piece : elements.keySet()) {
      ownPorts(piece);
    }
    for (Plan.Joint joint : plan.joints()) {
      String key = joint.source().piece().key() + " - " + joint.sink().piece().key();
      mep.connect(key, at(ports, joint.source()), at(ports, joint.sink()));
    }
  }

  private void port(Plan.Port port) {
    Frame own =
        new Frame(port.at(), port.source() ? port.out() : port.out().times(-1), port.across());
    Ref placement =
        shapes.placement(placements.get(port.piece()), own.within(port.piece().frame()));
    long earlier = ports.keySet().stream().filter(p -> p.piece().equals(port.piece())).count();
    ports.put(
        port,
        mep.port(
            port.piece().key() + " port " + (earlier + 1),
            placement,
            port.source() ? "SOURCE" : "SINK",
            isDuct(port.system()) ? "DUCT" : "PIPE",
            port.system().predefined));
  }

  private void ownPorts(Piece piece) {
    List<Ref> own =
        plan.ports().stream()
            .filter(port -> port.piece().equals(piece))
            .map(port -> at(ports, port))
            .toList();
    if (!own.isEmpty()) {
      mep.ownPorts(piece.key(), at(elements, piece), own);
    }
  }

  /** Pipes, ducts, fittings and valves have types; in IFC2X3 everything needs one. */
  private boolean isTyped(Piece piece) {
    return ifc.schema().isOld()
        || switch (piece.kind()) {
          case "pipe-segment", "pipe-fitting", "duct-segment", "duct-fitting", "valve" -> true;
          default -> false;
        };
  }

  private static String typeKey(Piece piece) {
    return piece.what().ifcClass() + " " + piece.what().predefined() + " " + piece.what().name();
  }

  private void types() {
    AlderQuayTypes types = new AlderQuayTypes(ifc, properties, mep);
    group(AlderQuayFile::typeKey, this::isTyped)
        .forEach(
            (key, pieces) -> {
              Ref map = maps.get(key);
              Ref type = types.write(key, pieces.get(0), map == null ? List.of() : List.of(map));
              mep.assignType(key, refs(pieces), type);
            });
  }

  private void systems() {
    Map<DemoSystem, Set<Ref>> members = new EnumMap<>(DemoSystem.class);
    elements.forEach(
        (piece, ref) -> {
          if (piece.system() != null) {
            members.computeIfAbsent(piece.system(), s -> new LinkedHashSet<>()).add(ref);
          }
        });
    for (Plan.Port port : plan.ports()) {
      at(members, port.system()).add(at(elements, port.piece()));
    }
    members.forEach(
        (system, refs) -> {
          Ref ref = mep.system(system.code, system.title, system.code, system.predefined);
          mep.group(system.code, new ArrayList<>(refs), ref);
        });
  }

  private void materials() {
    group(AlderQuayFile::material, p -> p.section() != null)
        .forEach((material, pieces) -> building.material(material, refs(pieces)));
  }

  private static String material(Piece piece) {
    return piece.section() instanceof Size.Pipe pipe ? pipe.material() : "Galvanised steel";
  }

  private void contents() {
    group(piece -> piece.place().number, piece -> true)
        .forEach(
            (number, pieces) ->
                building.contain(number, refs(pieces), rooms.space(pieces.get(0).place())));
  }

  /** Contained and related in the old way up to IFC4, part of its host in IFC4X3. */
  private void insulation(Plan.Insulation insulation) {
    Piece host = insulation.host();
    double thickness = insulation.thicknessMm();
    double lengthMm = host.measure().lengthMm();
    Size section = Objects.requireNonNull(host.section());
    Profile ring = new Profile.Ring(section.largest() + 2 * thickness, thickness);
    String key = "insulation of " + host.key();
    Ref covering =
        building.insulation(
            key,
            insulation.material() + " " + Size.text(thickness) + " mm",
            shapes.placement(placements.get(host), Frame.WORLD),
            shapes.shape(List.of(new Body.Extrusion(ring, lengthMm).inPlace())));
    if (ifc.schema() == Schema.IFC4X3) {
      building.aggregate(host.key(), at(elements, host), List.of(covering));
    } else {
      building.contain(key, List.of(covering), rooms.space(host.place()));
      building.cover(host.key(), at(elements, host), covering);
    }
    properties.bind(key, List.of(covering), thickness(key, thickness));
  }

  private Ref thickness(String key, double mm) {
    if (ifc.schema().isOld()) {
      return properties.set(
          key, "Pset_CoveringCommon", List.of(properties.length("TotalThickness", mm)));
    }
    return properties.lengthQuantity(key, "Qto_CoveringBaseQuantities", "Width", mm);
  }

  private void flaws() {
    plan.wrongLengthsMm()
        .forEach(
            (piece, mm) -> {
              Ref set =
                  properties.lengthQuantity(
                      piece.key(), "Qto_PipeSegmentBaseQuantities", "Length", mm);
              properties.bind("wrong " + piece.key(), List.of(at(elements, piece)), set);
            });
    for (Piece piece : elements.keySet()) {
      if (piece.bodies().isEmpty() && piece.section() != null) {
        List<Ref> values =
            List.of(
                properties.length("Length", piece.measure().lengthMm()),
                properties.length("OuterDiameter", piece.section().largest()));
        Ref set = properties.set(piece.key(), "Survey", values);
        properties.bind("survey " + piece.key(), List.of(at(elements, piece)), set);
      }
    }
  }

  private Map<String, List<Piece>> group(Function<Piece, String> key, Predicate<Piece> which) {
    Map<String, List<Piece>> groups = new LinkedHashMap<>();
    for (Piece piece : elements.keySet()) {
      if (which.test(piece)) {
        groups.computeIfAbsent(key.apply(piece), k -> new ArrayList<>()).add(piece);
      }
    }
    return groups;
  }

  private List<Ref> refs(List<Piece> pieces) {
    return pieces.stream().map(piece -> at(elements, piece)).toList();
  }

  private static boolean isDuct(DemoSystem system) {
    return system.predefined.equals("VENTILATION");
  }

  private static <K, V> V at(Map<K, V> map, K key) {
    @Nullable V value = map.get(key);
    if (value == null) {
      throw new IllegalStateException("nothing written for " + key);
    }
    return value;
  }
}
