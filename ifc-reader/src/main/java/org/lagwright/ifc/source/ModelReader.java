package org.lagwright.ifc.source;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Locale;
import java.util.Objects;
import java.util.function.DoubleConsumer;
import java.util.function.LongConsumer;
import org.lagwright.ifc.extract.ModelExtractor;
import org.lagwright.ifc.extract.ReadOptions;
import org.lagwright.ifc.model.MepModel;
import org.lagwright.ifc.model.ModelFile;
import org.lagwright.ifc.schema.IfcFile;
import org.lagwright.ifc.step.StepBytes;
import org.lagwright.ifc.step.StepException;
import org.lagwright.ifc.step.StepLimits;

/** Reads a model from an {@code .ifc} or {@code .ifczip} file. */
public final class ModelReader {

  private ModelReader() {}

  /**
   * Reads and measures one model with the default options.
   *
   * @param index position of the file on the command line, from 0
   * @throws ModelException if the file is missing or unreadable as a whole
   */
  public static MepModel read(Path file, int index, ProgressListener listener) {
    return read(file, index, ReadOptions.DEFAULT, listener);
  }

  /**
   * Reads and measures one model.
   *
   * @param index position of the file on the command line, from 0
   * @param options what the user chose
   * @throws ModelException if the file is missing or unreadable as a whole
   */
  public static MepModel read(
      Path file, int index, ReadOptions options, ProgressListener listener) {
    if (!Files.exists(file)) {
      throw new ModelException(file + ": no such file. Check the path.");
    }
    if (!Files.isRegularFile(file)) {
      throw new ModelException(file + ": this is not a file. Give an .ifc or .ifczip file.");
    }
    String name = file.toString().toLowerCase(Locale.ROOT);
    if (name.endsWith(".ifcxml")) {
      throw new ModelException(file + ": ifcXML is not supported. Export as .ifc (STEP) instead.");
    }
    try {
      if (ModelArchive.isZip(file)) {
        try (ModelArchive archive = ModelArchive.open(file, StepLimits.DEFAULT)) {
          return read(file, archive.bytes(), index, options, listener);
        }
      }
      return read(file, StepBytes.map(file), index, options, listener);
    } catch (StepException e) {
      String line = e.line() > 0 ? ":" + e.line() : "";
      throw new ModelException(file + line + ": " + e.getMessage(), e);
    } catch (IOException e) {
      throw ModelException.unreadable(file, e);
    } catch (UncheckedIOException e) {
      throw ModelException.unreadable(file, Objects.requireNonNull(e.getCause()));
    }
  }

  /** Does something with the records and bytes of a model. */
  @FunctionalInterface
  public interface Use {

    /**
     * @param bytes of the exchange file itself, unpacked
     * @throws IOException if what is made of it cannot be written
     */
    void of(StepBytes bytes, IfcFile file) throws IOException;
  }

  /**
   * Opens a model that was read before once more.
   *
   * @param described what was read then
   * @throws ModelException if the file cannot be read or is no longer the same
   * @throws IOException what the use of it throws
   */
  public static void again(Path file, ModelFile described, Use use) throws IOException {
    Digest digest = Digest.start(file);
    if (ModelArchive.isZip(file)) {
      try (ModelArchive archive = ModelArchive.open(file, StepLimits.DEFAULT)) {
        again(archive.bytes(), use);
      }
    } else {
      again(StepBytes.map(file), use);
    }
    if (!digest.get().equals(described.sha256())) {
      throw new ModelException(
          file + ": the file changed while it was worked on. Run again when it is at rest.");
    }
  }

  /** Tells a listener how much of something is done. */
  private record Share(String what, long whole, ProgressListener listener)
      implements LongConsumer, DoubleConsumer {

    @Override
    public void accept(long part) {
      accept((double) part);
    }

    @Override
    public void accept(double part) {
      listener.progress(what, part / whole);
    }
  }

  private static void again(StepBytes bytes, Use use) throws IOException {
    use.of(bytes, IfcFile.open(bytes, StepLimits.DEFAULT, read -> {}));
  }

  /**
   * @param file the file that the user named
   * @param bytes of the exchange file itself, which is another one if the user's is packed
   */
  private static MepModel read(
      Path file, StepBytes bytes, int index, ReadOptions options, ProgressListener listener)
      throws IOException {
    if (bytes.size() == 0) {
      throw new ModelException(file + ": the file is empty. Export the model again.");
    }
    String name = String.valueOf(file.getFileName());
    IfcFile ifc =
        IfcFile.open(
            bytes, StepLimits.DEFAULT, new Share("reading " + name, bytes.size(), listener));
    Share measured = new Share("measuring " + name, 1, listener);
    measured.accept(0.0);
    ModelFile source = new ModelFile(index, name, "", ifc.step().schema(), ifc.step().exporter());
    MepModel model = ModelExtractor.extract(ifc, source, options, measured);
    measured.accept(1.0);
    // only now, as until here every processor is busy
    return model.of(source.with(Digest.start(file)));
  }
}
