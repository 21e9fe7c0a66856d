package org.lagwright.ifc.source;

import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.zip.ZipEntry;
import java.util.zip.ZipException;
import java.util.zip.ZipFile;
import org.lagwright.ifc.step.StepLimits;

/** A packed model, unpacked into a temporary file that goes away on close. */
final class ModelArchive implements AutoCloseable {

  private static final int CHUNK = 1 << 16;
  private static final long RATIO_COUNTS_FROM = 10_000_000;

  private final Path content;

  private ModelArchive(Path content) {
    this.content = content;
  }

  /** True if the file starts like a zip archive, whatever its name. */
  static boolean isZip(Path file) throws IOException {
    try (InputStream in = Files.newInputStream(file)) {
      byte[] magic = in.readNBytes(4);
      return magic.length == 4 && magic[0] == 'P' && magic[1] == 'K' && magic[2] <= 8;
    }
  }

  /**
   * Unpacks the one model of an archive.
   *
   * @throws ModelException if it holds none, several, ifcXML, or unpacks beyond the limits
   */
  static ModelArchive unpack(Path file, StepLimits limits) throws IOException {
    try (ZipFile zip = new ZipFile(file.toFile())) {
      ZipEntry entry = only(zip, file);
      Path content = Files.createTempFile("lagwright-", ".ifc");
      try (InputStream in = zip.getInputStream(entry);
          OutputStream out = Files.newOutputStream(content)) {
        copy(in, out, file, Math.max(1, entry.getCompressedSize()), limits);
      } catch (IOException | ModelException e) {
        Files.deleteIfExists(content);
        throw e;
      }
      return new ModelArchive(content);
    } catch (ZipException e) {
      throw new ModelException(
          file + ": the archive is damaged (" + e.getMessage() + "). Pack or copy it again.", e);
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
    return entry.getName().toLowerCase(Locale.ROOT).endsWith(ending);
  }

  private static void copy(
      InputStream in, OutputStream out, Path file, long packed, StepLimits limits)
      throws IOException {
    byte[] chunk = new byte[CHUNK];
    long total = 0;
    for (int read = in.read(chunk); read >= 0; read = in.read(chunk)) {
      total += read;
      boolean bomb = total > RATIO_COUNTS_FROM && total / packed > limits.maxInflateRatio();
      if (bomb || total > limits.maxInflatedBytes()) {
        throw new ModelException(
            file
                + ": the archive unpacks to more than the limits allow. Unpack it yourself if you"
                + " trust it.");
      }
      out.write(chunk, 0, read);
    }
  }

  /** The unpacked model. */
  Path content() {
    return content;
  }

  @Override
  public void close() throws IOException {
    Files.deleteIfExists(content);
  }
}
