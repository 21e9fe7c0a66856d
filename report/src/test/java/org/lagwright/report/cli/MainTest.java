package org.lagwright.report.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.lagwright.report.SamplePipeline;
import org.lagwright.report.SampleTakeoff;
import org.lagwright.testmodels.golden.Golden;

class MainTest {

  private static final String FOLDER = "OUTPUT";

  @TempDir Path folder;

  private final SamplePipeline pipeline = new SamplePipeline();
  private final StringWriter out = new StringWriter();
  private final StringWriter err = new StringWriter();

  /** Runs a command; the word OUTPUT stands for a folder of this test. */
  private int run(String... args) {
    String[] real =
        Stream.of(args).map(arg -> arg.replace(FOLDER, folder.toString())).toArray(String[]::new);
    return new Main(pipeline, new PrintWriter(out), new PrintWriter(err), false).run(real);
  }

  @Test
  void takeoffWritesBothFilesAndTellsWhatItDid() throws IOException {
    int code = run("takeoff", "a.ifc", "b.ifc", "--out", "OUTPUT/new/folder", "--fail-on", "never");
    assertThat(err.toString()).isEmpty();
    assertThat(code).isZero();
    assertThat(pipeline.read).containsExactly("a.ifc", "b.ifc");
    assertThat(files(folder.resolve("new/folder"))).containsExactly("takeoff.json", "takeoff.xlsx");
    Golden.check(MainTest.class, "summary.txt", shown());
  }

  @Test
  void outputsGoToAFolderOfTheirOwnWhereNoneIsNamed() {
    assertThat(run("takeoff", "--help")).isZero();
    assertThat(out.toString()).containsPattern("\\(default:\\s+lagwright-out\\)");
  }

  @ParameterizedTest
  @CsvSource({"never, 0", "error, 1", "warning, 1", "info, 1", "ERROR, 1"})
  void exitCodeTellsWhetherFindingsReachTheLevel(String level, int code) {
    assertThat(run("takeoff", "a.ifc", "--out", FOLDER, "--fail-on", level)).isEqualTo(code);
  }

  @Test
  void errorIsTheLevelWhereNoneIsGiven() {
    assertThat(run("takeoff", "a.ifc", "--out", FOLDER)).isEqualTo(ExitCode.FINDINGS);
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      textBlock =
          """
          takeoff a.ifc --ouput x      | 2 | unknown option '--ouput'. Did you mean --out? Run 'lagwright takeoff --help'
          takeof a.ifc                 | 2 | unknown argument 'takeof'. Did you mean takeoff? Run 'lagwright --help'
          takeoff                      | 2 | Missing required parameter: 'MODEL'. Run 'lagwright takeoff --help'
          takeoff a.ifc --fail-on bad  | 2 | Invalid value for option '--fail-on'
          takeoff a.ifc --out          | 2 | Missing required parameter for option '--out' (DIR).
          explain                      | 2 | Missing required parameters: 'ID', 'MODEL'.
          ''                           | 2 | Missing required subcommand. Run 'lagwright --help'
          takeoff missing.ifc          | 3 | missing.ifc: no such file. Check the path.
          explain X missing.ifc        | 3 | missing.ifc: no such file. Check the path.
          takeoff a.ifc --settings broken.yaml | 4 | broken.yaml:3:5: unknown key 'tempratures'. Correct it.
          explain NOTHING_LIKE_IT a.ifc  | 2 | no element or line 'NOTHING_LIKE_IT'. GlobalIds stand in
          explain 0alderquay0pipe0000001 a.ifc | 2 | Did you mean 0AlderQuay0Pipe0000001?
          explain 0AlderQuay0Pipe0000009 a.ifc | 2 | Did you mean 0AlderQuay0Pipe0000001 or 0AlderQuay0Pipe0000002?
          explain l003 a.ifc           | 2 | Did you mean L003?
          """)
  void whatIsWrongIsToldInOneLine(String command, int code, String line) {
    String[] args = command == null || command.isEmpty() ? new String[0] : command.split(" +");
    assertThat(run(args)).isEqualTo(code);
    assertThat(err.toString()).startsWith("lagwright: ").contains(line);
    assertThat(err.toString().lines()).hasSize(1);
    assertThat(out.toString()).isEmpty();
  }

