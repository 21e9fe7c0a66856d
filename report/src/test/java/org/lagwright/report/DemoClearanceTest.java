package org.lagwright.report;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.lagwright.ifc.source.ProgressListener;
import org.lagwright.report.app.ModelPipeline;
import org.lagwright.report.app.TakeoffJob;
import org.lagwright.takeoff.TakenElement;
import org.lagwright.takeoff.clearance.Clash;
import org.lagwright.takeoff.clearance.Clearance;
import org.lagwright.testmodels.golden.Golden;

/** Where the insulation of the demo building does not fit. */
class DemoClearanceTest {

  private static final Path DEMO = Path.of("../test-models/demo");

  @Test
  void theClearanceOfTheDemoStaysAsItIs() throws IOException {
    Clearance clearance =
        Clearance.of(
            new TakeoffJob(new ModelPipeline(), ProgressListener.SILENT)
                .compute(
                    List.of(DEMO.resolve("alder-quay-ifc4.ifc")), DEMO.resolve("settings.yaml")));
    StringBuilder text = new StringBuilder("looked at " + clearance.lookedAt() + " elements\n");
    for (Clash clash : clearance.clashes()) {
      text.append(clash.cause().label())
          .append(": gap ")
          .append(Words.millimetres(clash.gapM()))
          .append(" mm, bare ")
          .append(Words.millimetres(clash.bareGapM()))
          .append(" mm | ")
          .append(name(clash.first()))
          .append(" | ")
          .append(clash.second().globalId())
          .append(' ')
          .append(clash.second().name())
          .append('\n');
    }
    for (Clearance.Unplaced unplaced : clearance.unplaced()) {
      text.append("not looked at: ")
          .append(name(unplaced.element()))
          .append(": ")
          .append(unplaced.reason())
          .append('\n');
    }
    Golden.check(DemoClearanceTest.class, "alder-quay-clearance.txt", text.toString());
  }

  private static String name(TakenElement taken) {
    return taken.element().globalId() + " " + taken.element().name();
  }
}
