package org.lagwright.ifc.extract;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.lagwright.ifc.model.ElementList;
import org.lagwright.ifc.model.MepModel;
import org.lagwright.ifc.model.ModelFile;
import org.lagwright.ifc.schema.IfcFile;
import org.lagwright.ifc.step.StepBytes;
import org.lagwright.ifc.step.StepLimits;
import org.lagwright.ifc.threads.Workers;
import org.lagwright.testmodels.demo.AlderQuay;
import org.lagwright.testmodels.ifc.Schema;

/** The number of threads changes nothing but the time, and folding nothing but the memory. */
class ThreadsTest {

  /** Above every number of elements: nothing is folded. */
  private static final int NEVER = Integer.MAX_VALUE;

  @ParameterizedTest
  @ValueSource(ints = {2, 3, 7})
  void manyThreadsGiveWhatOneGives(int threads) {
    assertSame(read(threads, 0), read(1, 0));
    assertSame(read(threads, NEVER), read(1, NEVER));
  }

  @ParameterizedTest
  @EnumSource(Schema.class)
  void foldedElementsGiveWhatOpenOnesGive(Schema schema) {
    MepModel folded = read(schema, 2, 0);

    assertThat(folded.elements()).isInstanceOf(ElementList.class);
    assertSame(folded, read(schema, 2, NEVER));
  }

  private static void assertSame(MepModel model, MepModel other) {
    assertThat(model.elements()).hasSizeGreaterThan(300).isEqualTo(other.elements());
    assertThat(model.findings()).isEqualTo(other.findings());
    assertThat(model.systems()).isEqualTo(other.systems());
    assertThat(model.otherProducts()).isEqualTo(other.otherProducts());
  }

  private static MepModel read(int threads, int large) {
    return read(Schema.IFC4, threads, large);
  }

  private static MepModel read(Schema schema, int threads, int large) {
    byte[] bytes = AlderQuay.write(schema).getBytes(StandardCharsets.UTF_8);
    IfcFile file = IfcFile.open(StepBytes.of(bytes), StepLimits.DEFAULT, read -> {});
    ModelFile source = new ModelFile(0, "alder-quay.ifc", "", schema.name());
    try (Workers workers = new Workers(threads)) {
      return ModelExtractor.extract(file, source, ReadOptions.DEFAULT, done -> {}, workers, large);
    }
  }

  @Test
  void resultsComeInTheOrderOfTheWork() {
    List<Integer> taken = new ArrayList<>();
    try (Workers workers = new Workers(5)) {
      workers.inOrder(
          1000,
          7,
          new Workers.Work<Integer>() {
            @Override
            public Integer on(int from, int to) {
              return from;
            }

            @Override
            public void take(Integer from) {
              taken.add(from);
            }
          });
    }

    assertThat(taken).isSorted().hasSize(143);
  }

  @Test
  void mistakesInTheWorkAreNotSwallowed() {
    Workers.Work<Integer> mistaken =
        (from, to) -> {
          throw new IllegalStateException("run " + from);
        };
    try (Workers workers = new Workers(2)) {
      assertThatThrownBy(() -> workers.inOrder(10, 1, mistaken))
          .isInstanceOf(IllegalStateException.class)
          .hasMessage("run 0");
    }
  }
}
