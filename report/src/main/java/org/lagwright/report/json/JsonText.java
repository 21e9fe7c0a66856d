package org.lagwright.report.json;

import com.fasterxml.jackson.annotation.JsonInclude;
import java.io.IOException;
import java.io.OutputStream;
import java.io.OutputStreamWriter;
import java.io.Writer;
import java.nio.charset.StandardCharsets;
import java.util.function.Consumer;
import org.lagwright.report.WritingFailure;
import tools.jackson.core.JacksonException;
import tools.jackson.core.JsonGenerator;
import tools.jackson.core.StreamWriteFeature;
import tools.jackson.core.util.DefaultIndenter;
import tools.jackson.core.util.DefaultPrettyPrinter;
import tools.jackson.databind.MapperFeature;
import tools.jackson.databind.ObjectWriter;
import tools.jackson.databind.json.JsonMapper;

/** How all JSON of the program is written: UTF-8, indented, what is unknown absent. */
final class JsonText {

  private static final ObjectWriter WRITER =
      JsonMapper.builder()
          .disable(MapperFeature.SORT_PROPERTIES_ALPHABETICALLY)
          .disable(StreamWriteFeature.AUTO_CLOSE_TARGET)
          .changeDefaultPropertyInclusion(i -> i.withValueInclusion(JsonInclude.Include.NON_NULL))
          .build()
          .writer()
          .with(printer());

  private JsonText() {}

  /** The same line ends on every system. */
  private static DefaultPrettyPrinter printer() {
    DefaultIndenter lines = new DefaultIndenter("  ", "\n");
    return new DefaultPrettyPrinter().withObjectIndenter(lines).withArrayIndenter(lines);
  }

  /**
   * Writes one document; the stream stays open.
   *
   * @throws IOException if the stream cannot be written
   */
  static void write(OutputStream out, Consumer<JsonGenerator> document) throws IOException {
    // the encoder replaces lone surrogates, which models may hold, by a question mark
    Writer utf8 = new OutputStreamWriter(out, StandardCharsets.UTF_8);
    try (JsonGenerator json = WRITER.createGenerator(utf8)) {
      document.accept(json);
    } catch (JacksonException e) {
      throw WritingFailure.of(e);
    }
  }
}
