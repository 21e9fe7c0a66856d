package org.lagwright.report.cli;

import java.io.PrintWriter;
import java.util.List;
import java.util.function.Function;
import org.lagwright.ifc.source.ProgressListener;
import org.lagwright.report.app.Pipeline;
import org.lagwright.report.app.ServerModels;
import org.lagwright.report.app.TakeoffJob;

/**
 * What the commands share: where they read, compute and write.
 *
 * @param servers models of this run that lie on servers
 * @param terminal true if {@code err} is a terminal and may show progress
 */
record Session(
    Pipeline pipeline, ServerModels servers, PrintWriter out, PrintWriter err, boolean terminal) {

  /** Runs a job, showing its progress. */
  <T> T with(Function<TakeoffJob, T> work) {
    return watched(progress -> work.apply(new TakeoffJob(servers.before(pipeline), progress)));
  }

  /** Shows the progress of work; the line is wiped however it ends. */
  <T> T watched(Function<ProgressListener, T> work) {
    if (!terminal) {
      return work.apply(ProgressListener.SILENT);
    }
    ProgressLine line = new ProgressLine(err);
    try {
      return work.apply(line);
    } finally {
      line.clear();
    }
  }

  /** Prints lines to standard output. */
  void print(List<String> lines) {
    lines.forEach(out::println);
    out.flush();
  }
}
