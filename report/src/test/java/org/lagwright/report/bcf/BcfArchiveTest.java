package org.lagwright.report.bcf;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assumptions.assumeThat;

import java.awt.image.BufferedImage;
import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.zip.ZipEntry;
import java.util.zip.ZipInputStream;
import javax.imageio.ImageIO;
import javax.xml.XMLConstants;
import javax.xml.parsers.DocumentBuilderFactory;
import javax.xml.parsers.ParserConfigurationException;
import javax.xml.transform.stream.StreamSource;
import javax.xml.validation.SchemaFactory;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.lagwright.ifc.source.ProgressListener;
import org.lagwright.report.SampleTakeoff;
import org.lagwright.report.app.ModelPipeline;
import org.lagwright.report.app.TakeoffJob;
import org.lagwright.takeoff.Takeoff;
import org.w3c.dom.Document;
import org.w3c.dom.Element;
import org.w3c.dom.NodeList;
import org.xml.sax.SAXException;

/** Held against the official schemas by the JDK, and read back by DOM and ImageIO. */
class BcfArchiveTest {

  private static final Instant CREATED = Instant.parse("2026-03-04T05:06:07.89Z");
  private static final Path DEMO = Path.of("../test-models/demo");

  private static final Takeoff TERMINAL =
      new TakeoffJob(new ModelPipeline(), ProgressListener.SILENT)
          .compute(List.of(DEMO.resolve("alder-quay-ifc4.ifc")), DEMO.resolve("settings.yaml"));

  private static Map<String, byte[]> files(Takeoff takeoff, BcfVersion version) throws IOException {
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

  private static Document document(byte[] xml)
      throws IOException, ParserConfigurationException, SAXException {
    return DocumentBuilderFactory.newInstance()
        .newDocumentBuilder()
        .parse(new ByteArrayInputStream(xml));
  }

  private static List<Element> elements(Document document, String name) {
    NodeList nodes = document.getElementsByTagName(name);
    List<Element> elements = new ArrayList<>();
    for (int i = 0; i < nodes.getLength(); i++) {
      elements.add((Element) nodes.item(i));
    }
    return elements;
  }

  /** The schemas lie beside the public models, outside the repository. */
  private static Path schemas(BcfVersion version) {
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

  private static void validate(byte[] xml, Path schema) throws SAXException, IOException {
    SchemaFactory.newInstance(XMLConstants.W3C_XML_SCHEMA_NS_URI)
        .newSchema(schema.toFile())
        .newValidator()
        .validate(new StreamSource(new ByteArrayInputStream(xml)));
  }

  @ParameterizedTest
  @EnumSource(BcfVersion.class)
  void everyFileIsValidByTheOfficialSchemas(BcfVersion version) throws IOException, SAXException {
    Path schemas = schemas(version);
    int checked = 0;
    for (Takeoff takeoff : List.of(TERMINAL, SampleTakeoff.takeoff())) {
      for (Map.Entry<String, byte[]> file : files(takeoff, version).entrySet()) {
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
    }
    assertThat(checked).isGreaterThan(10);
  }

  @ParameterizedTest
  @EnumSource(BcfVersion.class)
  void theSchemasRefuseABrokenTopic(BcfVersion version) throws IOException {
    Path schemas = schemas(version);
    byte[] markup =
        files(TERMINAL, version).entrySet().stream()
            .filter(file -> file.getKey().endsWith("markup.bcf"))
            .findFirst()
            .orElseThrow()
            .getValue();
    String broken = new String(markup, StandardCharsets.UTF_8);

    assertThatThrownBy(
            () ->
                validate(
                    broken
                        .replace("CreationAuthor", "CreationWriter")
                        .getBytes(StandardCharsets.UTF_8),
                    schemas.resolve("markup.xsd")))
        .isInstanceOf(SAXException.class);
  }

  @Test
  void topicsAreOfCausesAndEachNamesItsElements()
      throws IOException, ParserConfigurationException, SAXException {
    Map<String, byte[]> files = files(TERMINAL, BcfVersion.V2_1);
    Set<String> known = new HashSet<>();
    TERMINAL.elements().forEach(t -> known.add(t.element().globalId()));
    Set<String> named = new HashSet<>();
    int topics = 0;
    for (Map.Entry<String, byte[]> file : files.entrySet()) {
      if (file.getKey().endsWith("markup.bcf")) {
        topics++;
        assertThat(elements(document(file.getValue()), "Title")).hasSize(1);
      }
      if (file.getKey().endsWith(".bcfv")) {
        elements(document(file.getValue()), "Component")
            .forEach(component -> named.add(component.getAttribute("IfcGuid")));
      }
    }
    assertThat(topics).isBetween(5, 40);
    assertThat(known).containsAll(named);
    TERMINAL
        .questions()
        .forEach(
            q ->
                q.elements()
                    .forEach(
                        key ->
                            assertThat(named)
                                .contains(
                                    TERMINAL.elements().stream()
                                        .filter(t -> t.element().key().equals(key))
                                        .findFirst()
                                        .orElseThrow()
                                        .element()
                                        .globalId())));
  }

  @Test
  void snapshotShowsTheElementsOfTheTopicInItsColour() throws IOException {
    int pictures = 0;
    for (Map.Entry<String, byte[]> file : files(TERMINAL, BcfVersion.V2_1).entrySet()) {
      if (file.getKey().endsWith(".png")) {
        BufferedImage picture = ImageIO.read(new ByteArrayInputStream(file.getValue()));
        assertThat(picture.getWidth()).isEqualTo(800);
        int inked = 0;
        for (int x = 0; x < picture.getWidth(); x++) {
          for (int y = 0; y < picture.getHeight(); y++) {
            inked += picture.getRGB(x, y) == Snapshot.INK.getRGB() ? 1 : 0;
          }
        }
        assertThat(inked).as(file.getKey()).isGreaterThan(20);
        pictures++;
      }
    }
    assertThat(pictures).isGreaterThan(3);
  }

  @Test
  void theSameTakeoffGivesTheSameTopicsSoThatALaterRunUpdatesThem() throws IOException {
    assertThat(files(TERMINAL, BcfVersion.V2_1).keySet())
        .isEqualTo(files(TERMINAL, BcfVersion.V2_1).keySet());
    assertThat(files(TERMINAL, BcfVersion.V3_0).keySet())
        .containsAll(files(TERMINAL, BcfVersion.V2_1).keySet());
  }
}
