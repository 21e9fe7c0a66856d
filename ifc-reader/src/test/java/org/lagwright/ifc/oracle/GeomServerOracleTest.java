package org.lagwright.ifc.oracle;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.lagwright.ifc.extract.FileUnits;
import org.lagwright.ifc.geometry.frame.GeometryUnits;
import org.lagwright.ifc.schema.IfcFile;
import org.lagwright.ifc.step.StepBytes;
import org.lagwright.ifc.step.StepLimits;
import org.lagwright.testmodels.demo.AlderQuay;
import org.lagwright.testmodels.ifc.Schema;
import org.lagwright.testmodels.tiny.TinyModels;

/** Volumes and boxes of what we write in IFC2X3, against IfcGeomServer. */
@Tag("oracle")
class GeomServerOracleTest {

  private static final long SEED = 20_261_125;

  @TempDir private Path folder;

  @Test
  void randomStraightsBendsReducersAndTeesHaveItsVolumesAndBoxes() throws IOException {
    System.out.println("seed " + SEED);
    Comparison comparison = compare(RandomFittings.write(Schema.IFC2X3, SEED));
    assertThat(comparison.differences()).isEmpty();
    assertThat(comparison.boxes()).isEqualTo(48);
    assertThat(comparison.volumes()).isEqualTo(48);
  }

  @Test
  void theDemoBuildingHasItsVolumesAndBoxes() throws IOException {
    Comparison comparison = compare(AlderQuay.write(Schema.IFC2X3));
    assertThat(comparison.differences()).isEmpty();
    assertThat(comparison.boxes()).isGreaterThan(250);
    assertThat(comparison.volumes()).isGreaterThan(200);
  }

  @Test
  void tinyModelsHaveItsVolumesAndBoxes() throws IOException {
    int boxes = 0;
    Map<String, List<String>> differences = new TreeMap<>();
    for (String name : TinyModels.list()) {
      String text = new String(TinyModels.read(name), StandardCharsets.US_ASCII);
      if (text.contains("('IFC2X3')")) {
        Comparison comparison = compare(text);
        boxes += comparison.boxes();
        if (!comparison.differences().isEmpty()) {
          differences.put(name, comparison.differences());
        }
      }
    }
    assertThat(differences).isEmpty();
    assertThat(boxes).isPositive();
  }

  /** The comparison is no rubber stamp: 3 % more length is a wrong volume and a wrong box. */
  @Test
  void aFileThatIsThreePercentOffIsFound() throws IOException {
    String wrong = RandomFittings.writeWrong(Schema.IFC2X3, SEED, 1.03);
    Comparison comparison = compare(RandomFittings.write(Schema.IFC2X3, SEED), wrong);
    assertThat(comparison.differences()).hasSizeGreaterThan(18);
    assertThat(comparison.differences().toString()).contains("box", "volume");
  }

  private Comparison compare(String text) throws IOException {
    return compare(text, text);
  }

  private Comparison compare(String ours, String theirs) throws IOException {
    IfcFile file = IfcFile.open(StepBytes.of(bytes(ours)), StepLimits.DEFAULT, read -> {});
    GeometryUnits units = FileUnits.of(file);
    Map<String, OracleMesh> meshes =
        GeomServer.read(bytes(theirs), units.lengthM(), folder).stream()
            .collect(Collectors.toMap(OracleMesh::globalId, mesh -> mesh, (a, b) -> a));
    Comparison comparison = new Comparison();
    for (OurBody body : OurBody.all(file, units)) {
      OracleMesh mesh = meshes.get(String.valueOf(body.product().text("GlobalId")));
      if (mesh != null) {
        comparison.box(body, mesh);
        comparison.volume(body, mesh);
      }
    }
    return comparison;
  }

  private static byte[] bytes(String text) {
    return text.getBytes(StandardCharsets.US_ASCII);
  }
}
