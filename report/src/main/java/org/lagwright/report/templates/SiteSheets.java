package org.lagwright.report.templates;

import java.io.IOException;
import java.io.OutputStream;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import org.lagwright.ifc.model.ElementKey;
import org.lagwright.ifc.model.ModelFile;
import org.lagwright.takeoff.PartOrder;
import org.lagwright.takeoff.TakenElement;
import org.lagwright.takeoff.Takeoff;
import org.lagwright.takeoff.TakeoffLine;
import org.lagwright.takeoff.order.OrderItem;
import org.lagwright.takeoff.order.OrderList;

/**
 * Sheets for the site, one for each service on each storey: what is insulated, pieces with the
 * numbers of their templates, what to bring, how to go about it, cautions. Equal takeoffs give
 * equal bytes.
 */
public final class SiteSheets {

  /** Name of the file. */
  public static final String FILE = "sitesheets.pdf";

  private static final double[] LINE_MM = {0, 14, 34, 104};
  private static final double[] PIECE_MM = {0, 14, 30, 90};
  private static final double[] BRING_MM = {0, 26, 52};

  private final Takeoff takeoff;
  private final String version;
  private final TemplateBook book;
  private final PartOrder parts;
  private final List<SiteWork> works;
  private final Map<String, TakeoffLine> lines = new LinkedHashMap<>();

  /**
   * Prepares the sheets of one takeoff.
   *
   * @param version version of this program
   */
  public SiteSheets(Takeoff takeoff, String version) {
    this.takeoff = takeoff;
    this.version = version;
    this.book = new TemplateBook(takeoff);
    this.parts = new PartOrder(takeoff);
    this.works = SiteWork.of(takeoff);
    takeoff.lines().forEach(line -> lines.put(line.id(), line));
  }

  /** How many sheets there are; each may take several pages. */
  public int sheets() {
    return works.size();
  }

  /**
   * Writes them; the stream stays open.
   *
   * @throws IOException if the stream cannot be written
   */
  public void write(OutputStream out) throws IOException {
    try (PdfFile file = new PdfFile(takeoff.settings().project() + ": site sheets", version)) {
      if (works.isEmpty()) {
        try (TextFlow flow = new TextFlow(file, PaperSize.A4)) {
          flow.title(takeoff.settings().project() + ": site sheets");
          flow.paragraph("No element is on a takeoff line, so there is nothing to insulate.");
        }
      }
      for (SiteWork work : works) {
        try (TextFlow flow = new TextFlow(file, PaperSize.A4)) {
          write(flow, work);
        }
      }
      file.save(out);
    }
  }

  private void write(TextFlow flow, SiteWork work) throws IOException {
    flow.title(work.storey() + ": " + work.service());
    flow.pair("Project", takeoff.settings().project());
    for (ModelFile model : takeoff.models()) {
      flow.pair("Model", model.name() + ", revision " + model.sha256().substring(0, 12));
    }
    flow.pair("Made by", "lagwright " + version);
    flow.pair(
        "Hours",
        String.format(Locale.ROOT, "%.1f h by the norms of the takeoff", work.hours())
            + "; see there what is unverified");
    OrderList order = parts.of(work.elements());
    insulated(flow, work);
    pieces(flow, work.keys());
    bring(flow, order);
    flow.heading("Order of work");
    int number = 1;
    for (String step : SiteText.steps(work)) {
      flow.paragraph(number++ + ". " + step);
    }
    flow.heading("Cautions");
    for (String caution : SiteText.CAUTIONS) {
      flow.paragraph("- " + caution);
    }
  }

  private void insulated(TextFlow flow, SiteWork work) throws IOException {
    flow.heading("What is insulated");
    Map<String, Double> quantities = new LinkedHashMap<>();
    for (TakenElement taken : work.elements()) {
      double quantity =
          taken.quantities().pieces() > 0
              ? taken.quantities().pieces()
              : taken.quantities().lengthM();
      quantities.merge(Objects.requireNonNull(taken.lineId()), quantity, Double::sum);
    }
    for (Map.Entry<String, Double> entry : quantities.entrySet()) {
      TakeoffLine line = Objects.requireNonNull(lines.get(entry.getKey()));
      flow.row(
          LINE_MM,
          List.of(
              line.id(),
              quantity(entry.getValue(), line.unit()),
              line.form().label().replace('-', ' ') + " " + line.size(),
              line.layers() + ", " + line.materialName()));
    }
  }

  private void pieces(TextFlow flow, Set<ElementKey> elements) throws IOException {
    flow.heading("Pieces to cut, with the numbers of the templates");
    boolean any = false;
    for (Template template : book.drawn()) {
      int count = template.countFor(elements);
      if (count > 0) {
        any = true;
        flow.row(
            PIECE_MM,
            List.of(
                template.label(),
                count + " x",
                template.piece().name(),
                template.making().method().words()));
      }
    }
    for (Template template : book.plain()) {
      int count = template.countFor(elements);
      if (count > 0) {
        any = true;
        flow.row(
            PIECE_MM,
            List.of(
                "", count + " x", template.piece().name(), TemplateText.plain(template.piece())));
      }
    }
    if (!any) {
      flow.paragraph("None but straights, cut to length.");
    }
  }

  private static void bring(TextFlow flow, OrderList order) throws IOException {
    flow.heading("What to bring, if this work is cut by itself");
    for (OrderItem item : order.items()) {
      flow.row(
          BRING_MM,
          List.of(
              item.packs() + " x",
              quantity(item.netQuantity(), item.unit()),
              item.description() + " (" + item.pack().name() + ")"));
    }
    if (!order.withoutPieces().isEmpty()) {
      flow.paragraph(
          "Cut on site to measure, material not in this list: "
              + order.withoutPieces().size()
              + ".");
    }
  }

  private static String quantity(double quantity, String unit) {
    return unit.equals("pcs")
        ? String.format(Locale.ROOT, "%.0f pcs", quantity)
        : String.format(Locale.ROOT, "%.2f %s", quantity, unit);
  }
}
