package org.lagwright.report.json;

import com.networknt.schema.Error;
import com.networknt.schema.InputFormat;
import com.networknt.schema.Schema;
import com.networknt.schema.SchemaRegistry;
import com.networknt.schema.SpecificationVersion;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.util.List;

/** The schema of {@code takeoff.json}, for tests. */
public final class TakeoffSchema {

  private TakeoffSchema() {}

  /** What in a document does not fit the schema. */
  public static List<Error> errors(String json) throws IOException {
    Schema schema =
        SchemaRegistry.withDefaultDialect(SpecificationVersion.DRAFT_2020_12)
            .getSchema(text(), InputFormat.JSON);
    return schema.validate(json, InputFormat.JSON);
  }

  /** The schema itself. */
  static String text() throws IOException {
    try (InputStream in = TakeoffJson.class.getResourceAsStream("takeoff.schema.json")) {
      return new String(in.readAllBytes(), StandardCharsets.UTF_8);
    }
  }
}
