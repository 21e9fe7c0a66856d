package org.lagwright.ifc.extract.draft;

import java.util.Locale;
import org.jspecify.annotations.Nullable;
import org.lagwright.ifc.extract.property.BelongingReader;
import org.lagwright.ifc.extract.text.Words;
import org.lagwright.ifc.model.MepSystem;
import org.lagwright.ifc.schema.IfcRecord;

/**
 * What tells that air flows in a piece of which neither class nor names say whether it is a pipe or
 * a duct: what its ports say that they join, else the system that it belongs to, else the layer
 * that it is drawn on.
 */
public final class AirLines {

  private final BelongingReader belongings;
  private final PortReader ports;

  /** Asks for systems and ports here. */
  public AirLines(BelongingReader belongings, PortReader ports) {
    this.belongings = belongings;
    this.ports = ports;
  }

  /** Why air flows in an element, in the words of a finding; null if nothing says so. */
  @Nullable String why(IfcRecord element) {
    if (ports.joinDucts(element.id())) {
      return "it has ports of ducts";
    }
    for (MepSystem system : belongings.systemsOf(element.id())) {
      if (isOfAir(system)) {
        return "its system is " + system.name();
      }
    }
    for (String layer : belongings.layersOf(element)) {
      if (Words.isAir(layer)) {
        return "its layer is " + layer;
      }
    }
    return null;
  }

  private static boolean isOfAir(MepSystem system) {
    String predefined = system.predefinedType();
    return (predefined != null && predefined.toUpperCase(Locale.ROOT).equals("VENTILATION"))
        || Words.isAir(system.name())
        || (system.longName() != null && Words.isAir(system.longName()))
        || (system.objectType() != null && Words.isAir(system.objectType()));
  }
}
