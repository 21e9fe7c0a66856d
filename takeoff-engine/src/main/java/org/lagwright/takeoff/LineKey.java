package org.lagwright.takeoff;

import java.util.Comparator;
import org.lagwright.ifc.model.Form;
import org.lagwright.ifc.model.Kind;
import org.lagwright.takeoff.measure.Size;

/**
 * What the elements of one line have in common, in the order in which lines are listed.
 *
 * @param serviceOrder position of the service in the services pack
 */
record LineKey(
    int serviceOrder,
    String serviceId,
    String serviceName,
    Kind kind,
    Form form,
    Size size,
    String location,
    String materialId,
    String materialName,
    double thicknessM,
    String layers)
    implements Comparable<LineKey> {

  private static final Comparator<LineKey> ORDER =
      Comparator.comparingInt(LineKey::serviceOrder)
          .thenComparing(LineKey::serviceId)
          .thenComparing(LineKey::kind)
          .thenComparing(LineKey::form)
          .thenComparing(LineKey::size)
          .thenComparing(LineKey::location)
          .thenComparing(LineKey::materialId)
          .thenComparingDouble(LineKey::thicknessM)
          .thenComparing(LineKey::layers);

  @Override
  public int compareTo(LineKey other) {
    return ORDER.compare(this, other);
  }
}
