package org.lagwright.ifc.geometry;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.lagwright.ifc.geometry.Figures.angleDeg;
import static org.lagwright.ifc.geometry.Figures.bendRadiusM;
import static org.lagwright.ifc.geometry.Figures.lengthM;
import static org.lagwright.ifc.geometry.Figures.section;
import static org.lagwright.ifc.geometry.TinyModel.METRES;
import static org.lagwright.ifc.geometry.TinyModel.MM_DEG;
import static org.lagwright.ifc.geometry.TinyModel.MM_RAD;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.lagwright.ifc.SharedModels;
import org.lagwright.ifc.geometry.frame.Frame;
import org.lagwright.ifc.geometry.frame.GeometryUnits;
import org.lagwright.ifc.geometry.frame.Placements;
import org.lagwright.ifc.geometry.frame.ShapeEnd;
import org.lagwright.ifc.geometry.shape.Shape;
import org.lagwright.ifc.geometry.shape.ShapeHints;
import org.lagwright.ifc.model.Form;
import org.lagwright.ifc.model.Point;
import org.lagwright.ifc.model.Section;
import org.lagwright.ifc.schema.IfcFile;
import org.lagwright.ifc.schema.IfcRecord;

/**
 * Public files whose figures were measured independently of this code: sums of extrusion depths,
 * distances of ports, written radii. Each line names its file.
 */
class SharedModelShapesTest {

  private static final GeometryUnits METRES_DEG = new GeometryUnits(1, Math.PI / 180);

  /** Shapes of all products of a class, measured with the ports that relations give them. */
  private static List<Shape> shapes(IfcFile file, GeometryUnits units, String entity) {
    Placements placements = new Placements(file, units);
    ShapeMeasurer measurer = new ShapeMeasurer(file, units, placements);
    boolean straight = entity.endsWith("Segment");
    return file.all(entity).stream()
        .map(p -> measurer.measure(p, new ShapeHints(ports(file, placements, p), null, straight)))
        .toList();
  }

  private static List<Point> ports(IfcFile file, Placements placements, IfcRecord product) {
    Stream<IfcRecord> connected =
        file.all("IfcRelConnectsPortToElement").stream()
            .filter(r -> r.refId("RelatedElement") == product.id())
            .map(r -> r.ref("RelatingPort"));
    Stream<IfcRecord> nested =
        file.all("IfcRelNests").stream()
            .filter(r -> r.refId("RelatingObject") == product.id())
            .flatMap(r -> r.refs("RelatedObjects").stream());
    return Stream.concat(connected, nested)
        .filter(Objects::nonNull)
        .map(placements::of)
        .filter(Objects::nonNull)
        .map(Frame::origin)
        .toList();
  }

  private static double sum(List<Shape> shapes) {
    return shapes.stream().mapToDouble(shape -> lengthM(shape).value()).sum();
  }

  /** Count and summed length in millimetres by outside diameter in tenths of a millimetre. */
  private static Map<String, String> byDiameter(List<Shape> shapes) {
    Map<Long, List<Shape>> byTenths = new TreeMap<>();
    for (Shape shape : shapes) {
      Section.Round round = (Section.Round) section(shape).value();
      byTenths
          .computeIfAbsent(Math.round(round.outsideDiameterM() * 1e4), d -> new ArrayList<>())
          .add(shape);
    }
    Map<String, String> table = new TreeMap<>();
    byTenths.forEach(
        (tenths, group) ->
            table.put(
                String.format(Locale.ROOT, "%.1f", tenths / 10.0),
                String.format(Locale.ROOT, "%d x %.2f", group.size(), 1000 * sum(group))));
    return table;
  }

  @Test
  void heatingPipesHaveTheirPublishedLengthsAndDiameters() {
    IfcFile file = SharedModels.open("heating-de-exporter-l-ifc4.ifc");
    List<Shape> pipes = shapes(file, MM_RAD, "IfcPipeSegment");
    assertThat(pipes).hasSize(100);
    assertThat(sum(pipes)).isCloseTo(76.888, within(0.0005));
    // one of the 16 pipes of DN150 is hollow and has another outside diameter
    assertThat(byDiameter(pipes))
        .containsEntry("26.9", "28 x 8854.01")
        .containsEntry("33.7", "22 x 15968.67")
        .containsEntry("60.3", "12 x 17607.92")
        .containsEntry("88.9", "22 x 19139.22")
        .containsKeys("165.1", "168.3")
        .hasSize(6);
    double dn150 =
        sum(pipes.stream().filter(shape -> section(shape).value().largestSideM() > 0.16).toList());
    assertThat(dn150).isCloseTo(15.31783, within(0.00001));
  }

  @Test
  void heatingFittingsAreThirtyFourBendsAndFourteenTees() {
    IfcFile file = SharedModels.open("heating-de-exporter-l-ifc4.ifc");
    List<Shape> fittings = shapes(file, MM_RAD, "IfcPipeFitting");
    assertThat(fittings).filteredOn(shape -> shape.form() == Form.BEND).hasSize(34);
    assertThat(fittings).filteredOn(shape -> shape.form() == Form.TEE).hasSize(14);
    assertThat(fittings).filteredOn(shape -> shape.form() == Form.CAP).hasSize(3);
  }

