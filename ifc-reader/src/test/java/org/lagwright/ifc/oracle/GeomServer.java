package org.lagwright.ifc.oracle;

import java.io.DataInputStream;
import java.io.DataOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;

/**
 * IfcGeomServer, the geometry engine of IfcOpenShell 0.5 as a process of its own: IFC2X3 only. The
 * program lies in the Maven artefact org.opensourcebim:ifcopenshellplugin:0.5.11 and is unpacked to
 * a temporary folder for each test; Linux on 64 bits.
 *
 * <p>It speaks in frames on its standard input and output: a command, a length, contents; numbers
 * little-endian, texts with their length in front and padded to four bytes (as the client classes
 * of the same artefact do).
 */
final class GeomServer {

  private static final String PROGRAM = "/exe/64/linux/IfcGeomServer";

  private static final int HELLO = 0xff00;
  private static final int MODEL = 0xff01;
  private static final int GET = 0xff02;
  private static final int ENTITY = 0xff03;
  private static final int MORE = 0xff04;
  private static final int NEXT = 0xff05;
  private static final int BYE = 0xff06;

  private final DataInputStream in;
  private final DataOutputStream out;

  private GeomServer(Process process) {
    in = new DataInputStream(process.getInputStream());
    out = new DataOutputStream(process.getOutputStream());
  }

  /**
   * Triangulates all products of an IFC2X3 file.
   *
   * @param unitM length unit of the file in metres
   * @param folder for the program
   */
  static List<OracleMesh> read(byte[] ifc2x3, double unitM, Path folder) throws IOException {
    Process process =
        new ProcessBuilder(unpack(folder).toString())
            .redirectError(folder.resolve("geomserver.err").toFile())
            .start();
    try {
      return new GeomServer(process).meshes(ifc2x3, unitM);
    } finally {
      process.destroy();
    }
  }

  private static Path unpack(Path folder) throws IOException {
    Path program = folder.resolve("IfcGeomServer");
    if (Files.exists(program)) {
      return program;
    }
    try (InputStream packed = GeomServer.class.getResourceAsStream(PROGRAM)) {
      if (packed == null) {
        throw new IllegalStateException(
            "IfcGeomServer is not on the class path; run with the Maven profile oracle");
      }
      Files.copy(packed, program);
    }
    if (!program.toFile().setExecutable(true)) {
      throw new IOException("cannot make " + program + " executable");
    }
    return program;
  }

  private List<OracleMesh> meshes(byte[] file, double unitM) throws IOException {
    expect(HELLO);
    text();
    ByteBuffer model = ByteBuffer.allocate(4 + file.length + padding(file.length));
    send(MODEL, model.order(ByteOrder.LITTLE_ENDIAN).putInt(file.length).put(file).array());
    List<OracleMesh> meshes = new ArrayList<>();
    while (more()) {
      send(GET, new byte[0]);
      expect(ENTITY);
      meshes.add(mesh(unitM));
      send(NEXT, new byte[0]);
    }
    send(BYE, new byte[0]);
    return meshes;
  }

  private OracleMesh mesh(double unitM) throws IOException {
    final long step = number();
    final String globalId = text();
    text(); // name
    text(); // class
    number(); // parent
    float[] matrix = floats();
    number(); // representation
    float[] corners = floats();
    floats(); // normals
    int[] triangles = numbers();
    floats(); // colours
    numbers(); // which colour
    return new OracleMesh(globalId, step, world(corners, matrix, unitM), triangles);
  }

  /** Corners come in the frame of the product, its matrix row by row, both in the file's unit. */
  private static double[] world(float[] corners, float[] matrix, double unitM) {
    double[] world = new double[corners.length];
    for (int i = 0; i < corners.length; i += 3) {
      for (int row = 0; row < 3; row++) {
        double at = matrix[4 * row + 3];
        for (int k = 0; k < 3; k++) {
          at += matrix[4 * row + k] * (double) corners[i + k];
        }
        world[i + row] = at * unitM;
      }
    }
    return world;
  }

  private boolean more() throws IOException {
    expect(MORE);
    return number() == 1;
  }

  private void expect(int command) throws IOException {
    int found = number();
    number(); // length
    if (found != command) {
      throw new IOException("IfcGeomServer sent " + found + " instead of " + command);
    }
  }

  private void send(int command, byte[] contents) throws IOException {
    out.writeInt(Integer.reverseBytes(command));
    out.writeInt(Integer.reverseBytes(contents.length));
    out.write(contents);
    out.flush();
  }

  private int number() throws IOException {
    return Integer.reverseBytes(in.readInt());
  }

  private ByteBuffer block() throws IOException {
    byte[] bytes = new byte[number()];
    in.readFully(bytes);
    return ByteBuffer.wrap(bytes).order(ByteOrder.LITTLE_ENDIAN);
  }

  private String text() throws IOException {
    ByteBuffer bytes = block();
    in.skipNBytes(padding(bytes.capacity()));
    return StandardCharsets.UTF_8.decode(bytes).toString();
  }

  private float[] floats() throws IOException {
    ByteBuffer bytes = block();
    float[] values = new float[bytes.capacity() / Float.BYTES];
    bytes.asFloatBuffer().get(values);
    return values;
  }

  private int[] numbers() throws IOException {
    ByteBuffer bytes = block();
    int[] values = new int[bytes.capacity() / Integer.BYTES];
    bytes.asIntBuffer().get(values);
    return values;
  }

  private static int padding(int length) {
    return (4 - length % 4) % 4;
  }
}
