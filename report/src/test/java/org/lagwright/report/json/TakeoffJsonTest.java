package org.lagwright.report.json;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.List;
import java.util.Objects;
import java.util.stream.Stream;
import java.util.stream.StreamSupport;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import org.lagwright.ifc.model.Form;
import org.lagwright.ifc.model.How;
import org.lagwright.ifc.model.Kind;
import org.lagwright.report.Account;
import org.lagwright.report.CheckedTakeoff;
import org.lagwright.report.SampleTakeoff;
import org.lagwright.takeoff.Takeoff;
import org.lagwright.takeoff.thickness.Demand;
import org.lagwright.takeoff.thickness.Proof;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;
import tools.jackson.databind.node.ObjectNode;

class TakeoffJsonTest {

  private static final JsonMapper MAPPER = new JsonMapper();

  static Stream<Takeoff> takeoffs() {
    return Stream.of(SampleTakeoff.takeoff(), SampleTakeoff.empty());
  }

  @ParameterizedTest
  @MethodSource("takeoffs")
  void whatIsWrittenFitsTheSchema(Takeoff takeoff) throws IOException {
    assertThat(TakeoffSchema.errors(json(takeoff))).isEmpty();
  }

  @Test
  void theDocumentSaysWhichVersionOfTheSchemaItFollows() throws IOException {
    JsonNode document = MAPPER.readTree(json(SampleTakeoff.takeoff()));
    String id = MAPPER.readTree(TakeoffSchema.text()).get("$id").asString();
    assertThat(id).matches("urn:lagwright:takeoff:\\d+\\.\\d+");
    assertThat(document.get("schema").asString()).isEqualTo(id);
  }

  @ParameterizedTest
  @CsvSource({
    "/elements/0/lengthM, '\"1.75\"'",
    "/elements/0/section/shape, '\"square\"'",
    "/elements/0/section/outsideDiameterM, 0",
    "/elements/0/scope, '\"maybe\"'",
    "/elements/0/unheardOf, 1",
    "/elements/0/type, null",
    "/lines/0/unit, '\"ft\"'",
    "/models/0/sha256, '\"abc\"'",
    "/settings/air/indoor/relativeHumidityPct, 101",
    "/totals/read, 1.5"
  })
  void theSchemaRefusesABrokenValue(String pointer, String value) throws IOException {
    JsonNode document = MAPPER.readTree(json(SampleTakeoff.takeoff()));
    int slash = pointer.lastIndexOf('/');
    ObjectNode owner = (ObjectNode) document.at(pointer.substring(0, slash));
    owner.set(pointer.substring(slash + 1), MAPPER.readTree(value));
    assertThat(TakeoffSchema.errors(document.toString())).isNotEmpty();
  }

  @ParameterizedTest
  @CsvSource({
    "schema",
    "totals",
    "models",
    "elements",
    "lines",
    "findings",
    "questions",
    "packs",
    "settings"
  })
  void theSchemaRefusesADocumentWithout(String name) throws IOException {
    ObjectNode document = (ObjectNode) MAPPER.readTree(json(SampleTakeoff.takeoff()));
    document.remove(name);
    assertThat(TakeoffSchema.errors(document.toString())).hasSize(1);
  }

  @Test
  void theSchemaKnowsExactlyTheWordsWeWrite() throws IOException {
    JsonNode definitions = MAPPER.readTree(TakeoffSchema.text()).get("$defs");
    assertThat(words(definitions.at("/kind/enum")))
        .containsExactlyElementsOf(Arrays.stream(Kind.values()).map(Kind::label).toList());
    assertThat(words(definitions.at("/form/enum")))
        .containsExactlyElementsOf(Arrays.stream(Form.values()).map(Form::label).toList());
    assertThat(words(definitions.at("/how/enum")))
        .containsExactlyElementsOf(Arrays.stream(How.values()).map(How::name).toList());
    assertThat(words(definitions.at("/demandKind/enum")))
        .containsExactlyElementsOf(
            Arrays.stream(Demand.Kind.values()).map(Demand.Kind::label).toList());
    assertThat(words(definitions.at("/element/properties/account/enum")))
        .containsExactlyElementsOf(Arrays.stream(Account.values()).map(Account::label).toList());
  }

