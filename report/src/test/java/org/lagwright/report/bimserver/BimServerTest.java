package org.lagwright.report.bimserver;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.List;
import java.util.Map;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/** The command line against a small server of our own. */
class BimServerTest extends StubRun {

  private static final Path DEMO = Path.of("../test-models/demo/alder-quay-ifc4.ifc");

  @Test
  void lastRevisionOfAProjectIsTakenOffLikeTheFile() throws IOException {
    server.close();
    server = new StubServer(Files.readAllBytes(DEMO));
    assertThat(takeoff(project("Alder%20Quay"))).as(err.toString()).isZero();
    JsonNode fetched = document();
    assertThat(takeoff(DEMO.toString())).isZero();
    JsonNode file = document();

    assertThat(fetched.path("models").path(0).path("file").asString())
        .isEqualTo("Alder Quay@2.ifc");
    assertThat(fetched.path("lines")).isNotEmpty().isEqualTo(file.path("lines"));
    assertThat(fetched.path("totals")).isEqualTo(file.path("totals"));
    assertThat(server.called)
        .containsSubsequence("login", "getAllProjects", "download", "/download", "getProgress");
    noTrace();
  }

  @Test
  void theReadinessOfARevisionIsToldToo() throws IOException {
    int code = run("check", project("Alder Quay@1"), "--out", output().toString(), "--least", "0");
    String json = Files.readString(output().resolve("readiness.json"));
    JsonNode model = new JsonMapper().readTree(json).path("models").path(0);

    assertThat(err.toString()).isEmpty();
    assertThat(code).isZero();
    assertThat(model.path("file").asString()).isEqualTo("Alder Quay@1.ifc");
    assertThat(model.path("elements").asInt()).isPositive();
    noTrace();
  }

  /** What is printed; of what the user wrote only the model counts. */
  private String printed(String... args) {
    out.getBuffer().setLength(0);
    assertThat(run(args)).as(err.toString()).isZero();
    return out.toString();
  }

  @Test
  void revisionIsVerifiedAndExplainedLikeTheFile() throws IOException {
    String file = Files.write(folder.resolve("model.ifc"), MODEL).toString();
    String revision = project("Alder Quay@1");
    String verified = printed("verify", revision, "--least", "0");
    String explained = printed("explain", "L001", revision);

    assertThat(verified).contains("bare").isEqualTo(printed("verify", file, "--least", "0"));
    assertThat(explained).startsWith("L001 ").isEqualTo(printed("explain", "L001", file));
    assertThat(server.called.stream().filter("/download"::equals)).hasSize(2);
    noTrace();
  }

  @Test
  void twoRevisionsAreComparedAndARevisionWithAFile() throws IOException {
    Path file = Files.write(folder.resolve("model.ifc"), MODEL);
    String old = project("Alder Quay@1");
    String out = output().toString();
    String both = printed("compare", old, project("Alder Quay"), "--out", out);
    assertThat(server.called.stream().filter("/download"::equals)).hasSize(2);
    assertThat(both)
        .contains("as they were  ")
        .isEqualTo(printed("compare", old, file.toString(), "--out", out));
    assertThat(output().resolve("comparison.xlsx")).exists();
    noTrace();
  }

  @ParameterizedTest
  @ValueSource(strings = {"templates", "sitesheets", "bcf"})
  void otherOutputsAreMadeFromARevisionToo(String command) throws IOException {
    int code = run(command, project("Alder Quay@1"), "--out", output().toString());
    assertThat(code).as(err.toString()).isZero();
    assertThat(server.called).contains("/download");
    assertThat(output()).isNotEmptyDirectory();
    noTrace();
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {"verify|MODEL", "explain|L001 MODEL", "compare|MODEL ../test-models/demo/none.ifc"})
  void whatAServerLacksIsToldByAllCommands(String command, String arguments) {
    String[] args =
        Stream.of((command + " " + arguments).split(" "))
            .map(argument -> argument.replace("MODEL", project("Alder%20Key")))
            .toArray(String[]::new);
    assertThat(run(args)).isEqualTo(3);
    assertThat(err.toString().lines()).hasSize(1);
    assertThat(err.toString()).contains("no such project. Those you may see: Alder Quay,");
  }

  @Test
  void nothingIsAttachedUnlessAskedFor() {
    assertThat(takeoff(project("Alder Quay@1"))).isZero();
    assertThat(server.called).doesNotContain("/upload", "addExtendedDataToRevision");
  }

