package org.lagwright.ifc.source;

import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;
import java.util.concurrent.Callable;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.FutureTask;
import java.util.function.Supplier;

/**
 * Fingerprint of a file, so that a result can name exactly what it was made from. Worked out by a
 * thread of its own while other work goes on.
 */
final class Digest implements Supplier<String> {

  private static final int CHUNK = 1 << 16;

  private final Path file;
  private final FutureTask<String> task;

  private Digest(Path file) throws IOException {
    // opened at once, so that the file may be removed meanwhile
    InputStream in = Files.newInputStream(file);
    this.file = file;
    this.task = new FutureTask<>(new Reading(in));
  }

  /** Begins to read the file. */
  static Digest start(Path file) throws IOException {
    Digest digest = new Digest(file);
    Thread thread = new Thread(digest.task, "lagwright-digest");
    thread.setDaemon(true);
    thread.start();
    return digest;
  }

  /**
   * SHA-256 in lower-case hex, once it is there.
   *
   * @throws ModelException if the file cannot be read to its end
   */
  @Override
  public String get() {
    try {
      return task.get();
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
      throw new ModelException(file + ": interrupted while it was read.", e);
    } catch (ExecutionException e) {
      if (e.getCause() instanceof IOException cause) {
        throw ModelException.unreadable(file, cause);
      }
      throw new IllegalStateException("fingerprint failed", e.getCause());
    }
  }

  private record Reading(InputStream opened) implements Callable<String> {
    @Override
    public String call() throws IOException {
      MessageDigest digest = sha256Algorithm();
      byte[] chunk = new byte[CHUNK];
      try (InputStream in = opened) {
        for (int read = in.read(chunk); read >= 0; read = in.read(chunk)) {
          digest.update(chunk, 0, read);
        }
      }
      return HexFormat.of().formatHex(digest.digest());
    }
  }

  private static MessageDigest sha256Algorithm() {
    try {
      return MessageDigest.getInstance("SHA-256");
    } catch (NoSuchAlgorithmException e) {
      throw new IllegalStateException("every Java platform has SHA-256", e);
    }
  }
}
