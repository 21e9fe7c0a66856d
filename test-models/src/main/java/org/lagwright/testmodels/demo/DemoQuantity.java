package org.lagwright.testmodels.demo;

import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.stream.Collectors;

/**
 * What the design holds of one thing. Summed from the design, never read back from a file.
 *
 * @param system title of the system, empty for what belongs to none or to several
 * @param kind word such as {@code pipe-segment}
 * @param form word such as {@code bend}
 * @param size outer sizes in millimetres, such as {@code 60.3/60.3/33.7}; empty for apparatus
 * @param degrees angle of bends, zero for all else
 * @param bendRadiusM centre-line radius of bends in metres, zero for all else
 * @param pieces how many
 * @param lengthM length along the centre line in metres, straights only, zero for all else
 */
public record DemoQuantity(
    String system,
    String kind,
    String form,
    String size,
    double degrees,
    double bendRadiusM,
    int pieces,
    double lengthM) {

  private static final String HEAD =
      "system,kind,form,size_mm,angle_deg,bend_radius_m,pieces,length_m";

  /** One quantity for each difference in system, kind, form, size, angle or radius; sorted. */
  static List<DemoQuantity> sum(List<Piece> pieces) {
    Map<DemoQuantity, List<Piece>> groups =
        pieces.stream().collect(Collectors.groupingBy(DemoQuantity::groupOf));
    return groups.entrySet().stream()
        .map(entry -> entry.getKey().holding(entry.getValue()))
        .sorted(Comparator.comparing(DemoQuantity::csvLine))
        .toList();
  }

  /** The table of quantities.csv, lines ending in a line feed. */
  static String csv(List<DemoQuantity> quantities) {
    return quantities.stream()
        .map(DemoQuantity::csvLine)
        .collect(Collectors.joining("\n", HEAD + "\n", "\n"));
  }

  private static DemoQuantity groupOf(Piece piece) {
    return new DemoQuantity(
        piece.system() == null ? "" : piece.system().title(),
        piece.kind(),
        piece.what().form(),
        piece.measure().size(),
        piece.measure().degrees(),
        piece.measure().bendRadiusMm() / 1000,
        0,
        0);
  }

  private DemoQuantity holding(List<Piece> held) {
    double lengthMm = held.stream().mapToDouble(p -> p.measure().lengthMm()).sum();
    return new DemoQuantity(
        system, kind, form, size, degrees, bendRadiusM, held.size(), lengthMm / 1000);
  }

  private String csvLine() {
    return String.format(
        Locale.ROOT,
        "%s,%s,%s,%s,%s,%s,%d,%s",
        system,
        kind,
        form,
        size,
        degrees == 0 ? "" : Size.text(degrees),
        bendRadiusM == 0 ? "" : String.format(Locale.ROOT, "%.4f", bendRadiusM),
        pieces,
        lengthM == 0 ? "" : String.format(Locale.ROOT, "%.5f", lengthM));
  }
}
