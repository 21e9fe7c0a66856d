package org.lagwright.report;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.lagwright.takeoff.TakeoffLine;

/**
 * What the lines of one service add up to.
 *
 * @param service the service in words
 * @param lengthM metres of what is measured by length
 * @param pieces what is counted
 * @param outerAreaM2 outer surface of the insulation, square metres
 * @param volumeM3 volume of insulation, cubic metres
 */
public record ServiceTotal(
    String service, double lengthM, double pieces, double outerAreaM2, double volumeM3) {

  /** Totals of all services, in the order in which they first appear. */
  public static List<ServiceTotal> of(List<TakeoffLine> lines) {
    Map<String, ServiceTotal> totals = new LinkedHashMap<>();
    lines.forEach(line -> totals.merge(line.serviceName(), of(line), ServiceTotal::plus));
    return new ArrayList<>(totals.values());
  }

  /** The sum of all, named so. */
  public static ServiceTotal sum(String name, List<ServiceTotal> totals) {
    return totals.stream().reduce(new ServiceTotal(name, 0, 0, 0, 0), ServiceTotal::plus);
  }

  private static ServiceTotal of(TakeoffLine line) {
    boolean measured = line.unit().equals("m");
    return new ServiceTotal(
        line.serviceName(),
        measured ? line.quantity() : 0,
        measured ? 0 : line.quantity(),
        line.outerAreaM2(),
        line.volumeM3());
  }

  private ServiceTotal plus(ServiceTotal other) {
    return new ServiceTotal(
        service,
        lengthM + other.lengthM,
        pieces + other.pieces,
        outerAreaM2 + other.outerAreaM2,
        volumeM3 + other.volumeM3);
  }
}
