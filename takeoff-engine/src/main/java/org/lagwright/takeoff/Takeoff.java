package org.lagwright.takeoff;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.lagwright.ifc.model.BuildingPart;
import org.lagwright.ifc.model.Finding;
import org.lagwright.ifc.model.MepModel;
import org.lagwright.ifc.model.ModelFile;
import org.lagwright.takeoff.labour.Labour;
import org.lagwright.takeoff.measure.Measurement;
import org.lagwright.takeoff.order.OrderList;
import org.lagwright.takeoff.pack.PackInfo;
import org.lagwright.takeoff.price.Price;
import org.lagwright.takeoff.settings.Settings;
import org.lagwright.takeoff.settings.SettingsReader;

/**
 * The whole result of one run.
 *
 * @param models the files read
 * @param settings the settings used, defaults filled in
 * @param packs the data packs used
 * @param elements every element read, with what was decided
 * @param lines the takeoff
 * @param questions what the user has to decide
 * @param measurements the takeoff by each method of measurement that the settings name
 * @param order what to buy for the lines
 * @param labour hours of work, by place and service
 * @param price of order and labour; null where the user gives no prices
 * @param findings of reader and engine together, in file order
 * @param totals the account; its constructor refuses an account that does not add up
 * @param surroundings what is built around the elements, by model; read when looked at
 */
public record Takeoff(
    List<ModelFile> models,
    Settings settings,
    List<PackInfo> packs,
    List<TakenElement> elements,
    List<TakeoffLine> lines,
    List<Question> questions,
    List<Measurement> measurements,
    OrderList order,
    Labour labour,
    @Nullable Price price,
    List<Finding> findings,
    Totals totals,
    List<List<BuildingPart>> surroundings) {

  public Takeoff {
    models = List.copyOf(models);
    packs = List.copyOf(packs);
    elements = List.copyOf(elements);
    lines = List.copyOf(lines);
    questions = List.copyOf(questions);
    measurements = List.copyOf(measurements);
    findings = List.copyOf(findings);
    surroundings = List.copyOf(surroundings);
  }

  /**
   * Takes off the insulation of all models together.
   *
   * @param models files as read; no two elements may share a key
   * @param settings what the user chose, from {@code SettingsReader}
   * @throws org.lagwright.takeoff.pack.PackException if the settings name a material or an energy
   *     rule that no pack has
   */
  public static Takeoff of(List<MepModel> models, Settings settings) {
    return new TakeoffRun(List.copyOf(models), settings).run();
  }

  /** The same with more findings, behind the others. */
  public Takeoff withFindings(List<Finding> more) {
    List<Finding> all = new ArrayList<>(findings);
    all.addAll(more);
    return new Takeoff(
        models,
        settings,
        packs,
        elements,
        lines,
        questions,
        measurements,
        order,
        labour,
        price,
        all,
        totals,
        surroundings);
  }

  /** Every data pack that settings can choose from. */
  public static List<PackInfo> availablePacks() {
    return new TakeoffRun(List.of(), SettingsReader.defaults()).availablePacks();
  }
}
