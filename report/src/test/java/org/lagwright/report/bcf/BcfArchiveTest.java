package org.lagwright.report.bcf;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.awt.image.BufferedImage;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import javax.imageio.ImageIO;
import javax.xml.parsers.ParserConfigurationException;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.lagwright.ifc.source.ProgressListener;
import org.lagwright.report.SampleTakeoff;
import org.lagwright.report.app.ModelPipeline;
import org.lagwright.report.app.TakeoffJob;
import org.lagwright.takeoff.Takeoff;
import org.xml.sax.SAXException;

/** Held against the official schemas by the JDK, and read back by DOM and ImageIO. */
class BcfArchiveTest {

  private static final Path DEMO = Path.of("../test-models/demo");

  private static final Takeoff TERMINAL =
      new TakeoffJob(new ModelPipeline(), ProgressListener.SILENT)
          .compute(List.of(DEMO.resolve("alder-quay-ifc4.ifc")), DEMO.resolve("settings.yaml"));

  @ParameterizedTest
  @EnumSource(BcfVersion.class)
  void everyFileIsValidByTheOfficialSchemas(BcfVersion version) throws IOException, SAXException {
    int checked = 0;
    for (Takeoff takeoff : List.of(TERMINAL, SampleTakeoff.takeoff())) {
      checked += BcfReading.validate(BcfReading.files(takeoff, version), version);
    }
    assertThat(checked).isGreaterThan(10);
  }

  @ParameterizedTest
  @EnumSource(BcfVersion.class)
  void theSchemasRefuseABrokenTopic(BcfVersion version) throws IOException {
    Path schemas = BcfReading.schemas(version);
    byte[] markup =
        BcfReading.files(TERMINAL, version).entrySet().stream()
            .filter(file -> file.getKey().endsWith("markup.bcf"))
            .findFirst()
            .orElseThrow()
            .getValue();
    String broken = new String(markup, StandardCharsets.UTF_8);

    assertThatThrownBy(
            () ->
                BcfReading.validate(
                    broken
                        .replace("CreationAuthor", "CreationWriter")
                        .getBytes(StandardCharsets.UTF_8),
                    schemas.resolve("markup.xsd")))
        .isInstanceOf(SAXException.class);
  }

  @Test
  void topicsAreOfCausesAndEachNamesItsElements()
      throws IOException, ParserConfigurationException, SAXException {
    Map<String, byte[]> files = BcfReading.files(TERMINAL, BcfVersion.V2_1);
    Set<String> known = new HashSet<>();
    TERMINAL.elements().forEach(t -> known.add(t.element().globalId()));
    TERMINAL.surroundings().forEach(parts -> parts.forEach(part -> known.add(part.globalId())));
    Set<String> named = new HashSet<>();
    int topics = 0;
    for (Map.Entry<String, byte[]> file : files.entrySet()) {
      if (file.getKey().endsWith("markup.bcf")) {
        topics++;
        assertThat(BcfReading.elements(BcfReading.document(file.getValue()), "Title")).hasSize(1);
      }
      if (file.getKey().endsWith(".bcfv")) {
        BcfReading.elements(BcfReading.document(file.getValue()), "Component")
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
    for (Map.Entry<String, byte[]> file : BcfReading.files(TERMINAL, BcfVersion.V2_1).entrySet()) {
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
    assertThat(BcfReading.files(TERMINAL, BcfVersion.V2_1).keySet())
        .isEqualTo(BcfReading.files(TERMINAL, BcfVersion.V2_1).keySet());
    assertThat(BcfReading.files(TERMINAL, BcfVersion.V3_0).keySet())
        .containsAll(BcfReading.files(TERMINAL, BcfVersion.V2_1).keySet());
  }
}
