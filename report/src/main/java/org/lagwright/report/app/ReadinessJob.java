package org.lagwright.report.app;

import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.lagwright.report.ids.IdsFile;
import org.lagwright.report.json.ReadinessJson;
import org.lagwright.report.workbook.ReadinessTable;
import org.lagwright.takeoff.readiness.Readiness;
import org.lagwright.takeoff.readiness.RequirementPack;

/** Reads models and says what they carry for a takeoff; writes what designers are asked for. */
public final class ReadinessJob {

  /** Name of the file for other programs. */
  public static final String JSON = "readiness.json";

  /** Name of the table. */
  public static final String CSV = "readiness.csv";

  private final TakeoffJob takeoff;

  /** A job that reads models by another one. */
  public ReadinessJob(TakeoffJob takeoff) {
    this.takeoff = takeoff;
  }

  /**
   * What was done.
   *
   * @param files the files written
   */
  public record Done(Readiness readiness, List<Path> files) {
    public Done {
      files = List.copyOf(files);
    }
  }

  /**
   * Looks through models and writes {@link #JSON} and {@link #CSV}.
   *
   * @param settings settings file, null for the defaults
   * @param out folder for the outputs, created if missing
   * @throws org.lagwright.ifc.source.ModelException if a model cannot be read
   * @throws org.lagwright.takeoff.pack.PackException if the settings are wrong
   * @throws OutputException if an output cannot be written
   */
  public Done run(List<Path> models, @Nullable Path settings, Path out) {
    OutputFolder folder = new OutputFolder(out);
    folder.check(List.of(JSON, CSV));
    Readiness readiness = takeoff.readiness(models, settings);
    Map<String, OutputFolder.Content> contents = new LinkedHashMap<>();
    contents.put(JSON, to -> ReadinessJson.write(readiness, Version.text(), to));
    contents.put(CSV, to -> ReadinessTable.write(readiness, to));
    return new Done(readiness, folder.write(contents));
  }

  /**
   * Writes what a model must carry as IDS.
   *
   * @param file name of the file to write
   * @return the file written
   * @throws OutputException if it cannot be written
   */
  public static Path writeIds(Path file) {
    Path whole = file.toAbsolutePath();
    Path folder = whole.getParent();
    if (folder == null) {
      throw new OutputException(file + ": this is no name for a file. Choose another with --ids.");
    }
    OutputFolder place = new OutputFolder(folder);
    String name = String.valueOf(whole.getFileName());
    place.check(List.of(name));
    place.write(Map.of(name, to -> IdsFile.write(RequirementPack.bundled(), to)));
    return file;
  }
}
