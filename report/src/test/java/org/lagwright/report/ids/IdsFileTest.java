package org.lagwright.report.ids;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assumptions.assumeThat;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.StringReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.Collectors;
import javax.xml.XMLConstants;
import javax.xml.parsers.ParserConfigurationException;
import javax.xml.transform.Source;
import javax.xml.transform.stream.StreamSource;
import javax.xml.validation.SchemaFactory;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.lagwright.ifc.model.MepModel;
import org.lagwright.ifc.source.ProgressListener;
import org.lagwright.report.app.ModelPipeline;
import org.lagwright.takeoff.readiness.Readiness;
import org.lagwright.takeoff.readiness.ReadinessRow;
import org.lagwright.takeoff.readiness.Requirement;
import org.lagwright.takeoff.readiness.RequirementPack;
import org.lagwright.takeoff.settings.Settings;
import org.w3c.dom.bootstrap.DOMImplementationRegistry;
import org.w3c.dom.ls.DOMImplementationLS;
import org.w3c.dom.ls.LSInput;
import org.xml.sax.SAXException;

/**
 * The IDS file held against the official schema by the JDK, and against files by {@link SmallIds},
 * which shares no code with the program. What it counts is what the check counts.
 */
class IdsFileTest {

  private static final RequirementPack PACK = RequirementPack.bundled();

  @TempDir Path folder;

  private static byte[] ids() throws IOException {
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    IdsFile.write(PACK, out);
    return out.toByteArray();
  }

  /** The schemas lie beside the public models, outside the repository. */
  private static Path schemas() {
    String models =
        System.getProperty(
            "lagwright.models", Objects.requireNonNullElse(System.getenv("LAGWRIGHT_MODELS"), ""));
    Path folder =
        Path.of(models.isEmpty() ? "../../shared/models" : models).resolveSibling("reference/xsd");
    assumeThat(Files.isDirectory(folder.resolve("ids")))
        .as("the schema of buildingSMART for IDS is not beside the public models")
        .isTrue();
    return folder;
  }

  /** The schema imports those of XML itself; small ones stand in for what it needs of them. */
  private static void validate(byte[] xml) throws Exception {
    Path schemas = schemas();
    SchemaFactory factory = SchemaFactory.newInstance(XMLConstants.W3C_XML_SCHEMA_NS_URI);
    DOMImplementationLS dom =
        (DOMImplementationLS) DOMImplementationRegistry.newInstance().getDOMImplementation("LS");
    factory.setResourceResolver(
        (type, namespace, publicId, systemId, base) -> {
          String stub =
              systemId.endsWith("xml.xsd")
                  ? "xml.xsd"
                  : systemId.endsWith("XMLSchema.xsd") ? "xs.xsd" : "xsi.xsd";
          LSInput input = dom.createLSInput();
          input.setSystemId(systemId);
          input.setCharacterStream(new StringReader(read(schemas.resolve("stub").resolve(stub))));
          return input;
        });
    Source schema = new StreamSource(schemas.resolve("ids/ids.xsd").toFile());
    factory
        .newSchema(schema)
        .newValidator()
        .validate(new StreamSource(new ByteArrayInputStream(xml)));
  }

