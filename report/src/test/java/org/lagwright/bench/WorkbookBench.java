package org.lagwright.bench;

import java.io.BufferedOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.lang.management.ManagementFactory;
import java.lang.management.MemoryType;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.zip.ZipFile;
import javax.xml.stream.XMLInputFactory;
import javax.xml.stream.XMLStreamException;
import javax.xml.stream.XMLStreamReader;
import org.lagwright.ifc.model.ElementKey;
import org.lagwright.ifc.model.Evidence;
import org.lagwright.ifc.model.Form;
import org.lagwright.ifc.model.How;
import org.lagwright.ifc.model.Kind;
import org.lagwright.ifc.model.Measured;
import org.lagwright.ifc.model.MepElement;
import org.lagwright.ifc.model.MepModel;
import org.lagwright.ifc.model.MepSystem;
import org.lagwright.ifc.model.ModelFile;
import org.lagwright.ifc.model.Place;
import org.lagwright.ifc.model.Point;
import org.lagwright.ifc.model.Port;
import org.lagwright.ifc.model.Section;
import org.lagwright.report.CheckedTakeoff;
import org.lagwright.report.workbook.TakeoffWorkbook;
import org.lagwright.takeoff.Takeoff;
import org.lagwright.takeoff.settings.SettingsReader;

/**
 * The workbook of many pipes whose lengths are known from their design, in a small heap: taken off,
 * checked, written, and its totals read back from the bare XML.
 */
public final class WorkbookBench {

  private static final int SYSTEMS = 8;
  private static final int SIZES = 6;
  private static final double[] OUTSIDE_M = {0.0213, 0.0269, 0.0337, 0.0424, 0.0483, 0.0603};
  private static final int STOREYS = 12;
  private static final double PITCH_M = 7;
  private static final double RACK_M = 1;
  private static final int ON_RACK = 400;
  private static final double HEAP_LIMIT_MB = 1024;

  private WorkbookBench() {}

  /**
   * Runs it; ends with exit code 1 where a total is wrong. The heap is what the machine was started
   * with.
   *
   * @param arguments number of elements, file to write
   */
  public static void main(String[] arguments) throws IOException, XMLStreamException {
    int count = Integer.parseInt(arguments[0]);
    Path file = Path.of(arguments[1]);
    long start = System.nanoTime();
    CheckedTakeoff checked = checked(count);
    double taken = seconds(start);
    long writing = System.nanoTime();
    try (OutputStream out = new BufferedOutputStream(Files.newOutputStream(file))) {
      new TakeoffWorkbook(checked, "benchmark").write(out);
    }
    double written = seconds(writing);
    prove(file, count);
    System.out.printf(
        Locale.ROOT,
        "Workbook of %d elements: taken off in %.1f s, written in %.1f s, %.1f MB, totals right;"
            + " heap at most %.0f MB of %.0f MB%n",
        count,
        taken,
        written,
        Files.size(file) / 1e6,
        peakHeapMb(),
        Runtime.getRuntime().maxMemory() / 1048576.0);
    if (Runtime.getRuntime().maxMemory() / 1048576.0 > HEAP_LIMIT_MB) {
      throw new IllegalStateException("start it with a heap of at most 1 GB: -Xmx1g");
    }
  }

  private static double seconds(long since) {
    return (System.nanoTime() - since) / 1e9;
  }

  private static double peakHeapMb() {
    return ManagementFactory.getMemoryPoolMXBeans().stream()
            .filter(pool -> pool.getType() == MemoryType.HEAP)
            .mapToLong(pool -> pool.getPeakUsage().getUsed())
            .sum()
        / 1048576.0;
  }

  private static CheckedTakeoff checked(int count) {
    List<MepElement> elements = new ArrayList<>(count);
    for (int i = 0; i < count; i++) {
      elements.add(pipe(i));
    }
    ModelFile file = new ModelFile(0, "designed.ifc", "0".repeat(64), "IFC4");
    MepModel model = new MepModel(file, elements, List.of(), List.of(), Map.of());
    return CheckedTakeoff.of(Takeoff.of(List.of(model), SettingsReader.defaults()));
  }

