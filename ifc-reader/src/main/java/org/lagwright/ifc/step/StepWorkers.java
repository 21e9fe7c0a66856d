package org.lagwright.ifc.step;

import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.concurrent.atomic.AtomicReference;
import java.util.function.IntConsumer;
import java.util.function.LongConsumer;
import org.jspecify.annotations.Nullable;

/** Runs numbered pieces of work on all processors, the calling thread among them. */
final class StepWorkers {

  private final IntConsumer work;
  private final int count;
  private final AtomicInteger next = new AtomicInteger();
  private final AtomicInteger done = new AtomicInteger();
  private final AtomicReference<@Nullable Throwable> failure = new AtomicReference<>();

  private StepWorkers(int count, IntConsumer work) {
    this.count = count;
    this.work = work;
  }

  /**
   * Does pieces 0 to count - 1, in any order, and returns when all are done.
   *
   * @param progress told on the calling thread, now and then, how many pieces are done
   */
  static void run(int count, IntConsumer work, LongConsumer progress) {
    new StepWorkers(count, work).run(progress);
  }

  private void run(LongConsumer progress) {
    List<Thread> threads = new ArrayList<>();
    int extra = Math.min(Runtime.getRuntime().availableProcessors(), count) - 1;
    for (int i = 0; i < extra; i++) {
      Thread thread = new Thread(() -> takePieces(n -> {}), "lagwright-index-" + i);
      thread.setDaemon(true);
      thread.start();
      threads.add(thread);
    }
    takePieces(progress);
    threads.forEach(StepWorkers::join);
    rethrow(failure.get());
  }

  private void takePieces(LongConsumer progress) {
    try {
      for (int i = next.getAndIncrement(); i < count; i = next.getAndIncrement()) {
        work.accept(i);
        progress.accept(done.incrementAndGet());
      }
    } catch (RuntimeException | Error e) {
      failure.compareAndSet(null, e);
      next.set(count);
    }
  }

  private static void join(Thread thread) {
    boolean interrupted = false;
    while (thread.isAlive()) {
      try {
        thread.join();
      } catch (InterruptedException e) {
        interrupted = true;
      }
    }
    if (interrupted) {
      Thread.currentThread().interrupt();
    }
  }

  private static void rethrow(@Nullable Throwable failure) {
    if (failure instanceof RuntimeException e) {
      throw e;
    }
    if (failure instanceof Error e) {
      throw e;
    }
  }
}
