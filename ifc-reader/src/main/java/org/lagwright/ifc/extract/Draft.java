package org.lagwright.ifc.extract;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.lagwright.ifc.geometry.Shape;
import org.lagwright.ifc.model.Effect;
import org.lagwright.ifc.model.ElementKey;
import org.lagwright.ifc.model.ExistingInsulation;
import org.lagwright.ifc.model.Finding;
import org.lagwright.ifc.model.Form;
import org.lagwright.ifc.model.Kind;
import org.lagwright.ifc.model.Measured;
import org.lagwright.ifc.model.Port;
import org.lagwright.ifc.model.Property;
import org.lagwright.ifc.model.ReadFinding;
import org.lagwright.ifc.model.Section;

/** One element while it is being worked out: what was read, and what has been decided so far. */
final class Draft {

  final ElementKey key;
  final String globalId;
  final String ifcClass;
  final Names names;

  /** Those that answer some question about the element. */
  List<Property> properties;

  /** How many it has in all, as {@link PropertyReader.Reading#all}. */
  final int propertyCount;

  final List<PropertyReader.Repeated> repeated;
  List<Port> ports;
  Shape shape;
  final boolean generalSegment;

  /** True if it is called insulation or lining. */
  final boolean calledInsulation;

  /** The ports, and the ends that touch other elements; the ports first, in their order. */
  List<Port> joints;

  @Nullable Kind kind;
  Form form;

  /** True if words told the form, not the enumeration of its class. */
  final boolean formIsWorded;

  @Nullable Measured<Section> section;
  @Nullable Measured<List<Section>> ends;
  @Nullable String nominalSize;
  @Nullable Measured<Double> lengthM;
  @Nullable Measured<Double> angleDeg;
  @Nullable Measured<Double> bendRadiusM;
  @Nullable Measured<Double> eccentricityM;
  @Nullable Measured<Double> branchLengthM;

  /** Insulation that was drawn into the body. */
  @Nullable ExistingInsulation drawnInsulation;

  private final List<Finding> findings = new ArrayList<>();

  Draft(
      ElementKey key,
      String globalId,
      String ifcClass,
      Names names,
      PropertyReader.Reading properties,
      List<Port> ports,
      Shape shape,
      KindReader.Reading reading,
      boolean generalSegment) {
    this.key = key;
    this.globalId = globalId;
    this.ifcClass = ifcClass;
    this.names = names;
    this.properties = properties.properties();
    this.propertyCount = properties.all();
    this.repeated = properties.repeated();
    this.ports = ports;
    this.joints = ports;
    this.shape = shape;
    this.kind = reading.kind();
    this.form = reading.form();
    this.formIsWorded = reading.worded();
    this.generalSegment = generalSegment;
    this.calledInsulation = names.all().stream().anyMatch(Words::isInsulation);
  }

  boolean isSegment() {
    return kind == null ? generalSegment : kind.isSegment();
  }

  /** True for {@link Kind#isLaggedItem}, and for a general element that is no segment. */
  boolean isLaggedItem() {
    return kind == null ? !generalSegment : kind.isLaggedItem();
  }

  void note(ReadFinding code, Effect effect, String... values) {
    findings.add(Finding.about(key, code, effect, values));
  }

  /** Lets go of what is not needed once the element is made. */
  void finish() {
    properties = List.of();
    ports = List.of();
    joints = List.of();
    shape = Shape.NOTHING;
  }

  List<Finding> findings() {
    return findings;
  }
}
