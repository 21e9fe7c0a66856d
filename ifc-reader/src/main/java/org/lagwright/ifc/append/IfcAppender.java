package org.lagwright.ifc.append;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.lagwright.ifc.schema.IfcSchema;
import org.lagwright.ifc.schema.SchemaTypes;
import org.lagwright.ifc.schema.SchemaTypes.Attribute;

/**
 * Adds records with their attributes by name, in the order of one schema. What that schema does not
 * know, or misses, is our mistake and never written.
 */
public final class IfcAppender {

  private final IfcSchema schema;
  private final SchemaTypes types;
  private final StepAppender to;

  /** Writes records of a schema. */
  public IfcAppender(IfcSchema schema, StepAppender to) {
    this.schema = schema;
    this.types = SchemaTypes.of(schema);
    this.to = to;
  }

  /** The schema that is written. */
  public IfcSchema schema() {
    return schema;
  }

  /** True if the schema itself has an entity. */
  public boolean knows(String entity) {
    return types.isEntity(entity);
  }

  /** Begins a record, in the standard's spelling: {@code IfcCovering}. */
  public NewRecord record(String entity) {
    return new NewRecord(entity);
  }

  /** A record that is being put together. */
  public final class NewRecord {

    private final String entity;
    private final Map<String, StepValue> values = new HashMap<>();

    private NewRecord(String entity) {
      this.entity = entity;
    }

    /** Gives an attribute its value. */
    public NewRecord set(String attribute, StepValue value) {
      values.put(attribute, value);
      return this;
    }

    /** Gives an attribute a string. */
    public NewRecord text(String attribute, String text) {
      return set(attribute, StepValue.text(text));
    }

    /** Gives an attribute a real number. */
    public NewRecord real(String attribute, double value) {
      return set(attribute, StepValue.real(value));
    }

    /** Gives an attribute a record; nothing if the number is 0. */
    public NewRecord ref(String attribute, long id) {
      return id == 0 ? this : set(attribute, StepValue.reference(id));
    }

    /** Gives an attribute a list of records. */
    public NewRecord refs(String attribute, List<Long> ids) {
      return set(attribute, StepValue.references(ids));
    }

    /**
     * Adds it.
     *
     * @return its instance number
     * @throws IllegalStateException if the schema has no such entity or attribute, or if a
     *     mandatory one has no value
     */
    public long add() {
      List<StepValue> arguments = new ArrayList<>();
      for (Attribute attribute : types.attributes(entity)) {
        StepValue value = values.remove(attribute.name());
        if (attribute.derived()) {
          arguments.add(StepValue.DERIVED);
        } else if (value == null && !attribute.optional()) {
          throw new IllegalStateException(entity + "." + attribute.name() + " has no value");
        } else {
          arguments.add(value == null ? StepValue.NULL : value);
        }
      }
      if (!values.isEmpty()) {
        throw new IllegalStateException(
            entity + " of " + schema + " has no attribute " + values.keySet());
      }
      return to.add(entity, arguments);
    }
  }
}