  @Test
  void workbookAndJsonAreAttachedToTheRevisionOnRequest() throws IOException {
    assertThat(takeoff(project("Alder Quay@1"), "--csv", "--attach")).as(err.toString()).isZero();

    assertThat(out.toString()).contains("attached to Alder Quay@1: takeoff.xlsx, takeoff.json");
    assertThat(server.uploads).hasSize(2);
    assertThat(server.uploads.get(0)).contains("filename=\"takeoff.xlsx\"", "PK");
    assertThat(server.uploads.get(1))
        .contains(
            "filename=\"takeoff.json\"",
            Files.readString(output().resolve("takeoff.json")).substring(0, 200));
    assertThat(server.called.stream().filter("addExtendedDataToRevision"::equals)).hasSize(2);
    assertThat(server.called.indexOf("addExtendedDataToRevision"))
        .isGreaterThan(server.called.lastIndexOf("/upload"));
    noTrace();
  }

  @Test
  void refusedAttachmentLeavesTheFilesHere() throws IOException {
    server.instead.put(
        "addExtendedDataSchema", e -> StubServer.send(e, StubServer.refusal("Only admin users")));
    assertThat(takeoff(project("Alder Quay"), "--attach")).isEqualTo(5);
    assertThat(err.toString().lines()).hasSize(1);
    assertThat(err.toString())
        .contains("the server refuses addExtendedDataSchema: Only admin users")
        .contains("The files here are complete.");
    assertThat(output().resolve("takeoff.xlsx")).exists();
    assertThat(output().resolve("takeoff.json")).exists();
    noTrace();
  }

  @Test
  void attachingWithoutAServerIsAMistakeOnTheCommandLine() {
    assertThat(takeoff(DEMO.toString(), "--attach")).isEqualTo(2);
    assertThat(err.toString()).contains("--attach needs a model that is on a BIMserver.");
    assertThat(output()).doesNotExist();
  }

  @Test
  void progressIsAskedForUntilTheServerSaysThatItFinished() throws IOException {
    AtomicInteger asked = new AtomicInteger();
    server.instead.put(
        "getProgress",
        e ->
            StubServer.send(
                e,
                asked.incrementAndGet() < 5
                    ? StubServer.progress("STARTED", 20 * asked.get(), "")
                    : StubServer.progress("FINISHED", 100, "")));
    assertThat(takeoff(project("Alder Quay"))).isZero();
    assertThat(asked.get()).isGreaterThanOrEqualTo(5);
  }

  @Test
  void refusedLoginIsTold() throws IOException {
    environment =
        Map.of(
            "LAGWRIGHT_BIMSERVER_USER",
            StubServer.USER,
            "LAGWRIGHT_BIMSERVER_PASSWORD",
            "wrong-74");
    refused(takeoff(project("Alder Quay")), "the server refuses the user and password.");
    assertThat(err.toString()).doesNotContain("wrong-74");
  }

  @Test
  void refusedTokenIsTold() throws IOException {
    environment = Map.of("LAGWRIGHT_BIMSERVER_TOKEN", "fedcba98");
    refused(takeoff(project("Alder Quay")), "the server refuses the token.");
    assertThat(err.toString()).doesNotContain("fedcba98");
  }

  @Test
  void tokenWillDoInsteadOfUserAndPassword() {
    environment = Map.of("LAGWRIGHT_BIMSERVER_TOKEN", StubServer.TOKEN);
    assertThat(takeoff(project("Alder Quay"))).as(err.toString()).isZero();
    assertThat(server.called).doesNotContain("login");
  }

