package org.lagwright.ifc.geometry;

import java.util.ArrayList;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.lagwright.ifc.geometry.curve.Curves;
import org.lagwright.ifc.geometry.curve.Leg;
import org.lagwright.ifc.geometry.frame.Coordinates;
import org.lagwright.ifc.geometry.frame.Item;
import org.lagwright.ifc.geometry.frame.ShapeEnd;
import org.lagwright.ifc.geometry.mesh.BranchedRun;
import org.lagwright.ifc.geometry.mesh.EndFinder;
import org.lagwright.ifc.geometry.mesh.FrameBore;
import org.lagwright.ifc.geometry.mesh.Loft;
import org.lagwright.ifc.geometry.mesh.Mesh;
import org.lagwright.ifc.geometry.mesh.MeshMeasurer;
import org.lagwright.ifc.geometry.mesh.TangentBend;
import org.lagwright.ifc.geometry.profile.Bores;
import org.lagwright.ifc.geometry.profile.Profiles;
import org.lagwright.ifc.geometry.shape.Collars;
import org.lagwright.ifc.geometry.shape.Parts;
import org.lagwright.ifc.geometry.shape.Prism;
import org.lagwright.ifc.geometry.shape.Shape;
import org.lagwright.ifc.geometry.shape.ShapeHints;
import org.lagwright.ifc.geometry.solid.BendChain;
import org.lagwright.ifc.geometry.solid.Clippings;
import org.lagwright.ifc.geometry.solid.CoaxialBody;
import org.lagwright.ifc.geometry.solid.Extrusions;
import org.lagwright.ifc.geometry.solid.JoinedPieces;
import org.lagwright.ifc.geometry.solid.MainWall;
import org.lagwright.ifc.geometry.solid.MeshReader;
import org.lagwright.ifc.geometry.solid.PiecesInLine;
import org.lagwright.ifc.geometry.solid.Primitives;
import org.lagwright.ifc.geometry.solid.Revolutions;
import org.lagwright.ifc.geometry.solid.SectionedSweeps;
import org.lagwright.ifc.geometry.solid.SolidReader;
import org.lagwright.ifc.geometry.solid.Sweeps;
import org.lagwright.ifc.model.Form;
import org.lagwright.ifc.model.How;
import org.lagwright.ifc.model.Section;
import org.lagwright.ifc.schema.IfcRecord;
import org.lagwright.ifc.step.StepLimits;

/** Measures body items of every class that is read, and decides between several of them. */
public final class Solids {

  /** Boolean results of a body that are measured; a result may use another one twice. */
  private static final int MAX_RESULTS = 200;

  /** Bodies that a surface model draws side by side; more are the parts of a machine. */
  private static final int MAX_SHELLS = 10;

  private final int maxDepth;
  private final Bores bores;
  private final Extrusions extrusions;
  private final Revolutions revolutions;
  private final Sweeps sweeps;
  private final SectionedSweeps sectioned;
  private final Clippings clippings;
  private final Primitives primitives;
  private final MeshReader meshes;

  Solids(Coordinates coordinates, StepLimits limits) {
    Curves curves = new Curves(coordinates);
    Profiles profiles = new Profiles(coordinates, curves);
    this.bores = new Bores(coordinates, curves, profiles);
    this.maxDepth = limits.maxReferenceDepth();
    this.extrusions = new Extrusions(coordinates, profiles, bores);
    this.revolutions = new Revolutions(coordinates, profiles);
    this.sweeps = new Sweeps(coordinates, curves, profiles);
    this.sectioned = new SectionedSweeps(coordinates, curves, profiles);
    this.clippings = new Clippings(coordinates, new SolidReader(coordinates, Leg.STEP_RAD));
    this.primitives = new Primitives(coordinates, Leg.STEP_RAD);
    this.meshes = new MeshReader(coordinates, curves);
  }

  /** One item is measured alone; of several the ends that stay free decide, else the largest. */
  Shape measure(List<Item> body, ShapeHints hints) {
    return measure(body, hints, 0, new Visits());
  }

  /** How many boolean results of a body were measured, and what was read of its items. */
  private static final class Visits {
    private final Map<Item, Mesh> meshes = new IdentityHashMap<>();
    private int results;

    boolean areTooMany() {
      return ++results > MAX_RESULTS;
    }
  }

