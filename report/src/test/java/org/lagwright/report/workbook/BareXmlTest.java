package org.lagwright.report.workbook;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.zip.ZipEntry;
import java.util.zip.ZipFile;
import javax.xml.parsers.DocumentBuilderFactory;
import javax.xml.parsers.ParserConfigurationException;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.lagwright.report.CheckedTakeoff;
import org.lagwright.report.SampleTakeoff;
import org.w3c.dom.Document;
import org.w3c.dom.Element;
import org.w3c.dom.NodeList;
import org.xml.sax.SAXException;

/** The workbook opened as what it is, an archive of XML, without the library that wrote it. */
class BareXmlTest {

  @TempDir static Path folder;

  private static final Map<String, Document> PARTS = new TreeMap<>();

  @BeforeAll
  static void unpack() throws IOException, ParserConfigurationException, SAXException {
    Path file = folder.resolve("takeoff.xlsx");
    try (OutputStream out = Files.newOutputStream(file)) {
      new TakeoffWorkbook(CheckedTakeoff.of(SampleTakeoff.takeoff()), "9.9.9").write(out);
    }
    DocumentBuilderFactory factory = DocumentBuilderFactory.newInstance();
    factory.setNamespaceAware(true);
    try (ZipFile zip = new ZipFile(file.toFile())) {
      for (ZipEntry entry : Collections.list(zip.entries())) {
        if (entry.getName().endsWith(".xml") || entry.getName().endsWith(".rels")) {
          try (InputStream in = zip.getInputStream(entry)) {
            PARTS.put(entry.getName(), factory.newDocumentBuilder().parse(in));
          }
        }
      }
    }
  }

  @Test
  void everyFormulaHasItsValueBesideIt() {
    int formulas = 0;
    for (Document sheet : parts("xl/worksheets/sheet")) {
      for (Element cell : elements(sheet, "c")) {
        if (!elements(cell, "f").isEmpty()) {
          assertThat(elements(cell, "v")).as(cell.getAttribute("r")).hasSize(1);
          formulas++;
        }
      }
    }
    assertThat(formulas).isGreaterThan(100);
  }

  /** Spreadsheets call a file damaged where a table and its heading cells differ. */
  @Test
  void theColumnsOfEachTableAreItsHeadingCells() {
    int tables = 0;
    for (Map.Entry<String, Document> part : PARTS.entrySet()) {
      if (part.getKey().matches("xl/worksheets/_rels/sheet\\d+\\.xml\\.rels")) {
        for (Element relation : elements(part.getValue(), "Relationship")) {
          String target = relation.getAttribute("Target");
          if (target.contains("/tables/")) {
            Document table = part("xl" + target.replaceAll("^(\\.\\.|/xl)", ""));
            String sheet = part.getKey().replace("_rels/", "").replace(".rels", "");
            assertThat(columns(table)).isEqualTo(headings(part(sheet), table)).isNotEmpty();
            tables++;
          }
        }
      }
    }
    assertThat(tables).isGreaterThan(12);
  }

  private static List<String> columns(Document table) {
    return elements(table, "tableColumn").stream().map(c -> c.getAttribute("name")).toList();
  }

  private static List<String> headings(Document sheet, Document table) {
    String row =
        table.getDocumentElement().getAttribute("ref").replaceAll("^[A-Z]+(\\d+):.*", "$1");
    List<String> headings = new ArrayList<>();
    for (Element cell : elements(sheet, "c")) {
      if (cell.getAttribute("r").matches("[A-Z]+" + row)) {
        headings.add(text(cell));
      }
    }
    return headings;
  }

  private static String text(Element cell) {
    if (!cell.getAttribute("t").equals("s")) {
      return cell.getTextContent();
    }
    int index = Integer.parseInt(elements(cell, "v").get(0).getTextContent());
    return elements(part("xl/sharedStrings.xml"), "si").get(index).getTextContent();
  }

  @Test
  void theNamesOfKeyCellsAndPrintedAreasAreDefined() {
    List<String> names =
        elements(part("xl/workbook.xml"), "definedName").stream()
            .map(name -> name.getAttribute("name"))
            .toList();
    assertThat(names)
        .contains("Elements_read", "Insulated_length_m", "Labour_hours", "Account_check")
        .filteredOn("_xlnm.Print_Area"::equals)
        .hasSize(parts("xl/worksheets/sheet").size());
  }

  private static Document part(String name) {
    Document part = PARTS.get(name);
    assertThat(part).as(name).isNotNull();
    if (part == null) {
      throw new AssertionError(name);
    }
    return part;
  }

  private static List<Document> parts(String start) {
    return PARTS.entrySet().stream()
        .filter(part -> part.getKey().startsWith(start))
        .map(Map.Entry::getValue)
        .toList();
  }

  private static List<Element> elements(Document document, String name) {
    return elements(document.getDocumentElement(), name);
  }

  private static List<Element> elements(Element owner, String name) {
    NodeList nodes = owner.getElementsByTagNameNS("*", name);
    List<Element> elements = new ArrayList<>();
    for (int i = 0; i < nodes.getLength(); i++) {
      elements.add((Element) nodes.item(i));
    }
    return elements;
  }
}
