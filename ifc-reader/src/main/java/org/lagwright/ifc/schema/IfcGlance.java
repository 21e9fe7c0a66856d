package org.lagwright.ifc.schema;

import org.jspecify.annotations.Nullable;
import org.lagwright.ifc.step.StepGlance;
import org.lagwright.ifc.step.StepKeyword;

/**
 * Asks one record after the other what it is and what it is called, without decoding the rest: most
 * properties of a model answer no question, and their names tell so. Not safe for several threads.
 */
public final class IfcGlance {

  private static final String NAME = "Name";
  private static final String SINGLE_VALUE = "IfcPropertySingleValue";

  private final IfcFile file;
  private final StepGlance glance;
  private long id;
  private @Nullable IfcEntity entity;

  IfcGlance(IfcFile file) {
    this.file = file;
    this.glance = file.step().glance();
  }

  /** Turns to a record; false if the file has none of that number. */
  public boolean at(long itsId) {
    StepKeyword keyword = glance.at(itsId);
    id = itsId;
    entity = keyword == null ? null : file.entity(keyword);
    return entity != null;
  }

  /** True if the record is an instance of the entity or of a subtype. */
  public boolean is(String entityName) {
    return entity != null && entity.isA(entityName);
  }

  /** True if the schema knows the attribute and the record gives it a value. */
  public boolean has(String attribute) {
    int position = entity == null ? -1 : entity.position(attribute);
    return position >= 0 && glance.has(position);
  }

  /**
   * What a property with a single value begins with, its name included, to look for others like it;
   * null if it is no such property, or written in an unusual way.
   */
  public byte @Nullable [] beginningOfSingleValue() {
    boolean isSingle =
        entity != null
            && entity.isA(SINGLE_VALUE)
            && entity.position(NAME) == 0
            && entity.position("NominalValue") == 2;
    return isSingle ? glance.beginning() : null;
  }

  /**
   * True if a record is a property of the same name as another one. Only {@link #hasSingleValue}
   * may be asked afterwards.
   *
   * @param beginning what {@link #beginningOfSingleValue} gave for the other one
   */
  public boolean isLike(long itsId, byte[] beginning) {
    entity = null;
    return glance.isLike(itsId, beginning);
  }

  /** True if the property that {@link #isLike} found has a NominalValue. */
  public boolean hasSingleValue() {
    return glance.hasThird();
  }

  /** Its Name, null if it has none. */
  public @Nullable String name() {
    String first = entity != null && entity.position(NAME) == 0 ? glance.firstLabel() : null;
    if (first != null) {
      return first;
    }
    IfcRecord record = file.find(id);
    return record == null ? null : record.label(NAME);
  }
}
