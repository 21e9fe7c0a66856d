package org.lagwright.ifc.step;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.Random;
import java.util.concurrent.CountDownLatch;
import org.junit.jupiter.api.Test;

class StepLoaderTest {

  private static final int SIZE = 300_000;

  private static byte[] random() {
    byte[] bytes = new byte[SIZE];
    new Random(20261126).nextBytes(bytes);
    return bytes;
  }

  @Test
  void bytesAreThereOnceTheyAreWaitedFor() {
    byte[] file = random();
    byte[] bytes = new byte[SIZE];
    StepArrival arrival = new StepArrival(SIZE);
    new StepLoader(new ByteArrayInputStream(file), bytes, arrival).start();

    for (int at = 0; at < SIZE; at += 50_000) {
      arrival.await(at + 1);
      assertThat(bytes[at]).isEqualTo(file[at]);
    }
    arrival.await(SIZE);
    assertThat(bytes).isEqualTo(file);
  }

  /** The rest of the file comes only after its beginning was looked at. */
  @Test
  void beginningCanBeReadWhileTheRestIsStillToCome() {
    byte[] file = random();
    CountDownLatch looked = new CountDownLatch(1);
    InputStream slow =
        new ByteArrayInputStream(file) {
          @Override
          public int read(byte[] into, int from, int length) {
            if (pos > 0) {
              awaitQuietly(looked);
            }
            return super.read(into, from, Math.min(length, 1000));
          }
        };
    byte[] bytes = new byte[SIZE];
    StepArrival arrival = new StepArrival(SIZE);
    new StepLoader(slow, bytes, arrival).start();

    arrival.await(1000);
    assertThat(bytes[999]).isEqualTo(file[999]);
    assertThat(bytes[1000]).isZero();
    looked.countDown();
    arrival.await(SIZE);
    assertThat(bytes).isEqualTo(file);
  }

  private static void awaitQuietly(CountDownLatch latch) {
    try {
      latch.await();
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
    }
  }

  @Test
  void fileThatBecameShorterIsTold() {
    StepArrival arrival = new StepArrival(SIZE);
    byte[] half = new byte[SIZE / 2];
    new StepLoader(new ByteArrayInputStream(half), new byte[SIZE], arrival).start();

    assertThatThrownBy(() -> arrival.await(SIZE))
        .isInstanceOf(UncheckedIOException.class)
        .hasMessageContaining("shorter while it was read");
  }

  @Test
  void whatTheSystemSaysAgainstReadingIsTold() {
    StepArrival arrival = new StepArrival(10);
    InputStream broken =
        new InputStream() {
          @Override
          public int read() throws IOException {
            throw new IOException("disk is gone");
          }
        };
    new StepLoader(broken, new byte[10], arrival).start();

    assertThatThrownBy(() -> arrival.await(1))
        .isInstanceOf(UncheckedIOException.class)
        .hasMessageContaining("disk is gone");
  }

  @Test
  void ourOwnMistakeDoesNotKeepTheOthersWaiting() {
    StepArrival arrival = new StepArrival(SIZE);
    InputStream mistaken =
        new InputStream() {
          @Override
          public int read() {
            throw new IllegalArgumentException("a mistake");
          }
        };
    new StepLoader(mistaken, new byte[SIZE], arrival).start();

    assertThatThrownBy(() -> arrival.await(1))
        .isInstanceOf(IllegalStateException.class)
        .hasRootCauseMessage("a mistake");
  }
}
