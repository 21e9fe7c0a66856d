package org.lagwright.ifc.step;

import java.io.EOFException;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;

/** Reads a file into memory while what has come of it is worked on already. */
final class StepLoader implements Runnable {

  private final InputStream opened;
  private final byte[] bytes;
  private final StepArrival arrival;

  /**
   * @param opened closed in the end
   * @param bytes to be filled
   * @param arrival told how far they have come
   */
  StepLoader(InputStream opened, byte[] bytes, StepArrival arrival) {
    this.opened = opened;
    this.bytes = bytes;
    this.arrival = arrival;
  }

  /** Reads in a thread of its own, unless that takes longer to start than to read. */
  void start() {
    if (bytes.length <= StepBytes.CHUNK) {
      run();
    } else {
      Thread thread = new Thread(this, "lagwright-load");
      thread.setDaemon(true);
      thread.setUncaughtExceptionHandler(arrival);
      thread.start();
    }
  }

  @Override
  public void run() {
    try (InputStream in = opened) {
      for (int at = 0; at < bytes.length; arrival.arrived(at)) {
        int read = in.read(bytes, at, Math.min(StepBytes.CHUNK, bytes.length - at));
        if (read < 0) {
          throw new EOFException("it became shorter while it was read");
        }
        at += read;
      }
      arrival.finish();
    } catch (IOException e) {
      arrival.fail(new UncheckedIOException(e));
    }
  }
}
