package org.lagwright.ifc.large;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.lagwright.ifc.model.Measured;
import org.lagwright.ifc.model.MepElement;
import org.lagwright.ifc.model.MepModel;
import org.lagwright.ifc.source.ModelReader;
import org.lagwright.ifc.source.ProgressListener;
import org.lagwright.testmodels.large.KnownQuantity;

/** Reads one model as a process of its own and prints a few sums over all that is lagged. */
public final class ExtractLarge {

  private ExtractLarge() {}

  /**
   * Reads a model.
   *
   * @param arguments the model; then, to have every quantity checked, what is known of it. Ends
   *     with exit code 1 and the differences where there are any
   */
  public static void main(String[] arguments) throws IOException {
    MepModel model = ModelReader.read(Path.of(arguments[0]), 0, ProgressListener.SILENT);
    System.out.println(sums(model));
    if (arguments.length > 1) {
      check(model, KnownQuantity.parse(Files.readString(Path.of(arguments[1]))));
    }
  }

  private static void check(MepModel model, List<KnownQuantity> known) {
    List<String> differences = ReadQuantities.differences(known, ReadQuantities.of(model));
    differences.forEach(System.err::println);
    if (!differences.isEmpty()) {
      System.exit(1);
    }
  }

  private static String sums(MepModel model) {
    long elements = 0;
    double lengthM = 0;
    long properties = 0;
    long ports = 0;
    long memberships = 0;
    for (MepElement element : model.elements()) {
      if (element.kind().isLagged()) {
        elements++;
        Measured<Double> length = element.kind().isSegment() ? element.lengthM() : null;
        lengthM += length == null ? 0 : length.value();
        properties += element.properties().size();
        ports += element.ports().size();
        memberships += element.systems().size();
      }
    }
    return "elements="
        + elements
        + " lengthM="
        + fourDecimals(lengthM)
        + " properties="
        + properties
        + " ports="
        + ports
        + " memberships="
        + memberships;
  }

  /**
   * No format: to find out how the place we are in writes numbers takes longer than a small model.
   */
  private static String fourDecimals(double value) {
    long shifted = Math.round(value * 10_000);
    String decimals = Long.toString(10_000 + shifted % 10_000).substring(1);
    return shifted / 10_000 + "." + decimals;
  }
}
