package org.lagwright.takeoff.readiness;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.lagwright.ifc.model.ElementKey;
import org.lagwright.ifc.model.MepElement;
import org.lagwright.ifc.model.MepModel;
import org.lagwright.ifc.model.ModelFile;
import org.lagwright.takeoff.service.Classification;
import org.lagwright.takeoff.service.ServiceClassifier;
import org.lagwright.takeoff.service.ServicePack;
import org.lagwright.takeoff.settings.Settings;

/**
 * How ready models are for a takeoff. Pipes, ducts, fittings, valves and in-line items are looked
 * at; of those that an earlier file holds already only the first.
 *
 * @param pack what was asked for
 * @param rows by requirement, then by exporting program and type of element
 */
public record Readiness(
    RequirementPack pack, List<ModelReadiness> models, List<ReadinessRow> rows) {

  private static final Comparator<ReadinessRow> WORST_FIRST =
      Comparator.comparing((ReadinessRow row) -> row.requirement().need())
          .thenComparing(Comparator.comparingInt(ReadinessRow::missing).reversed());

  public Readiness {
    models = List.copyOf(models);
    rows = List.copyOf(rows);
  }

  /**
   * One file.
   *
   * @param elements that are looked at
   * @param ready those that miss nothing that is needed; 0 where the file itself misses something
   */
  public record ModelReadiness(ModelFile file, int elements, int ready) {}

  /**
   * Looks through models that were joined.
   *
   * @param settings of which the names that mean services and the temperatures count
   */
  public static Readiness of(List<MepModel> models, Settings settings) {
    List<MepElement> all = models.stream().flatMap(m -> m.elements().stream()).toList();
    Map<ElementKey, Classification> services =
        new ServiceClassifier(
                ServicePack.bundled(),
                settings.services().stream().map(Settings.ServiceRule::mapping).toList(),
                settings.temperaturesC())
            .classify(all);
    RequirementPack pack = RequirementPack.bundled();
    ReadinessBook book = new ReadinessBook(pack);
    List<ModelReadiness> checked = new ArrayList<>();
    for (MepModel model : models) {
      checked.add(book.add(model, new Facts(model, services)));
    }
    return new Readiness(pack, checked, book.rows());
  }

  /** Elements looked at. */
  public int elements() {
    return models.stream().mapToInt(ModelReadiness::elements).sum();
  }

  /** Share of the elements that miss nothing that is needed, percent; 100 where there are none. */
  public double readyPct() {
    int ready = models.stream().mapToInt(ModelReadiness::ready).sum();
    return elements() == 0 ? 100 : 100.0 * ready / elements();
  }

  /** One row for each requirement that concerns anything; its group is that of the first. */
  public List<ReadinessRow> byRequirement() {
    Map<String, ReadinessRow> sums = new LinkedHashMap<>();
    rows.forEach(row -> sums.merge(row.requirement().id(), row, ReadinessRow::plus));
    return List.copyOf(sums.values());
  }

  /** Rows with something missing: what is needed before what helps, the most missing first. */
  public List<ReadinessRow> worst() {
    return rows.stream().filter(row -> row.missing() > 0).sorted(WORST_FIRST).toList();
  }
}
