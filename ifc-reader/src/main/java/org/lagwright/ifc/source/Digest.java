package org.lagwright.ifc.source;

import java.io.IOException;
import java.io.InputStream;
import java.io.InterruptedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.FutureTask;

/**
 * Fingerprint of a file, so that a result can name exactly what it was made from. Worked out by a
 * thread of its own while the file is read.
 */
final class Digest {

  private static final int CHUNK = 1 << 16;

  private final FutureTask<String> task;

  private Digest(FutureTask<String> task) {
    this.task = task;
  }

  /** Begins to read the file. */
  static Digest start(Path file) {
    Digest digest = new Digest(new FutureTask<>(() -> sha256(file)));
    Thread thread = new Thread(digest.task, "lagwright-digest");
    thread.setDaemon(true);
    thread.start();
    return digest;
  }

  /** SHA-256 in lower-case hex, once it is there. */
  String sha256() throws IOException {
    try {
      return task.get();
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
      throw new InterruptedIOException("interrupted");
    } catch (ExecutionException e) {
      if (e.getCause() instanceof IOException cause) {
        throw cause;
      }
      throw new IllegalStateException("fingerprint failed", e.getCause());
    }
  }

  private static String sha256(Path file) throws IOException {
    MessageDigest digest = sha256Algorithm();
    byte[] chunk = new byte[CHUNK];
    try (InputStream in = Files.newInputStream(file)) {
      for (int read = in.read(chunk); read >= 0; read = in.read(chunk)) {
        digest.update(chunk, 0, read);
      }
    }
    return HexFormat.of().formatHex(digest.digest());
  }

  private static MessageDigest sha256Algorithm() {
    try {
      return MessageDigest.getInstance("SHA-256");
    } catch (NoSuchAlgorithmException e) {
      throw new IllegalStateException("every Java platform has SHA-256", e);
    }
  }
}
