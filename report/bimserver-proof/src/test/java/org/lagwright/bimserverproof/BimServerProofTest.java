package org.lagwright.bimserverproof;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The finished program and the released server, each in a process of its own. */
class BimServerProofTest {

  private static final Path DEMO = Path.of("../../test-models/demo");
  private static final String IFC4 = "alder-quay-ifc4.ifc";
  private static final String IFC2X3 = "alder-quay-ifc2x3.ifc";
  private static final Map<String, String> LOGIN =
      Map.of(
          "LAGWRIGHT_BIMSERVER_USER", RealServer.USER,
          "LAGWRIGHT_BIMSERVER_PASSWORD", RealServer.PASSWORD);

  @TempDir static Path home;
  @TempDir Path folder;

  private static RealServer server;
  private static Modeller modeller;
  private static long terminal;

  @BeforeAll
  static void checkModelsIn() throws Exception {
    server = RealServer.start(home.resolve("server"));
    modeller = new Modeller(server);
    terminal = modeller.addProject("Alder Quay", "ifc4");
    long harbour = modeller.addProject("Harbour", "ifc2x3tc1");
    long pier = modeller.addSubProject("Pier", harbour, "ifc2x3tc1");
    assertThat(modeller.checkIn(terminal, Files.readAllBytes(DEMO.resolve(IFC4))).path("state"))
        .hasToString("\"FINISHED\"");
    assertThat(modeller.checkIn(pier, Files.readAllBytes(DEMO.resolve(IFC2X3))).path("state"))
        .hasToString("\"FINISHED\"");
  }

  @AfterAll
  static void stop() throws IOException, InterruptedException {
    if (server != null) {
      server.close();
    }
  }

  private Program takeoff(Map<String, String> environment, String model, String out, String... more)
      throws IOException, InterruptedException {
    String[] fixed = {
      "takeoff",
      model,
      "--settings",
      DEMO.resolve("settings.yaml").toString(),
      "--fail-on",
      "never",
      "--out",
      folder.resolve(out).toString()
    };
    String[] args = Arrays.copyOf(fixed, fixed.length + more.length);
    System.arraycopy(more, 0, args, fixed.length, more.length);
    Program run = Program.run(environment, folder.resolve("run-" + out), args);
    assertThat(run.out() + run.err()).doesNotContain(RealServer.PASSWORD, modeller.token());
    return run;
  }

  private static String address(String project) {
    return "bimserver+" + server.address() + "/" + project;
  }

  private JsonNode document(String out) throws IOException {
    return new ObjectMapper().readTree(folder.resolve(out).resolve("takeoff.json").toFile());
  }

  private void sameAsFile(String project, String file, String shown) throws Exception {
    Program fetched = takeoff(LOGIN, address(project), "fetched");
    assertThat(fetched.code()).as(fetched.err()).isZero();
    assertThat(takeoff(Map.of(), DEMO.resolve(file).toString(), "file").code()).isZero();
    JsonNode there = document("fetched");
    JsonNode here = document("file");

    assertThat(there.path("models").path(0).path("file").asText()).isEqualTo(shown);
    assertThat(amounts(there)).isNotEmpty().isEqualTo(amounts(here));
    assertThat(ids(there, "globalId")).hasSizeGreaterThan(50).isEqualTo(ids(here, "globalId"));
    assertThat(ids(there, "step")).isNotEqualTo(ids(here, "step"));
  }

  /** Quantity of each line by what it is; the order of elements in the file may differ. */
  private static Map<String, String> amounts(JsonNode document) {
    Map<String, String> amounts = new TreeMap<>();
    for (JsonNode line : document.path("lines")) {
      String what =
          line.path("service").asText()
              + " "
              + line.path("kind").asText()
              + " "
              + line.path("size").asText()
              + " "
              + line.path("material").asText()
              + " "
              + line.path("thicknessM").asText();
      String quantity =
          String.format(
              Locale.ROOT,
              "%.6f %s;",
              line.path("quantity").asDouble(),
              line.path("unit").asText());
      amounts.merge(what, quantity, String::concat);
    }
    return amounts;
  }

  private static Set<String> ids(JsonNode document, String name) {
    Set<String> ids = new TreeSet<>();
    document.path("elements").forEach(element -> ids.add(element.path(name).asText()));
    return ids;
  }

