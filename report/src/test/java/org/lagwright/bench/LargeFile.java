package org.lagwright.bench;

import java.io.IOException;
import java.io.OutputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.function.Predicate;
import java.util.zip.ZipEntry;
import java.util.zip.ZipOutputStream;
import org.lagwright.testmodels.large.KnownQuantity;
import org.lagwright.testmodels.large.LargeModel;

/** A generated model on disk, plain and packed, and what is known of it. */
final class LargeFile {

  /** The classes whose elements get properties and systems in the large models. */
  private static final Set<String> ELEMENTS =
      Set.of(
          "IFCFLOWSEGMENT",
          "IFCFLOWFITTING",
          "IFCFLOWCONTROLLER",
          "IFCPIPESEGMENT",
          "IFCPIPEFITTING",
          "IFCDUCTSEGMENT",
          "IFCDUCTFITTING",
          "IFCVALVE",
          "IFCDAMPER");

  final int megabytes;
  final Path ifc;
  final Path zip;
  final Path known;
  private final List<KnownQuantity> quantities;

  private LargeFile(int megabytes, Path ifc) throws IOException {
    this.megabytes = megabytes;
    this.ifc = ifc;
    zip = Path.of(ifc + "zip");
    known = Path.of(ifc + ".csv");
    quantities = KnownQuantity.parse(Files.readString(known));
  }

  /** Generates the model anew: an earlier file may be of another generator. */
  static LargeFile write(int megabytes, String schema, Path folder) throws IOException {
    Path ifc = folder.resolve("large-" + megabytes + ".ifc");
    LargeModel.main(new String[] {Integer.toString(megabytes), schema, ifc.toString()});
    LargeFile file = new LargeFile(megabytes, ifc);
    try (OutputStream out = Files.newOutputStream(file.zip);
        ZipOutputStream packed = new ZipOutputStream(out)) {
      packed.putNextEntry(new ZipEntry(ifc.getFileName().toString()));
      Files.copy(ifc, packed);
      packed.closeEntry();
    }
    return file;
  }

  long bytes() throws IOException {
    return Files.size(ifc);
  }

  /** The line that the extraction must print. */
  String sums() {
    return String.format(
        Locale.ROOT,
        "elements=%d lengthM=%.4f properties=%d ports=%d memberships=%d",
        count(q -> Set.of("segment", "bend", "item").contains(q.what())),
        total("segment"),
        properties(),
        count(q -> q.what().equals("port")),
        memberships());
  }

  /** Elements as another reader counts them by class. */
  String elementsByClass() {
    return "elements=" + count(q -> q.what().equals("record") && ELEMENTS.contains(q.of()));
  }

  /** What another reader finds when it follows properties and systems. */
  String relations() {
    long systems = count(q -> q.what().equals("system"));
    return elementsByClass()
        + " properties="
        + properties()
        + " memberships="
        + memberships()
        + " systems="
        + systems;
  }

  /** Lines of the file: the records, seven before and two after them. */
  String lines() {
    return count(q -> q.what().equals("record")) + 9 + " ";
  }

  private long properties() {
    return count(q -> q.what().equals("property") && q.of().equals("all"));
  }

  private long memberships() {
    return Math.round(total("system"));
  }

  private long count(Predicate<KnownQuantity> which) {
    return quantities.stream().filter(which).mapToLong(KnownQuantity::count).sum();
  }

  private double total(String what) {
    return quantities.stream()
        .filter(q -> q.what().equals(what))
        .mapToDouble(KnownQuantity::total)
        .sum();
  }
}