  private Shape measure(List<Item> body, ShapeHints hints, int depth, Visits visits) {
    List<Item> items = Unions.operands(body, depth, maxDepth);
    List<Shape> shapes = new ArrayList<>();
    for (Item item : items) {
      shapes.add(measure(item, hints, depth, visits));
    }
    if (!hints.straight()) {
      Collars.takeOff(items, shapes);
    }
    Shape largest = shapes.get(0);
    for (Shape shape : shapes) {
      largest = weight(shape) > weight(largest) ? shape : largest;
    }
    if (items.size() == 1) {
      return largest;
    }
    long step = items.get(0).record().id();
    Shape coaxial = hints.straight() ? coaxial(items, shapes, largest, visits) : null;
    if (coaxial != null) {
      return coaxial;
    }
    Shape chain = BendChain.of(shapes, hints, step);
    Shape told = chain != null ? chain : BranchedRun.of(shapes, largest, step, hints);
    if (told == null && JoinedPieces.mayBe(shapes, hints)) {
      told = JoinedPieces.of(parts(items, shapes, visits), step, hints);
    }
    return told != null ? told : whole(items, shapes, largest, hints, visits);
  }

  /** A straight piece of items about one axis, null if they are none. */
  private @Nullable Shape coaxial(
      List<Item> items, List<Shape> shapes, Shape largest, Visits visits) {
    if (!CoaxialBody.mayBe(shapes)) {
      return null;
    }
    List<CoaxialBody.Part> parts = parts(items, shapes, visits);
    Shape axial = Prism.mayLieOtherwise(largest) ? bored(parts, largest) : largest;
    return CoaxialBody.of(parts, axial, items.get(0).record().id());
  }

  /** What has a bore tells along which of its edges a box beside it runs. */
  private static Shape bored(List<CoaxialBody.Part> parts, Shape largest) {
    for (CoaxialBody.Part part : parts) {
      if (part.bore() != null) {
        return part.shape();
      }
    }
    return largest;
  }

  private List<CoaxialBody.Part> parts(List<Item> items, List<Shape> shapes, Visits visits) {
    List<CoaxialBody.Part> parts = new ArrayList<>(items.size());
    for (int i = 0; i < items.size(); i++) {
      parts.add(new CoaxialBody.Part(shapes.get(i), bore(items.get(i), shapes.get(i), visits)));
    }
    return parts;
  }

  private @Nullable Section bore(Item item, Shape shape, Visits visits) {
    boolean faces = shape.section() != null && shape.section().how() == How.MESH;
    Mesh mesh = faces ? mesh(item, visits) : null;
    if (mesh == null) {
      return bores.of(item);
    }
    Section frame = FrameBore.of(mesh, shape);
    return frame == null ? MainWall.bore(mesh, shape) : frame;
  }

  /** The faces of an item, read once for all that is measured by them; null if it has none. */
  private @Nullable Mesh mesh(Item item, Visits visits) {
    Mesh known = visits.meshes.get(item);
    if (known == null) {
      known = meshes.read(item);
      if (known != null) {
        visits.meshes.put(item, known);
      }
    }
    return known;
  }

  private Shape whole(
      List<Item> items, List<Shape> shapes, Shape largest, ShapeHints hints, Visits visits) {
    Mesh.Builder builder = new Mesh.Builder();
    boolean meshed = false;
    int unread = 0;
    for (int i = 0; i < items.size(); i++) {
      List<ShapeEnd> ends = shapes.get(i).ends();
      if (isSolid(shapes.get(i)) && ends.size() == 2) {
        Loft.add(ends.get(0), ends.get(1), builder);
      } else {
        Mesh faces = mesh(items.get(i), visits);
        if (faces != null) {
          builder.add(faces);
        } else if (isUnread(items.get(i), shapes.get(i))) {
          unread++;
        }
        meshed = true;
      }
    }
    Mesh mesh = builder.build();
    String note = items.size() + " items in the body, the largest of them measured";
    if (mesh == null) {
      return Parts.withProblem(largest, note);
    }
    How how = meshed ? How.MESH : How.SOLID;
    String what = "body of " + items.size() + " items";
    Shape whole = measure(mesh, items.get(0).record().id(), what, hints, how);
    if (whole.form() == Form.BEND && TangentBend.turnsLike(largest, whole.ends())) {
      return TangentBend.of(largest, whole.ends());
    }
    if (whole.form() != Form.UNKNOWN && !isStraightened(largest, whole)) {
      String problem = unread + " of " + items.size() + " items in the body cannot be read";
      return unread == 0 ? whole : Parts.withProblem(whole, problem);
    }
    Shape inLine = hints.straight() ? null : PiecesInLine.of(shapes, items.get(0).record().id());
    return inLine == null ? Parts.withProblem(largest, note) : inLine;
  }

  /** True for a solid that cannot be read; curves and texts beside a body are no part of it. */
  private static boolean isUnread(Item item, Shape shape) {
    return shape.section() == null && shape.ends().isEmpty() && item.record().is("IfcSolidModel");
  }

  /**
   * A bend among vanes and supports: from end to end it was joined as if it were straight, and has
   * other ends now.
   */
  private static boolean isStraightened(Shape largest, Shape whole) {
    if (largest.form() != Form.BEND || whole.form() == Form.BEND || whole.ends().size() > 2) {
      return false;
    }
    for (ShapeEnd end : whole.ends()) {
      if (end.isAmong(largest.ends(), EndFinder.SAME_PLANE_M)) {
        return false;
      }
    }
    return true;
  }

