package org.lagwright.report.json;

import java.io.IOException;
import java.io.OutputStream;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.lagwright.takeoff.pack.PackInfo;
import org.lagwright.takeoff.readiness.Readiness;
import org.lagwright.takeoff.readiness.ReadinessRow;
import org.lagwright.takeoff.readiness.Requirement;

/** Writes {@code readiness.json}; names are those of {@code readiness.schema.json}. */
public final class ReadinessJson {

  /** Which schema the document follows; the schema has the same id. */
  private static final String SCHEMA = "urn:lagwright:readiness:1.1";

  private ReadinessJson() {}

  /**
   * Writes it; the stream stays open.
   *
   * @param version version of this program
   * @throws IOException if the stream cannot be written
   */
  public static void write(Readiness readiness, String version, OutputStream out)
      throws IOException {
    JsonText.write(out, json -> json.writePOJO(DocumentView.of(readiness, version)));
  }

  private record DocumentView(
      String lagwright,
      String schema,
      PackInfo pack,
      int elements,
      double readyPct,
      List<ModelView> models,
      List<RequirementView> requirements,
      List<RowView> rows) {

    static DocumentView of(Readiness readiness, String version) {
      return new DocumentView(
          version,
          SCHEMA,
          readiness.pack().info(),
          readiness.elements(),
          Finite.number(readiness.readyPct()),
          readiness.models().stream().map(ModelView::of).toList(),
          readiness.byRequirement().stream().map(RequirementView::of).toList(),
          readiness.rows().stream().map(RowView::of).toList());
    }
  }

  private record ModelView(
      String file, String sha256, String schema, String exporter, int elements, int ready) {
    static ModelView of(Readiness.ModelReadiness model) {
      return new ModelView(
          model.file().name(),
          model.file().sha256(),
          model.file().schema(),
          model.file().exporter(),
          model.elements(),
          model.ready());
    }
  }

  private record RequirementView(
      String id,
      String title,
      String need,
      String why,
      String ask,
      @Nullable String notInIds,
      String source,
      String status,
      int elements,
      int asAsked,
      int workedOut,
      int missing) {
    static RequirementView of(ReadinessRow row) {
      Requirement requirement = row.requirement();
      return new RequirementView(
          requirement.id(),
          requirement.title(),
          requirement.need().label(),
          requirement.why(),
          requirement.ask(),
          requirement.notInIds(),
          requirement.source(),
          requirement.status().label(),
          row.elements(),
          row.asAsked(),
          row.workedOut(),
          row.missing());
    }
  }

  private record RowView(
      String requirement,
      String exporter,
      String ifcClass,
      String typeName,
      int elements,
      int asAsked,
      int workedOut,
      int missing,
      List<String> examples) {
    static RowView of(ReadinessRow row) {
      return new RowView(
          row.requirement().id(),
          row.group().exporter(),
          row.group().ifcClass(),
          row.group().typeName(),
          row.elements(),
          row.asAsked(),
          row.workedOut(),
          row.missing(),
          row.examples());
    }
  }
}
