package org.lagwright.takeoff;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.lagwright.ifc.model.ElementKey;
import org.lagwright.ifc.model.Evidence;
import org.lagwright.ifc.model.ExistingInsulation;
import org.lagwright.ifc.model.Form;
import org.lagwright.ifc.model.How;
import org.lagwright.ifc.model.Kind;
import org.lagwright.ifc.model.Measured;
import org.lagwright.ifc.model.MepElement;
import org.lagwright.ifc.model.MepModel;
import org.lagwright.ifc.model.MepSystem;
import org.lagwright.ifc.model.ModelFile;
import org.lagwright.ifc.model.Place;
import org.lagwright.ifc.model.Point;
import org.lagwright.ifc.model.Port;
import org.lagwright.ifc.model.Property;
import org.lagwright.ifc.model.Section;

/** Elements for tests, one sentence each: a pipe of 60.3 mm, 5 m long, in system "CHWS". */
public final class TestElement {

  private final long step;
  private final MepElement.Builder builder;
  private final List<Port> ports = new ArrayList<>();
  private final List<MepSystem> systems = new ArrayList<>();
  private final List<Property> properties = new ArrayList<>();

  private TestElement(long step, Kind kind, Form form) {
    this(step, "IFC" + kind.name().replace("_", ""), kind, form);
  }

  private TestElement(long step, String ifcClass, Kind kind, Form form) {
    this.step = step;
    this.builder = MepElement.builder(key(step), "guid-" + step, ifcClass).is(kind, form);
  }

  public static ElementKey key(long step) {
    return new ElementKey(0, step);
  }

  public static TestElement of(long step, Kind kind, Form form) {
    return new TestElement(step, kind, form);
  }

  public static TestElement ofClass(long step, String ifcClass, Kind kind, Form form) {
    return new TestElement(step, ifcClass, kind, form);
  }

  public static TestElement pipe(long step, double outsideMm, double lengthM) {
    return of(step, Kind.PIPE_SEGMENT, Form.STRAIGHT).round(outsideMm).length(lengthM);
  }

  public static TestElement duct(long step, double widthMm, double heightMm, double lengthM) {
    Section section = new Section.Rectangular(widthMm / 1000, heightMm / 1000);
    return of(step, Kind.DUCT_SEGMENT, Form.STRAIGHT).section(section).length(lengthM);
  }

  public static TestElement fitting(long step, Form form, double outsideMm) {
    return of(step, Kind.PIPE_FITTING, form).round(outsideMm);
  }

  public TestElement round(double outsideMm) {
    return section(new Section.Round(outsideMm / 1000));
  }

  public TestElement section(Section section) {
    builder.section(
        Measured.of(section, How.SOLID, new Evidence(step, "Profile.Radius", "as drawn")));
    return this;
  }

  public TestElement width(Point along) {
    builder.width(along);
    return this;
  }

  public TestElement ends(Section... ends) {
    builder.ends(Measured.of(List.of(ends), How.SOLID, new Evidence(step, "ends", "as drawn")));
    return this;
  }

  public TestElement nominal(String size) {
    builder.nominalSize(size);
    return this;
  }

  public TestElement length(double lengthM) {
    builder.lengthM(Measured.of(lengthM, How.PORTS, new Evidence(step, "ports", "distance")));
    return this;
  }

  public TestElement bend(double angleDeg, double radiusM) {
    Evidence evidence = new Evidence(step, "IfcRevolvedAreaSolid.Angle", "as drawn");
    builder.bend(
        Measured.of(angleDeg, How.SOLID, evidence), Measured.of(radiusM, How.SOLID, evidence));
    return this;
  }

  public TestElement named(String name) {
    builder.named(name, null, null, null);
    return this;
  }

  public TestElement typed(@Nullable String objectType, @Nullable String typeName) {
    builder.named("", objectType, typeName, null);
    return this;
  }

  /** One text as name, object type and type name, as some exporters write it. */
  public TestElement namedThroughout(String text) {
    builder.named(text + ":4711", text, text, null);
    return this;
  }

  public TestElement typeClass(String ifcClass) {
    builder.typeClass(ifcClass);
    return this;
  }

  public TestElement inSystem(String name) {
    return inSystem(name, null);
  }

