package org.lagwright.report.json;

import java.io.IOException;
import java.io.OutputStream;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import org.lagwright.ifc.model.ElementKey;
import org.lagwright.report.CheckedTakeoff;
import org.lagwright.takeoff.Takeoff;
import tools.jackson.core.JsonGenerator;

/**
 * Writes {@code takeoff.json}, UTF-8, element by element. Names and units are those of {@code
 * takeoff.schema.json}; what is unknown is absent and never null. Equal takeoffs give equal bytes.
 */
public final class TakeoffJson {

  /** Which schema the document follows; the schema has the same id. */
  private static final String SCHEMA = "urn:lagwright:takeoff:1.1";

  private final CheckedTakeoff checked;
  private final Takeoff takeoff;
  private final String version;
  private final Map<ElementKey, String> globalIds = new HashMap<>();

  /**
   * Prepares the JSON of one takeoff.
   *
   * @param version version of this program
   */
  public TakeoffJson(CheckedTakeoff checked, String version) {
    this.checked = checked;
    this.takeoff = checked.takeoff();
    this.version = version;
    takeoff.elements().forEach(t -> globalIds.put(t.element().key(), t.element().globalId()));
  }

  /**
   * Writes it; the stream stays open.
   *
   * @throws IOException if the stream cannot be written
   */
  public void write(OutputStream out) throws IOException {
    JsonText.write(out, this::write);
  }

  private void write(JsonGenerator json) {
    json.writeStartObject();
    json.writeStringProperty("lagwright", version);
    json.writeStringProperty("schema", SCHEMA);
    array(json, "models", takeoff.models(), ModelView::of);
    json.writePOJOProperty("settings", SettingsView.of(takeoff.settings()));
    array(json, "packs", takeoff.packs(), pack -> pack);
    array(json, "elements", takeoff.elements(), ElementView::of);
    array(json, "lines", takeoff.lines(), line -> LineView.of(line, ids(line.elements())));
    array(json, "measurements", takeoff.measurements(), m -> MeasurementView.of(m, this::ids));
    array(json, "order", OrderView.of(takeoff.order(), this::ids), item -> item);
    array(json, "orderWithoutPieces", ids(takeoff.order().withoutPieces()), id -> id);
    array(json, "questions", takeoff.questions(), q -> QuestionView.of(q, ids(q.elements())));
    array(json, "coverage", checked.coverage().elements(), CoverageView::of);
    json.writePOJOProperty("clearance", ClearanceView.of(checked.clearance()));
    json.writePOJOProperty("labour", LabourView.of(takeoff.labour()));
    PriceView price = PriceView.of(takeoff.price());
    if (price != null) {
      json.writePOJOProperty("price", price);
    }
    array(json, "findings", takeoff.findings(), f -> FindingView.of(f, id(f.element())));
    json.writePOJOProperty("totals", takeoff.totals());
    json.writeEndObject();
  }

  private static <T> void array(
      JsonGenerator json, String name, List<T> items, Function<T, Object> view) {
    json.writeName(name);
    json.writeStartArray();
    items.forEach(item -> json.writePOJO(view.apply(item)));
    json.writeEndArray();
  }

  private List<String> ids(List<ElementKey> keys) {
    return keys.stream().flatMap(key -> Stream.ofNullable(id(key))).toList();
  }

  private @Nullable String id(@Nullable ElementKey key) {
    return key == null ? null : globalIds.get(key);
  }
}
