package org.lagwright.report.bcf;

import static org.assertj.core.api.Assumptions.assumeThat;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.zip.ZipEntry;
import java.util.zip.ZipInputStream;
import javax.xml.XMLConstants;
import javax.xml.parsers.DocumentBuilderFactory;
import javax.xml.parsers.ParserConfigurationException;
import javax.xml.transform.stream.StreamSource;
import javax.xml.validation.SchemaFactory;
import org.lagwright.takeoff.Takeoff;
import org.w3c.dom.Document;
import org.w3c.dom.Element;
import org.w3c.dom.NodeList;
import org.xml.sax.SAXException;

/** Opens BCF files for tests with what the JDK has: zip, DOM, and validation by the schemas. */
final class BcfReading {

  private static final Instant CREATED = Instant.parse("2026-03-04T05:06:07.89Z");

  private BcfReading() {}

  static Map<String, byte[]> files(Takeoff takeoff, BcfVersion version) throws IOException {
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    new BcfArchive(takeoff, version, CREATED).write(out);
    Map<String, byte[]> files = new LinkedHashMap<>();
    try (ZipInputStream zip = new ZipInputStream(new ByteArrayInputStream(out.toByteArray()))) {
      for (ZipEntry entry = zip.getNextEntry(); entry != null; entry = zip.getNextEntry()) {
        files.put(entry.getName(), zip.readAllBytes());
      }
    }
    return files;
  }

  static Document document(byte[] xml)
      throws IOException, ParserConfigurationException, SAXException {
    return DocumentBuilderFactory.newInstance()
        .newDocumentBuilder()
        .parse(new ByteArrayInputStream(xml));
  }

  static List<Element> elements(Document document, String name) {
    NodeList nodes = document.getElementsByTagName(name);
    List<Element> elements = new ArrayList<>();
    for (int i = 0; i < nodes.getLength(); i++) {
      elements.add((Element) nodes.item(i));
    }
    return elements;
  }

  /** The schemas lie beside the public models, outside the repository. */
  static Path schemas(BcfVersion version) {
    String models =
        System.getProperty(
            "lagwright.models", Objects.requireNonNullElse(System.getenv("LAGWRIGHT_MODELS"), ""));
    Path folder =
        Path.of(models.isEmpty() ? "../../shared/models" : models)
            .resolveSibling("reference/xsd/bcf" + version.id().replace(".", ""));
    assumeThat(Files.isDirectory(folder))
        .as("schemas of buildingSMART for BCF-XML are not beside the public models")
        .isTrue();
    return folder;
  }

  static void validate(byte[] xml, Path schema) throws SAXException, IOException {
    SchemaFactory.newInstance(XMLConstants.W3C_XML_SCHEMA_NS_URI)
        .newSchema(schema.toFile())
        .newValidator()
        .validate(new StreamSource(new ByteArrayInputStream(xml)));
  }

  /** Holds every XML file against the official schemas; gives how many there were. */
  static int validate(Map<String, byte[]> files, BcfVersion version)
      throws SAXException, IOException {
    Path schemas = schemas(version);
    int checked = 0;
    for (Map.Entry<String, byte[]> file : files.entrySet()) {
      String name = file.getKey();
      String schema =
          name.endsWith("markup.bcf")
              ? "markup.xsd"
              : name.endsWith(".bcfv")
                  ? "visinfo.xsd"
                  : name.equals("bcf.version") ? "version.xsd" : "extensions.xsd";
      if (!name.endsWith(".png")) {
        validate(file.getValue(), schemas.resolve(schema));
        checked++;
      }
    }
    return checked;
  }
}
