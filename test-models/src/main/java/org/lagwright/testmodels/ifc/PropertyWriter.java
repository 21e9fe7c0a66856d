package org.lagwright.testmodels.ifc;

import static org.lagwright.testmodels.step.Value.FALSE;
import static org.lagwright.testmodels.step.Value.TRUE;
import static org.lagwright.testmodels.step.Value.typed;

import java.util.List;
import org.lagwright.testmodels.step.Ref;
import org.lagwright.testmodels.step.Value;

/** Writes property and quantity sets. */
public final class PropertyWriter {

  private final IfcWriter ifc;

  public PropertyWriter(IfcWriter ifc) {
    this.ifc = ifc;
  }

  public Ref label(String name, String value) {
    return single(name, typed("IfcLabel", value));
  }

  public Ref truth(String name, boolean value) {
    return single(name, typed("IfcBoolean", value ? TRUE : FALSE));
  }

  public Ref real(String name, double value) {
    return single(name, typed("IfcReal", value));
  }

  /** A positive length, given in millimetres, written in the unit of the file. */
  public Ref length(String name, double mm) {
    return single(name, typed("IfcPositiveLengthMeasure", ifc.units().length(mm)));
  }

  /** A size in a standard set of a type: a list with one value in IFC2X3, a single value later. */
  public Ref typeSize(String name, double mm) {
    if (!ifc.schema().isOld()) {
      return length(name, mm);
    }
    Value size = typed("IfcPositiveLengthMeasure", ifc.units().length(mm));
    return ifc.step().add("IfcPropertyListValue", name, null, List.of(size), null);
  }

  /** A property with one value of the enumeration that its name stands for. */
  public Ref choice(String name, String value) {
    return ifc.step()
        .add("IfcPropertyEnumeratedValue", name, null, List.of(typed("IfcLabel", value)), null);
  }

  /** Any single value. */
  public Ref single(String name, Value value) {
    return ifc.step().add("IfcPropertySingleValue", name, null, value, null);
  }

  /** A property set, not yet bound to anything. */
  public Ref set(String key, String name, List<Ref> properties) {
    return ifc.root("IfcPropertySet", "set " + key, name, null, properties);
  }

  /** A quantity set with one length, under the name the schema has for base quantities. */
  public Ref lengthQuantity(String key, String setName, String quantity, double mm) {
    double value = ifc.units().length(mm);
    Ref length =
        ifc.schema().isOld()
            ? ifc.step().add("IfcQuantityLength", quantity, null, null, value)
            : ifc.step().add("IfcQuantityLength", quantity, null, null, value, null);
    String name = ifc.schema().isOld() ? "BaseQuantities" : setName;
    return ifc.root(
        "IfcElementQuantity", "quantities " + key, name, null, "BaseQuantities", List.of(length));
  }

  /** Binds a set to elements. */
  public void bind(String key, List<Ref> elements, Ref set) {
    ifc.root("IfcRelDefinesByProperties", "defines " + key, null, null, elements, set);
  }
}
