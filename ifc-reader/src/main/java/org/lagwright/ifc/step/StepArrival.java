package org.lagwright.ifc.step;

import org.jspecify.annotations.Nullable;

/**
 * How far the bytes of a file have come: one thread brings them, others wait for what they need.
 */
public final class StepArrival implements StepBytes.Arrival, Thread.UncaughtExceptionHandler {

  private final long size;
  private long arrived;
  private boolean finished;
  private @Nullable RuntimeException failure;

  /**
   * @param size bytes to come
   */
  public StepArrival(long size) {
    this.size = size;
  }

  /** Tells that the first so many bytes are there. */
  public synchronized void arrived(long total) {
    arrived = total;
    notifyAll();
  }

  /** Tells that all bytes are there, and nothing is wrong with them. */
  public synchronized void finish() {
    finished = true;
    notifyAll();
  }

  /**
   * Tells that nothing more will come.
   *
   * @param what thrown to all who wait for anything from now on
   */
  public synchronized void fail(RuntimeException what) {
    failure = what;
    notifyAll();
  }

  /** Tells of a mistake in the thread that brings the bytes: who waits would else wait for ever. */
  @Override
  public void uncaughtException(Thread thread, Throwable mistake) {
    fail(new IllegalStateException(thread.getName() + " failed", mistake));
  }

  @Override
  public synchronized void await(long offset) {
    boolean interrupted = false;
    while (failure == null && !finished && (arrived < offset || offset == size)) {
      try {
        wait();
      } catch (InterruptedException e) {
        interrupted = true;
      }
    }
    if (interrupted) {
      Thread.currentThread().interrupt();
    }
    if (failure != null) {
      throw failure;
    }
  }
}