  /** Length by design, metres: known without the program. */
  static double lengthM(int i) {
    return 0.5 + i % 50 * 0.1;
  }

  private static MepElement pipe(int i) {
    long step = 10L * i + 100;
    double lengthM = lengthM(i);
    double x = i % ON_RACK * PITCH_M;
    double y = i / ON_RACK % ON_RACK * RACK_M;
    double z = i / ON_RACK / ON_RACK * RACK_M;
    Point from = new Point(x, y, z);
    Point to = new Point(x + lengthM, y, z);
    String system = i % SYSTEMS < SYSTEMS / 2 ? "Heating flow" : "Chilled water flow";
    String id = String.format(Locale.ROOT, "0Designed%014d", i);
    return MepElement.builder(new ElementKey(0, step), id, "IFCPIPESEGMENT")
        .named("Pipe " + i, null, "Steel pipe", null)
        .is(Kind.PIPE_SEGMENT, Form.STRAIGHT)
        .section(
            Measured.of(
                new Section.Round(OUTSIDE_M[i % SIZES]),
                How.SOLID,
                new Evidence(step + 1, "IfcCircleProfileDef.Radius", "r" + i)))
        .lengthM(
            Measured.of(
                lengthM,
                How.SOLID,
                new Evidence(step + 2, "IfcExtrudedAreaSolid.Depth", String.valueOf(lengthM))))
        .systems(List.of(new MepSystem(1 + i % SYSTEMS, system, system, null, null, null)))
        .place(Place.of("Building", "Storey " + i % STOREYS, (double) (i % STOREYS), null, false))
        .ports(
            List.of(
                new Port(step + 3, from, null, null, null, null),
                new Port(step + 4, to, null, null, null, null)))
        .build();
  }

  /** Counts rows and adds up the cached totals of named columns without any spreadsheet library. */
  private static void prove(Path file, int count) throws IOException, XMLStreamException {
    double designedM = 0;
    for (int i = 0; i < count; i++) {
      designedM += lengthM(i);
    }
    try (ZipFile zip = new ZipFile(file.toFile())) {
      Map<String, double[]> found = new HashMap<>();
      for (int sheet = 1; zip.getEntry("xl/worksheets/sheet" + sheet + ".xml") != null; sheet++) {
        try (InputStream in =
            zip.getInputStream(zip.getEntry("xl/worksheets/sheet" + sheet + ".xml"))) {
          found.put("sheet" + sheet, rowsAndColumnD(in));
        }
      }
      long elements = found.values().stream().filter(s -> s[0] >= count).count();
      if (elements < 2) {
        throw new IllegalStateException("no two sheets have a row for each of " + count);
      }
      double wanted = designedM;
      if (found.values().stream().noneMatch(s -> Math.abs(s[1] - wanted) < 1e-3)) {
        throw new IllegalStateException("no sheet adds up to the " + wanted + " m designed");
      }
    }
  }

  private static double[] rowsAndColumnD(InputStream in) throws XMLStreamException {
    XMLStreamReader xml = XMLInputFactory.newFactory().createXMLStreamReader(in);
    double[] sums = {0, 0};
    boolean inColumn = false;
    boolean plain = true;
    while (xml.hasNext()) {
      int event = xml.next();
      if (event != XMLStreamReader.START_ELEMENT) {
        continue;
      }
      String name = xml.getLocalName();
      if (name.equals("row")) {
        sums[0]++;
      } else if (name.equals("c")) {
        String at = xml.getAttributeValue(null, "r");
        boolean number = !"s".equals(xml.getAttributeValue(null, "t"));
        inColumn = number && at != null && at.matches("D\\d+");
        plain = true;
      } else if (name.equals("f")) {
        plain = false;
      } else if (name.equals("v") && inColumn && plain) {
        String value = xml.getElementText();
        sums[1] += value.matches("-?[\\d.]+(E-?\\d+)?") ? Double.parseDouble(value) : 0;
      }
    }
    return sums;
  }
}
