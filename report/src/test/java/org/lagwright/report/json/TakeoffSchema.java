package org.lagwright.report.json;

import com.networknt.schema.Error;
import com.networknt.schema.InputFormat;
import com.networknt.schema.SchemaRegistry;
import com.networknt.schema.SpecificationVersion;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.util.List;

/** The schemas of the JSON files, for tests. */
public final class TakeoffSchema {

  private TakeoffSchema() {}

  /** What in a {@code takeoff.json} does not fit its schema. */
  public static List<Error> errors(String json) throws IOException {
    return errors(json, text());
  }

  /** What in a {@code readiness.json} does not fit its schema. */
  public static List<Error> errorsOfReadiness(String json) throws IOException {
    return errors(json, text("readiness.schema.json"));
  }

  /** What in a {@code comparison.json} does not fit its schema. */
  public static List<Error> errorsOfComparison(String json) throws IOException {
    return errors(json, text("comparison.schema.json"));
  }

  private static List<Error> errors(String json, String schema) {
    return SchemaRegistry.withDefaultDialect(SpecificationVersion.DRAFT_2020_12)
        .getSchema(schema, InputFormat.JSON)
        .validate(json, InputFormat.JSON);
  }

  /** The schema of {@code takeoff.json} itself. */
  static String text() throws IOException {
    return text("takeoff.schema.json");
  }

  /** A schema of this package. */
  public static String text(String name) throws IOException {
    try (InputStream in = TakeoffJson.class.getResourceAsStream(name)) {
      return new String(in.readAllBytes(), StandardCharsets.UTF_8);
    }
  }
}