  public TestElement inSystem(String name, @Nullable String predefinedType) {
    systems.add(new MepSystem(900, "sys-" + name, name, null, null, predefinedType));
    return this;
  }

  /** A system that states a property for all that belongs to it. */
  public TestElement inSystemStating(String name, Property stated) {
    systems.add(new MepSystem(900, "sys-" + name, name, null, null, null, List.of(stated)));
    return this;
  }

  public TestElement property(String name, String text) {
    return property(new Property("Set", name, text, null, null, false, false, step));
  }

  public TestElement property(Property property) {
    properties.add(property);
    return this;
  }

  public TestElement layer(String layer) {
    builder.layers(List.of(layer));
    return this;
  }

  public TestElement joinedTo(long... others) {
    for (long other : others) {
      ports.add(new Port(step * 10, null, null, null, null, key(other)));
    }
    return this;
  }

  public TestElement port(@Nullable String systemType, long other) {
    ports.add(new Port(step * 10, null, null, null, systemType, key(other)));
    return this;
  }

  /** Free ports that state temperatures, degC, or none. */
  public TestElement portsAt(@Nullable Double... temperaturesC) {
    for (Double celsius : temperaturesC) {
      long id = step * 10 + ports.size();
      ports.add(new Port(id, null, null, null, null, celsius, null, false, false));
    }
    return this;
  }

  /** An end at a place, metres, pointing away from the element. */
  public TestElement end(double x, double y, double dx, double dy) {
    return end(new Point(x, y, 0), new Point(dx, dy, 0));
  }

  public TestElement end(Point at, Point out) {
    ports.add(new Port(step * 10 + ports.size(), at, out, null, null, null));
    return this;
  }

  /** An end at a height above the origin, metres. */
  public TestElement endAtHeight(double z) {
    ports.add(new Port(step * 10 + ports.size(), new Point(0, 0, z), null, null, null, null));
    return this;
  }

  public TestElement freePort() {
    ports.add(new Port(step * 10, null, null, null, null, null));
    return this;
  }

  public TestElement at(@Nullable String storey, @Nullable Boolean external) {
    builder.place(new Place("Alder Quay", storey, 0.0, null, external, null, 2.0, List.of()));
    return this;
  }

  /** On a storey, in a space, with its middle so high above the floor. */
  public TestElement in(String storey, double elevationM, String space, double aboveFloorM) {
    Point middle = new Point(0, 0, elevationM + aboveFloorM);
    builder.place(
        new Place("Alder Quay", storey, elevationM, space, false, middle, aboveFloorM, List.of()));
    return this;
  }

  /** A straight piece along x that begins here; metres. */
  public TestElement along(double x, double y, double lengthM) {
    return end(x, y, -1, 0).end(x + lengthM, y, 1, 0);
  }

  /** The middle of its body, metres. */
  public TestElement middle(double x, double y) {
    builder.place(new Place(null, null, null, null, null, new Point(x, y, 0), null, List.of()));
    return this;
  }

  public TestElement insulated(double thicknessM, long covering) {
    return insulated(thicknessM, "foam", 1, covering);
  }

  public TestElement insulated(
      @Nullable Double thicknessM, @Nullable String material, double share, long covering) {
    builder.existingInsulation(
        new ExistingInsulation(
            thicknessM,
            material,
            share,
            new Evidence(covering, "IfcCovering", "x"),
            List.of(key(covering))));
    return this;
  }

  /** A branch on the side of a main. */
  public TestElement onTheSideOf(int main) {
    ports.add(Port.withoutRecord(new Point(0, 0, 0), null, key(main), true));
    return this;
  }

  public MepElement build() {
    return builder.ports(ports).systems(systems).properties(properties).build();
  }

  /** A model of these elements. */
  public static MepModel model(List<MepElement> elements) {
    ModelFile file = new ModelFile(0, "alder-quay.ifc", "0".repeat(64), "IFC4");
    return new MepModel(file, elements, List.of(), List.of(), java.util.Map.of());
  }

  /** A model of these elements. */
  public static MepModel model(TestElement... elements) {
    return model(List.of(elements).stream().map(TestElement::build).toList());
  }
}
