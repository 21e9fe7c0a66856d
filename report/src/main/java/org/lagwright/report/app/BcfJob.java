package org.lagwright.report.app;

import java.nio.file.Path;
import java.time.Instant;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.lagwright.report.bcf.BcfArchive;
import org.lagwright.report.bcf.BcfVersion;

/** Reads models, takes off, writes what is to be settled as issues for the designers. */
public final class BcfJob {

  /** Name of the file. */
  public static final String FILE = "issues.bcf";

  private final TakeoffJob takeoff;

  /** A job that takes off by another one. */
  public BcfJob(TakeoffJob takeoff) {
    this.takeoff = takeoff;
  }

  /**
   * What was done.
   *
   * @param topics topics in the file
   * @param files the files written
   */
  public record Done(int topics, List<Path> files) {
    public Done {
      files = List.copyOf(files);
    }
  }

  /**
   * Computes the takeoff and writes {@link #FILE}.
   *
   * @param settings settings file, null for the defaults
   * @param out folder for the output, created if missing
   * @param created date of the issues
   * @throws org.lagwright.ifc.source.ModelException if a model cannot be read
   * @throws org.lagwright.takeoff.pack.PackException if settings or packs are wrong
   * @throws OutputException if the output cannot be written
   */
  public Done run(
      List<Path> models, @Nullable Path settings, Path out, BcfVersion version, Instant created) {
    OutputFolder folder = new OutputFolder(out);
    folder.check(List.of(FILE));
    BcfArchive archive = new BcfArchive(takeoff.compute(models, settings), version, created);
    return new Done(archive.topics(), folder.write(Map.of(FILE, archive::write)));
  }
}
