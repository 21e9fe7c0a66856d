package org.lagwright.ifc.source;

import java.io.EOFException;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.ByteBuffer;
import java.nio.channels.WritableByteChannel;
import java.nio.file.Path;
import java.util.zip.CRC32;
import java.util.zip.ZipException;
import org.lagwright.ifc.step.StepArrival;
import org.lagwright.ifc.step.StepBytes;

/** Unpacks a model in one thread, while others wait for what they need of it. */
final class Unpacking implements StepBytes.Arrival {

  private static final int CHUNK = 1 << 18;

  private final Path file;
  private final long size;
  private final long crc;
  private final StepArrival arrival;
  private volatile boolean stopped;

  /**
   * @param file the archive, for messages
   * @param size bytes to come; more or fewer mean that the archive is damaged
   * @param crc checksum that the archive states of them
   */
  Unpacking(Path file, long size, long crc) {
    this.file = file;
    this.size = size;
    this.crc = crc;
    this.arrival = new StepArrival(size);
  }

  static ModelException damaged(Path file, Exception cause) {
    return new ModelException(
        file + ": the archive is damaged (" + cause.getMessage() + "). Pack or copy it again.",
        cause);
  }

  /** Writes everything from the start of the channel on, never more than was stated. */
  void copy(InputStream in, WritableByteChannel out) throws IOException {
    byte[] chunk = new byte[CHUNK];
    CRC32 sum = new CRC32();
    long total = 0;
    int read = in.readNBytes(chunk, 0, CHUNK);
    while (read > 0 && total + read <= size && !stopped) {
      sum.update(chunk, 0, read);
      ByteBuffer bytes = ByteBuffer.wrap(chunk, 0, read);
      while (bytes.hasRemaining()) {
        out.write(bytes);
      }
      total += read;
      arrival.arrived(total);
      read = in.readNBytes(chunk, 0, CHUNK);
    }
    if (total != size || read > 0) {
      throw new ZipException("it does not unpack to the size it states");
    }
    if (sum.getValue() != crc) {
      throw new ZipException("what it unpacks to does not have the checksum it states");
    }
    arrival.finish();
  }

  /** Tells those who wait that nothing more will come. */
  void fail(IOException cause) {
    boolean damaged = cause instanceof ZipException || cause instanceof EOFException;
    arrival.fail(damaged ? damaged(file, cause) : new UncheckedIOException(cause));
  }

  /** Tells those who wait of any other mistake in the thread that unpacks. */
  Thread.UncaughtExceptionHandler mistakes() {
    return arrival;
  }

  /** Lets the writer end early; nobody waits any more. */
  void stop() {
    stopped = true;
  }

  @Override
  public void await(long offset) {
    arrival.await(offset);
  }
}
