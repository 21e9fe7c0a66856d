package org.lagwright.takeoff.thickness;

import java.util.Comparator;
import java.util.List;
import org.lagwright.takeoff.pack.PackInfo;
import org.lagwright.takeoff.pack.PackReader;

/** Inside diameters of pipes by outside diameter, for rules that ask for the inside one. */
record PipeBores(String id, String version, String source, String status, List<Pipe> pipes) {

  PipeBores {
    pipes = List.copyOf(pipes);
    if (pipes.isEmpty()) {
      throw new IllegalArgumentException("pipes must not be empty.");
    }
  }

  /**
   * One pipe.
   *
   * @param outsideMm outside diameter, millimetres
   * @param wallMm usual wall, millimetres
   */
  record Pipe(double outsideMm, double wallMm) {
    Pipe {
      if (!(wallMm > 0 && 2 * wallMm < outsideMm)) {
        throw new IllegalArgumentException("wallMm must leave a bore in " + outsideMm + " mm.");
      }
    }
  }

  static PipeBores bundled() {
    return PackReader.readBundled(PipeBores.class, "pipe-bores.yaml", PipeBores.class);
  }

  /**
   * Inside diameter: outside less the walls of the pipe of nearest outside diameter, metres. Thick
   * walled plastic pipe has a smaller bore, so the thickness errs on the safe side.
   */
  double boreM(double outsideDiameterM) {
    double outsideMm = outsideDiameterM * 1000;
    Pipe nearest =
        pipes.stream()
            .min(Comparator.comparingDouble(p -> Math.abs(p.outsideMm() - outsideMm)))
            .orElseThrow();
    double wallMm = Math.min(nearest.wallMm(), 0.2 * outsideMm);
    return (outsideMm - 2 * wallMm) / 1000;
  }

  PackInfo info() {
    return new PackInfo(id, version, source, status);
  }
}
