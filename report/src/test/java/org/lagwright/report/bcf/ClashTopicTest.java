package org.lagwright.report.bcf;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.awt.image.BufferedImage;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.TreeMap;
import java.util.stream.Collectors;
import javax.imageio.ImageIO;
import javax.xml.parsers.ParserConfigurationException;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.lagwright.ifc.model.Point;
import org.lagwright.ifc.source.ProgressListener;
import org.lagwright.report.WalledModel;
import org.lagwright.report.app.ModelPipeline;
import org.lagwright.report.app.TakeoffJob;
import org.lagwright.takeoff.Takeoff;
import org.w3c.dom.Document;
import org.w3c.dom.Element;
import org.w3c.dom.Node;
import org.xml.sax.SAXException;

/** Clearance as topics: of pipe against pipe, and of a pipe against walls. */
class ClashTopicTest {

  @TempDir Path folder;

  /** A topic with what belongs to it. */
  private record Opened(Document markup, Document viewpoint, BufferedImage snapshot) {}

  private Takeoff takeoff() throws IOException {
    Path file = Files.writeString(folder.resolve("model.ifc"), WalledModel.text());
    return new TakeoffJob(new ModelPipeline(), ProgressListener.SILENT)
        .compute(List.of(file), null);
  }

  /** The topics of type Clash by title. */
  private static Map<String, Opened> clashes(Map<String, byte[]> files)
      throws IOException, ParserConfigurationException, SAXException {
    Map<String, Opened> clashes = new TreeMap<>();
    for (String name : files.keySet()) {
      if (name.endsWith("markup.bcf")) {
        Document markup = BcfReading.document(files.get(name));
        Element topic = BcfReading.elements(markup, "Topic").get(0);
        if (topic.getAttribute("TopicType").equals("Clash")) {
          String place = name.replace("markup.bcf", "");
          clashes.put(
              text(markup, "Title"),
              new Opened(
                  markup,
                  BcfReading.document(Objects.requireNonNull(files.get(place + "viewpoint.bcfv"))),
                  ImageIO.read(new ByteArrayInputStream(files.get(place + "snapshot.png")))));
        }
      }
    }
    return clashes;
  }

  private static String text(Document document, String name) {
    return BcfReading.elements(document, name).get(0).getTextContent();
  }

  private static List<String> guids(Document viewpoint, String within) {
    Element part = BcfReading.elements(viewpoint, within).get(0);
    return BcfReading.elements(viewpoint, "Component").stream()
        .filter(c -> isWithin(c, part))
        .map(c -> c.getAttribute("IfcGuid"))
        .collect(Collectors.toList());
  }

  private static boolean isWithin(Node node, Element part) {
    for (Node at = node; at != null; at = at.getParentNode()) {
      if (at == part) {
        return true;
      }
    }
    return false;
  }

  private static Point point(Document viewpoint, String name) {
    Element point = BcfReading.elements(viewpoint, name).get(0);
    double[] xyz = new double[3];
    for (int i = 0; i < 3; i++) {
      String axis = List.of("X", "Y", "Z").get(i);
      xyz[i] = Double.parseDouble(point.getElementsByTagName(axis).item(0).getTextContent());
    }
    return new Point(xyz[0], xyz[1], xyz[2]);
  }

  @ParameterizedTest
  @EnumSource(BcfVersion.class)
  void aClashIsATopicWithComponentsColourCameraAndPicture(BcfVersion version) throws Exception {
    Map<String, byte[]> files = BcfReading.files(takeoff(), version);
    Map<String, Opened> clashes = clashes(files);

    assertThat(BcfReading.validate(files, version)).isGreaterThan(3);
    assertThat(clashes.keySet())
        .containsExactlyInAnyOrder(
            "Bare clash: heating flow against wall",
            "Insulation clash: heating flow against heating return");
    Opened wall = Objects.requireNonNull(clashes.get("Bare clash: heating flow against wall"));
    assertThat(guids(wall.viewpoint(), "Selection"))
        .containsExactlyInAnyOrder("0AlderQuay0Pipe0000001", WalledModel.WALL);
    assertThat(guids(wall.viewpoint(), "Coloring"))
        .containsExactlyInAnyOrder("0AlderQuay0Pipe0000001", WalledModel.WALL);
    assertThat(BcfReading.elements(wall.viewpoint(), "Color").get(0).getAttribute("Color"))
        .matches("[0-9A-F]{8}");
    assertThat(text(wall.markup(), "Description")).contains("1 place").contains("opening");
    assertThat(text(wall.markup(), "Priority")).isEqualTo("High");
    Opened pipes =
        Objects.requireNonNull(
            clashes.get("Insulation clash: heating flow against heating return"));
    assertThat(guids(pipes.viewpoint(), "Selection")).contains(WalledModel.RETURN);
  }

  @ParameterizedTest
  @EnumSource(BcfVersion.class)
  void theCameraLooksAtWhatClashesAndThePictureShowsIt(BcfVersion version) throws Exception {
    for (Opened opened : clashes(BcfReading.files(takeoff(), version)).values()) {
      Point eye = point(opened.viewpoint(), "CameraViewPoint");
      Point way = point(opened.viewpoint(), "CameraDirection");
      double heightM = Double.parseDouble(text(opened.viewpoint(), "ViewToWorldScale"));
      // from the eye along the view to the middle of the pipes at (1, 0, 3)
      double along = (1 - eye.x()) * way.x() - eye.y() * way.y() + (3 - eye.z()) * way.z();
      Point seen =
          new Point(
              eye.x() + along * way.x(), eye.y() + along * way.y(), eye.z() + along * way.z());

      assertThat(along).isPositive();
      assertThat(seen.distanceM(new Point(1, 0, 3))).isLessThan(heightM / 2);
      assertThat(Math.sqrt(way.x() * way.x() + way.y() * way.y() + way.z() * way.z()))
          .isCloseTo(1, within(1e-5));
      assertThat(opened.snapshot().getWidth()).isBetween(100, 1500);
      assertThat(inked(opened.snapshot())).isGreaterThan(200);
    }
  }

  private static int inked(BufferedImage picture) {
    int inked = 0;
    for (int x = 0; x < picture.getWidth(); x++) {
      for (int y = 0; y < picture.getHeight(); y++) {
        inked += picture.getRGB(x, y) == Snapshot.INK.getRGB() ? 1 : 0;
      }
    }
    return inked;
  }

  @Test
  void severalPlacesOfOneCauseAreOneTopic() throws Exception {
    Path file = Files.writeString(folder.resolve("more.ifc"), WalledModel.withSecondWall());
    Takeoff takeoff =
        new TakeoffJob(new ModelPipeline(), ProgressListener.SILENT).compute(List.of(file), null);
    Opened wall =
        Objects.requireNonNull(
            clashes(BcfReading.files(takeoff, BcfVersion.V2_1))
                .get("Bare clash: heating flow against wall"));

    assertThat(text(wall.markup(), "Description")).startsWith("2 places");
    assertThat(guids(wall.viewpoint(), "Selection"))
        .containsExactlyInAnyOrder(
            "0AlderQuay0Pipe0000001", WalledModel.WALL, WalledModel.SECOND_WALL);
  }
}
