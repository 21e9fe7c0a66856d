package org.lagwright.ifc.threads;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.CountDownLatch;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class WorkersTest {

  /** Runs of items, each given as its first and last. */
  private static final class Runs implements Workers.Work<String> {
    final List<String> taken = new ArrayList<>();

    @Override
    public String on(int from, int to) {
      return from + " to " + to;
    }

    @Override
    public void take(String done) {
      taken.add(done);
    }
  }

  /** Fewer runs than may wait, as many, one more, and many more. */
  @ParameterizedTest
  @CsvSource({
    "0,3,0",
    "1,3,1",
    "3,3,1",
    "4,3,2",
    "47,3,16",
    "48,3,16",
    "49,3,17",
    "1000,7,143",
    "64,1,64"
  })
  void everyRunIsTakenOnceInItsOrder(int items, int run, int runs) {
    Runs work = new Runs();
    try (Workers workers = new Workers(2)) {
      workers.inOrder(items, run, work);
    }

    List<String> expected = new ArrayList<>();
    for (int from = 0; from < items; from += run) {
      expected.add(from + " to " + Math.min(items, from + run));
    }
    assertThat(work.taken).hasSize(runs).isEqualTo(expected);
  }

  @Test
  void whatIsFoundOnItemsComesInTheirOrder() {
    List<Integer> items = new ArrayList<>();
    for (int i = 0; i < 500; i++) {
      items.add(i);
    }

    List<Integer> found;
    try (Workers workers = new Workers(3)) {
      found =
          workers.gather(
              items,
              7,
              (item, into) -> {
                if (item % 3 == 0) {
                  into.add(item);
                  into.add(-item);
                }
              });
    }

    assertThat(found).hasSize(334).startsWith(0, 0, 3, -3, 6, -6).endsWith(498, -498);
    assertThat(found.stream().map(Math::abs).toList()).isSorted();
  }

  /** The second run fails before the first does, but the first is what is told. */
  @Test
  void ofSeveralFailuresTheFirstInOrderIsThrown() {
    CountDownLatch laterFailed = new CountDownLatch(1);
    Workers.Work<String> work =
        (from, to) -> {
          if (from == 1) {
            laterFailed.countDown();
            throw new IllegalArgumentException("later");
          }
          try {
            laterFailed.await();
          } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
          }
          throw new IllegalArgumentException("first");
        };

    try (Workers workers = new Workers(2)) {
      assertThatThrownBy(() -> workers.inOrder(2, 1, work))
          .isInstanceOf(IllegalArgumentException.class)
          .hasMessage("first");
    }
  }
}
