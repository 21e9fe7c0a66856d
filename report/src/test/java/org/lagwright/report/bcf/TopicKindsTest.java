package org.lagwright.report.bcf;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.image.BufferedImage;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.Collectors;
import javax.imageio.ImageIO;
import javax.xml.parsers.ParserConfigurationException;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.lagwright.ifc.model.ElementKey;
import org.lagwright.ifc.model.Finding;
import org.lagwright.ifc.source.ProgressListener;
import org.lagwright.report.app.ModelPipeline;
import org.lagwright.report.app.TakeoffJob;
import org.lagwright.report.ids.ReadyModel;
import org.lagwright.takeoff.Takeoff;
import org.lagwright.takeoff.TakeoffFinding;
import org.lagwright.takeoff.verify.Coverage;
import org.lagwright.takeoff.verify.CoverageStatus;
import org.lagwright.takeoff.verify.ElementCoverage;
import org.w3c.dom.Document;
import org.w3c.dom.Element;
import org.w3c.dom.NodeList;
import org.xml.sax.SAXException;

/** Every kind of topic names, colours and shows exactly what it is about. */
class TopicKindsTest {

  private static final Path DEMO = Path.of("../test-models/demo");

  private static final Takeoff TERMINAL =
      takeoff(DEMO.resolve("alder-quay-ifc4.ifc"), DEMO.resolve("settings.yaml"));

  @TempDir Path folder;

  private static Takeoff takeoff(Path model, Path settings) {
    return new TakeoffJob(new ModelPipeline(), ProgressListener.SILENT)
        .compute(List.of(model), settings);
  }

  @Test
  void whatIsSaidOfNoSingleElementIsSaidInFull() {
    List<String> silent =
        TERMINAL.findings().stream()
            .filter(finding -> finding.code() == TakeoffFinding.ENERGY_RULE_SILENT)
            .map(Finding::message)
            .toList();
    assertThat(silent).hasSizeGreaterThan(1).doesNotHaveDuplicates();

    assertThat(TopicList.of(TERMINAL))
        .filteredOn(topic -> topic.title().equals("Energy rule silent"))
        .singleElement()
        .satisfies(topic -> assertThat(topic.description()).contains(silent));
  }

  /** Viewpoints of topics by type. */
  private static Map<String, List<Document>> viewpoints(Map<String, byte[]> files)
      throws IOException, ParserConfigurationException, SAXException {
    Map<String, List<Document>> viewpoints = new TreeMap<>();
    for (String name : files.keySet()) {
      String viewpoint = name.replace("markup.bcf", "viewpoint.bcfv");
      if (name.endsWith("markup.bcf") && files.containsKey(viewpoint)) {
        Element topic = BcfReading.elements(BcfReading.document(files.get(name)), "Topic").get(0);
        viewpoints
            .computeIfAbsent(topic.getAttribute("TopicType"), type -> new ArrayList<>())
            .add(BcfReading.document(files.get(viewpoint)));
      }
    }
    return viewpoints;
  }

  private static Set<String> guids(Document viewpoint, String part) {
    NodeList components =
        BcfReading.elements(viewpoint, part).get(0).getElementsByTagName("Component");
    Set<String> guids = new HashSet<>();
    for (int i = 0; i < components.getLength(); i++) {
      guids.add(((Element) components.item(i)).getAttribute("IfcGuid"));
    }
    return guids;
  }

  private static Set<String> guids(List<Document> viewpoints) {
    return viewpoints.stream()
        .flatMap(viewpoint -> guids(viewpoint, "Selection").stream())
        .collect(Collectors.toSet());
  }

  private static Set<String> globalIds(Takeoff takeoff, Set<ElementKey> keys) {
    return takeoff.elements().stream()
        .filter(taken -> keys.contains(taken.element().key()))
        .map(taken -> taken.element().globalId())
        .collect(Collectors.toSet());
  }