  @Test
  void heatPumpPipesHaveTheirPublishedLengthsAndDiameters() {
    IfcFile radiators = SharedModels.open("heatpump-radiators-exporter-r-de-ifc4.ifc");
    List<Shape> pipes = shapes(radiators, MM_DEG, "IfcPipeSegment");
    assertThat(sum(pipes)).isCloseTo(143.407, within(0.0005));
    Map<String, String> table = byDiameter(pipes);
    assertThat(table.get("15.9")).startsWith("42 x 13513");
    assertThat(table.get("25.4")).startsWith("2 x ");
    assertThat(table.get("101.6")).isEqualTo("2 x 2480.00");
    assertThat(pipes).hasSize(54);
    IfcFile floor = SharedModels.open("heatpump-floorheating-exporter-r-de-ifc4.ifc");
    List<Shape> loops = shapes(floor, MM_DEG, "IfcPipeSegment");
    assertThat(loops).hasSize(22);
    assertThat(sum(loops)).isCloseTo(27.540, within(0.0005));
  }

  @Test
  void rectangularDuctsExtrudedUpwardsAreAsLongAsTheirPortsAreApart() {
    IfcFile file = SharedModels.open("duct-rect-exporter-r-ru-ifc2x3.ifc");
    List<Shape> ducts = shapes(file, MM_DEG, "IfcFlowSegment");
    assertThat(ducts).hasSize(5);
    assertThat(sum(ducts)).isCloseTo(22.2, within(0.0005));
    assertThat(ducts)
        .allSatisfy(
            duct -> assertThat(section(duct).value().perimeterM()).isCloseTo(1.2, within(1e-5)));
    List<Shape> bends = shapes(file, MM_DEG, "IfcFlowFitting");
    assertThat(bends)
        .hasSize(4)
        .allSatisfy(
            bend -> {
              assertThat(angleDeg(bend).value()).isCloseTo(90, within(0.2));
              assertThat(bendRadiusM(bend).value()).isCloseTo(0.45, within(0.0005));
            });
  }

  @Test
  void roundDuctsAndTheirBendsAreMeasured() {
    IfcFile file = SharedModels.open("duct-round-exporter-d-ifc2x3.ifc");
    List<Shape> ducts = shapes(file, METRES_DEG, "IfcFlowSegment");
    assertThat(byDiameter(ducts)).hasSize(1).containsKey("300.0");
    assertThat(sum(ducts)).isCloseTo(18.157, within(0.0005));
    List<Shape> bends = shapes(file, METRES_DEG, "IfcFlowFitting");
    // two are written with 90 degrees, the third one with 93.715
    assertThat(bends)
        .extracting(bend -> Math.round(angleDeg(bend).value()))
        .containsExactly(90L, 90L, 94L);
  }

  @Test
  void drainagePipesAreMeasured() {
    IfcFile file = SharedModels.open("drainage-1-2-exporter-g-ifc4x3rc3.ifc");
    List<Shape> pipes = shapes(file, METRES, "IfcPipeSegment");
    assertThat(pipes).hasSize(6);
    double large =
        sum(pipes.stream().filter(p -> section(p).value().largestSideM() > 0.3).toList());
    assertThat(large).isCloseTo(64.49, within(0.005));
    assertThat(sum(pipes) - large).isCloseTo(6.846, within(0.0005));
  }

  @Test
  void elbowSweptBesideItsDirectrixReachesFromPortToPort() {
    IfcFile file = SharedModels.open("pipe-elbow-surfacecurveswept-exporter-r-ifc4.ifc");
    Shape elbow = shapes(file, MM_DEG, "IfcPipeFitting").get(0);
    assertThat(angleDeg(elbow).value()).isCloseTo(90, within(0.2));
    IfcRecord product = file.all("IfcPipeFitting").get(0);
    List<Point> ports = ports(file, new Placements(file, MM_DEG), product);
    assertThat(ports).hasSize(2);
    for (ShapeEnd end : elbow.ends()) {
      assertThat(ports)
          .anySatisfy(
              port -> assertThat(port.distanceM(end.centreM())).isCloseTo(0, within(0.0005)));
    }
  }

  @Test
  void teeOfAdvancedFacesHasThreeEqualEnds() {
    IfcFile file = SharedModels.open("pipe-fitting-advancedbrep-exporter-r-ifc4.ifc");
    Shape tee = shapes(file, MM_DEG, "IfcPipeFitting").get(0);
    assertThat(tee.form()).isEqualTo(Form.TEE);
    assertThat(tee.ends())
        .hasSize(3)
        .allSatisfy(
            end -> assertThat(end.section().largestSideM()).isCloseTo(0.034925, within(1e-5)));
  }
}
