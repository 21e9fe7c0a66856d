package org.lagwright.ifc.geometry;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.lagwright.ifc.geometry.Figures.lengthM;
import static org.lagwright.ifc.geometry.Figures.section;
import static org.lagwright.ifc.geometry.TinyModel.METRES;
import static org.lagwright.ifc.geometry.TinyModel.segmentWithPorts;

import java.util.List;
import java.util.Objects;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.lagwright.ifc.geometry.frame.Placements;
import org.lagwright.ifc.geometry.shape.Shape;
import org.lagwright.ifc.geometry.shape.ShapeHints;
import org.lagwright.ifc.geometry.shape.StatedSizes;
import org.lagwright.ifc.model.Point;
import org.lagwright.ifc.model.Section;
import org.lagwright.ifc.schema.IfcFile;

/** Elements of one type, whose body is drawn once. */
class MappedBodiesTest {

  /** How high the second element lies above the first, and how far beside it. */
  private static final Point SECOND = new Point(70, 30, 4);

  private static final double[] X = {1, 0, 0};
  private static final double[] Y = {0, 1, 0};

  /** Elements #1 and #201 as the type draws them, and #301 turned upright. */
  private static String elements(String body) {
    return """
           #2=IFCLOCALPLACEMENT($,#14);
           #3=IFCPRODUCTDEFINITIONSHAPE($,$,(#4));
           #4=IFCSHAPEREPRESENTATION($,'Body','MappedRepresentation',(#100));
           #100=IFCMAPPEDITEM(#101,#110);
           #201=IFCPIPESEGMENT('1',$,$,$,$,#202,#203,$,$);
           #202=IFCLOCALPLACEMENT($,#205);
           #203=IFCPRODUCTDEFINITIONSHAPE($,$,(#204));
           #204=IFCSHAPEREPRESENTATION($,'Body','MappedRepresentation',(#200));
           #205=IFCAXIS2PLACEMENT3D(#206,$,$);
           #206=IFCCARTESIANPOINT((70.,30.,4.));
           #200=IFCMAPPEDITEM(#101,#110);
           #301=IFCPIPESEGMENT('3',$,$,$,$,#302,#203,$,$);
           #302=IFCLOCALPLACEMENT($,#303);
           #303=IFCAXIS2PLACEMENT3D(#206,#11,#12);
           #101=IFCREPRESENTATIONMAP(#14,#102);
           #102=IFCSHAPEREPRESENTATION($,'Body','Tessellation',(#1000));
           #110=IFCCARTESIANTRANSFORMATIONOPERATOR3D($,$,#10,$,$);
           """
        + body;
  }

  /** A pipe of 100 mm and 2 m along the z axis, drawn with 24 corners. */
  private static String pipe() {
    MeshText text = new MeshText();
    int[] low = text.ring(new double[] {0, 0, 0}, X, Y, 0.05, 24);
    int[] high = text.ring(new double[] {0, 0, 2}, X, Y, 0.05, 24);
    return text.tube(low, high).triangulated(1000);
  }

  /** A box of 1 m along x, 0.8 m along y and 0.3 m along z. */
  private static String box() {
    MeshText text = new MeshText();
    int[] low = text.rectangle(new double[] {0, 0, -0.15}, of(X, 0.5), of(Y, 0.4));
    int[] high = text.rectangle(new double[] {0, 0, 0.15}, of(X, 0.5), of(Y, 0.4));
    return text.tube(low, high).triangulated(1000);
  }

  private static double[] of(double[] way, double lengthM) {
    return new double[] {way[0] * lengthM, way[1] * lengthM, way[2] * lengthM};
  }

  /** Measures the elements of one file one after the other. */
  private static final class Measuring {
    private final IfcFile file;
    private final ShapeMeasurer shapes;

    Measuring(String body) {
      file = TinyModel.withCommon(elements(body));
      shapes = new ShapeMeasurer(file, METRES, new Placements(file, METRES));
    }

    Shape of(long element, ShapeHints hints) {
      return shapes.measure(Objects.requireNonNull(file.find(element)), hints);
    }

    Shape of(long element) {
      return of(element, new ShapeHints(List.of(), null, true));
    }
  }

