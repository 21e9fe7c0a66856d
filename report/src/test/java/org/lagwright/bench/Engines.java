package org.lagwright.bench;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;

/**
 * The commands that are measured.
 *
 * @param root folder of the repository
 * @param node folder where web-ifc is installed
 * @param work folder for outputs
 */
record Engines(Path root, Path node, Path work) {

  static final String EXTRACT = "model extracted";
  static final String EXTRACT_ZIP = "model extracted from .ifczip";
  static final String TAKEOFF = "whole takeoff";
  static final String OPEN = "web-ifc open";
  static final String RELATIONS = "web-ifc properties, systems";
  static final String LINES = "wc -l";
  static final String INFLATE = "plain inflating";

  /** The heap that extraction must do with. */
  static final int HEAP_MB = 256;

  private static final String EXTRACT_MAIN = "org.lagwright.ifc.large.ExtractLarge";

  /** All of them, for one model. */
  List<Engine> all(LargeFile file) throws IOException {
    String ifc = file.ifc.toString();
    return List.of(
        new Engine(EXTRACT, extract(ifc), file.sums()),
        new Engine(EXTRACT_ZIP, extract(file.zip.toString()), file.sums()),
        new Engine(TAKEOFF, takeoff(ifc), "takeoff.xlsx"),
        new Engine(OPEN, webIfc(ifc), file.elementsByClass()),
        new Engine(RELATIONS, webIfc(ifc, "rels"), file.relations()),
        new Engine(LINES, List.of("wc", "-l", ifc), file.lines()),
        new Engine(
            INFLATE,
            List.of("java", "-cp", classes(), "org.lagwright.bench.InflateLoop", file.zip + ""),
            "bytes=" + file.bytes()));
  }

  /** Checks every quantity; ends with a word of success only if all are right. */
  Engine proof(LargeFile file) {
    List<String> command = new ArrayList<>(extract(file.ifc.toString(), file.known.toString()));
    command.set(1, "-Xmx2g");
    return new Engine("every quantity", command, file.sums());
  }

  private List<String> extract(String... arguments) {
    return java(HEAP_MB, EXTRACT_MAIN, arguments);
  }

  private List<String> takeoff(String ifc) {
    return java(4096, "org.lagwright.report.cli.Main", "takeoff", ifc, "--out", work + "/takeoff");
  }

  /** The runnable jar, and the tests for the main classes that are not part of the product. */
  private List<String> java(int heapMb, String main, String... arguments) {
    List<String> command = new ArrayList<>(List.of("java", "-Xmx" + heapMb + "m"));
    command.addAll(List.of("-XX:+UseSerialGC", "-cp", classes()));
    command.addAll(List.of("org.lagwright.bench.PeakHeap", main));
    command.addAll(List.of(arguments));
    return command;
  }

  private String classes() {
    return String.join(
        ":",
        root + "/report/target/lagwright.jar",
        root + "/report/target/test-classes",
        root + "/ifc-reader/target/test-classes",
        root + "/test-models/target/classes");
  }

  private List<String> webIfc(String... arguments) {
    // one string of a large model is small, but the heap of node keeps what the pass collects
    List<String> command = new ArrayList<>(List.of("node", "--max-old-space-size=8000"));
    command.add(node + "/bench.js");
    command.addAll(List.of(arguments));
    return command;
  }
}