  @Test
  void revisionOfAnIfc4ProjectIsTakenOffLikeTheFileThoughItsRecordsHaveOtherNumbers()
      throws Exception {
    sameAsFile("Alder%20Quay", IFC4, "Alder Quay@1.ifc");
  }

  @Test
  void revisionOfAnIfc2x3SubProjectIsTakenOffLikeTheFile() throws Exception {
    sameAsFile("Harbour/Pier@1", IFC2X3, "Harbour_Pier@1.ifc");
  }

  @Test
  void workbookAndJsonHangOnTheRevisionByteForByte() throws Exception {
    Program run = takeoff(LOGIN, address("Alder Quay"), "out", "--attach");
    assertThat(run.code()).as(run.err()).isZero();
    assertThat(run.out()).contains("attached to Alder Quay@1: takeoff.xlsx, takeoff.json");
    Map<String, byte[]> attached = modeller.attached(terminal);

    assertThat(attached).containsOnlyKeys("takeoff.xlsx", "takeoff.json");
    for (Map.Entry<String, byte[]> file : attached.entrySet()) {
      assertThat(file.getValue())
          .isEqualTo(Files.readAllBytes(folder.resolve("out").resolve(file.getKey())));
    }
  }

  @Test
  void tokenOfTheServerWillDo() throws Exception {
    Map<String, String> token = Map.of("LAGWRIGHT_BIMSERVER_TOKEN", modeller.token());
    assertThat(takeoff(token, address("Alder Quay"), "out").code()).isZero();
  }

  @Test
  void wrongPasswordAndWrongTokenAreRefused() throws Exception {
    Map<String, String> password =
        Map.of(
            "LAGWRIGHT_BIMSERVER_USER", RealServer.USER, "LAGWRIGHT_BIMSERVER_PASSWORD", "neap-74");
    refused(takeoff(password, address("Alder Quay"), "out"), "refuses the user and password.");
    Map<String, String> token = Map.of("LAGWRIGHT_BIMSERVER_TOKEN", "neap-74");
    refused(takeoff(token, address("Alder Quay"), "out"), "refuses the token.");
  }

  @Test
  void wrongProjectAndWrongRevisionAreToldWithThoseThatThereAre() throws Exception {
    refused(takeoff(LOGIN, address("Alder Key"), "out"), "Harbour, Harbour/Pier");
    refused(takeoff(LOGIN, address("Alder Quay@7"), "out"), "Those of the project: 1.");
  }

  @Test
  void modelWithAnUnknownEnumerationIsRefusedByTheServerAndSoIsIfc4x3() throws Exception {
    long empty = modeller.addProject("Bollards", "ifc4");
    String model = Files.readString(DEMO.resolve(IFC4), StandardCharsets.ISO_8859_1);
    String wrong = model.replaceFirst("\\.CONNECTOR\\.", ".GANGWAY.");
    assertThat(wrong).isNotEqualTo(model);

    assertThat(modeller.checkIn(empty, wrong.getBytes(StandardCharsets.ISO_8859_1)).toString())
        .contains("AS_ERROR", "has no literal value 'GANGWAY'");
    assertThat(
            modeller
                .checkIn(empty, Files.readAllBytes(DEMO.resolve("alder-quay-ifc4x3.ifc")))
                .toString())
        .contains("AS_ERROR", "IFC4X3_ADD2 is not supported");
    refused(takeoff(LOGIN, address("Bollards"), "out"), "the project has no revision yet.");
  }

  /** The server adds a revision to the parent that holds the models of both. */
  @Test
  void serverThatFailsOnTwoSchemasInOneProjectIsToldInItsWords() throws Exception {
    long mixed = modeller.addProject("Mixed", "ifc4");
    long below = modeller.addSubProject("Below", mixed, "ifc2x3tc1");
    modeller.checkIn(mixed, Files.readAllBytes(DEMO.resolve(IFC4)));
    modeller.checkIn(below, Files.readAllBytes(DEMO.resolve(IFC2X3)));

    refused(
        takeoff(LOGIN, address("Mixed"), "out"), "Mixed: the server failed to write the model: ");
  }

