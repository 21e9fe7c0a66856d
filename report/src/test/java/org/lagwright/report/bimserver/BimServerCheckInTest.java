package org.lagwright.report.bimserver;

import static org.assertj.core.api.Assertions.assertThat;

import com.sun.net.httpserver.HttpExchange;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.concurrent.atomic.AtomicInteger;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.lagwright.report.app.Version;

/** Models with their insulation go back to a small server of our own. */
class BimServerCheckInTest extends StubRun {

  private static final String ENRICHED = "Alder Quay@2-insulated.ifc";

  private Path enriched(String name) {
    return output().resolve(name);
  }

  /** The last file that was sent, byte for byte. */
  private void sent(Path file) throws IOException {
    String model = Files.readString(file, StandardCharsets.ISO_8859_1);
    assertThat(model).startsWith("ISO-10303-21;").endsWith("END-ISO-10303-21;\n");
    assertThat(server.uploads.get(server.uploads.size() - 1))
        .contains("Content-Type: application/x-step\r\n\r\n" + model + "\r\n--");
  }

  /** One line, code 5, all files here. */
  private void failed(int code, String line) throws IOException {
    assertThat(err.toString()).contains(line, " The files here are complete.");
    assertThat(err.toString().lines()).hasSize(1);
    assertThat(code).isEqualTo(5);
    assertThat(out.toString()).doesNotContain("checked in");
    assertThat(output())
        .isDirectoryContaining("glob:**takeoff.xlsx")
        .isDirectoryContaining("glob:**takeoff.json");
    assertThat(enriched(ENRICHED)).content().endsWith("END-ISO-10303-21;\n");
    noTrace();
  }

  @Test
  void enrichedModelBecomesTheNextRevisionOfItsProject() throws IOException {
    assertThat(takeoff(project("Alder Quay"), "--check-in", "same")).as(err.toString()).isZero();

    assertThat(out.toString()).contains("checked in as Alder Quay@3: " + ENRICHED);
    assertThat(server.uploaded("poid")).isEqualTo("10");
    assertThat(server.uploaded("deserializerOid")).isEqualTo("8");
    assertThat(server.uploaded("comment"))
        .isEqualTo("insulation by Lagwright " + Version.text() + ", from Alder Quay@2");
    sent(enriched(ENRICHED));
    assertThat(server.uploads.get(0)).contains("=IFCCOVERING(");
    assertThat(server.called)
        .containsSubsequence(
            "/download", "getSuggestedDeserializerForExtension", "/upload", "getProgress")
        .doesNotContain("addProjectAsSubProject", "addExtendedDataToRevision");
    noTrace();
  }

  @Test
  void enrichedModelBecomesARevisionOfASubProjectThatIsMadeOnce() throws IOException {
    assertThat(takeoff(project("Alder Quay"), "--check-in", "sub")).as(err.toString()).isZero();
    assertThat(out.toString()).contains("checked in as Alder Quay/Insulation@1: " + ENRICHED);
    assertThat(server.uploaded("poid")).isEqualTo("13");
    sent(enriched(ENRICHED));

    assertThat(takeoff(project("Alder Quay"), "--check-in", "SUB")).as(err.toString()).isZero();
    assertThat(out.toString()).contains("checked in as Alder Quay/Insulation@2: " + ENRICHED);
    assertThat(server.called.stream().filter("addProjectAsSubProject"::equals)).hasSize(1);
    noTrace();
  }

  @Test
  void eachModelOfAServerGetsItsOwnAndModelsOfFilesStayHere() throws IOException {
    Path file = Files.write(folder.resolve("pier.ifc"), MODEL);
    String second = project("Alder Quay@2");
    assertThat(takeoff(project("Alder Quay@1"), file.toString(), second, "--check-in", "same"))
        .as(err.toString())
        .isZero();

    assertThat(out.toString())
        .contains("checked in as Alder Quay@3: Alder Quay@1-insulated.ifc")
        .contains("checked in as Alder Quay@4: " + ENRICHED);
    assertThat(enriched("pier-insulated.ifc")).exists();
    assertThat(server.uploads).hasSize(2);
    sent(enriched(ENRICHED));
    assertThat(server.uploads.get(0))
        .contains(Files.readString(enriched("Alder Quay@1-insulated.ifc")), "=IFCCOVERING(");
  }

  @Test
  void attachmentsGoToTheRevisionThatWasTakenOff() throws IOException {
    assertThat(takeoff(project("Alder Quay"), "--attach", "--check-in", "same")).isZero();
    assertThat(out.toString())
        .containsSubsequence("attached to Alder Quay@2: ", "checked in as Alder Quay@3: ");
    assertThat(server.uploads).hasSize(3);
    noTrace();
  }

  @Test
  void nothingIsCheckedInUnlessAskedFor() {
    assertThat(takeoff(project("Alder Quay"), "--ifc")).as(err.toString()).isZero();
    assertThat(enriched(ENRICHED)).exists();
    assertThat(server.uploads).isEmpty();
  }

  @Test
  void checkingInWithoutAServerOrToElsewhereIsAMistakeOnTheCommandLine() throws IOException {
    Path file = Files.write(folder.resolve("pier.ifc"), MODEL);
    assertThat(takeoff(file.toString(), "--check-in", "same")).isEqualTo(2);
    assertThat(err.toString()).contains("--check-in needs a model that is on a BIMserver.");
    assertThat(takeoff(project("Alder Quay"), "--check-in", "elsewhere")).isEqualTo(2);
    assertThat(output()).doesNotExist();
    assertThat(server.called).isEmpty();
  }

