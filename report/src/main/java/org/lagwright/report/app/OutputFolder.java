package org.lagwright.report.app;

import java.io.BufferedOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.file.AccessDeniedException;
import java.nio.file.AtomicMoveNotSupportedException;
import java.nio.file.FileSystemException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/**
 * The folder that outputs go to. All are written to temporary files in it first and moved to their
 * names when the last one is complete, so that a failure leaves earlier outputs as they were.
 */
final class OutputFolder {

  private static final int BUFFER = 1 << 16;

  private final Path folder;

  /** Writes one output. */
  @FunctionalInterface
  interface Content {
    void write(OutputStream out) throws IOException;
  }

  OutputFolder(Path folder) {
    this.folder = folder;
  }

  /**
   * Looks whether these names can be written, before the long work begins. Creates nothing.
   *
   * @throws OutputException if something is in the way or may not be written
   */
  void check(List<String> names) {
    Path existing = nearestExisting();
    if (existing != null && !Files.isDirectory(existing)) {
      throw new OutputException(
          existing + ": a file is where the output folder should be. Choose another with --out.");
    }
    if (existing != null && !Files.isWritable(existing)) {
      throw new OutputException(
          existing + ": may not be written to. Choose another folder with --out.");
    }
    for (String name : names) {
      if (Files.isDirectory(folder.resolve(name))) {
        throw new OutputException(
            folder.resolve(name) + ": a folder has the name of an output. Move it away.");
      }
    }
  }

  private @Nullable Path nearestExisting() {
    Path candidate = folder.toAbsolutePath();
    while (candidate != null && !Files.exists(candidate)) {
      candidate = candidate.getParent();
    }
    return candidate;
  }

  /**
   * Writes all outputs or none.
   *
   * @param contents outputs by file name, in the order in which they are written
   * @return the files written
   * @throws OutputException if one cannot be written
   */
  List<Path> write(Map<String, Content> contents) {
    List<Path> parts = new ArrayList<>();
    try {
      Files.createDirectories(folder);
      for (Map.Entry<String, Content> content : contents.entrySet()) {
        Path part = part(content.getKey());
        parts.add(part);
        write(part, content.getValue());
      }
      return move(contents, parts);
    } catch (IOException e) {
      throw new OutputException(
          folder
              + ": cannot be written ("
              + reason(e)
              + "). Free the place or choose another"
              + " folder with --out.",
          e);
    } finally {
      parts.forEach(OutputFolder::discard);
    }
  }

  /** The process number keeps two runs into one folder apart. */
  private Path part(String name) {
    return folder.resolve("." + name + "." + ProcessHandle.current().pid() + ".part");
  }

  private static void write(Path part, Content content) throws IOException {
    try (OutputStream out = new BufferedOutputStream(Files.newOutputStream(part), BUFFER)) {
      content.write(out);
    }
  }

  private List<Path> move(Map<String, Content> contents, List<Path> parts) throws IOException {
    List<Path> written = new ArrayList<>();
    for (String name : contents.keySet()) {
      Path target = folder.resolve(name);
      move(parts.get(written.size()), target);
      written.add(target);
    }
    return written;
  }

  private static void move(Path from, Path to) throws IOException {
    try {
      Files.move(from, to, StandardCopyOption.ATOMIC_MOVE);
    } catch (AtomicMoveNotSupportedException e) {
      Files.move(from, to, StandardCopyOption.REPLACE_EXISTING);
    }
  }

  /** What a failure left behind; after success there is nothing. */
  private static void discard(Path part) {
    try {
      Files.deleteIfExists(part);
    } catch (IOException e) {
      part.toFile().deleteOnExit();
    }
  }

  /** The message of a refused access is only the path, which the line names already. */
  private static String reason(IOException e) {
    if (e instanceof AccessDeniedException) {
      return "access denied";
    }
    if (e instanceof FileSystemException refused && refused.getReason() == null) {
      return "refused: " + refused.getMessage();
    }
    return e.getMessage() == null ? e.getClass().getSimpleName() : e.getMessage();
  }
}