  private static boolean isSolid(Shape shape) {
    return shape.section() != null && shape.section().how() == How.SOLID;
  }

  private static double weight(Shape shape) {
    Section section = shape.section() == null ? null : shape.section().value();
    Double lengthM = shape.lengthM() == null ? null : shape.lengthM().value();
    return section == null ? 0 : section.perimeterM() * (lengthM == null ? 0.001 : lengthM);
  }

  private Shape measure(Item item, ShapeHints hints, int depth, Visits visits) {
    IfcRecord record = item.record();
    if (record.is("IfcBooleanResult") || record.is("IfcCsgSolid")) {
      Shape shape = combined(item, hints, depth, visits);
      return depth == 0 && Primitives.isPointed(shape)
          ? Shape.unmeasured(record + ": cone that comes to a point")
          : shape;
    }
    if (record.is("IfcExtrudedAreaSolid")) {
      return extrusions.measure(item, hints);
    }
    if (record.is("IfcRevolvedAreaSolid")) {
      return revolutions.measure(item);
    }
    if (record.is("IfcSweptDiskSolid")) {
      return sweeps.disk(item);
    }
    if (record.is("IfcSweptAreaSolid")) {
      return sweeps.profile(item);
    }
    if (record.is("IfcSectionedSolid")) {
      return sectioned.solid(item);
    }
    if (record.is("IfcSectionedSpine")) {
      return sectioned.spine(item);
    }
    if (record.is("IfcCsgPrimitive3D")) {
      return primitives.shape(item, hints);
    }
    Mesh mesh = mesh(item, visits);
    if (mesh == null) {
      return Shape.unmeasured(record + " is not measured");
    }
    Shape shape = measure(mesh, record.id(), record.entityName(), hints, How.MESH);
    boolean isTold = shape.section() != null || !shape.ends().isEmpty();
    Shape apart = isTold ? shape : shells(item, hints, depth, visits);
    return apart == null ? shape : apart;
  }

  /** A surface model of whole bodies that run into one another, null if it is none. */
  private @Nullable Shape shells(Item item, ShapeHints hints, int depth, Visits visits) {
    IfcRecord record = item.record();
    List<IfcRecord> shells =
        record.refs(record.is("IfcFaceBasedSurfaceModel") ? "FbsmFaces" : "SbsmBoundary");
    if (shells.size() < 2 || shells.size() > MAX_SHELLS) {
      return null;
    }
    List<Item> bodies = new ArrayList<>(shells.size());
    for (IfcRecord shell : shells) {
      bodies.add(new Item(shell, item.frame()));
    }
    Shape shape = measure(bodies, hints, depth, visits);
    return shape.section() != null && shape.ends().size() > 1 ? shape : null;
  }

  private static Shape measure(Mesh mesh, long step, String what, ShapeHints hints, How how) {
    return MainWall.in(mesh, new MeshMeasurer(mesh, step, what, hints, how).measure(), hints);
  }

  private Shape combined(Item item, ShapeHints hints, int depth, Visits visits) {
    IfcRecord record = item.record();
    boolean csg = record.is("IfcCsgSolid");
    IfcRecord first = record.ref(csg ? "TreeRootExpression" : "FirstOperand");
    if (first == null || depth >= maxDepth || visits.areTooMany()) {
      return Shape.unmeasured(record + ": first operand missing, too deep or one of too many");
    }
    Item body = new Item(first, item.frame());
    if (csg) {
      return measure(body, hints, depth + 1, visits);
    }
    Shape uncut = uncut(body, hints, depth + 1, visits);
    Prism open = Prism.isPlainBox(uncut) ? bored(item, uncut, depth, visits) : null;
    return open != null ? open.measure(hints) : clippings.cut(record, uncut, item.frame());
  }

  /** A box that lacks what runs through it, null if it does not. */
  private @Nullable Prism bored(Item item, Shape box, int depth, Visits visits) {
    IfcRecord record = item.record();
    IfcRecord taken = record.ref("SecondOperand");
    if (taken == null
        || taken.is("IfcHalfSpaceSolid")
        || !"DIFFERENCE".equals(record.enumeration("Operator"))) {
      return null;
    }
    Item inner = new Item(taken, item.frame());
    return Prism.bored(box, measure(inner, ShapeHints.NONE, depth + 1, visits));
  }

  /** What is cut: bodies that were joined before, the cone that is no pipe before, or one body. */
  private Shape uncut(Item body, ShapeHints hints, int depth, Visits visits) {
    return Unions.isUnion(body.record())
        ? measure(List.of(body), hints, depth, visits)
        : body.record().is("IfcRightCircularCone")
            ? primitives.cone(body)
            : measure(body, hints, depth, visits);
  }
}
