package org.lagwright.ifc.threads;

import java.util.ArrayDeque;
import java.util.Deque;
import java.util.concurrent.Callable;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.concurrent.ThreadFactory;
import java.util.concurrent.TimeUnit;

/**
 * Spreads work over the processors. What comes out is handed on in the order of the work, so the
 * number of threads changes nothing but the time.
 */
public final class Workers implements AutoCloseable {

  /** More threads than this would only contend for the memory. */
  private static final int MOST = 16;

  /** Runs for each thread that may wait to be taken. */
  private static final int AHEAD = 4;

  private final int threads;
  private final ExecutorService pool;

  /**
   * Threads that wait for work.
   *
   * @param wanted how many, at least 1
   */
  public Workers(int wanted) {
    this.threads = wanted;
    this.pool = Executors.newFixedThreadPool(threads, new Daemons());
  }

  /** As many threads as the machine has processors, up to a limit. */
  public static Workers forThisMachine() {
    return new Workers(threadsOfThisMachine());
  }

  /** How many threads {@link #forThisMachine} has. */
  public static int threadsOfThisMachine() {
    return Math.min(MOST, Runtime.getRuntime().availableProcessors());
  }

  private static final class Daemons implements ThreadFactory {
    @Override
    public Thread newThread(Runnable run) {
      Thread thread = new Thread(run, "lagwright-reader");
      thread.setDaemon(true);
      return thread;
    }
  }

  /** Work on runs of items; what comes of each is taken in the order of the items. */
  public interface Work<T> {

    /**
     * Does the items from {@code from} up to but not including {@code to}, on any thread; must not
     * depend on other runs.
     */
    T on(int from, int to);

    /** Takes what a run gave, on the thread that asked for the work. */
    default void take(T done) {}
  }

  private record Run<T>(Work<T> work, int from, int to) implements Callable<T> {
    @Override
    public T call() {
      return work.on(from, to);
    }
  }

  /**
   * Works through items in runs and returns when all are done and taken.
   *
   * @param items how many there are
   * @param run how many are worked on together
   */
  public <T> void inOrder(int items, int run, Work<T> work) {
    Deque<Future<T>> waiting = new ArrayDeque<>();
    for (int from = 0; from < items; from += run) {
      if (waiting.size() >= threads * AHEAD) {
        work.take(result(waiting.remove()));
      }
      waiting.add(pool.submit(new Run<>(work, from, Math.min(items, from + run))));
    }
    while (!waiting.isEmpty()) {
      work.take(result(waiting.remove()));
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

  /** Ends the threads; waits for the runs they are at. */
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
