package org.lagwright.report.enrich;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import java.util.TreeMap;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.lagwright.ifc.model.ElementKey;
import org.lagwright.ifc.model.MepElement;
import org.lagwright.ifc.source.ProgressListener;
import org.lagwright.report.RealRun;
import org.lagwright.report.app.ModelPipeline;
import org.lagwright.report.app.TakeoffJob;
import org.lagwright.takeoff.TakenElement;
import org.lagwright.takeoff.Takeoff;
import org.lagwright.takeoff.body.ElementBodies;
import org.lagwright.takeoff.body.ElementBodies.LayerBodies;
import org.lagwright.takeoff.body.Joints;
import org.lagwright.testmodels.check.TriangleMesh;
import org.lagwright.testmodels.check.WebIfc;
import org.lagwright.testmodels.ifc.Schema;

/** What web-ifc draws of the coverings of the demo, against their closed forms. */
@Tag("oracle")
class EnrichedVolumesOracleTest {

  private static final Path DEMO = Path.of("../test-models/demo");
  private static final double ACCURACY = 0.01;
  private static final double EXACT = 0.001;

  private static WebIfc webIfc;

  @TempDir Path folder;

  @BeforeAll
  static void install() throws IOException, InterruptedException {
    webIfc = WebIfc.install();
  }

  @ParameterizedTest
  @EnumSource(Schema.class)
  void coveringsAreDrawnWithTheVolumeOfTheirClosedForm(Schema schema) throws Exception {
    String name = "alder-quay-" + schema.name().toLowerCase(Locale.ROOT);
    Path model = DEMO.resolve(name + ".ifc");
    String settings = DEMO.resolve("settings.yaml").toString();
    RealRun.of(
        "takeoff", model.toString(), "--settings", settings, "--out", folder.toString(), "--ifc");
    Path enriched = folder.resolve(name + "-insulated.ifc");
    TakeoffJob job = new TakeoffJob(new ModelPipeline(), ProgressListener.SILENT);
    Map<ElementKey, MepElement> read =
        job.compute(List.of(enriched), Path.of(settings)).elements().stream()
            .map(TakenElement::element)
            .collect(Collectors.toMap(MepElement::key, Function.identity()));
    Map<Long, TriangleMesh> drawn =
        webIfc.read(enriched).meshes().stream()
            .collect(Collectors.toMap(TriangleMesh::step, Function.identity()));

    Map<String, String> differences = new TreeMap<>();
    int compared = 0;
    int notExact = 0;
    Takeoff takeoff = job.compute(List.of(model), Path.of(settings));
    Joints joints = new Joints(takeoff.elements());
    for (TakenElement taken : takeoff.elements()) {
      if (taken.lineId() != null && taken.element().existingInsulation() == null) {
        MepElement host = Objects.requireNonNull(read.get(taken.element().key()));
        List<ElementKey> coverings = Objects.requireNonNull(host.existingInsulation()).coverings();
        List<LayerBodies> layers = ElementBodies.of(taken, joints).layers();
        for (int i = 0; i < layers.size(); i++) {
          TriangleMesh mesh = drawn.get(coverings.get(i).step());
          double expectedM3 = layers.get(i).volumeM3();
          if (expectedM3 > 0) {
            compared++;
            double drawnM3 = mesh == null ? 0 : mesh.volumeM3();
            notExact += Math.abs(drawnM3 / expectedM3 - 1) > EXACT ? 1 : 0;
            if (!(Math.abs(drawnM3 / expectedM3 - 1) <= ACCURACY)) {
              String what = taken.element().kind() + " " + taken.element().form();
              differences.put(coverings.get(i).step() + " " + what, drawnM3 + " for " + expectedM3);
            }
          }
        }
      }
    }
    assertThat(differences).isEmpty();
    assertThat(compared).isGreaterThan(250);
    // it draws circles as polygons of 48 corners, which are 0.3 per cent short
    assertThat(notExact).isGreaterThan(150);
  }
}
