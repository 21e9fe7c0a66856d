package org.lagwright.takeoff.fitting;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.stream.LongStream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.lagwright.ifc.model.Form;
import org.lagwright.ifc.model.Kind;
import org.lagwright.ifc.model.MepElement;
import org.lagwright.ifc.model.Section;
import org.lagwright.takeoff.TestElement;
import org.lagwright.takeoff.fitting.pattern.Pattern;
import org.lagwright.takeoff.measure.Size;
import org.lagwright.takeoff.thickness.Layer;
import org.lagwright.takeoff.thickness.Layer.LayerForm;

/** Elements as bad as models can draw them: each gets a making, none stops the program. */
class GeneratedMakingTest {

  private static final int ELEMENTS = 60;

  static LongStream seeds() {
    return LongStream.rangeClosed(1, 40);
  }

  @ParameterizedTest(name = "seed {0}")
  @MethodSource("seeds")
  void anythingIsMadeOrCutOnSite(long seed) {
    Random random = new Random(seed);
    MakingChooser chooser = new MakingChooser(MakingPack.bundled(), Map.of(), own(random));
    for (int i = 0; i < ELEMENTS; i++) {
      MepElement element = element(random);
      List<Layer> layers = layers(random);
      Section section = Size.findDecidingSection(element).orElseThrow();

      Making making = chooser.choose(element, section, layers, random.nextBoolean());

      assertThat(making.layers()).hasSameSizeAs(layers);
      assertThat(making.outerAreaM2()).isNotNegative().isFinite();
      assertThat(making.volumeM3()).isNotNegative().isFinite();
      making.pieces().forEach(GeneratedMakingTest::isDrawable);
    }
  }

  private static void isDrawable(Piece piece) {
    Pattern.Bounds bounds = piece.shape().pattern().bounds();
    assertThat(bounds.widthM()).as(piece.toString()).isPositive().isLessThan(1000);
    assertThat(bounds.heightM()).as(piece.toString()).isPositive().isLessThan(1000);
    assertThat(piece.jointFaceM2()).as(piece.toString()).isNotNegative().isFinite();
  }

  /** Half the runs wish for a method, whether it fits or not. */
  private static Map<String, String> own(Random random) {
    Method[] methods = Method.values();
    Form[] forms = Form.values();
    return random.nextBoolean()
        ? Map.of()
        : Map.of(
            forms[random.nextInt(forms.length)].label(),
            methods[random.nextInt(methods.length)].label(),
            "bend".equals(forms[2].label()) ? "bend" : "tee",
            methods[random.nextInt(methods.length)].label());
  }

  private static MepElement element(Random random) {
    Kind[] kinds = {
      Kind.PIPE_FITTING, Kind.DUCT_FITTING, Kind.VALVE, Kind.INLINE, Kind.PIPE_SEGMENT
    };
    Form[] forms = Form.values();
    TestElement element =
        TestElement.of(1, kinds[random.nextInt(kinds.length)], forms[random.nextInt(forms.length)])
            .section(section(random));
    if (random.nextBoolean()) {
      List<Section> ends = new ArrayList<>();
      for (int i = random.nextInt(5); i > 0; i--) {
        ends.add(section(random));
      }
      element.ends(ends.toArray(Section[]::new));
    }
    if (random.nextBoolean()) {
      element.length(size(random, 3));
    }
    if (random.nextBoolean()) {
      element.bend(random.nextInt(-200, 400), size(random, 1));
    }
    if (random.nextBoolean()) {
      for (int i = random.nextInt(5); i > 0; i--) {
        double angle = random.nextInt(24) * Math.PI / 12;
        double far = random.nextDouble() * 0.4;
        double c = Math.cos(angle);
        double s = Math.sin(angle);
        element.end(far * c, far * s + random.nextInt(2) * 0.01, c, s);
      }
    }
    return element.named(random.nextInt(4) == 0 ? "swept threaded" : "fitting").build();
  }

  private static Section section(Random random) {
    return switch (random.nextInt(4)) {
      case 0 -> new Section.Rectangular(size(random, 1.5), size(random, 1.5));
      case 1 -> new Section.Oval(size(random, 1), size(random, 1));
      default -> new Section.Round(size(random, 0.8));
    };
  }

  /** From a millimetre up, most of them small. */
  private static double size(Random random, double mostM) {
    return 0.001 + mostM * random.nextDouble() * random.nextDouble();
  }

  private static List<Layer> layers(Random random) {
    List<Layer> layers = new ArrayList<>();
    LayerForm[] forms = LayerForm.values();
    for (int i = random.nextInt(2); i >= 0; i--) {
      double wallM = 0.006 + 0.15 * random.nextDouble();
      layers.add(new Layer("fef_nbr", forms[random.nextInt(forms.length)], wallM));
    }
    return layers;
  }
}
