package org.lagwright.bench;

import java.io.IOException;
import java.io.InputStream;
import java.util.zip.ZipEntry;
import java.util.zip.ZipFile;

/** Inflates the first entry of a zip file and throws it away: what reading a packed model costs. */
public final class InflateLoop {

  private static final int BUFFER = 1 << 16;

  private InflateLoop() {}

  /** Prints the number of bytes inflated from the file given. */
  public static void main(String[] arguments) throws IOException {
    byte[] buffer = new byte[BUFFER];
    long bytes = 0;
    try (ZipFile zip = new ZipFile(arguments[0])) {
      ZipEntry first = zip.entries().nextElement();
      try (InputStream in = zip.getInputStream(first)) {
        for (int n = in.read(buffer); n >= 0; n = in.read(buffer)) {
          bytes += n;
        }
      }
    }
    System.out.println("bytes=" + bytes);
  }
}
