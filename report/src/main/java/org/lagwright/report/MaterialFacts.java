package org.lagwright.report;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import org.lagwright.takeoff.material.MaterialFamily;
import org.lagwright.takeoff.material.MaterialFamily.VapourResistance;
import org.lagwright.takeoff.material.Stock;

/** What is known of a material, in words, each fact with how far it was checked. */
public final class MaterialFacts {

  private MaterialFacts() {}

  /**
   * One property.
   *
   * @param property its name: {@code service range}
   * @param status how far it was checked
   * @param figures with unit and source
   */
  public record Fact(String property, String status, String figures) {}

  /** The facts of one family, in a fixed order. */
  public static List<Fact> of(MaterialFamily family) {
    List<Fact> facts = new ArrayList<>();
    facts.add(conductivity(family.conductivity()));
    MaterialFamily.ServiceRange service = family.service();
    String range = family.serviceRangeInWords();
    facts.add(fact("service range", service.status().label(), range, service.source()));
    facts.add(vapour(family.vapour()));
    facts.addAll(stock(family.stock()));
    if (!family.standards().isEmpty()) {
      facts.add(new Fact("sold under", "", String.join(", ", family.standards())));
    }
    if (family.note() != null) {
      facts.add(new Fact("note", "", family.note()));
    }
    return facts;
  }

  private static Fact conductivity(MaterialFamily.Points points) {
    String figures =
        points.points().stream()
            .map(p -> Words.plain(p.wPerMK()) + " at " + Words.plain(p.meanC()))
            .collect(Collectors.joining(", ", "", " degC mean, W/(m K), " + points.grade()));
    return fact("conductivity", points.status().label(), figures, points.source());
  }

  private static Fact vapour(@Nullable VapourResistance vapour) {
    String property = "vapour resistance";
    if (vapour == null) {
      return new Fact(property, "", "not known");
    }
    String figures = vapour.mu() == null ? "no vapour passes" : "mu " + Words.plain(vapour.mu());
    return fact(property, vapour.status().label(), figures, vapour.source());
  }

  private static List<Fact> stock(Stock stock) {
    List<Fact> facts = new ArrayList<>();
    String status = stock.status().label();
    walls("tube walls mm", stock.tubeWallsMm(), stock.largestTubeBoreMm(), stock, facts);
    if (!stock.bores().isEmpty()) {
      facts.add(fact("tube bores mm", status, figures(stock.bores()), stock.source()));
    }
    if (!stock.sizes().isEmpty()) {
      String sizes =
          stock.sizes().stream().map(MaterialFacts::size).collect(Collectors.joining(", "));
      facts.add(fact("bore x wall mm", status, sizes, stock.source()));
    }
    walls("section walls mm", stock.sectionWallsMm(), stock.largestSectionBoreMm(), stock, facts);
    walls("sheets mm", stock.sheetsMm(), 0, stock, facts);
    if (!stock.pieces().isEmpty()) {
      String sold =
          stock.pieces().stream().map(MaterialFacts::sold).collect(Collectors.joining("; "));
      facts.add(fact("sold as", status, sold, stock.source()));
    }
    return facts;
  }

  private static void walls(
      String property, List<Double> wallsMm, double boreMm, Stock stock, List<Fact> facts) {
    if (!wallsMm.isEmpty()) {
      String bore = boreMm > 0 ? ", bores to " + Words.plain(boreMm) : "";
      String status = stock.status().label();
      facts.add(fact(property, status, figures(wallsMm) + bore, stock.source()));
    }
  }

  private static String size(Stock.Fit fit) {
    return fit.form() + " " + Words.plain(fit.boreMm()) + " x " + Words.plain(fit.wallMm());
  }

  private static String sold(Stock.Sold sold) {
    String width = sold.widthM() == null ? "" : Words.plain(sold.widthM()) + " x ";
    String thick =
        sold.thicknessMm() == null ? "" : " of " + Words.plain(sold.thicknessMm()) + " mm";
    return sold.form() + " " + width + Words.plain(sold.lengthM()) + " m" + thick;
  }

  private static String figures(List<Double> figures) {
    return figures.stream().map(Words::plain).collect(Collectors.joining(", "));
  }

  private static Fact fact(String property, String status, String figures, String source) {
    return new Fact(property, status, figures + " (" + source + ")");
  }
}
