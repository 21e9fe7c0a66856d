package org.lagwright.report.bimserver;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.Map;
import java.util.stream.Stream;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.io.TempDir;
import org.lagwright.report.app.ModelPipeline;
import org.lagwright.report.cli.Main;
import org.lagwright.testmodels.tiny.TinyModels;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/** Runs of the command line against a {@link StubServer}, and what they leave behind. */
abstract class StubRun {

  static final byte[] MODEL = TinyModels.read("tee-with-a-slanted-branch-is-a-lateral");
  static final Map<String, String> LOGIN =
      Map.of(
          "LAGWRIGHT_BIMSERVER_USER", StubServer.USER,
          "LAGWRIGHT_BIMSERVER_PASSWORD", StubServer.PASSWORD);
  static final ServerLimits PATIENT =
      limits(Duration.ofSeconds(60), ServerLimits.DEFAULT.maxAnswerBytes(), 1L << 30);

  @TempDir Path folder;

  final StringWriter out = new StringWriter();
  final StringWriter err = new StringWriter();
  Map<String, String> environment = LOGIN;
  ServerLimits limits = PATIENT;
  StubServer server;

  static ServerLimits limits(Duration answer, long maxAnswerBytes, long maxModelBytes) {
    return new ServerLimits(
        Duration.ofSeconds(10),
        answer,
        answer,
        Duration.ofMillis(1),
        maxAnswerBytes,
        maxModelBytes);
  }

  @BeforeEach
  void start() throws IOException {
    server = new StubServer(MODEL);
  }

  @AfterEach
  void stop() {
    server.close();
  }

  Path output() {
    return folder.resolve("out");
  }

  int takeoff(String address, String... more) {
    return run(
        Stream.concat(
                Stream.of("takeoff", address, "--out", output().toString(), "--fail-on", "never"),
                Stream.of(more))
            .toArray(String[]::new));
  }

  int run(String... args) {
    ServerAccess access = new ServerAccess(environment, limits);
    return new Main(new ModelPipeline(), access, new PrintWriter(out), new PrintWriter(err), false)
        .run(args);
  }

  String project(String name) {
    return "bimserver+" + server.address() + "/" + name;
  }

  /** One line, code 3, no file, no secret, no temporary file left. */
  void refused(int code, String line) throws IOException {
    assertThat(err.toString()).startsWith("lagwright: ").contains(line);
    assertThat(err.toString().lines()).hasSize(1);
    assertThat(code).isEqualTo(3);
    assertThat(out.toString()).isEmpty();
    assertThat(output()).doesNotExist();
    noTrace();
  }

  void noTrace() throws IOException {
    assertThat(out + err.toString()).doesNotContain(StubServer.PASSWORD, StubServer.TOKEN);
    String temporary = "lagwright-server-" + ProcessHandle.current().pid() + "-";
    try (Stream<Path> files = Files.list(Path.of(System.getProperty("java.io.tmpdir")))) {
      assertThat(files.map(String::valueOf)).noneMatch(f -> f.contains(temporary));
    }
  }

  JsonNode document() throws IOException {
    return new JsonMapper().readTree(Files.readString(output().resolve("takeoff.json")));
  }
}
