package org.lagwright.report.app;

import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.lagwright.report.json.ComparisonJson;
import org.lagwright.report.workbook.ComparisonWorkbook;
import org.lagwright.report.workbook.TableFiles;
import org.lagwright.takeoff.Takeoff;
import org.lagwright.takeoff.compare.Comparison;

/** Takes off two revisions of a model with the same settings, writes what changed. */
public final class ComparisonJob {

  /** Name of the workbook. */
  public static final String WORKBOOK = "comparison.xlsx";

  /** Name of the file for other programs. */
  public static final String JSON = "comparison.json";

  private final TakeoffJob takeoff;

  /** A job that takes off by another one. */
  public ComparisonJob(TakeoffJob takeoff) {
    this.takeoff = takeoff;
  }

  /**
   * What was done.
   *
   * @param files the files written
   */
  public record Done(Comparison comparison, List<Path> files) {
    public Done {
      files = List.copyOf(files);
    }
  }

  /**
   * Compares two revisions and writes {@link #WORKBOOK} and {@link #JSON}, and the tables as CSV
   * where asked for.
   *
   * @param settings settings file, null for the defaults
   * @param out folder for the output, created if missing
   * @param csv whether the tables are written too
   * @throws org.lagwright.ifc.source.ModelException if a model cannot be read
   * @throws org.lagwright.takeoff.pack.PackException if settings or packs are wrong
   * @throws OutputException if the output cannot be written
   */
  public Done run(Path before, Path now, @Nullable Path settings, Path out, boolean csv) {
    OutputFolder folder = new OutputFolder(out);
    folder.check(List.of(WORKBOOK, JSON));
    Takeoff old = takeoff.compute(List.of(before), settings);
    Takeoff young = takeoff.compute(List.of(now), settings);
    Comparison comparison = Comparison.of(old, young);
    ComparisonWorkbook book =
        new ComparisonWorkbook(
            comparison,
            young.settings(),
            old.models().get(0).name(),
            young.models().get(0).name(),
            Version.text());
    ComparisonJson json =
        new ComparisonJson(comparison, old.models().get(0), young.models().get(0), Version.text());
    Map<String, OutputFolder.Content> contents = new LinkedHashMap<>();
    contents.put(WORKBOOK, book::write);
    contents.put(JSON, json::write);
    if (csv) {
      TableFiles tables = TableFiles.of(comparison, young.settings().units());
      tables.names().forEach(name -> contents.put(name, to -> tables.write(name, to)));
    }
    return new Done(comparison, folder.write(contents));
  }
}
