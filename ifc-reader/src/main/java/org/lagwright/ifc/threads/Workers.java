package org.lagwright.ifc.threads;

import java.util.ArrayList;
import java.util.List;
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

  /** Runs for each thread that are taken together; as many again are worked on meanwhile. */
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

  /** Looks for something on single items. */
  public interface Search<I, T> {

    /** Adds what is found on an item; on any thread, must not depend on other items. */
    void look(I item, List<T> into);
  }

  /** What is found on some items, one after the other. */
  private record Searching<I, T>(List<I> items, Search<I, T> search, List<T> found)
      implements Work<List<T>> {

    @Override
    public List<T> on(int from, int to) {
      List<T> here = new ArrayList<>();
      for (I item : items.subList(from, to)) {
        search.look(item, here);
      }
      return here;
    }

    @Override
    public void take(List<T> done) {
      found.addAll(done);
    }
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
    int some = threads * AHEAD;
    List<Future<T>> waiting = new ArrayList<>(2 * some);
    for (int from = 0; from < items; from += run) {
      if (waiting.size() == 2 * some) {
        takeFirst(some, waiting, work);
      }
      waiting.add(pool.submit(new Run<>(work, from, Math.min(items, from + run))));
    }
    takeFirst(waiting.size(), waiting, work);
  }

  /**
   * Gathers what is found on items, in their order.
   *
   * @param run how many are looked at together
   */
  public <I, T> List<T> gather(List<I> items, int run, Search<I, T> search) {
    List<T> found = new ArrayList<>();
    inOrder(items.size(), run, new Searching<>(items, search, found));
    return found;
  }

  /** Several at once, as to sleep and wake up for each would cost more than to take it. */
  private static <T> void takeFirst(int count, List<Future<T>> waiting, Work<T> work) {
    if (count > 0) {
      sleepUntilDone(waiting.get(count - 1));
    }
    for (int i = 0; i < count; i++) {
      work.take(result(waiting.get(i)));
    }
    waiting.subList(0, count).clear();
  }

  private static void sleepUntilDone(Future<?> future) {
    try {
      future.get();
    } catch (ExecutionException e) {
      // told when it is taken: one before may have failed as well
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
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
