package org.lagwright.report.templates;

import java.io.IOException;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.lagwright.ifc.model.ModelFile;
import org.lagwright.report.templates.Template.Use;
import org.lagwright.report.templates.TilePages.Grid;
import org.lagwright.takeoff.fitting.pattern.Curve;
import org.lagwright.takeoff.fitting.pattern.Ordinate;
import org.lagwright.takeoff.fitting.pattern.Pattern;

/** The pages with words: list of all templates, and what belongs to each of them. */
final class InfoPages {

  private static final double[] LIST_MM = {0, 14, 30, 90};
  private static final double[] PLAIN_MM = {0, 16, 66};
  private static final double[] STATION_MM = {0, 11, 26, 44, 64, 95, 106, 121, 139, 159};
  private static final double OVERVIEW_MM = 70;

  private final PdfFile file;
  private final PaperSize paper;
  private final TemplateBook book;
  private final String version;

  InfoPages(PdfFile file, PaperSize paper, TemplateBook book, String version) {
    this.file = file;
    this.paper = paper;
    this.book = book;
    this.version = version;
  }

  /** First pages: how to print, all templates, plain pieces, cautions. */
  void writeList() throws IOException {
    try (TextFlow flow = new TextFlow(file, paper)) {
      flow.title(book.takeoff().settings().project() + ": templates at full size");
      origin(flow);
      flow.paragraph(
          "Print on "
              + paper.name()
              + " at 100 %, no fit to page. Join tiles so that their crosses meet;"
              + " neighbours overlap by "
              + Math.round(PaperSize.OVERLAP_MM)
              + " mm.");
      flow.heading("Cautions");
      for (String caution : TemplateText.CAUTIONS) {
        flow.paragraph("- " + caution);
      }
      flow.heading("Templates");
      if (book.drawn().isEmpty()) {
        flow.paragraph("No piece of this takeoff needs a drawing.");
      }
      for (Template template : book.drawn()) {
        flow.row(LIST_MM, listed(template));
      }
      flow.heading("Pieces without a drawing: plain tubes and rectangles of fittings");
      for (Template template : book.plain()) {
        flow.row(
            PLAIN_MM,
            List.of(
                template.count() + " x",
                template.piece().name(),
                TemplateText.plain(template.piece()) + "; " + runs(template)));
      }
    }
  }

  private static List<String> listed(Template template) {
    return List.of(
        template.label(),
        template.count() + " x",
        template.piece().name(),
        template.making().method().words() + "; " + runs(template));
  }

  /** Lines of the takeoff with the count on each. */
  private static String runs(Template template) {
    Map<String, Integer> counts = new LinkedHashMap<>();
    template
        .uses()
        .forEach(use -> counts.merge(use.run().split(",")[0], use.count(), Integer::sum));
    return counts.entrySet().stream()
        .map(e -> e.getKey() + ": " + e.getValue())
        .collect(Collectors.joining(", "));
  }

  private void origin(TextFlow flow) throws IOException {
    for (ModelFile model : book.takeoff().models()) {
      flow.pair("Model", model.name() + ", revision " + model.sha256().substring(0, 12));
    }
    flow.pair("Made by", "lagwright " + version);
  }

  /** The page of one template: facts, small drawing with the tiles, ordinates, where needed. */
  void write(Template template, Pattern pattern, Grid grid) throws IOException {
    try (TextFlow flow = new TextFlow(file, paper)) {
      flow.title(template.label() + "  " + template.piece().name());
      origin(flow);
      for (Map.Entry<String, String> fact : TemplateText.facts(template).entrySet()) {
        flow.pair(fact.getKey(), fact.getValue());
      }
      flow.heading(
          "Drawing, "
              + grid.rows()
              + " x "
              + grid.columns()
              + " sheets of "
              + paper.name()
              + " follow (rows x columns, from below left)");
      overview(flow, pattern, grid);
      where(flow, template);
      ordinates(flow, pattern.ordinates());
    }
  }

  private void overview(TextFlow flow, Pattern pattern, Grid grid) throws IOException {
    double roomMm = paper.widthMm() - 2 * PaperSize.MARGIN_MM;
    double scale = Math.min(roomMm / grid.bounds().widthM(), OVERVIEW_MM / grid.bounds().heightM());
    flow.leave(grid.bounds().heightM() * scale + 4);
    PdfSheet sheet = flow.sheet();
    double leftMm = PaperSize.MARGIN_MM - grid.bounds().leftM() * scale;
    double bottomMm = flow.y() + 2 - grid.bounds().bottomM() * scale;
    sheet.grey(0);
    for (Curve curve : pattern.curves()) {
      Pens.take(sheet, curve.role());
      sheet.path(curve.flattened(1e-4), scale, leftMm, bottomMm);
    }
    sheet.pen(0.1);
  }

  private static void where(TextFlow flow, Template template) throws IOException {
    flow.heading("Where it is needed");
    Map<String, String> byRun = new LinkedHashMap<>();
    for (Use use : template.uses()) {
      byRun.merge(use.run(), use.count() + " x " + use.globalId(), (a, b) -> a + ", " + b);
    }
    for (Map.Entry<String, String> run : byRun.entrySet()) {
      flow.paragraph(run.getKey() + ":");
      flow.paragraph("   " + run.getValue());
    }
  }

  private static void ordinates(TextFlow flow, List<Ordinate> ordinates) throws IOException {
    if (ordinates.isEmpty()) {
      return;
    }
    flow.heading("Ordinates from the base line, mm");
    List<String> heads = List.of("No.", "turn", "girth", "lower cut", "upper cut");
    flow.row(STATION_MM, Stream.concat(heads.stream(), heads.stream()).toList());
    int half = (ordinates.size() + 1) / 2;
    for (int i = 0; i < half; i++) {
      List<String> row = new ArrayList<>(cells(ordinates.get(i)));
      row.addAll(
          i + half < ordinates.size()
              ? cells(ordinates.get(i + half))
              : List.of("", "", "", "", ""));
      flow.row(STATION_MM, row);
    }
  }

  private static List<String> cells(Ordinate o) {
    return List.of(
        Integer.toString(o.number()),
        Math.round(o.turnDeg()) + "°",
        tenth(o.xM()),
        tenth(o.lowerM()),
        tenth(o.upperM()));
  }

  private static String tenth(double lengthM) {
    return String.format(Locale.ROOT, "%.1f", lengthM * 1000 + 0.0).replace("-0.0", "0.0");
  }
}
