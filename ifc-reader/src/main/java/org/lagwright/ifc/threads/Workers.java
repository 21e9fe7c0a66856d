package org.lagwright.ifc.threads;

import java.util.ArrayDeque;
import java.util.Deque;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.concurrent.TimeUnit;
import java.util.function.Consumer;
import java.util.function.IntConsumer;
import java.util.function.LongConsumer;

/**
 * Spreads work over the processors. What comes out is handed on in the order of the work, so the
 * number of threads changes nothing but the time.
 */
public final class Workers implements AutoCloseable {

  /** More threads than this would only contend for the memory. */
  private static final int MOST = 16;

  /** Pieces of work for each thread that may wait to be handed on. */
  private static final int AHEAD = 4;

  private final int threads;
  private final ExecutorService pool;

  /**
   * Threads that wait for work.
   *
   * @param wanted how many, at least 1
   */
  public Workers(int wanted) {
    this.threads = Math.min(MOST, wanted);
    this.pool =
        Executors.newFixedThreadPool(
            threads,
            run -> {
              Thread thread = new Thread(run, "lagwright-reader");
              thread.setDaemon(true);
              return thread;
            });
  }

  /**
   * Does the pieces of work 0 to count - 1 on all processors and returns when all are done.
   *
   * @param progress told on the calling thread, now and then, how many pieces are done
   */
  public static void each(int count, IntConsumer work, LongConsumer progress) {
    int wanted = Math.min(Runtime.getRuntime().availableProcessors(), count);
    try (Workers workers = new Workers(Math.max(1, wanted))) {
      workers.<Integer>inOrder(
          count,
          1,
          (from, to) -> {
            work.accept(from);
            return to;
          },
          progress::accept);
    }
  }

  /** Work on a run of items. */
  @FunctionalInterface
  public interface Work<T> {
    /** Takes the items from {@code from} up to but not including {@code to}. */
    T on(int from, int to);
  }

  /**
   * Works through items in pieces.
   *
   * @param items how many there are
   * @param piece how many are worked on together
   * @param work does one piece, on any thread; must not depend on other pieces
   * @param taker takes the results, on the calling thread and in order
   */
  public <T> void inOrder(int items, int piece, Work<T> work, Consumer<T> taker) {
    Deque<Future<T>> waiting = new ArrayDeque<>();
    for (int from = 0; from < items; from += piece) {
      int begin = from;
      int end = Math.min(items, from + piece);
      if (waiting.size() >= threads * AHEAD) {
        taker.accept(result(waiting.remove()));
      }
      waiting.add(pool.submit(() -> work.on(begin, end)));
    }
    while (!waiting.isEmpty()) {
      taker.accept(result(waiting.remove()));
    }
  }

  private static <T> T result(Future<T> future) {
    try {
      return future.get();
    } catch (ExecutionException e) {
      if (e.getCause() instanceof RuntimeException cause) {
        throw cause;
      }
      if (e.getCause() instanceof Error cause) {
        throw cause;
      }
      throw new IllegalStateException(e);
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
      throw new IllegalStateException("interrupted while reading", e);
    }
  }

  /** Ends the threads; waits for the pieces they are at. */
  @Override
  public void close() {
    pool.shutdownNow();
    try {
      pool.awaitTermination(1, TimeUnit.HOURS);
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
    }
  }
}
