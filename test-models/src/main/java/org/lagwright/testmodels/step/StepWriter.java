package org.lagwright.testmodels.step;

import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;

/** Collects the records of one STEP file. The same calls give the same bytes. */
public final class StepWriter {

  /** Written into every header, so that files do not change with the clock. */
  private static final String TIME_STAMP = "2026-01-01T00:00:00";

  private final String header;
  private final StringBuilder records = new StringBuilder();
  private final Map<String, Ref> shared = new HashMap<>();
  private long next = 1;

  /**
   * @param schemaId name for FILE_SCHEMA, such as {@code IFC4}
   * @param fileName name for FILE_NAME
   */
  public StepWriter(String schemaId, String fileName) {
    header =
        """
        ISO-10303-21;
        HEADER;
        FILE_DESCRIPTION(('ViewDefinition [notYetAssigned]'),'2;1');
        FILE_NAME(%s,'%s',(''),(''),'Lagwright test-models','','');
        FILE_SCHEMA(('%s'));
        ENDSEC;
        DATA;
        """
            .formatted(StepText.encode(fileName), TIME_STAMP, schemaId);
  }

  /** Makes the next record carry this number; must be above all numbers used so far. */
  public void numberFrom(long first) {
    if (first < next) {
      throw new IllegalArgumentException("#" + first + " may be taken, next free is #" + next);
    }
    next = first;
  }

  /**
   * Adds one record.
   *
   * @param entity name in any case
   * @param arguments attribute values in file order, see {@link StepText#encode}
   */
  public Ref add(String entity, @Nullable Object... arguments) {
    return append(record(entity, arguments));
  }

  /** As {@link #add}, but gives the earlier record where an equal one was shared before. */
  public Ref share(String entity, @Nullable Object... arguments) {
    String record = record(entity, arguments);
    Ref known = shared.get(record);
    if (known == null) {
      known = append(record);
      shared.put(record, known);
    }
    return known;
  }

  /** The whole file. Lines end in a single line feed. */
  public String text() {
    return header + records + "ENDSEC;\nEND-ISO-10303-21;\n";
  }

  private Ref append(String record) {
    Ref ref = new Ref(next++);
    records.append('#').append(ref.id()).append('=').append(record).append(";\n");
    return ref;
  }

  private static String record(String entity, @Nullable Object[] arguments) {
    List<@Nullable Object> list = Arrays.asList(arguments);
    return entity.toUpperCase(Locale.ROOT)
        + list.stream().map(StepText::encode).collect(Collectors.joining(",", "(", ")"));
  }
}