  @Test
  void userOfOneProjectMayAttachToItAndSeesNoOther() throws Exception {
    long wharf = modeller.addProject("Wharf", "ifc4");
    modeller.checkIn(wharf, Files.readAllBytes(DEMO.resolve(IFC4)));
    String user = "estimator@alder-quay.example";
    modeller.addUser(user, RealServer.PASSWORD, wharf);
    Map<String, String> login =
        Map.of(
            "LAGWRIGHT_BIMSERVER_USER", user, "LAGWRIGHT_BIMSERVER_PASSWORD", RealServer.PASSWORD);

    refused(takeoff(login, address("Alder Quay"), "out"), "Those you may see: Wharf.");
    Program run = takeoff(login, address("Wharf"), "out", "--attach");
    assertThat(run.code()).as(run.err()).isZero();
    assertThat(modeller.attached(wharf)).containsOnlyKeys("takeoff.xlsx", "takeoff.json");
  }

  /** Holds what a model shows against what it needs; some of the demo is never decided. */
  private Program verify(String model, String out) throws IOException, InterruptedException {
    return Program.run(
        LOGIN,
        folder.resolve("verify-" + out),
        "verify",
        model,
        "--settings",
        DEMO.resolve("settings.yaml").toString(),
        "--least",
        "95");
  }

  /** Its insulation goes back in both ways and is found in each revision that comes of it. */
  private void insulated(String project, String schema, String file) throws Exception {
    long id = modeller.addProject(project, schema);
    modeller.checkIn(id, Files.readAllBytes(DEMO.resolve(file)));
    assertThat(verify(address(project), "bare").code()).isEqualTo(1);

    Program same = takeoff(LOGIN, address(project), "same", "--check-in", "same");
    assertThat(same.code()).as(same.err()).isZero();
    assertThat(same.out())
        .contains("checked in as " + project + "@2: " + project + "@1-insulated.ifc");
    Program first = takeoff(LOGIN, address(project + "@1"), "sub", "--check-in", "sub");
    assertThat(first.code()).as(first.err()).isZero();
    assertThat(first.out()).contains("checked in as " + project + "/Insulation@1: ");
    Program second = takeoff(LOGIN, address(project + "@1"), "again", "--check-in", "sub");
    assertThat(second.out() + second.err())
        .contains("checked in as " + project + "/Insulation@2: ");

    Path here = folder.resolve("same").resolve(project + "@1-insulated.ifc");
    Program local = verify(here.toString(), "here");
    assertThat(local.code()).as(local.out() + local.err()).isZero();
    for (String revision : List.of("@2", "/Insulation@1", "/Insulation")) {
      Program there = verify(address(project + revision), "there" + revision.replace('/', '-'));
      assertThat(there.out()).as(there.err()).isEqualTo(local.out());
    }
    takeoff(LOGIN, address(project + "@2"), "back");
    assertThat(amounts(document("back"))).isEqualTo(amounts(document("same")));
  }

  @Test
  void insulationOfAnIfc4ModelIsCheckedInAndFoundAgain() throws Exception {
    insulated("Ferry", "ifc4", IFC4);
  }

  @Test
  void insulationOfAnIfc2x3ModelIsCheckedInAndFoundAgain() throws Exception {
    insulated("Slip", "ifc2x3tc1", IFC2X3);
  }

  @Test
  void userOfOneProjectMayCheckInThere() throws Exception {
    long buoy = modeller.addProject("Buoy", "ifc4");
    modeller.checkIn(buoy, Files.readAllBytes(DEMO.resolve(IFC4)));
    String user = "modeller@alder-quay.example";
    modeller.addUser(user, RealServer.PASSWORD, buoy);
    Map<String, String> login =
        Map.of(
            "LAGWRIGHT_BIMSERVER_USER", user, "LAGWRIGHT_BIMSERVER_PASSWORD", RealServer.PASSWORD);

    Program same = takeoff(login, address("Buoy@1"), "same", "--check-in", "same");
    assertThat(same.code()).as(same.err()).isZero();
    Program sub = takeoff(login, address("Buoy@1"), "sub", "--check-in", "sub");
    assertThat(sub.out() + sub.err()).contains("checked in as Buoy/Insulation@1: ");
  }

  private void refused(Program run, String line) {
    assertThat(run.err()).contains(line).doesNotContain("neap-74");
    assertThat(run.err().lines()).hasSize(1);
    assertThat(run.code()).isEqualTo(3);
    assertThat(folder.resolve("out")).doesNotExist();
  }
}