  @Test
  void bodyOfATypeIsMeasuredOnceAndLiesWhereEachElementLies() {
    Measuring measuring = new Measuring(pipe());
    Shape first = measuring.of(1);
    Shape second = measuring.of(201);

    assertThat(lengthM(first).value()).isCloseTo(2, within(1e-9));
    assertThat(section(second)).isSameAs(section(first));
    assertThat(second.ends()).hasSize(2);
    for (int i = 0; i < 2; i++) {
      Point was = first.ends().get(i).centreM();
      Point moved = new Point(was.x() + SECOND.x(), was.y() + SECOND.y(), was.z() + SECOND.z());
      assertThat(second.ends().get(i).centreM().distanceM(moved)).isCloseTo(0, within(1e-12));
      assertThat(second.ends().get(i).outward()).isEqualTo(first.ends().get(i).outward());
    }
  }

  @Test
  void elementThatIsTurnedIsMeasuredByItself() {
    Measuring measuring = new Measuring(pipe());
    Shape upright = measuring.of(1);
    Shape lying = measuring.of(301);

    assertThat(section(lying)).isNotSameAs(section(upright));
    assertThat(section(lying).value().largestSideM())
        .isCloseTo(section(upright).value().largestSideM(), within(1e-9));
    assertThat(Math.abs(lying.ends().get(0).outward().x())).isCloseTo(1, within(1e-9));
  }

  @Test
  void portsOfEachElementTellAlongWhichEdgeABoxRuns() {
    Measuring measuring = new Measuring(box());
    ShapeHints alongX = segmentWithPorts(new Point(-0.5, 0, 0), new Point(0.5, 0, 0));
    ShapeHints alongY = segmentWithPorts(new Point(70, 29.6, 4), new Point(70, 30.4, 4));
    ShapeHints alongXToo = segmentWithPorts(new Point(69.5, 30, 4), new Point(70.5, 30, 4));

    Shape first = measuring.of(1, alongX);
    assertThat(lengthM(first).value()).isCloseTo(1, within(1e-9));
    assertThat(lengthM(measuring.of(201, alongY)).value()).isCloseTo(0.8, within(1e-9));
    assertThat(section(measuring.of(201, alongXToo))).isSameAs(section(first));
  }

  @Test
  void statedSizesOfEachElementTellAlongWhichEdgeABoxRuns() {
    Measuring measuring = new Measuring(box());
    Shape across = measuring.of(1, stated(new Section.Rectangular(0.8, 0.3)));
    Shape other = measuring.of(201, stated(new Section.Rectangular(1, 0.3)));
    Shape again = measuring.of(201, stated(new Section.Rectangular(1, 0.3)));

    assertThat(lengthM(across).value()).isCloseTo(1, within(1e-9));
    assertThat(lengthM(other).value()).isCloseTo(0.8, within(1e-9));
    assertThat(section(again)).isSameAs(section(other));
  }

  private static ShapeHints stated(Section sides) {
    StatedSizes sizes = new StatedSizes.Known(Optional.of(sides), List.of());
    return new ShapeHints(List.of(), null, true, sizes);
  }

  @Test
  void figuresDoNotDependOnWhichElementCameFirst() {
    Measuring forwards = new Measuring(pipe());
    Measuring backwards = new Measuring(pipe());
    Shape first = forwards.of(1);
    Shape second = forwards.of(201);

    assertThat(backwards.of(201)).isEqualTo(second);
    assertThat(backwards.of(1)).isEqualTo(first);
  }

  @Test
  void mapsThatRepeatEachOtherTooOftenAreNotMeasuredAndSaySo() {
    StringBuilder records = new StringBuilder();
    // three to the ninth are 19 683 pipes in one body
    for (int level = 0; level < 9; level++) {
      int id = 1000 + 10 * level;
      records.append(
          """
          #%d=IFCMAPPEDITEM(#%d,#110);
          #%d=IFCREPRESENTATIONMAP(#14,#%d);
          #%d=IFCSHAPEREPRESENTATION($,'Body','MappedRepresentation',(#%d,#%d,#%d));
          """
              .formatted(id, id + 1, id + 1, id + 2, id + 2, id + 10, id + 10, id + 10));
    }
    records.append("#1090=IFCEXTRUDEDAREASOLID(#1091,#14,#13,1.);\n");
    records.append("#1091=IFCCIRCLEPROFILEDEF(.AREA.,$,#16,0.05);\n");
    Shape shape = new Measuring(records.toString()).of(1);

    assertThat(shape.section()).isNull();
    assertThat(shape.problems()).containsExactly("more than 10000 items in the body");
  }
}
