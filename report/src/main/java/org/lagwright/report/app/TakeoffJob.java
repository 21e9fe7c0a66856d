package org.lagwright.report.app;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import org.lagwright.ifc.model.Finding;
import org.lagwright.ifc.model.MepModel;
import org.lagwright.ifc.model.ReadFinding;
import org.lagwright.ifc.source.ModelException;
import org.lagwright.ifc.source.ProgressListener;
import org.lagwright.report.CheckedTakeoff;
import org.lagwright.report.Words;
import org.lagwright.report.enrich.Enrichment;
import org.lagwright.report.json.TakeoffJson;
import org.lagwright.report.workbook.TableFiles;
import org.lagwright.report.workbook.TakeoffWorkbook;
import org.lagwright.takeoff.Takeoff;
import org.lagwright.takeoff.readiness.Readiness;
import org.lagwright.takeoff.settings.Settings;

/** Reads models, takes off, writes the outputs. */
public final class TakeoffJob {

  /** Name of the workbook. */
  public static final String WORKBOOK = "takeoff.xlsx";

  /** Name of the file for other programs. */
  public static final String JSON = "takeoff.json";

  private final Pipeline pipeline;
  private final ProgressListener progress;

  /** A job that reads and computes by the pipeline and tells the listener how far it is. */
  public TakeoffJob(Pipeline pipeline, ProgressListener progress) {
    this.pipeline = pipeline;
    this.progress = progress;
  }

  /** What is written on request only. */
  public enum Extra {
    /** The tables of the workbook as CSV. */
    CSV,
    /** The models with coverings for their insulation. */
    IFC
  }

  /**
   * What was done.
   *
   * @param files the files written
   * @param enriched what went into the enriched models, a line for each
   * @param enrichedFiles the enriched models by what they were made from, as it was given
   */
  public record Done(
      Takeoff takeoff, List<Path> files, List<String> enriched, Map<Path, Path> enrichedFiles) {
    public Done {
      files = List.copyOf(files);
      enriched = List.copyOf(enriched);
      enrichedFiles = Map.copyOf(enrichedFiles);
    }
  }

  /**
   * Computes the takeoff without writing anything.
   *
   * @param settings settings file, null for the defaults
   * @throws org.lagwright.ifc.source.ModelException if a model cannot be read
   * @throws org.lagwright.takeoff.pack.PackException if settings or packs are wrong
   */
  public Takeoff compute(List<Path> models, @Nullable Path settings) {
    Settings chosen = settings(settings);
    return takeOff(read(models, chosen), chosen);
  }

  /**
   * Computes the takeoff and writes {@link #WORKBOOK} and {@link #JSON}, and what is asked for
   * besides: all or none.
   *
   * @param settings settings file, null for the defaults
   * @param out folder for the outputs, created if missing
   * @param extras what to write besides
   * @throws org.lagwright.ifc.source.ModelException if a model cannot be read
   * @throws org.lagwright.takeoff.pack.PackException if settings or packs are wrong
   * @throws OutputException if an output cannot be written
   */
  public Done run(List<Path> models, @Nullable Path settings, Path out, Set<Extra> extras) {
    Settings chosen = settings(settings);
    OutputFolder folder = new OutputFolder(out);
    folder.check(List.of(WORKBOOK, JSON));
    List<MepModel> read = read(models, chosen);
    List<MepModel> wanted = extras.contains(Extra.IFC) ? read : List.of();
    EnrichedModels enriched = new EnrichedModels(pipeline, models, wanted);
    folder.check(enriched.names());
    enriched.refuseOverwriting(out);
    Takeoff takeoff = takeOff(read, chosen);
    if (!wanted.isEmpty()) {
      takeoff = takeoff.withFindings(Enrichment.findings(takeoff));
    }
    Map<String, OutputFolder.Content> contents = contents(takeoff, extras.contains(Extra.CSV));
    contents.putAll(enriched.contents(takeoff, Version.text()));
    progress.progress("writing", 0);
    List<Path> files = folder.write(contents);
    progress.progress("writing", 1);
    return new Done(takeoff, files, enriched.inWords(), enriched.in(out));
  }

  private static Map<String, OutputFolder.Content> contents(Takeoff takeoff, boolean csv) {
    Map<String, OutputFolder.Content> contents = new LinkedHashMap<>();
    CheckedTakeoff checked = CheckedTakeoff.of(takeoff);
    contents.put(WORKBOOK, new TakeoffWorkbook(checked, Version.text())::write);
    contents.put(JSON, new TakeoffJson(checked, Version.text())::write);
    if (csv) {
      TableFiles tables = TableFiles.of(checked);
      tables.names().forEach(name -> contents.put(name, to -> tables.write(name, to)));
    }
    return contents;
  }

  private Settings settings(@Nullable Path file) {
    return file == null ? pipeline.defaultSettings() : pipeline.readSettings(file);
  }

  /** What the models carry; the errors are those of {@link #compute}. */
  Readiness readiness(List<Path> files, @Nullable Path settings) {
    Settings chosen = settings(settings);
    return Readiness.of(read(files, chosen), chosen);
  }

  private List<MepModel> read(List<Path> files, Settings settings) {
    List<MepModel> models = new ArrayList<>();
    for (Path file : files) {
      models.add(pipeline.readModel(file, models.size(), settings, progress));
    }
    refuseIfNothingToLag(files, models);
    return pipeline.join(models, settings);
  }

  private Takeoff takeOff(List<MepModel> models, Settings settings) {
    progress.progress("taking off", 0);
    Takeoff takeoff = pipeline.takeOff(models, settings);
    progress.progress("taking off", 1);
    return takeoff;
  }

  /** One model may be architecture only; all of them may not. */
  private static void refuseIfNothingToLag(List<Path> files, List<MepModel> models) {
    if (models.stream().flatMap(m -> m.elements().stream()).anyMatch(e -> e.kind().isLagged())) {
      return;
    }
    Map<String, Integer> seen = new TreeMap<>();
    for (MepModel model : models) {
      model.otherProducts().forEach((ifcClass, count) -> seen.merge(ifcClass, count, Integer::sum));
      model.elements().forEach(e -> seen.merge(Words.kind(e.kind()), 1, Integer::sum));
    }
    String held =
        seen.entrySet().stream()
            .map(e -> e.getValue() + " " + e.getKey())
            .collect(Collectors.joining(", "));
    String found =
        (seen.isEmpty() ? "it is empty" : "it holds " + held)
            + namedLikePipes(models)
            + firstFault(models);
    throw new ModelException(
        files.stream().map(Path::toString).collect(Collectors.joining(", "))
            + ": there is no pipe, duct, fitting or valve in the model ("
            + found
            + "). Give the model of the mechanical services.");
  }

  /** Pipes and ducts that the exporter wrote as things of any kind. */
  private static String namedLikePipes(List<MepModel> models) {
    List<Finding> named =
        models.stream()
            .flatMap(m -> m.findings().stream())
            .filter(f -> f.code() == ReadFinding.PROXY_LOOKS_LIKE_SERVICE)
            .toList();
    return named.isEmpty()
        ? ""
        : "; the names of %d say pipe or duct, such as '%s', but their class stands for anything"
            .formatted(named.size(), named.get(0).values().get(0));
  }

  /** A malformed line may be why nothing was found. */
  private static String firstFault(List<MepModel> models) {
    return models.stream()
        .flatMap(m -> m.findings().stream())
        .filter(f -> f.code() == ReadFinding.SYNTAX)
        .findFirst()
        .map(f -> "; line " + f.values().get(0) + ": " + f.values().get(1))
        .orElse("");
  }
}
