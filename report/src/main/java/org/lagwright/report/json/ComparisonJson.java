package org.lagwright.report.json;

import java.io.IOException;
import java.io.OutputStream;
import org.lagwright.ifc.model.ModelFile;
import org.lagwright.report.json.ChangeView.AmountView;
import org.lagwright.takeoff.compare.Comparison;
import org.lagwright.takeoff.compare.PriceChange;
import org.lagwright.takeoff.price.BuildUp;
import tools.jackson.core.JsonGenerator;

/** Writes {@code comparison.json}; names and units are those of {@code comparison.schema.json}. */
public final class ComparisonJson {

  /** Which schema the document follows; the schema has the same id. */
  private static final String SCHEMA = "urn:lagwright:comparison:1.0";

  private final Comparison comparison;
  private final ModelFile before;
  private final ModelFile now;
  private final String version;

  /**
   * Prepares the JSON.
   *
   * @param before first revision
   * @param now second revision
   * @param version version of this program
   */
  public ComparisonJson(Comparison comparison, ModelFile before, ModelFile now, String version) {
    this.comparison = comparison;
    this.before = before;
    this.now = now;
    this.version = version;
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
    boolean priced = comparison.price() != null;
    json.writeStartObject();
    json.writeStringProperty("lagwright", version);
    json.writeStringProperty("schema", SCHEMA);
    json.writePOJOProperty("before", ModelView.of(before));
    json.writePOJOProperty("now", ModelView.of(now));
    json.writeName("counts");
    json.writeStartArray();
    comparison
        .counts()
        .forEach((change, count) -> json.writePOJO(new CountView(change.label(), count)));
    json.writeEndArray();
    json.writeNumberProperty(
        "unchanged", comparison.changes().size() - comparison.changed().size());
    json.writeName("services");
    json.writeStartArray();
    comparison.byService().forEach((name, a) -> json.writePOJO(ServiceView.of(name, a, priced)));
    json.writeEndArray();
    json.writeName("changes");
    json.writeStartArray();
    comparison.changed().forEach(change -> json.writePOJO(ChangeView.of(change, priced)));
    json.writeEndArray();
    json.writePOJOProperty("difference", AmountView.of(comparison.difference(), priced));
    json.writePOJOProperty(
        "differenceOfUnchanged", AmountView.of(comparison.differenceOfUnchanged(), priced));
    PriceChange price = comparison.price();
    if (price != null) {
      json.writePOJOProperty("price", PricesView.of(price));
    }
    json.writeEndObject();
  }

  private record CountView(String change, int elements) {}

  private record ServiceView(String service, AmountView before, AmountView now) {
    static ServiceView of(String service, Comparison.Amounts amounts, boolean priced) {
      return new ServiceView(
          service, AmountView.of(amounts.before(), priced), AmountView.of(amounts.now(), priced));
    }
  }

  private record PricesView(String currency, PartsView before, PartsView now) {
    static PricesView of(PriceChange price) {
      return new PricesView(
          price.now().terms().currency(),
          PartsView.of(price.before().buildUp(), price.ofTheJobBefore()),
          PartsView.of(price.now().buildUp(), price.ofTheJobNow()));
    }
  }

  private record PartsView(
      double netMaterials,
      double beyondNet,
      double labour,
      double tools,
      double overhead,
      double profit,
      double priceWithoutTax,
      double tax,
      double priceWithTax,
      double ofTheJob) {

    static PartsView of(BuildUp up, double ofTheJob) {
      return new PartsView(
          Finite.number(up.netMaterials()),
          Finite.number(up.beyondNet()),
          Finite.number(up.labour()),
          Finite.number(up.tools()),
          Finite.number(up.overhead()),
          Finite.number(up.profit()),
          Finite.number(up.beforeTax()),
          Finite.number(up.tax()),
          Finite.number(up.total()),
          Finite.number(ofTheJob));
    }
  }
}