  @ParameterizedTest
  @EnumSource(BcfVersion.class)
  void eachKindIsThereWithComponentsColourOneCameraAndAPicture(BcfVersion version)
      throws IOException, ParserConfigurationException, SAXException {
    Map<String, byte[]> files = BcfReading.files(TERMINAL, version);
    Map<String, List<Document>> viewpoints = viewpoints(files);

    assertThat(viewpoints.keySet()).containsExactlyInAnyOrderElementsOf(TopicList.TYPES);
    for (List<Document> ofType : viewpoints.values()) {
      for (Document viewpoint : ofType) {
        assertThat(guids(viewpoint, "Selection"))
            .isNotEmpty()
            .isEqualTo(guids(viewpoint, "Coloring"));
        assertThat(BcfReading.elements(viewpoint, "OrthogonalCamera")).hasSize(1);
      }
    }
    long pictures = files.keySet().stream().filter(name -> name.endsWith(".png")).count();
    long views = files.keySet().stream().filter(name -> name.endsWith(".bcfv")).count();
    assertThat(pictures).isEqualTo(views);
    for (Map.Entry<String, byte[]> file : files.entrySet()) {
      if (file.getKey().endsWith(".png")) {
        BufferedImage picture = ImageIO.read(new ByteArrayInputStream(file.getValue()));
        assertThat(Math.max(picture.getWidth(), picture.getHeight())).isLessThanOrEqualTo(1500);
      }
    }
  }

  @Test
  void requestsNameTheElementsOfAllQuestionsAndNoOthers()
      throws IOException, ParserConfigurationException, SAXException {
    Set<ElementKey> asked = new HashSet<>();
    TERMINAL.questions().forEach(question -> asked.addAll(question.elements()));
    List<Document> requests =
        viewpoints(BcfReading.files(TERMINAL, BcfVersion.V2_1)).getOrDefault("Request", List.of());

    assertThat(requests).hasSameSizeAs(TERMINAL.questions());
    assertThat(guids(requests)).isEqualTo(globalIds(TERMINAL, asked));
  }

  @Test
  void remarksNameWhatIsBareTooThinOrWrongAndNoOthers()
      throws IOException, ParserConfigurationException, SAXException {
    Set<ElementKey> uncovered =
        Coverage.of(TERMINAL).elements().stream()
            .filter(e -> e.status() != CoverageStatus.COVERED)
            .filter(e -> e.status() != CoverageStatus.UNKNOWN)
            .map(ElementCoverage::key)
            .collect(Collectors.toSet());
    List<Document> remarks =
        viewpoints(BcfReading.files(TERMINAL, BcfVersion.V2_1)).getOrDefault("Remark", List.of());

    assertThat(uncovered).isNotEmpty();
    assertThat(remarks.size()).isLessThan(uncovered.size() / 10);
    assertThat(guids(remarks)).isEqualTo(globalIds(TERMINAL, uncovered));
  }

  @Test
  void anElementThatCannotBeMeasuredIsARequest()
      throws IOException, ParserConfigurationException, SAXException {
    Path model = folder.resolve("model.ifc");
    // neither body nor property nor neighbour tells the size of the first pipe
    String text =
        ReadyModel.text()
            .replace(
                "'OuterDiameter',$,IFCPOSITIVELENGTHMEASURE(60.3)", "'Colour',$,IFCLABEL('red')")
            .replace("#21,#22", "#21,$")
            .replace("#31,#32", "#31,$")
            .replace("#41,#42", "#41,$");
    Files.writeString(model, text);
    Takeoff takeoff =
        new TakeoffJob(new ModelPipeline(), ProgressListener.SILENT).compute(List.of(model), null);
    List<Document> requests =
        viewpoints(BcfReading.files(takeoff, BcfVersion.V3_0)).getOrDefault("Request", List.of());

    assertThat(takeoff.questions()).extracting(q -> q.code()).contains("SIZE_UNKNOWN");
    assertThat(guids(requests)).contains(ReadyModel.PIPE);
  }
}
