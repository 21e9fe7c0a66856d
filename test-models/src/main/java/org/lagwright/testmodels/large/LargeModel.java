package org.lagwright.testmodels.large;

import java.io.BufferedWriter;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Random;
import org.lagwright.testmodels.ifc.IfcWriter;
import org.lagwright.testmodels.ifc.Schema;
import org.lagwright.testmodels.ifc.Units;

/**
 * Writes one model of about the size asked for. The same size and schema give the same bytes.
 * Memory does not grow with the size.
 *
 * <p>The proportions are those of a real export of building services: some 65 bytes a record, nine
 * elements of pipes and ducts in 100 kB of a gigabyte and ten of ten megabytes, whose record
 * numbers are shorter, each with seven property sets of 35 values and its ports, a system for each
 * line, and nearly half of the file that a takeoff passes over.
 */
public final class LargeModel {

  private static final long SEED = 20_260_101;
  private static final long MEGABYTE = 1_000_000;

  /** Lines whose relations are written together; less where the file is small. */
  private static final int LINES_TOGETHER = 48;

  /** About what a line takes, for dividing small files; the division decides nothing else. */
  private static final long BYTES_PER_LINE = 100_000;

  private final IfcWriter ifc;
  private final RunWriter runs;
  private final Surroundings surroundings;
  private final QuantityBook quantities = new QuantityBook();
  private final Random random = new Random(SEED);
  private int written;

  private LargeModel(Schema schema, Appendable sink) {
    Units units = schema.isOld() ? Units.MILLIMETRE_DEGREE : Units.MILLIMETRE_RADIAN;
    ifc = IfcWriter.to(sink, schema, units, "large");
    LargeStoreys storeys = new LargeStoreys(ifc);
    surroundings = new Surroundings(ifc, storeys);
    runs = new RunWriter(ifc, new LargeTypes(ifc), storeys);
  }

  /**
   * Writes a model.
   *
   * @param bytes about as many; at least one line is written
   * @return what the model holds, known from its design
   */
  public static List<KnownQuantity> write(Schema schema, long bytes, Appendable sink) {
    return new LargeModel(schema, sink).run(bytes);
  }

  private List<KnownQuantity> run(long bytes) {
    long head = ifc.step().size();
    int together = (int) Math.max(1, Math.min(LINES_TOGETHER, bytes / (4 * BYTES_PER_LINE)));
    block(together);
    long perLine = (ifc.step().size() - head) / written;
    while (bytes - ifc.step().size() > perLine / 2) {
      long left = Math.round((bytes - ifc.step().size()) / (double) perLine);
      block((int) Math.min(together, left));
    }
    ifc.step().finish();
    return quantities.quantities(ifc.step().counts());
  }

  private void block(int lines) {
    for (int i = 0; i < lines; i++) {
      Run run = Run.of(written, random);
      runs.write(run);
      surroundings.write(run);
      quantities.add(run);
      written++;
    }
    runs.writeRelations();
    ifc.forget();
  }

  /**
   * Writes a model and, beside it with {@code .csv} added to its name, what it holds.
   *
   * @param arguments size in megabytes (1 MB = 1,000,000 bytes), schema (IFC2X3, IFC4, IFC4X3),
   *     file
   */
  public static void main(String[] arguments) throws IOException {
    if (arguments.length != 3) {
      throw new IllegalArgumentException("SIZE_MB SCHEMA FILE");
    }
    long bytes = Math.round(Double.parseDouble(arguments[0]) * MEGABYTE);
    Path file = Path.of(arguments[2]);
    List<KnownQuantity> known;
    try (BufferedWriter out = Files.newBufferedWriter(file, StandardCharsets.US_ASCII)) {
      known = write(Schema.valueOf(arguments[1]), bytes, out);
    }
    Files.writeString(Path.of(file + ".csv"), KnownQuantity.csv(known));
  }
}
