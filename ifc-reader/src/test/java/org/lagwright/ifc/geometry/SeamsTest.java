package org.lagwright.ifc.geometry;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.lagwright.ifc.geometry.Figures.angleDeg;
import static org.lagwright.ifc.geometry.Figures.bendRadiusM;
import static org.lagwright.ifc.geometry.Figures.lengthM;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.lagwright.ifc.geometry.shape.Shape;
import org.lagwright.ifc.model.Form;

/** Faces that are no wider than a line, and faces with corners on the edges of their neighbours. */
class SeamsTest {

  private static final double[] X = {1, 0, 0};
  private static final double[] Y = {0, 1, 0};

  private static MeshText reducer() {
    MeshText mesh = new MeshText();
    mesh.tube(
        ring(mesh, 0, 0.0603),
        ring(mesh, 0.03, 0.0603),
        ring(mesh, 0.07, 0.0424),
        ring(mesh, 0.1, 0.0424));
    return mesh;
  }

  private static int[] ring(MeshText mesh, double z, double diameter) {
    return mesh.ring(new double[] {0, 0, z}, X, Y, diameter / 2, 24);
  }

  /** The number of a new point between two corners. */
  private static int between(MeshText mesh, int a, int b, double share) {
    double[] from = mesh.points.get(a);
    double[] to = mesh.points.get(b);
    double[] point = new double[3];
    for (int k = 0; k < 3; k++) {
      point[k] = from[k] + share * (to[k] - from[k]);
    }
    mesh.points.add(point);
    return mesh.points.size() - 1;
  }

  /** Every third face gets two corners on its first edge, which its neighbour lacks. */
  private static MeshText withCornersOnEdges(MeshText mesh) {
    for (int i = 0; i < mesh.faces.size(); i += 3) {
      int[] face = mesh.faces.get(i);
      List<Integer> more = new ArrayList<>();
      more.add(face[0]);
      more.add(between(mesh, face[0], face[1], 0.3));
      more.add(between(mesh, face[0], face[1], 0.6));
      for (int k = 1; k < face.length; k++) {
        more.add(face[k]);
      }
      mesh.faces.set(i, more.stream().mapToInt(Integer::intValue).toArray());
    }
    return mesh;
  }

  /** A triangle with all its corners on one line lies on every third edge. */
  private static MeshText withLines(MeshText mesh) {
    for (int i = mesh.faces.size() - 1; i >= 0; i -= 3) {
      int[] face = mesh.faces.get(i);
      mesh.faces.add(new int[] {face[0], between(mesh, face[0], face[1], 0.4), face[1]});
    }
    return mesh;
  }

  private static void isReducer(Shape shape) {
    assertThat(shape.form()).isEqualTo(Form.REDUCER);
    assertThat(shape.ends().get(0).section().largestSideM()).isCloseTo(0.0603, within(1e-6));
    assertThat(shape.ends().get(1).section().largestSideM()).isCloseTo(0.0424, within(1e-6));
    assertThat(lengthM(shape).value()).isCloseTo(0.1, within(1e-6));
    assertThat(shape.problems()).isEmpty();
  }

  @Test
  void cornersOnEdgesOfNeighboursOpenNoBody() {
    isReducer(TinyModel.item(TinyModel.METRES, withCornersOnEdges(reducer()).faceted(100)));
  }

  @Test
  void facesWithoutWidthAreNoFaces() {
    isReducer(TinyModel.item(TinyModel.METRES, withLines(reducer()).triangulated(100)));
  }

  @Test
  void bendWithBothKeepsItsRadius() {
    MeshText bend = new MeshText().bend(0.02, 0.1, Math.PI / 3, 16, 8);
    MeshText spoiled = withLines(withCornersOnEdges(bend));
    Shape shape = TinyModel.item(TinyModel.METRES, spoiled.polygonal(100));
    assertThat(shape.form()).isEqualTo(Form.BEND);
    assertThat(shape.ends().get(0).section().largestSideM()).isCloseTo(0.04, within(1e-6));
    assertThat(bendRadiusM(shape).value()).isCloseTo(0.1, within(1e-4));
    assertThat(angleDeg(shape).value()).isCloseTo(60, within(0.01));
  }

  @Test
  void missingFacesAreTold() {
    MeshText mesh = reducer();
    List<int[]> triangles = new ArrayList<>();
    for (int[] face : mesh.faces) {
      for (int i = 1; i + 1 < face.length; i++) {
        triangles.add(new int[] {face[0], face[i], face[i + 1]});
      }
    }
    mesh.faces.clear();
    mesh.faces.addAll(triangles);
    // in the wall of the cone
    mesh.faces.remove(mesh.faces.size() / 2);
    Shape shape = TinyModel.item(TinyModel.METRES, mesh.triangulated(100));
    assertThat(shape.problems())
        .containsExactly("faces of the body are missing, sizes and ends are less sure");
  }
}
