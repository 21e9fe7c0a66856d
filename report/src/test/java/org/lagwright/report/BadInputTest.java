package org.lagwright.report;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.lagwright.testmodels.tiny.TinyModels;

/** Whatever is given, the real program answers with one line and the right code. */
class BadInputTest {

  private static final Path DEMO = Path.of("../test-models/demo/alder-quay-ifc4.ifc");

  @TempDir Path folder;

  @BeforeEach
  void writeFiles() throws IOException {
    byte[] demo = Files.readAllBytes(DEMO);
    String tray = text("cable-tray-typed-flow-segment-is-no-pipe");
    Files.write(folder.resolve("good.ifc"), demo);
    Files.write(folder.resolve("truncated.ifc"), Arrays.copyOf(demo, demo.length / 2));
    Files.write(folder.resolve("nothing.ifc"), new byte[0]);
    write("letter.ifc", "Dear estimator,\nplease find the model attached.\n");
    write(
        "schema.ifc", tray.replaceFirst("FILE_SCHEMA\\(\\('[^']*'\\)\\)", "FILE_SCHEMA(('IFC9'))"));
    write("tray.ifc", tray);
    write(
        "proxy.ifc",
        text("proxy-named-like-a-pipe-is-no-pipe").replaceAll("IFCPIPESEGMENT.*", "IFCWALL();"));
    write("empty.ifc", tray.replaceFirst("(?s)DATA;.*?ENDSEC;", "DATA;\nENDSEC;"));
    write("a.ifcxml", "<ifc/>");
    write("taken", "a file");
    write("key.yaml", "project: Quay\ntempraturesC: {heating-flow: 70}\n");
    write("value.yaml", "condensationMarginK: much\n");
    write("humid.yaml", "air:\n  indoor: {relativeHumidityPct: 140}\n");
    write("rule.yaml", "energyRule: no-such-rule\n");
    write("material.yaml", "materials: {cold: straw}\n");
    write("prose.yaml", "project: [never closed\n");
  }

  private void write(String name, String text) throws IOException {
    Files.writeString(folder.resolve(name), text);
  }

  private static String text(String tiny) {
    return new String(TinyModels.read(tiny), StandardCharsets.ISO_8859_1);
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      textBlock =
          """
          takeoff IN/missing.ifc --out IN/new                  | 3 | IN/missing.ifc: no such file. Check the path.
          takeoff IN/letter.ifc --out IN/new                   | 3 | IN/letter.ifc
          takeoff IN/truncated.ifc --out IN/new                | 3 | IN/truncated.ifc
          takeoff IN/nothing.ifc --out IN/new                  | 3 | IN/nothing.ifc: the file is empty.
          takeoff IN --out IN/new                              | 3 | this is not a file.
          takeoff IN/a.ifcxml --out IN/new                     | 3 | ifcXML is not supported.
          takeoff IN/schema.ifc --out IN/new                   | 3 | IFC9
          takeoff IN/empty.ifc --out IN/new                    | 3 | IN/empty.ifc
          takeoff IN/tray.ifc --out IN/new                     | 3 | there is no pipe, duct, fitting or valve
          takeoff IN/proxy.ifc --out IN/new                    | 3 | the names of 1 say pipe or duct, such as 'Steel pipe 48.3'
          takeoff IN/good.ifc IN/missing.ifc --out IN/new      | 3 | IN/missing.ifc: no such file.
          takeoff IN/good.ifc --out IN/taken                   | 5 | a file is where the output folder should be.
          takeoff IN/good.ifc --out IN/new --depth 3           | 2 | unknown option '--depth'.
          takeof IN/good.ifc --out IN/new                      | 2 | Did you mean takeoff?
          takeoff --out IN/new                                 | 2 | Missing required parameter: 'MODEL'.
          takeoff IN/good.ifc --out IN/new --settings IN/no.yaml       | 4 | no.yaml
          takeoff IN/good.ifc --out IN/new --settings IN/key.yaml      | 4 | key.yaml:2
          takeoff IN/good.ifc --out IN/new --settings IN/value.yaml    | 4 | value.yaml:1
          takeoff IN/good.ifc --out IN/new --settings IN/humid.yaml    | 4 | humid.yaml:2
          takeoff IN/good.ifc --out IN/new --settings IN/rule.yaml     | 4 | no-such-rule
          takeoff IN/good.ifc --out IN/new --settings IN/material.yaml | 4 | straw
          takeoff IN/good.ifc --out IN/new --settings IN/prose.yaml    | 4 | prose.yaml:
          explain 0000000000000000000000 IN/good.ifc           | 2 | no element or line '0000000000000000000000'.
          explain 0QNdEoMmCr08whKU8miXBB IN/missing.ifc        | 3 | IN/missing.ifc: no such file.
          """)
  void oneLineTellsWhatIsWrongAndNothingIsWritten(String command, int code, String line)
      throws IOException {
    String[] args = command.replace("IN", folder.toString()).split(" +");
    RealRun run = RealRun.of(args);
    assertThat(run.code()).as(run.err()).isEqualTo(code);
    assertThat(run.err())
        .startsWith("lagwright: ")
        .contains(line.replace("IN", folder.toString()))
        .doesNotContain("Exception");
    assertThat(run.err().lines()).hasSize(1);
    assertThat(run.out()).isEmpty();
    assertThat(folder.resolve("new")).doesNotExist();
    assertThat(folder.resolve("taken")).hasContent("a file");
  }

  @Test
  void goodModelAmongTheseFilesIsTakenOff() throws IOException {
    Path out = folder.resolve("new");
    assertThat(RealRun.takeoff(folder.resolve("good.ifc"), out).code()).isZero();
    try (Stream<Path> files = Files.list(out)) {
      assertThat(files.map(Path::getFileName).map(Path::toString))
          .containsExactlyInAnyOrder("takeoff.xlsx", "takeoff.json");
    }
  }
}
