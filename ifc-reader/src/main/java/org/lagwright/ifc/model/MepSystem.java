package org.lagwright.ifc.model;

import java.util.List;
import java.util.Objects;
import org.jspecify.annotations.Nullable;

/**
 * A system or group that elements belong to.
 *
 * @param predefinedType IfcDistributionSystemEnum value as written, null if absent
 * @param properties what it states for all that belongs to it
 */
public record MepSystem(
    long step,
    String globalId,
    String name,
    @Nullable String longName,
    @Nullable String objectType,
    @Nullable String predefinedType,
    List<Property> properties) {

  public MepSystem {
    properties = List.copyOf(properties);
  }

  /** One that states no properties. */
  public MepSystem(
      long step,
      String globalId,
      String name,
      @Nullable String longName,
      @Nullable String objectType,
      @Nullable String predefinedType) {
    this(step, globalId, name, longName, objectType, predefinedType, List.of());
  }

  /** Spelled out: the compiler's own is put together when first asked, which takes long. */
  @Override
  public boolean equals(@Nullable Object other) {
    return other instanceof MepSystem o
        && step == o.step
        && globalId.equals(o.globalId)
        && name.equals(o.name)
        && Objects.equals(longName, o.longName)
        && Objects.equals(objectType, o.objectType)
        && Objects.equals(predefinedType, o.predefinedType)
        && properties.equals(o.properties);
  }

  @Override
  public int hashCode() {
    return Long.hashCode(step) * 31 + globalId.hashCode();
  }
}