  @Test
  void eachPartOfTheSchemaIsDescribed() throws IOException {
    JsonNode schema = MAPPER.readTree(TakeoffSchema.text());
    List<JsonNode> properties =
        properties(schema).filter(node -> !node.has("$ref") && !node.has("const")).toList();
    assertThat(properties).hasSizeGreaterThan(90).allMatch(node -> node.has("description"));
  }

  private static Stream<JsonNode> properties(JsonNode node) {
    Stream<JsonNode> below =
        StreamSupport.stream(node.spliterator(), false).flatMap(TakeoffJsonTest::properties);
    JsonNode own = node.path("properties");
    return Stream.concat(StreamSupport.stream(own.spliterator(), false), below);
  }

  @Test
  void elementsCarryTheNamesOtherProgramsRelyOn() throws IOException {
    JsonNode document = MAPPER.readTree(json(SampleTakeoff.takeoff()));
    JsonNode pipe = document.at("/elements/0");
    assertThat(pipe.get("globalId").asString()).isEqualTo(SampleTakeoff.PIPE_ID);
    assertThat(pipe.get("kind").asString()).isEqualTo("pipe-segment");
    assertThat(pipe.at("/section/outsideDiameterM").doubleValue()).isEqualTo(0.0603);
    assertThat(pipe.at("/section/nominal").asString()).isEqualTo("DN50");
    assertThat(pipe.at("/measuredBy/length").asString()).isEqualTo("PORTS");
    assertThat(pipe.at("/service/temperatureC").doubleValue()).isEqualTo(6);
    assertThat(pipe.get("governing").asString()).isEqualTo("condensation");
    assertThat(pipe.at("/quantities/outerAreaM2").doubleValue()).isEqualTo(0.75);
    assertThat(document.at("/lines/0/elements/0").asString()).isEqualTo(SampleTakeoff.PIPE_ID);
    assertThat(document.at("/findings/0/globalId").asString()).isEqualTo(SampleTakeoff.PIPE_ID);
    assertThat(document.at("/elements/5/name").asString()).isEqualTo(SampleTakeoff.HOSTILE_NAME);
  }

  @Test
  void theProofOfTheThicknessIsWritten() throws IOException {
    Takeoff takeoff = SampleTakeoff.takeoff();
    Proof proof =
        Objects.requireNonNull(
            Objects.requireNonNull(takeoff.elements().get(0).thickness()).proof());
    JsonNode written = MAPPER.readTree(json(takeoff)).at("/elements/0/proof");

    assertThat(written.get("surfaceTemperatureC").doubleValue()).isEqualTo(proof.surfaceC());
    assertThat(written.get("dewPointC").doubleValue()).isEqualTo(proof.dewPointC());
    assertThat(written.get("heatFlowBareWPerM").doubleValue()).isEqualTo(proof.bareWPerM());
    assertThat(written.get("heatFlowInsulatedWPerM").doubleValue())
        .isEqualTo(proof.insulatedWPerM());
    assertThat(written.at("/saving/costPerM").doubleValue())
        .isEqualTo(Objects.requireNonNull(proof.saving()).cost());
  }

  @Test
  void halfACharacterInANameBecomesAQuestionMark() throws IOException {
    JsonNode document = MAPPER.readTree(json(SampleTakeoff.takeoff()));
    assertThat(document.at("/elements/7/name").asString()).isEqualTo("Buffer ?");
  }

  @Test
  void equalTakeoffsGiveEqualBytesWithUnixLineEnds() throws IOException {
    assertThat(json(SampleTakeoff.takeoff()))
        .isEqualTo(json(SampleTakeoff.takeoff()))
        .doesNotContain("\r\n")
        .doesNotContain("null");
  }

  private static String json(Takeoff takeoff) throws IOException {
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    new TakeoffJson(CheckedTakeoff.of(takeoff), "9.9.9").write(out);
    return out.toString(StandardCharsets.UTF_8);
  }

  private static List<String> words(JsonNode array) {
    return StreamSupport.stream(array.spliterator(), false).map(JsonNode::asString).toList();
  }
}
