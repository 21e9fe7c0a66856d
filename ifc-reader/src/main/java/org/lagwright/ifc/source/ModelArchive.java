package org.lagwright.ifc.source;

import java.io.IOException;
import java.io.InputStream;
import java.nio.ByteBuffer;
import java.nio.channels.FileChannel;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.List;
import java.util.Locale;
import java.util.zip.ZipEntry;
import java.util.zip.ZipException;
import java.util.zip.ZipFile;
import org.lagwright.ifc.step.StepBytes;
import org.lagwright.ifc.step.StepLimits;

/**
 * A packed model. A thread of its own unpacks it into a temporary file, which is read meanwhile and
 * gone on close; where the system allows it, it has lost its name before anything is in it.
 */
final class ModelArchive implements AutoCloseable {

  private static final long RATIO_COUNTS_FROM = 10_000_000;

  /** How names begin under which some systems pack their notes about a file beside it. */
  private static final String NOTES = "._";

  private final ZipFile zip;
  private final ZipEntry entry;
  private final Path content;
  private final FileChannel channel;
  private final Unpacking unpacking;
  private final Thread thread;

  private ModelArchive(Path file, ZipFile zip, ZipEntry entry) throws IOException {
    this.zip = zip;
    this.entry = entry;
    this.content = Files.createTempFile("lagwright-", ".ifc");
    this.channel = FileChannel.open(content, StandardOpenOption.READ, StandardOpenOption.WRITE);
    forgetName();
    reserve(entry.getSize());
    this.unpacking = new Unpacking(file, entry.getSize(), entry.getCrc());
    this.thread = new Thread(this::unpack, "lagwright-unpack");
    thread.setDaemon(true);
    thread.setUncaughtExceptionHandler(unpacking.mistakes());
  }

  /** True if the file starts like a zip archive, whatever its name. */
  static boolean isZip(Path file) throws IOException {
    try (InputStream in = Files.newInputStream(file)) {
      byte[] magic = in.readNBytes(4);
      return magic.length == 4 && magic[0] == 'P' && magic[1] == 'K' && magic[2] <= 8;
    }
  }

  /**
   * Begins to unpack the one model of an archive.
   *
   * @throws ModelException if it holds none, several, ifcXML, or states a size beyond the limits
   */
  static ModelArchive open(Path file, StepLimits limits) throws IOException {
    ZipFile zip = zipFile(file);
    try {
      ZipEntry entry = only(zip, file);
      refuseBomb(entry, file, limits);
      ModelArchive archive = new ModelArchive(file, zip, entry);
      archive.thread.start();
      return archive;
    } catch (IOException | RuntimeException e) {
      zip.close();
      throw e;
    }
  }

  private static ZipFile zipFile(Path file) throws IOException {
    try {
      // names that are no UTF-8 are in any code page; only their ends are asked
      return new ZipFile(file.toFile(), StandardCharsets.ISO_8859_1);
    } catch (ZipException e) {
      throw Unpacking.damaged(file, e);
    }
  }

  private static ZipEntry only(ZipFile zip, Path file) {
    List<ZipEntry> models =
        zip.stream().map(e -> (ZipEntry) e).filter(e -> hasEnding(e, ".ifc")).toList();
    if (models.size() == 1) {
      return models.get(0);
    }
    boolean xml = zip.stream().anyMatch(e -> hasEnding(e, ".ifcxml"));
    String what =
        models.isEmpty()
            ? xml
                ? "the archive holds ifcXML, which is not supported. Export as .ifc (STEP) instead."
                : "the archive holds no .ifc file. Pack the exported model itself."
            : "the archive holds " + models.size() + " models. Unpack it and name them one by one.";
    throw new ModelException(file + ": " + what);
  }

  private static boolean hasEnding(ZipEntry entry, String ending) {
    String name = entry.getName();
    String own = name.substring(name.lastIndexOf('/') + 1);
    return own.toLowerCase(Locale.ROOT).endsWith(ending) && !own.startsWith(NOTES);
  }

  /** What it states; {@link Unpacking} holds it to that. */
  private static void refuseBomb(ZipEntry entry, Path file, StepLimits limits) {
    long size = entry.getSize();
    long packed = Math.max(1, entry.getCompressedSize());
    boolean bomb = size > RATIO_COUNTS_FROM && size / packed > limits.maxInflateRatio();
    if (bomb || size > limits.maxInflatedBytes()) {
      throw new ModelException(
          file
              + ": the archive unpacks to more than the limits allow. Unpack it yourself if you"
              + " trust it.");
    }
  }

  /** Gives the file its size, so that it can be mapped; most systems take no room for that. */
  private void reserve(long size) throws IOException {
    if (size > 0) {
      channel.write(ByteBuffer.allocate(1), size - 1);
    }
  }

  /** On some systems a file can be removed while it is open, so that it never outlives us. */
  private void forgetName() {
    try {
      Files.delete(content);
    } catch (IOException e) {
      content.toFile().deleteOnExit();
    }
  }

  private void unpack() {
    try (InputStream in = zip.getInputStream(entry)) {
      unpacking.copy(in, channel);
    } catch (IOException e) {
      unpacking.fail(e);
    }
  }

  /** Where it is unpacked to, if that still has a name. */
  Path content() {
    return content;
  }

  /** The unpacked model, readable while it grows. */
  StepBytes bytes() throws IOException {
    return StepBytes.map(channel, unpacking);
  }

  private void awaitThread() {
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

  @Override
  public void close() throws IOException {
    unpacking.stop();
    awaitThread();
    channel.close();
    zip.close();
    Files.deleteIfExists(content);
  }
}