  private static String read(Path file) {
    try {
      return Files.readString(file);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  @Test
  void itIsValidByTheOfficialSchema() throws Exception {
    validate(ids());
  }

  @ParameterizedTest
  @CsvSource({"cardinality=\"required\",cardinality=\"wanted\"", "simpleValue,plainValue"})
  void theSchemaRefusesABrokenFile(String right, String wrong) {
    schemas();
    assertThatThrownBy(
            () ->
                validate(
                    new String(ids(), StandardCharsets.UTF_8)
                        .replace(right, wrong)
                        .getBytes(StandardCharsets.UTF_8)))
        .isInstanceOf(SAXException.class);
  }

  @Test
  void everyRequirementStandsInTheFileOrSaysWhyItCannot()
      throws IOException, ParserConfigurationException, SAXException {
    String text = new String(ids(), StandardCharsets.UTF_8);
    for (Requirement requirement : PACK.requirements()) {
      boolean inFile = text.contains("identifier=\"" + requirement.id() + "\"");
      assertThat(inFile).as(requirement.id()).isEqualTo(requirement.notInIds() == null);
    }
  }

  /** What the program counts: elements that state it, and all. */
  private Map<String, SmallIds.Count> checked(Path file) {
    Map<String, SmallIds.Count> counts = new TreeMap<>();
    for (ReadinessRow row : readiness(file).byRequirement()) {
      if (!row.requirement().asked().isEmpty()) {
        counts.put(
            row.requirement().id(),
            new SmallIds.Count(row.asAsked(), row.workedOut() + row.missing()));
      }
    }
    return counts;
  }

  private static Readiness readiness(Path file) {
    ModelPipeline pipeline = new ModelPipeline();
    Settings settings = pipeline.defaultSettings();
    MepModel model = pipeline.readModel(file, 0, settings, ProgressListener.SILENT);
    return Readiness.of(pipeline.join(List.of(model), settings), settings);
  }

  private Path file(String text) throws IOException {
    return Files.writeString(folder.resolve("model.ifc"), text);
  }

  @ParameterizedTest
  @ValueSource(strings = {"ifc2x3", "ifc4", "ifc4x3"})
  void onTheDemoBuildingTheFileAndTheCheckCountTheSame(String schema) throws Exception {
    Path demo = Path.of("../test-models/demo/alder-quay-" + schema + ".ifc");
    Map<String, SmallIds.Count> byFile =
        new SmallIds(new SmallStep(Files.readString(demo))).check(ids());

    assertThat(byFile).hasSizeGreaterThan(9);
    assertThat(ofElements(checked(demo))).isEqualTo(ofElements(byFile));
  }

  /** Ports are counted one by one by the file, and as there or not by the check. */
  private static Map<String, SmallIds.Count> ofElements(Map<String, SmallIds.Count> counts) {
    Map<String, SmallIds.Count> elements = new TreeMap<>(counts);
    elements.computeIfPresent(
        "ports", (id, c) -> new SmallIds.Count(Math.min(1, c.met()), c.missed()));
    return elements;
  }

  @Test
  void aModelThatCarriesEverythingMeetsEveryRequirement() throws Exception {
    Path file = file(ReadyModel.text());
    Readiness readiness = readiness(file);

    assertThat(readiness.readyPct()).isEqualTo(100);
    assertThat(readiness.byRequirement())
        .as("each requirement is met by some element")
        .extracting(row -> row.requirement().id())
        .containsExactlyElementsOf(PACK.requirements().stream().map(Requirement::id).toList());
    assertThat(readiness.byRequirement())
        .allSatisfy(
            row -> assertThat(row.asAsked()).as(row.requirement().id()).isEqualTo(row.elements()));
    assertThat(new SmallIds(new SmallStep(ReadyModel.text())).check(ids()))
        .allSatisfy((id, count) -> assertThat(count.missed()).as(id).isZero());
  }

  /** One edit of the model that carries everything for each requirement, at least. */
  static final List<String> EDITS =
      List.of(
          "length-unit | missing | ,#3); ; FluidTemperature | ,$); ; Colour",
          "drawn-once | missing | #70=IFCPROPERTYSET | #65=IFCPIPESEGMENT('0AlderQuay0Copy0000001',$,'Pipe',$,$,#21,#22,$,.RIGIDSEGMENT.);\n#70=IFCPROPERTYSET",
          "pipe-outside-diameter | worked out | OuterDiameter | Colour",
          "pipe-outside-diameter | missing | 'OuterDiameter',$,IFCPOSITIVELENGTHMEASURE(60.3) ; #21,#22 ; #31,#32 ; #41,#42 | 'Colour',$,IFCLABEL('red') ; #21,$ ; #31,$ ; #41,$",
          "pipe-outside-diameter | worked out | MEASURE(60.3) | MEASURE(6030.)",
          "duct-size | worked out | NominalDiameterOrWidth | Colour",
          "duct-size | missing | 'NominalDiameterOrWidth',$,IFCPOSITIVELENGTHMEASURE(400.) ; #51,#52 ; #61,#62 | 'Colour',$,IFCLABEL('red') ; #51,$ ; #61,$",
          "fitting-size | missing | #41,#42 ; #121=IFCRELCONNECTSPORTS ; Port0000004',$,$,$,$,#41 | #41,$ ; #121=IFCRELNOTHING ; Port0000004',$,$,$,$,$",
          "length | worked out | 'Length' | 'Colour'",
          "length | missing | 'Length' ; #21,#22 ; #120=IFCRELCONNECTSPORTS | 'Colour' ; #21,$ ; #120=IFCRELNOTHING",
          "position | missing | 'Pipe',$,$,#21 ; Port0000001',$,$,$,$,#31 | 'Pipe',$,$,$ ; Port0000001',$,$,$,$,$",
          "body | missing | #21,#22 | #21,$",
          "service | missing | Heating flow ; .HEATING. ; FluidTemperature | System 4 ; .NOTDEFINED. ; Colour",
          "system | worked out | 'Heating flow',$,$,$,.HEATING. | 'Heating flow',$,$,$,.NOTDEFINED.",
          "system | worked out | .HEATING.);\n#91 | $);\n#91",
          "system | missing | #91=IFCRELASSIGNSTOGROUP | #91=IFCRELNOTHING",
          "temperature | worked out | FluidTemperature ; Heating flow | Colour ; Heating flow 70 degC",
          "temperature | missing | FluidTemperature | Colour",
          "joined | worked out | #120=IFCRELCONNECTSPORTS | #120=IFCRELNOTHING",
          "joined | missing | #120=IFCRELCONNECTSPORTS ; (0.,0.,3000.) ; Port0000001',$,$,$,$,#31 | #120=IFCRELNOTHING ; (0.,800.,3000.) ; Port0000001',$,$,$,$,$",
          "ports | missing | IFCDISTRIBUTIONPORT | IFCNOPORT",
          "storey | worked out | #94=IFCRELCONTAINEDINSPATIALSTRUCTURE | #94=IFCRELNOTHING",
          "storey | missing | #94=IFCRELCONTAINEDINSPATIALSTRUCTURE ; #10=IFCBUILDINGSTOREY | #94=IFCRELNOTHING ; #10=IFCNOSTOREY",
          "global-id | worked out | 0AlderQuay0Pipe0000001 | pipe 1",
          "global-id | missing | '0AlderQuay0Pipe0000001' | $",
          "unique-id | missing | 0AlderQuay0Pipe0000001 | 0AlderQuay0Pipe0000002");

  private static String edited(String edit) {
    String[] cells = edit.split(" \\| ", -1);
    String[] right = cells[2].split(" ; ", -1);
    String[] wrong = cells[3].split(" ; ", -1);
    String text = ReadyModel.text();
    for (int i = 0; i < right.length; i++) {
      assertThat(text).contains(right[i].trim());
      text = text.replace(right[i].trim(), wrong[i].trim());
    }
    return text;
  }

  @Test
  void eachRequirementHasAModelThatMissesIt() {
    Set<String> edited = new HashSet<>();
    EDITS.stream()
        .map(edit -> edit.split(" \\| ", -1))
        .filter(cells -> cells[1].equals("missing"))
        .forEach(cells -> edited.add(cells[0]));

    assertThat(edited)
        .isEqualTo(PACK.requirements().stream().map(Requirement::id).collect(Collectors.toSet()));
  }

  static List<String> edits() {
    return EDITS;
  }

  @ParameterizedTest
  @MethodSource("edits")
  void whatIsTakenAwayIsMissedByTheCheckAndByTheFile(String edit) throws Exception {
    String[] cells = edit.split(" \\| ", -1);
    Path file = file(edited(edit));
    ReadinessRow row =
        readiness(file).byRequirement().stream()
            .filter(r -> r.requirement().id().equals(cells[0]))
            .findFirst()
            .orElseThrow();
    Map<String, SmallIds.Count> byFile =
        ofElements(new SmallIds(new SmallStep(edited(edit))).check(ids()));
    Map<String, SmallIds.Count> byCheck = ofElements(checked(file));

    assertThat(cells[1].equals("missing") ? row.missing() : row.workedOut()).isPositive();
    assertThat(byCheck).isEqualTo(byFile);
  }
}
