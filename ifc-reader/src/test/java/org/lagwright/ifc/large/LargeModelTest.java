package org.lagwright.ifc.large;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.BufferedWriter;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.lagwright.ifc.model.MepModel;
import org.lagwright.ifc.source.ModelReader;
import org.lagwright.ifc.source.ProgressListener;
import org.lagwright.testmodels.ifc.Schema;
import org.lagwright.testmodels.large.KnownQuantity;
import org.lagwright.testmodels.large.LargeModel;

/** Small ones of the large models; the large ones are read by {@code .ci/bench}. */
class LargeModelTest {

  private static final long BYTES = 4_000_000;

  @TempDir private Path folder;

  @ParameterizedTest
  @EnumSource(Schema.class)
  void everyQuantityKnownToTheGeneratorIsRead(Schema schema) throws IOException {
    Path file = folder.resolve("large.ifc");
    List<KnownQuantity> known;
    try (BufferedWriter out = Files.newBufferedWriter(file)) {
      known = LargeModel.write(schema, BYTES, out);
    }
    MepModel model = ModelReader.read(file, 0, ProgressListener.SILENT);
    assertThat(ReadQuantities.differences(known, ReadQuantities.of(model))).isEmpty();
  }
}
