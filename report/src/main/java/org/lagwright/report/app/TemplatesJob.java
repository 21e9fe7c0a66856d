package org.lagwright.report.app;

import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.lagwright.report.templates.TemplateSet;

/** Reads models, takes off, writes the templates of the pieces. */
public final class TemplatesJob {

  private final TakeoffJob takeoff;

  /** A job that takes off by another one. */
  public TemplatesJob(TakeoffJob takeoff) {
    this.takeoff = takeoff;
  }

  /**
   * What was done.
   *
   * @param patterns distinct patterns drawn
   * @param pieces pieces they make
   * @param files the files written
   */
  public record Done(int patterns, int pieces, List<Path> files) {
    public Done {
      files = List.copyOf(files);
    }
  }

  /**
   * Computes the takeoff and writes all templates or none.
   *
   * @param settings settings file, null for the defaults
   * @param out folder for the outputs, created if missing
   * @throws org.lagwright.ifc.source.ModelException if a model cannot be read
   * @throws org.lagwright.takeoff.pack.PackException if settings or packs are wrong
   * @throws OutputException if an output cannot be written
   */
  public Done run(List<Path> models, @Nullable Path settings, Path out) {
    OutputFolder folder = new OutputFolder(out);
    folder.check(List.of(TemplateSet.A4, TemplateSet.A3, TemplateSet.SVG, TemplateSet.DXF));
    TemplateSet set = new TemplateSet(takeoff.compute(models, settings), Version.text());
    Map<String, OutputFolder.Content> contents = new LinkedHashMap<>();
    set.files().forEach((name, file) -> contents.put(name, file::write));
    return new Done(set.patterns(), set.pieces(), folder.write(contents));
  }
}
