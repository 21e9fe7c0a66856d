package org.lagwright.ifc.schema;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.LongStream;
import org.jspecify.annotations.Nullable;
import org.lagwright.ifc.step.StepArguments;
import org.lagwright.ifc.step.StepRecord;

/**
 * One record with its attributes by name. Asking for an attribute that the entity lacks, or that
 * the record leaves out, gives null, NaN or nothing: files are what they are.
 */
public final class IfcRecord {

  private final IfcFile file;
  private final StepRecord record;
  private final IfcEntity entity;

  IfcRecord(IfcFile file, StepRecord record) {
    this.file = file;
    this.record = record;
    this.entity = file.entity(record.type());
  }

  /** Instance number. */
  public long id() {
    return record.id();
  }

  /** Keyword in upper case: {@code IFCPIPESEGMENT}. */
  public String keyword() {
    return record.keyword();
  }

  /** The standard's spelling: {@code IfcPipeSegment}. */
  public String entityName() {
    return entity.name();
  }

  /** True if it is an instance of the entity or of a subtype. */
  public boolean is(String entityName) {
    return entity.isA(entityName);
  }

  /** True if the schema knows the attribute and the record gives it a value. */
  public boolean has(String attribute) {
    return switch (record.arguments().token(entity.position(attribute))) {
      case NULL, DERIVED, ABSENT -> false;
      default -> true;
    };
  }

  /** The record referred to; null if there is none or its target is missing from the file. */
  public @Nullable IfcRecord ref(String attribute) {
    long id = refId(attribute);
    return id == 0 ? null : findTarget(id);
  }

  /** Instance number referred to, 0 if none. */
  public long refId(String attribute) {
    return record.arguments().reference(entity.position(attribute));
  }

  /** The record of an instance number that an attribute gave; null if the file misses it. */
  public @Nullable IfcRecord findTarget(long id) {
    IfcRecord target = file.find(id);
    if (target == null) {
      file.missing().add(entity, id);
    }
    return target;
  }

  /** Instance numbers in a list of references. */
  public long[] refIds(String attribute) {
    return record.arguments().references(entity.position(attribute));
  }

  /** The records of a list of references; a single reference counts as a list of one. */
  public List<IfcRecord> refs(String attribute) {
    List<IfcRecord> found = new ArrayList<>();
    for (long id : refIds(attribute)) {
      IfcRecord target = findTarget(id);
      if (target != null) {
        found.add(target);
      }
    }
    IfcRecord single = ref(attribute);
    if (single != null) {
      found.add(single);
    }
    return found;
  }

  /** The records of a list of lists of references, row by row. */
  public List<List<IfcRecord>> rows(String attribute) {
    StepArguments lists = list(attribute);
    List<List<IfcRecord>> rows = new ArrayList<>();
    for (int i = 0; i < lists.size(); i++) {
      List<IfcRecord> row = new ArrayList<>();
      for (long id : lists.references(i)) {
        IfcRecord target = findTarget(id);
        if (target != null) {
          row.add(target);
        }
      }
      rows.add(row);
    }
    return rows;
  }

  /** Instance numbers of all records that any attribute refers to, single or in a list. */
  public long[] references() {
    StepArguments all = record.arguments();
    LongStream.Builder found = LongStream.builder();
    for (int i = 0; i < all.size(); i++) {
      if (all.reference(i) != 0) {
        found.add(all.reference(i));
      }
      for (long id : all.references(i)) {
        found.add(id);
      }
    }
    return found.build().toArray();
  }

  /** The number, NaN if there is none. */
  public double number(String attribute) {
    return record.arguments().number(entity.position(attribute));
  }

  /** All numbers of a list and of lists within it, flattened. */
  public double[] numbers(String attribute) {
    return record.arguments().numbers(entity.position(attribute));
  }

  /** The string, null if there is none. */
  public @Nullable String text(String attribute) {
    return record.arguments().text(entity.position(attribute)).orElse(null);
  }

  /**
   * Like {@link #text}, for names and words that many records share: equal ones come out as one
   * object, and each is decoded once.
   */
  public @Nullable String label(String attribute) {
    return file.step().label(record.arguments(), entity.position(attribute));
  }

  /** The enumeration value in upper case without dots, null if there is none. */
  public @Nullable String enumeration(String attribute) {
    return record.arguments().enumeration(entity.position(attribute)).orElse(null);
  }

  /** The members of a list, for lists of lists and lists of typed values. */
  public StepArguments list(String attribute) {
    return record.arguments().list(entity.position(attribute));
  }

  /** Keyword of a typed value ({@code IFCLABEL}), null if the value is not typed. */
  public @Nullable String valueType(String attribute) {
    return record.arguments().keyword(entity.position(attribute)).orElse(null);
  }

  /** What stands inside a typed value, for selects that wrap a list. */
  public StepArguments insideTyped(String attribute) {
    return record.arguments().typed(entity.position(attribute));
  }

  /** The attribute as it stands in the file, for showing. */
  public String raw(String attribute) {
    return record.arguments().raw(entity.position(attribute));
  }

  @Override
  public String toString() {
    return "#" + id() + "=" + keyword();
  }
}
