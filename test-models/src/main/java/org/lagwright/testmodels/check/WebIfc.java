package org.lagwright.testmodels.check;

import java.io.IOException;
import java.io.InputStream;
import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.concurrent.TimeUnit;

/** The npm package web-ifc, in a node process of its own; run in the folder of a module. */
public final class WebIfc {

  private static final int PATIENCE_MINUTES = 5;
  private static final Path SOURCES = Path.of("../ifc-reader/src/test/node");

  private final Path folder;

  private WebIfc(Path folder) {
    this.folder = folder;
  }

  /**
   * What it makes of a file.
   *
   * @param counts records by class in upper case
   */
  public record Reading(Map<String, Long> counts, List<TriangleMesh> meshes) {}

  /** Installs the package, in the version that the lock file pins, into the build folder. */
  public static WebIfc install() throws IOException, InterruptedException {
    Path folder = Files.createDirectories(Path.of("target/web-ifc").toAbsolutePath());
    for (String file : List.of("package.json", "package-lock.json", ".npmrc", "meshes.js")) {
      Files.write(folder.resolve(file), Files.readAllBytes(SOURCES.resolve(file)));
    }
    run(folder, "npm", "ci", "--silent");
    return new WebIfc(folder);
  }

  /** Reads and triangulates a file. */
  public Reading read(Path ifc) throws IOException, InterruptedException {
    Path out = folder.resolve("meshes.txt");
    run(folder, "node", "meshes.js", ifc.toAbsolutePath().toString(), out.toString());
    ByteBuffer bytes = ByteBuffer.wrap(Files.readAllBytes(Path.of(out + ".bin")));
    bytes.order(ByteOrder.LITTLE_ENDIAN);
    Map<String, Long> counts = new TreeMap<>();
    List<TriangleMesh> meshes = new ArrayList<>();
    for (String line : Files.readAllLines(out)) {
      String[] words = line.split(" ", -1);
      if (words[0].equals("count")) {
        counts.put(words[1], Long.valueOf(words[2]));
      } else {
        long step = Long.parseLong(words[1].substring(1));
        meshes.add(mesh(step, Integer.parseInt(words[2]), Integer.parseInt(words[3]), bytes));
      }
    }
    return new Reading(counts, meshes);
  }

  private static TriangleMesh mesh(long step, int corners, int triangles, ByteBuffer bytes) {
    double[] cornersM = new double[3 * corners];
    for (int i = 0; i < cornersM.length; i++) {
      cornersM[i] = bytes.getDouble();
    }
    int[] indices = new int[3 * triangles];
    for (int i = 0; i < indices.length; i++) {
      indices[i] = bytes.getInt();
    }
    return new TriangleMesh(step, cornersM, indices);
  }

  private static void run(Path folder, String... command) throws IOException, InterruptedException {
    Process process =
        new ProcessBuilder(command).directory(folder.toFile()).redirectErrorStream(true).start();
    String said;
    try (InputStream in = process.getInputStream()) {
      said = new String(in.readAllBytes(), StandardCharsets.UTF_8);
    }
    if (!process.waitFor(PATIENCE_MINUTES, TimeUnit.MINUTES) || process.exitValue() != 0) {
      process.destroy();
      throw new IOException(String.join(" ", command) + " failed: " + said);
    }
  }
}
