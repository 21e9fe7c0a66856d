package org.lagwright.bench;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;

/**
 * The commands that are measured. Our own start as the README tells those who are in a hurry: with
 * an archive of the classes that a run over a small model has listed.
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
  static final int HEAP_MB = 224;

  /**
   * What extraction starts with besides: memory is taken in large pieces and soon used again, what
   * lives on is moved out of the way at once, code is translated early by one thread and in small
   * pieces, and nothing is kept for tools that watch.
   */
  static final List<String> EXTRACT_FLAGS =
      List.of(
          "-XX:TieredStopAtLevel=1",
          "-Xms" + HEAP_MB + "m",
          "-Xmn44m",
          "-XX:CompileThresholdScaling=0.5",
          "-XX:CICompilerCount=1",
          "-XX:C1MaxInlineLevel=4",
          "-XX:C1MaxInlineSize=30",
          "-XX:MaxTenuringThreshold=1",
          "-XX:-UsePerfData",
          "-XX:+UseTransparentHugePages");

  /** A takeoff of more than this takes minutes in each round. */
  private static final int MOST_TAKEOFF_MB = 100;

  private static final int PROOF_HEAP_MB = 2048;
  private static final int TAKEOFF_HEAP_MB = 4096;
  private static final String EXTRACT_MAIN = "org.lagwright.ifc.large.ExtractLarge";
  private static final String TAKEOFF_MAIN = "org.lagwright.report.cli.Main";

  /** All of them, for one model. */
  List<Engine> all(LargeFile file) throws IOException {
    String ifc = file.ifc.toString();
    List<Engine> engines = new ArrayList<>(ours(file, Purpose.TIME));
    engines.add(new Engine(OPEN, webIfc(ifc), file.elementsByClass()));
    engines.add(new Engine(RELATIONS, webIfc(ifc, "rels"), file.relations()));
    engines.add(new Engine(LINES, List.of("wc", "-l", ifc), file.lines()));
    engines.add(
        new Engine(
            INFLATE,
            List.of("java", "-cp", classes(), "org.lagwright.bench.InflateLoop", file.zip + ""),
            "bytes=" + file.bytes()));
    return engines;
  }

  private List<Engine> ours(LargeFile file, Purpose purpose) {
    String ifc = file.ifc.toString();
    List<Engine> ours = new ArrayList<>();
    ours.add(extract(file, ifc, purpose));
    ours.add(extractZip(file, purpose));
    if (file.megabytes <= MOST_TAKEOFF_MB) {
      ours.add(takeoff(ifc, purpose));
    }
    return ours;
  }

  /** Lists the classes that are used, and makes the archives of them that the others start with. */
  List<Engine> archives(LargeFile small) {
    String ifc = small.ifc.toString();
    return List.of(
        extract(small, ifc, Purpose.LIST),
        takeoff(ifc, Purpose.LIST),
        archive(EXTRACT_MAIN),
        archive(TAKEOFF_MAIN));
  }

  private Engine archive(String main) {
    List<String> command = List.of("java", "-Xshare:dump", "-Xlog:disable", "-XX:+UseSerialGC");
    List<String> files =
        List.of(
            "-XX:SharedClassListFile=" + file(main, ".lst"), archiveFlag(main), "-cp", classes());
    return new Engine("archive", Stream.concat(command.stream(), files.stream()).toList(), "");
  }

  private String archiveFlag(String main) {
    return "-XX:SharedArchiveFile=" + file(main, ".jsa");
  }

  /** A file of a main class. */
  private String file(String main, String ending) {
    return work + main.substring(main.lastIndexOf('.')).replace('.', '/') + ending;
  }

  /** Our own once more, to see their heap: they take longer to tell it, and no round waits. */
  List<Engine> heaps(LargeFile file) {
    return ours(file, Purpose.HEAP);
  }

  /** Checks every quantity; ends with a word of success only if all are right. */
  Engine proof(LargeFile file) {
    String ifc = file.ifc.toString();
    return new Engine(
        "every quantity",
        java(PROOF_HEAP_MB, Purpose.TIME, EXTRACT_MAIN, ifc, file.known.toString()),
        file.sums());
  }

  private Engine extract(LargeFile file, String ifc, Purpose purpose) {
    return new Engine(EXTRACT, java(HEAP_MB, purpose, EXTRACT_MAIN, ifc), file.sums());
  }

  private Engine extractZip(LargeFile file, Purpose purpose) {
    List<String> command = java(HEAP_MB, purpose, EXTRACT_MAIN, file.zip.toString());
    return new Engine(EXTRACT_ZIP, command, file.sums());
  }

  private Engine takeoff(String ifc, Purpose purpose) {
    String[] arguments = {"takeoff", ifc, "--out", work + "/takeoff"};
    return new Engine(
        TAKEOFF, java(TAKEOFF_HEAP_MB, purpose, TAKEOFF_MAIN, arguments), "takeoff.xlsx");
  }

  /** What a process is started for. */
  private enum Purpose {
    LIST,
    TIME,
    HEAP
  }

  private List<String> java(int heapMb, Purpose purpose, String main, String... arguments) {
    List<String> command = new ArrayList<>(List.of("java", "-Xmx" + heapMb + "m"));
    command.add("-XX:+UseSerialGC");
    if (main.equals(EXTRACT_MAIN)) {
      // cutting plans are long arithmetic, which wants the other compiler too
      command.addAll(EXTRACT_FLAGS);
    }
    if (purpose == Purpose.LIST) {
      command.addAll(List.of("-Xshare:off", "-XX:DumpLoadedClassList=" + file(main, ".lst")));
    } else {
      command.add(archiveFlag(main));
    }
    command.addAll(List.of("-cp", classes()));
    if (purpose == Purpose.HEAP) {
      command.add("org.lagwright.bench.PeakHeap");
    }
    command.add(main);
    command.addAll(List.of(arguments));
    return command;
  }

  /**
   * A jar of the reader with the main classes, as a folder cannot be archived; then the runnable
   * jar, whose 20 000 files take long to list.
   */
  private String classes() {
    return work + "/classes.jar:" + root + "/report/target/lagwright.jar";
  }

  private List<String> webIfc(String... arguments) {
    // one string of a large model is small, but the heap of node keeps what the pass collects
    List<String> command = new ArrayList<>(List.of("node", "--max-old-space-size=8000"));
    command.add(node + "/bench.js");
    command.addAll(List.of(arguments));
    return command;
  }
}