  @Test
  void fileWhereTheFolderShouldBeIsToldBeforeAnythingIsRead() throws IOException {
    Files.writeString(folder.resolve("taken"), "a file");
    assertThat(run("takeoff", "a.ifc", "--out", "OUTPUT/taken/below")).isEqualTo(ExitCode.OUTPUT);
    assertThat(err.toString())
        .startsWith("lagwright: " + folder.resolve("taken") + ": a file is where")
        .contains("Choose another with --out.");
    assertThat(err.toString().lines()).hasSize(1);
    assertThat(pipeline.read).isEmpty();
  }

  @Test
  void folderWithTheNameOfAnOutputIsToldBeforeAnythingIsRead() throws IOException {
    Files.createDirectory(folder.resolve("takeoff.json"));
    assertThat(run("takeoff", "a.ifc", "--out", FOLDER)).isEqualTo(ExitCode.OUTPUT);
    assertThat(err.toString()).contains("takeoff.json: a folder has the name of an output.");
    assertThat(pipeline.read).isEmpty();
  }

  @Test
  void nothingIsCreatedWhereAModelCannotBeRead() {
    assertThat(run("takeoff", "missing.ifc", "--out", "OUTPUT/new")).isEqualTo(ExitCode.INPUT);
    assertThat(folder.resolve("new")).doesNotExist();
  }

  @Test
  void mistakeOfTheProgramIsLoudAndAsksToBeReported() {
    assertThat(run("takeoff", "bug.ifc", "--out", FOLDER)).isEqualTo(ExitCode.BUG);
    assertThat(err.toString().lines().findFirst().orElseThrow())
        .startsWith("lagwright: this is a mistake in Lagwright")
        .contains("two elements with one key")
        .endsWith("Please report it with the lines below.");
    assertThat(err.toString()).contains("at org.lagwright.report.SamplePipeline.readModel");
  }

  @Test
  void lackOfMemoryIsToldWithAWayOut() {
    assertThat(run("takeoff", "huge.ifc", "--out", FOLDER)).isEqualTo(ExitCode.BUG);
    assertThat(err.toString()).contains("not enough memory").contains("-Xmx4g");
  }

  @Test
  void explainShowsEachStepOfAnElementWithTheLosers() throws IOException {
    assertThat(run("explain", SampleTakeoff.PIPE_ID, "a.ifc")).isZero();
    Golden.check(MainTest.class, "explain.txt", shown());
  }

  @Test
  void explainOfALineListsItsElements() throws IOException {
    assertThat(run("explain", "L001", "a.ifc")).isZero();
    Golden.check(MainTest.class, "explain-line.txt", shown());
  }

  @Test
  void packsAreListedWithTheirStatus() throws IOException {
    assertThat(run("packs")).isZero();
    Golden.check(MainTest.class, "packs.txt", shown());
  }

  @Test
  void versionIsThatOfTheBuild() {
    assertThat(run("--version")).isZero();
    assertThat(out.toString()).matches("lagwright \\d+\\.\\d+\\.\\d+\\R");
  }

  @ParameterizedTest
  @ValueSource(strings = {"--help", "takeoff --help", "explain --help", "packs --help", "packs"})
  void textFitsIntoAHundredColumnsAndKeepsNamesOfFilesWhole(String command) {
    assertThat(run(command.split(" "))).isZero();
    assertThat(out.toString().lines()).isNotEmpty().allMatch(line -> line.length() <= 100);
    assertThat(out.toString()).doesNotContainPattern("takeoff\\.\\s");
  }

  @Test
  void helpNamesTheCommandsAndTheExitCodes() {
    assertThat(run("--help")).isZero();
    assertThat(out.toString()).contains("takeoff", "explain", "packs", "Exit codes: 0 done");
  }

  @Test
  void progressIsShownInATerminalOnlyAndWipedAtTheEnd() {
    new Main(pipeline, new PrintWriter(out), new PrintWriter(err), true)
        .run("explain", "L001", "a.ifc");
    assertThat(err.toString()).contains("\rreading a.ifc 50 %").endsWith("\r");
    assertThat(out.toString()).doesNotContain("reading");
  }

  /** What was printed, with line ends and the folder of this test made equal everywhere. */
  private String shown() {
    return out.toString()
        .replace(System.lineSeparator(), "\n")
        .replace(folder.toString(), FOLDER)
        .replace('\\', '/');
  }

  private static Stream<String> files(Path folder) throws IOException {
    try (Stream<Path> files = Files.list(folder)) {
      return files.map(file -> file.getFileName().toString()).sorted().toList().stream();
    }
  }
}
