package org.lagwright.report.templates;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.TreeMap;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.lagwright.report.app.ModelPipeline;
import org.lagwright.takeoff.Takeoff;
import org.lagwright.takeoff.fitting.pattern.Curve;
import org.lagwright.takeoff.settings.Settings;

/**
 * The npm package dxf-parser opens every template of the demo building, and its curves are
 * measured.
 */
@Tag("oracle")
class DxfParserOracleTest {

  private static final int PATIENCE_MINUTES = 5;
  private static final Path SOURCES = Path.of("src/test/node");
  private static final Path DEMO = Path.of("..", "test-models", "demo");

  @TempDir static Path drawings;
  private static TemplateBook book;
  private static Map<String, Drawing> read;

  /** A polyline as dxf-parser read it, millimetres. */
  private record Polyline(String layer, boolean closed, List<double[]> vertices) {

    /** Length of each side, an arc where it has a bulge: bulge = tan(angle / 4). */
    double lengthMm() {
      double lengthMm = 0;
      for (int i = 0; i < vertices.size() - (closed ? 0 : 1); i++) {
        double[] from = vertices.get(i);
        double[] to = vertices.get((i + 1) % vertices.size());
        double chordMm = Math.hypot(to[0] - from[0], to[1] - from[1]);
        double angle = 4 * Math.atan(Math.abs(from[2]));
        lengthMm += angle == 0 ? chordMm : chordMm / 2 / Math.sin(angle / 2) * angle;
      }
      return lengthMm;
    }
  }

  private record Drawing(String version, List<String> layers, List<Polyline> polylines) {}

  @BeforeAll
  static void drawTheDemoAndReadIt() throws IOException, InterruptedException {
    ModelPipeline pipeline = new ModelPipeline();
    Settings settings = pipeline.readSettings(DEMO.resolve("settings.yaml"));
    Path model = DEMO.resolve("alder-quay-ifc4.ifc");
    Takeoff takeoff =
        pipeline.takeOff(
            List.of(pipeline.readModel(model, 0, settings, (what, share) -> {})), settings);
    book = new TemplateBook(takeoff);
    List<String> command = new ArrayList<>(List.of("node", "curves.js"));
    for (Template template : book.drawn()) {
      Path file = drawings.resolve(template.label() + ".dxf");
      try (var out = Files.newOutputStream(file)) {
        new DxfDrawing(template).write(out);
      }
      command.add(file.toAbsolutePath().toString());
    }
    read = parsed(run(install(), command));
  }

  private static Path install() throws IOException, InterruptedException {
    Path folder = Files.createDirectories(Path.of("target/node").toAbsolutePath());
    for (String file : List.of("package.json", "package-lock.json", ".npmrc", "curves.js")) {
      Files.write(folder.resolve(file), Files.readAllBytes(SOURCES.resolve(file)));
    }
    run(folder, List.of("npm", "ci", "--silent"));
    return folder;
  }

  private static String run(Path folder, List<String> command)
      throws IOException, InterruptedException {
    Process process =
        new ProcessBuilder(command).directory(folder.toFile()).redirectErrorStream(true).start();
    String said;
    try (InputStream in = process.getInputStream()) {
      said = new String(in.readAllBytes(), StandardCharsets.UTF_8);
    }
    if (!process.waitFor(PATIENCE_MINUTES, TimeUnit.MINUTES) || process.exitValue() != 0) {
      process.destroy();
      throw new IOException(command.get(0) + " failed: " + said);
    }
    return said;
  }

  private static Map<String, Drawing> parsed(String said) {
    Map<String, Drawing> drawings = new TreeMap<>();
    List<String> labels = book.drawn().stream().map(Template::label).toList();
    Drawing drawing = null;
    for (String line : said.lines().toList()) {
      List<String> words = List.of(line.split(" ", -1));
      if (words.get(0).equals("file")) {
        drawing = new Drawing(words.get(1), words.subList(2, words.size()), new ArrayList<>());
        drawings.put(labels.get(drawings.size()), drawing);
      } else if (drawing != null) {
        drawing.polylines().add(polyline(words));
      }
    }
    return drawings;
  }

  private static Polyline polyline(List<String> words) {
    assertThat(words.get(0)).isEqualTo("POLYLINE");
    List<double[]> vertices =
        words.subList(3, words.size()).stream()
            .map(w -> Arrays.stream(w.split(",", -1)).mapToDouble(Double::parseDouble).toArray())
            .toList();
    return new Polyline(words.get(1), words.get(2).equals("true"), vertices);
  }

  private static Drawing drawing(Template template) {
    return Objects.requireNonNull(read.get(template.label()), template.label());
  }

  @Test
  void everyTemplateIsReadWithAllItsCurvesOnTheirLayers() {
    assertThat(read).hasSize(book.drawn().size()).hasSizeGreaterThan(50);
    for (Template template : book.drawn()) {
      Drawing drawing = drawing(template);
      List<Curve> curves = template.piece().shape().pattern().curves();

      assertThat(drawing.version()).isEqualTo("AC1009");
      assertThat(drawing.layers())
          .containsExactlyInAnyOrderElementsOf(
              Arrays.stream(Curve.Role.values()).map(Curve.Role::name).toList());
      assertThat(drawing.polylines()).as(template.label()).hasSameSizeAs(curves);
      for (int i = 0; i < curves.size(); i++) {
        Polyline polyline = drawing.polylines().get(i);
        assertThat(polyline.layer()).isEqualTo(curves.get(i).role().name());
        assertThat(polyline.closed()).isEqualTo(curves.get(i).closed());
        assertThat(polyline.lengthMm())
            .as("%s, curve %d", template.label(), i)
            .isCloseTo(curves.get(i).lengthM() * 1000, within(0.01));
      }
    }
  }

  /** The cut of a mitre at alpha off square is a sine of 2 r tan(alpha) from throat to heel. */
  @Test
  void theCutOfAMitredBendHasTheHeightOfItsAngle() {
    Template bend =
        book.drawn().stream()
            .filter(t -> t.piece().name().equals("end piece") && !t.piece().isSheet())
            .findFirst()
            .orElseThrow();
    double cutDeg = bend.piece().cutAnglesDeg().get(1);
    double radiusMm = bend.piece().outsideDiameterM() * 500;
    List<double[]> cut = drawing(bend).polylines().get(0).vertices();
    double seamMm =
        cut.stream().filter(v -> v[0] < 1e-6).mapToDouble(v -> v[1]).max().orElseThrow();
    double topMm = cut.stream().mapToDouble(v -> v[1]).max().orElseThrow();
    double girthMm = cut.stream().mapToDouble(v -> v[0]).max().orElseThrow();

    assertThat(girthMm).isCloseTo(2 * Math.PI * radiusMm, within(0.001));
    assertThat(topMm - seamMm)
        .isCloseTo(2 * radiusMm * Math.tan(Math.toRadians(cutDeg)), within(0.01));
  }
}
