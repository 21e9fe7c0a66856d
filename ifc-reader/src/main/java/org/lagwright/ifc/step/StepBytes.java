package org.lagwright.ifc.step;

import java.io.IOException;
import java.io.OutputStream;
import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.nio.channels.FileChannel;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import org.jspecify.annotations.Nullable;

/**
 * The bytes of a file of any size, mapped into memory in overlapping windows: window k covers 2 GiB
 * from k GiB on, so that a record of up to 1 GiB never straddles.
 */
public final class StepBytes {

  private static final int SHIFT = 30;

  /** From one window to the next, bytes; each reaches that far again into the next. */
  static final long STRIDE = 1L << SHIFT;

  /** Bytes that are copied at a time. */
  static final int CHUNK = 1 << 16;

  /** A file of up to this many bytes is kept in memory as a whole. */
  private static final int SMALL = 1 << 24;

  private static final long MASK = STRIDE - 1;

  /** Where the bytes of a file are still being written while they are read. */
  @FunctionalInterface
  public interface Arrival {

    /** There from the start. */
    Arrival COMPLETE =
        new Arrival() {
          @Override
          public void await(long offset) {}
        };

    /**
     * Returns once all bytes before an offset are there. May throw what keeps them from coming.
     *
     * @param offset the size of the file if all of it is meant
     */
    void await(long offset);
  }

  private final ByteBuffer[] windows;
  private final long size;
  private final Arrival arrival;

  private StepBytes(ByteBuffer[] windows, long size, Arrival arrival) {
    this.windows = windows;
    this.size = size;
    this.arrival = arrival;
  }

  /**
   * Maps a file, or begins to read a small one. The mapping lives until the garbage collector takes
   * it.
   */
  public static StepBytes map(Path file) throws IOException {
    long size = Files.size(file);
    if (size <= SMALL) {
      return load(file, (int) size);
    }
    try (FileChannel channel = FileChannel.open(file, StandardOpenOption.READ)) {
      return map(channel, Arrival.COMPLETE);
    }
  }

  private static StepBytes load(Path file, int size) throws IOException {
    byte[] bytes = new byte[size];
    StepArrival arrival = new StepArrival(size);
    new StepLoader(Files.newInputStream(file), bytes, arrival).start();
    return of(bytes, arrival);
  }

  /**
   * Maps a file that has its size already but perhaps not all of its bytes.
   *
   * @param channel may be closed afterwards
   */
  public static StepBytes map(FileChannel channel, Arrival arrival) throws IOException {
    long size = channel.size();
    ByteBuffer[] windows = new ByteBuffer[(int) (size >>> SHIFT) + 1];
    for (int k = 0; k < windows.length; k++) {
      long start = (long) k << SHIFT;
      long length = Math.min(Integer.MAX_VALUE, size - start);
      windows[k] =
          channel.map(FileChannel.MapMode.READ_ONLY, start, length).order(ByteOrder.LITTLE_ENDIAN);
    }
    return new StepBytes(windows, size, arrival);
  }

  /** Bytes already in memory. */
  public static StepBytes of(byte[] bytes) {
    return of(bytes, Arrival.COMPLETE);
  }

  private static StepBytes of(byte[] bytes, Arrival arrival) {
    ByteBuffer window = ByteBuffer.wrap(bytes).order(ByteOrder.LITTLE_ENDIAN);
    return new StepBytes(new ByteBuffer[] {window}, bytes.length, arrival);
  }

  /** Length in bytes. */
  public long size() {
    return size;
  }

  /** All bytes, where they are kept as a whole; else null. */
  byte @Nullable [] whole() {
    return windows[0].hasArray() ? windows[0].array() : null;
  }

  /** Returns once the bytes before an offset, or before the end, can be read. */
  void await(long offset) {
    arrival.await(Math.min(offset, size));
  }

  /** The window that holds an offset. */
  ByteBuffer window(long offset) {
    return windows[(int) (offset >>> SHIFT)];
  }

  /** Where an offset lies in its {@link #window}. */
  static int inWindow(long offset) {
    return (int) (offset & MASK);
  }

  /** The byte at an offset, 0 to 255; -1 behind the end. */
  int at(long offset) {
    return offset >= size ? -1 : window(offset).get(inWindow(offset)) & 0xFF;
  }

  /**
   * Copies a stretch.
   *
   * @param from offset of its first byte
   * @param to offset behind its last one
   */
  public void copy(long from, long to, OutputStream out) throws IOException {
    byte[] chunk = new byte[CHUNK];
    for (long at = from; at < to; ) {
      int length = (int) Math.min(CHUNK, to - at);
      window(at).get(inWindow(at), chunk, 0, length);
      out.write(chunk, 0, length);
      at += length;
    }
  }

  /**
   * Some bytes from an offset on.
   *
   * @param length at most 1 GiB; fewer come where the file ends
   */
  byte[] piece(long offset, int length) {
    return copy(offset, Math.min(size, offset + length));
  }

  /**
   * Reads into an array, from its start on.
   *
   * @return how many bytes, fewer than fit only where the file ends
   */
  int read(long offset, byte[] into) {
    int length = (int) Math.min(into.length, size - offset);
    window(offset).get(inWindow(offset), into, 0, length);
    return length;
  }

  /** A short stretch; see {@link #copy(long, long, OutputStream)}. */
  public byte[] copy(long from, long to) {
    byte[] stretch = new byte[Math.toIntExact(to - from)];
    window(from).get(inWindow(from), stretch);
    return stretch;
  }

  /** Line number of an offset, from 1. Counts, so only for messages. */
  long lineOf(long offset) {
    return linesOf(new long[] {offset})[0];
  }

  /** Line numbers of several offsets, which ascend. */
  long[] linesOf(long[] offsets) {
    long[] lines = new long[offsets.length];
    long line = 1;
    long at = 0;
    for (int i = 0; i < offsets.length; i++) {
      long to = Math.min(offsets[i], size);
      while (at < to) {
        long stop = Math.min(to, (at & ~MASK) + STRIDE);
        line += lineEnds(window(at), inWindow(at), (int) (stop - at));
        at = stop;
      }
      lines[i] = line;
    }
    return lines;
  }

  private static int lineEnds(ByteBuffer window, int from, int length) {
    int count = 0;
    for (int i = from; i < from + length; i++) {
      if (window.get(i) == '\n') {
        count++;
      }
    }
    return count;
  }
}
