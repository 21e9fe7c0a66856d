package org.lagwright.ifc.schema;

import java.util.ArrayList;
import java.util.List;
import java.util.function.LongConsumer;
import java.util.function.Predicate;
import org.jspecify.annotations.Nullable;
import org.lagwright.ifc.step.StepBytes;
import org.lagwright.ifc.step.StepException;
import org.lagwright.ifc.step.StepFile;
import org.lagwright.ifc.step.StepKeyword;
import org.lagwright.ifc.step.StepLimits;
import org.lagwright.ifc.step.StepRecord;

/** An IFC file: an indexed exchange file together with the schema that names its attributes. */
public final class IfcFile {

  /** Entities that extraction starts from; everything else is reached by reference. */
  private static final List<String> LISTED =
      List.of(
          "IfcProduct",
          "IfcRelationship",
          "IfcGroup",
          "IfcProject",
          "IfcCoordinateOperation",
          "IfcPresentationLayerAssignment",
          "IfcUnitAssignment");

  private final StepFile step;
  private final IfcSchema schema;
  private final MissingRecords missing = new MissingRecords();

  /** By the numbers of the keywords, so that a record finds its entity without a search. */
  private final IfcEntity[] entities;

  private IfcFile(StepFile step, IfcSchema schema) {
    this.step = step;
    this.schema = schema;
    List<StepKeyword> keywords = step.keywords();
    this.entities = new IfcEntity[keywords.size()];
    for (int i = 0; i < entities.length; i++) {
      entities[i] = schema.entity(keywords.get(i).name());
    }
  }

  /**
   * Indexes the bytes and finds the schema.
   *
   * @param progress told the number of bytes read, now and then
   * @throws StepException if it is no exchange file, cut off, over the limits, or of a schema that
   *     is not IFC2X3, IFC4 or IFC4X3
   */
  public static IfcFile open(StepBytes bytes, StepLimits limits, LongConsumer progress) {
    String schemaAtStart = StepFile.schemaAtStart(bytes, limits);
    IfcSchema expected = IfcSchema.forIdentifier(schemaAtStart).orElse(IfcSchema.IFC4X3);
    StepFile step = StepFile.open(bytes, limits, new Listed(expected), progress);
    IfcSchema schema = IfcSchema.forIdentifier(step.schema()).orElse(null);
    if (schema == null) {
      throw new StepException(
          0, "schema '" + step.schema() + "' is not supported. Export as IFC2X3, IFC4 or IFC4X3.");
    }
    return new IfcFile(step, schema);
  }

  private record Listed(IfcSchema schema) implements Predicate<String> {
    @Override
    public boolean test(String keyword) {
      return schema.entity(keyword).isOneOf(LISTED);
    }
  }

  /** The schema that attribute names are taken from. */
  public IfcSchema schema() {
    return schema;
  }

  /** The exchange file below. */
  public StepFile step() {
    return step;
  }

  /** What bodies that were read so far refer to in vain. */
  public MissingRecords missing() {
    return missing;
  }

  IfcEntity entity(StepKeyword keyword) {
    return entities[keyword.number()];
  }

  /** A record, null if the file has no such instance. */
  public @Nullable IfcRecord find(long id) {
    StepRecord record = step.find(id);
    return record == null ? null : new IfcRecord(this, record);
  }

  /** For asking many records their names and no more. */
  public IfcGlance glance() {
    return new IfcGlance(this);
  }

  /**
   * All records of an entity and its subtypes in the order of their instance numbers; only for
   * products, relationships, groups, the project, map conversions and the assignments of layers and
   * units.
   */
  public List<IfcRecord> all(String entity) {
    List<IfcRecord> found = new ArrayList<>();
    for (long id : ids(entity)) {
      IfcRecord record = find(id);
      if (record != null) {
        found.add(record);
      }
    }
    return found;
  }

  /** Instance numbers of an entity and its subtypes, ascending; see {@link #all}. */
  public long[] ids(String entity) {
    return ids(List.of(entity));
  }

  /** Instance numbers of several entities and their subtypes, ascending; see {@link #all}. */
  public long[] ids(List<String> wanted) {
    List<String> keywords = new ArrayList<>();
    for (StepKeyword keyword : step.keywords()) {
      if (entities[keyword.number()].isOneOf(wanted)) {
        keywords.add(keyword.name());
      }
    }
    return step.ids(keywords);
  }

  /** How many records of an entity and its subtypes. */
  public int count(String entity) {
    List<String> wanted = List.of(entity);
    int count = 0;
    for (StepKeyword keyword : step.keywords()) {
      if (entities[keyword.number()].isOneOf(wanted)) {
        count += step.count(keyword);
      }
    }
    return count;
  }
}