  @Test
  void progressIsAskedForUntilTheServerSaysThatItFinished() throws IOException {
    AtomicInteger asked = new AtomicInteger();
    server.instead.put(
        "getProgress",
        e ->
            StubServer.send(
                e,
                server.isAskedForCheckIn() && asked.incrementAndGet() < 5
                    ? StubServer.progress("STARTED", 20 * asked.get(), "")
                    : StubServer.progress("FINISHED", 100, "")));
    assertThat(takeoff(project("Alder Quay"), "--check-in", "same")).as(err.toString()).isZero();
    assertThat(asked.get()).isEqualTo(5);
  }

  private void duringCheckIn(StubServer.Answer answer) {
    server.instead.put(
        "getProgress",
        e -> {
          if (server.isAskedForCheckIn()) {
            answer.to(e);
          } else {
            StubServer.send(e, StubServer.progress("FINISHED", 100, ""));
          }
        });
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "Enum type X has no literal value 'Y'    | for a value that its schema does not know: Enum",
        "IFC4X3_ADD2 is not supported            | as the server knows no such schema: IFC4X3_ADD2",
        "No default render engine\\nwas selected | failed to read the model: No default render engine was"
      })
  void failureThatOnlyTheProgressTellsIsTold(String words, String line) throws IOException {
    duringCheckIn(e -> StubServer.send(e, StubServer.progress("AS_ERROR", -1, words)));
    failed(takeoff(project("Alder Quay"), "--check-in", "same"), line);
    assertThat(err.toString()).contains("nothing is checked in to Alder Quay, as ");
  }

  @Test
  void refusedModelIsTold() throws IOException {
    server.instead.put(
        "/upload",
        e ->
            StubServer.send(
                e, "{\"exception\": {\"message\": \"User has no rights to checkin\"}}"));
    failed(
        takeoff(project("Alder Quay"), "--check-in", "same"),
        "the server refuses the file: User has no rights to checkin");
  }

  @Test
  void refusedSubProjectIsTold() throws IOException {
    server.instead.put(
        "addProjectAsSubProject", e -> StubServer.send(e, StubServer.refusal("No rights")));
    failed(
        takeoff(project("Alder Quay"), "--check-in", "sub"),
        "the server refuses addProjectAsSubProject: No rights");
    assertThat(server.uploads).isEmpty();
  }

  @Test
  void subProjectOfAnotherSchemaIsNotMixedUp() throws IOException {
    server.add(StubServer.project(13, "Insulation", 10, "ifc2x3tc1", -1));
    failed(
        takeoff(project("Alder Quay"), "--check-in", "sub"),
        "the sub-project Alder Quay/Insulation is of ifc2x3tc1 and the model of ifc4.");
    assertThat(server.uploads).isEmpty();
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "{\"response\": {\"result\": null}} | the server has no deserializer for the IFC files of",
        "{\"response\": {\"exception\": {\"message\": \"Index 0\"}}} | refuses getSuggestedDes"
      })
  void unknownDeserializerIsTold(String answer, String line) throws IOException {
    server.instead.put("getSuggestedDeserializerForExtension", e -> StubServer.send(e, answer));
    failed(takeoff(project("Alder Quay"), "--check-in", "same"), line);
    assertThat(err.toString()).contains("the plug-in bundle IfcPlugins");
    assertThat(server.uploads).isEmpty();
  }

  @Test
  void serverGoneWhileTheModelIsSentIsTold() throws IOException {
    server.instead.put("/upload", HttpExchange::close);
    failed(takeoff(project("Alder Quay"), "--check-in", "same"), "the connection broke before");
  }

  @Test
  void serverGoneWhileItReadsTheModelIsTold() throws IOException {
    duringCheckIn(HttpExchange::close);
    failed(takeoff(project("Alder Quay"), "--check-in", "same"), "the connection broke before");
  }

  @Test
  void secondModelThatFailsDoesNotHideThatTheFirstIsThere() throws IOException {
    AtomicInteger sent = new AtomicInteger();
    server.instead.put(
        "getSuggestedDeserializerForExtension",
        e ->
            StubServer.send(
                e,
                sent.incrementAndGet() == 1
                    ? StubServer.result("{\"oid\": 8}")
                    : StubServer.refusal("No")));
    failed(
        takeoff(project("Alder Quay@1"), project("Alder Quay@2"), "--check-in", "same"),
        "Before that: checked in as Alder Quay@3: Alder Quay@1-insulated.ifc.");
  }

  @ParameterizedTest
  @ValueSource(strings = {"/upload", "getProgress"})
  void slowServerIsNotWaitedForLongerThanAllowed(String where) throws IOException {
    limits = limits(Duration.ofMillis(300), 1 << 20, 1 << 20);
    if (where.equals("/upload")) {
      server.instead.put(where, server::stall);
    } else {
      duringCheckIn(e -> StubServer.send(e, StubServer.progress("STARTED", 7, "")));
    }
    failed(takeoff(project("Alder Quay"), "--check-in", "same"), ": no answer within 0.3 s.");
  }

  @Test
  void revisionThatDoesNotAppearIsNotClaimed() throws IOException {
    server.instead.put(
        "/upload", e -> StubServer.send(e, "{\"topicId\": " + StubServer.CHECK_IN + "}"));
    failed(
        takeoff(project("Alder Quay"), "--check-in", "same"),
        "says that it finished, but there is no new revision of Alder Quay.");
  }

  @Test
  void serverThatRepeatsASecretDoesNotMakeUsShowIt() throws IOException {
    duringCheckIn(
        e ->
            StubServer.send(
                e, StubServer.progress("AS_ERROR", -1, "for " + StubServer.TOKEN + " none")));
    failed(takeoff(project("Alder Quay"), "--check-in", "same"), "the model: for *** none");
  }
}
