package org.lagwright.report.app;

import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.lagwright.report.templates.SiteSheets;

/** Reads models, takes off, writes the sheets for the site. */
public final class SiteSheetsJob {

  private final TakeoffJob takeoff;

  /** A job that takes off by another one. */
  public SiteSheetsJob(TakeoffJob takeoff) {
    this.takeoff = takeoff;
  }

  /**
   * What was done.
   *
   * @param sheets one for each service on each storey
   * @param files the files written
   */
  public record Done(int sheets, List<Path> files) {
    public Done {
      files = List.copyOf(files);
    }
  }

  /**
   * Computes the takeoff and writes the sheets.
   *
   * @param settings settings file, null for the defaults
   * @param out folder for the outputs, created if missing
   * @throws org.lagwright.ifc.source.ModelException if a model cannot be read
   * @throws org.lagwright.takeoff.pack.PackException if settings or packs are wrong
   * @throws OutputException if an output cannot be written
   */
  public Done run(List<Path> models, @Nullable Path settings, Path out) {
    OutputFolder folder = new OutputFolder(out);
    folder.check(List.of(SiteSheets.FILE));
    SiteSheets sheets = new SiteSheets(takeoff.compute(models, settings), Version.text());
    return new Done(sheets.sheets(), folder.write(Map.of(SiteSheets.FILE, sheets::write)));
  }
}