  @Test
  void credentialsMayLieInAFile() throws IOException {
    Path file = folder.resolve("credentials");
    Files.write(file, List.of("user=" + StubServer.USER, "password=" + StubServer.PASSWORD));
    environment = Map.of("LAGWRIGHT_BIMSERVER_CREDENTIALS", file.toString());
    assertThat(takeoff(project("Alder Quay"))).as(err.toString()).isZero();
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "user=a;secret74       | credentials:2: expected user=..., password=... or token=...",
        "user=a                | there is no user with password and no token",
        "token=secret74;user=a | both a token and a user or password are given"
      })
  void wrongFileOfCredentialsIsToldWithoutItsContents(String lines, String line)
      throws IOException {
    Path file = folder.resolve("credentials");
    Files.write(file, List.of(lines.split(";")));
    environment = Map.of("LAGWRIGHT_BIMSERVER_CREDENTIALS", file.toString());
    refused(takeoff(project("Alder Quay")), line);
    assertThat(err.toString()).doesNotContain("secret74");
  }

  @Test
  void withoutCredentialsTheServerIsNotAsked() throws IOException {
    environment = Map.of();
    refused(takeoff(project("Alder Quay")), "Set LAGWRIGHT_BIMSERVER_USER and");
    assertThat(server.called).isEmpty();
  }

  @Test
  void passwordInTheAddressIsRefusedAndNotShown() throws IOException {
    String address = project("Alder Quay").replace("//", "//me:secret74@");
    refused(takeoff(address), "a server's address holds no user or password");
    assertThat(err.toString()).doesNotContain("secret74");
    assertThat(server.called).isEmpty();
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "Alder Key     | no such project. Those you may see: Alder Quay, Alder Quay/Pier, Bollards.",
        "Alder Quay@7  | no such revision. Those of the project: 1, 2.",
        "Alder Quay/Pier | the project has no revision yet.",
        "Bollards      | the schema of the project is 'ifc4x3'"
      })
  void whatTheServerLacksIsToldWithWhatItHas(String name, String line) throws IOException {
    refused(takeoff(project(name)), line);
  }

  @ParameterizedTest
  @CsvSource({
    "bimserver+ftp://localhost/Alder Quay",
    "bimserver+http://localhost",
    "bimserver+http:///Alder Quay",
    "bimserver+http://localhost:x/Alder Quay",
    "bimserver+http://localhost/Alder%2"
  })
  void otherFormsOfAddressesAreRefused(String address) throws IOException {
    refused(takeoff(address), "is named bimserver+http://HOST:PORT/PROJECT@REVISION.");
  }

  @Test
  void nobodyThereIsTold() throws IOException {
    String address = project("Alder Quay");
    server.close();
    refused(takeoff(address), "no server answers there.");
  }

  @Test
  void serverGoneInTheMiddleOfTheModelIsTold() throws IOException {
    server.instead.put("/download", server::breakOff);
    refused(takeoff(project("Alder Quay")), "the connection broke before the answer was complete.");
  }

  @Test
  void failureThatOnlyTheProgressTellsIsTold() throws IOException {
    server.instead.put(
        "getProgress",
        e -> StubServer.send(e, StubServer.progress("AS_ERROR", -1, "No literal value X\\nin Y")));
    refused(
        takeoff(project("Alder Quay")),
        "Alder Quay: the server failed to write the model: No literal value X in Y");
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "login          | <html>Welcome</html>             | the answer is none of a BIMserver.",
        "getAllProjects | []                               | the answer is none of a BIMserver.",
        "getAllProjects | {\"response\": {}}               | the answer is none of a BIMserver.",
        "download       | {\"response\": {\"result\": {}}} | the answer is none of a BIMserver.",
        "getProgress    | {\"response\": {\"result\": 1}}  | the answer is none of a BIMserver.",
        "/download      | No valid topicId                 | what the server sent is no STEP file."
      })
  void garbageIsTold(String where, String answer, String line) throws IOException {
    server.instead.put(where, e -> StubServer.send(e, answer));
    refused(takeoff(project("Alder Quay")), line);
  }

  @Test
  void otherServerThanABimserverIsTold() throws IOException {
    server.instead.put("login", e -> e.sendResponseHeaders(404, -1));
    refused(takeoff(project("Alder Quay")), "answers with HTTP status 404.");
  }

  @Test
  void redirectionIsNotFollowed() throws IOException {
    server.instead.put(
        "login",
        e -> {
          e.getResponseHeaders().add("Location", server.address() + "/elsewhere");
          e.sendResponseHeaders(302, -1);
        });
    refused(takeoff(project("Alder Quay")), "answers with HTTP status 302.");
    assertThat(server.called).containsExactly("login");
  }

  @ParameterizedTest
  @CsvSource({"login", "getAllProjects", "/download"})
  void slowAnswerIsNotWaitedForLongerThanAllowed(String where) throws IOException {
    limits = limits(Duration.ofMillis(300), 1 << 20, 1 << 20);
    server.instead.put(where, server::stall);
    refused(takeoff(project("Alder Quay")), ": no answer within 0.3 s.");
  }

  @Test
  void serverThatNeverFinishesIsNotWaitedForLongerThanAllowed() throws IOException {
    limits = limits(Duration.ofMillis(300), 1 << 20, 1 << 20);
    server.instead.put(
        "getProgress", e -> StubServer.send(e, StubServer.progress("STARTED", -1, "")));
    refused(takeoff(project("Alder Quay")), ": no answer within 0.3 s.");
  }

  @Test
  void oversizedAnswerIsRefused() throws IOException {
    limits = limits(Duration.ofSeconds(60), 5000, 1 << 20);
    server.instead.put(
        "getAllProjects",
        e -> StubServer.send(e, StubServer.result("\"" + "x".repeat(6000) + "\"")));
    refused(takeoff(project("Alder Quay")), "sends more than the limits allow.");
  }

  @Test
  void oversizedModelIsRefused() throws IOException {
    limits = limits(Duration.ofSeconds(60), 5000, MODEL.length - 1);
    refused(takeoff(project("Alder Quay")), "sends more than the limits allow.");
  }

  @Test
  void serverThatRepeatsASecretDoesNotMakeUsShowIt() throws IOException {
    server.instead.put(
        "getAllProjects",
        e ->
            StubServer.send(
                e, StubServer.refusal(StubServer.PASSWORD + " and " + StubServer.TOKEN)));
    refused(takeoff(project("Alder Quay")), "the server refuses getAllProjects: *** and ***");
  }
}
