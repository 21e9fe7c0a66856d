package org.lagwright.testmodels.ifc;

import static org.lagwright.testmodels.step.Value.DERIVED;
import static org.lagwright.testmodels.step.Value.token;
import static org.lagwright.testmodels.step.Value.typed;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import org.lagwright.testmodels.step.Ref;
import org.lagwright.testmodels.step.StepWriter;

/**
 * One IFC file: project, units, contexts, and rooted records with GlobalIds made from names.
 * Geometry is written by {@link ShapeWriter}, elements and relations by {@link MepWriter}, property
 * and quantity sets by {@link PropertyWriter}.
 */
public final class IfcWriter {

  private final Schema schema;
  private final Units units;
  private final String name;
  private final StepWriter step;
  private final @Nullable Ref owner;
  private final Ref body;
  private final Ref project;
  private final Set<String> keys = new HashSet<>();

  /**
   * Begins a file with project, units and a Body context.
   *
   * @param name of the project; goes into every GlobalId
   */
  public IfcWriter(Schema schema, Units units, String name) {
    this(schema, units, name, 1);
  }

  /** As the other constructor, with the number of the first record. */
  public IfcWriter(Schema schema, Units units, String name, long firstNumber) {
    this(schema, units, name, new StepWriter(schema.id(), name + ".ifc"), firstNumber);
  }

  /** Writes to a sink instead of memory; ends with {@link StepWriter#finish}. */
  public static IfcWriter to(Appendable sink, Schema schema, Units units, String name) {
    return new IfcWriter(schema, units, name, StepWriter.to(sink, schema.id(), name + ".ifc"), 1);
  }

  private IfcWriter(Schema schema, Units units, String name, StepWriter step, long firstNumber) {
    this.schema = schema;
    this.units = units;
    this.name = name;
    this.step = step;
    step.numberFrom(firstNumber);
    owner = schema.isOld() ? ownerHistory() : null;
    Ref origin = step.share("IfcCartesianPoint", List.of(0.0, 0.0, 0.0));
    Ref world = step.share("IfcAxis2Placement3D", origin, null, null);
    Ref model =
        step.add("IfcGeometricRepresentationContext", null, "Model", 3, 0.00001, world, null);
    body = subContext(model);
    Ref unitList = step.add("IfcUnitAssignment", unitRecords());
    project = root("IfcProject", "project", name, null, null, null, null, List.of(model), unitList);
  }

  public Schema schema() {
    return schema;
  }

  public Units units() {
    return units;
  }

  /** The records below, for what this class does not know. */
  public StepWriter step() {
    return step;
  }

  /** The one IfcProject. */
  public Ref project() {
    return project;
  }

  /** The Body representation context. */
  public Ref bodyContext() {
    return body;
  }

  /** The whole file. */
  public String text() {
    return step.text();
  }

  /**
   * Forgets keys and shared records, so that memory does not grow with the file. That later keys
   * differ from earlier ones is up to the caller then.
   */
  public void forget() {
    keys.clear();
    step.forget();
  }

  /** The GlobalId that {@link #root} gives to this key. */
  public String globalId(String key) {
    return GlobalIds.of(name + "/" + key);
  }

  /**
   * Adds a rooted record: GlobalId and OwnerHistory come first, then the given rest.
   *
   * @param key names the record within the file
   * @throws IllegalArgumentException where the key was used before
   */
  public Ref root(String entity, String key, @Nullable Object... rest) {
    if (!keys.add(key)) {
      throw new IllegalArgumentException("two records with key " + key);
    }
    return rootWithId(entity, globalId(key), rest);
  }

  /** As {@link #root}, with a GlobalId of the caller's choice, equal ones too. */
  public Ref rootWithId(String entity, String globalId, @Nullable Object... rest) {
    List<@Nullable Object> arguments = new ArrayList<>();
    arguments.add(globalId);
    arguments.add(owner);
    arguments.addAll(Arrays.asList(rest));
    return step.add(entity, arguments.toArray());
  }

  private Ref ownerHistory() {
    Ref person = step.add("IfcPerson", "nobody", null, null, null, null, null, null, null);
    Ref organization = step.add("IfcOrganization", null, "Invented", null, null, null);
    Ref user = step.add("IfcPersonAndOrganization", person, organization, null);
    Ref program = step.add("IfcApplication", organization, "1", "Lagwright test-models", "LTM");
    // 2026-01-01T00:00:00Z, as in the header
    int created = 1767225600;
    return step.add(
        "IfcOwnerHistory", user, program, null, token("ADDED"), null, null, null, created);
  }

  private Ref subContext(Ref model) {
    return step.add(
        "IfcGeometricRepresentationSubContext",
        "Body",
        "Model",
        DERIVED,
        DERIVED,
        DERIVED,
        DERIVED,
        model,
        null,
        token("MODEL_VIEW"),
        null);
  }

  private List<Ref> unitRecords() {
    return List.of(
        lengthUnit(),
        si("AREAUNIT", null, "SQUARE_METRE"),
        si("VOLUMEUNIT", null, "CUBIC_METRE"),
        angleUnit(),
        si("THERMODYNAMICTEMPERATUREUNIT", null, "DEGREE_CELSIUS"));
  }

  private Ref lengthUnit() {
    return switch (units.length()) {
      case MILLIMETRE -> si("LENGTHUNIT", "MILLI", "METRE");
      case METRE -> si("LENGTHUNIT", null, "METRE");
      case FOOT -> {
        Ref metre = si("LENGTHUNIT", null, "METRE");
        Ref factor = step.add("IfcMeasureWithUnit", typed("IfcRatioMeasure", 0.3048), metre);
        yield converted("LENGTHUNIT", "FOOT", factor, 1);
      }
    };
  }

  private Ref angleUnit() {
    Ref radian = si("PLANEANGLEUNIT", null, "RADIAN");
    if (units.angle() == Units.Angle.RADIAN) {
      return radian;
    }
    Ref factor =
        step.add("IfcMeasureWithUnit", typed("IfcPlaneAngleMeasure", Math.toRadians(1)), radian);
    return converted("PLANEANGLEUNIT", "DEGREE", factor, 0);
  }

  private Ref converted(String type, String unitName, Ref factor, int lengthExponent) {
    Ref exponents = step.add("IfcDimensionalExponents", lengthExponent, 0, 0, 0, 0, 0, 0);
    return step.add("IfcConversionBasedUnit", exponents, token(type), unitName, factor);
  }

  private Ref si(String type, @Nullable String prefix, String unitName) {
    return step.add(
        "IfcSIUnit", DERIVED, token(type), prefix == null ? null : token(prefix), token(unitName));
  }
}
