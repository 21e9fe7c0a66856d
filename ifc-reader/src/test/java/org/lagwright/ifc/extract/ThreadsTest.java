package org.lagwright.ifc.extract;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.lagwright.ifc.model.MepModel;
import org.lagwright.ifc.model.ModelFile;
import org.lagwright.ifc.schema.IfcFile;
import org.lagwright.ifc.step.StepBytes;
import org.lagwright.ifc.step.StepLimits;
import org.lagwright.ifc.threads.Workers;
import org.lagwright.testmodels.demo.AlderQuay;
import org.lagwright.testmodels.ifc.Schema;

/** The number of threads changes nothing but the time. */
class ThreadsTest {

  @ParameterizedTest
  @ValueSource(ints = {2, 3, 7})
  void manyThreadsGiveWhatOneGives(int threads) {
    MepModel one = read(1);
    MepModel many = read(threads);

    assertThat(many.elements()).hasSizeGreaterThan(300).isEqualTo(one.elements());
    assertThat(many.findings()).isEqualTo(one.findings());
    assertThat(many.systems()).isEqualTo(one.systems());
    assertThat(many.otherProducts()).isEqualTo(one.otherProducts());
  }

  private static MepModel read(int threads) {
    byte[] bytes = AlderQuay.write(Schema.IFC4).getBytes(StandardCharsets.UTF_8);
    IfcFile file = IfcFile.open(StepBytes.of(bytes), StepLimits.DEFAULT, read -> {});
    ModelFile source = new ModelFile(0, "alder-quay.ifc", "", "IFC4");
    return ModelExtractor.extract(file, source, ReadOptions.DEFAULT, done -> {}, threads);
  }

  @Test
  void resultsComeInTheOrderOfTheWork() {
    List<Integer> taken = new ArrayList<>();
    try (Workers workers = new Workers(5)) {
      workers.inOrder(1000, 7, (from, to) -> from, taken::add);
    }

    assertThat(taken).isSorted().hasSize(143);
  }

  @Test
  void mistakesInTheWorkAreNotSwallowed() {
    try (Workers workers = new Workers(2)) {
      assertThatThrownBy(
              () ->
                  workers.inOrder(
                      10,
                      1,
                      (from, to) -> {
                        throw new IllegalStateException("piece " + from);
                      },
                      piece -> {}))
          .isInstanceOf(IllegalStateException.class)
          .hasMessage("piece 0");
    }
  }
}
