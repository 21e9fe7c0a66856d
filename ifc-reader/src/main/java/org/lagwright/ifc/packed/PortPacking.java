package org.lagwright.ifc.packed;

import org.jspecify.annotations.Nullable;
import org.lagwright.ifc.model.ElementKey;
import org.lagwright.ifc.model.OpenEnd;
import org.lagwright.ifc.model.Point;
import org.lagwright.ifc.model.Port;

/** Connection points. */
public final class PortPacking implements Packing<Port> {

  /** The only one. */
  public static final Packing<Port> PORT = new PortPacking();

  private static final int PLACED = 1;
  private static final int DIRECTED = 2;
  private static final int CONNECTED = 4;
  private static final int TOUCHING = 8;
  private static final int TAP = 16;
  private static final int TEMPERED = 32;

  private PortPacking() {}

  @Override
  public void write(Port port, PackedWriter to) {
    Point positionM = port.positionM();
    Point direction = port.direction();
    Double temperatureC = port.temperatureC();
    ElementKey other = port.connectedTo();
    to.count(
        (positionM == null ? 0 : PLACED)
            | (direction == null ? 0 : DIRECTED)
            | (other == null ? 0 : CONNECTED)
            | (port.touching() ? TOUCHING : 0)
            | (port.tap() ? TAP : 0)
            | (temperatureC == null ? 0 : TEMPERED));
    to.step(port.step());
    if (positionM != null) {
      Packings.POSITION.write(positionM, to);
    }
    if (direction != null) {
      Packings.DIRECTION.write(direction, to);
    }
    to.word(port.flow());
    to.word(port.systemType());
    if (temperatureC != null) {
      to.figure(temperatureC);
    }
    if (other != null) {
      Packings.KEY.write(other, to);
    }
  }

  @Override
  public Port read(PackedReader from) {
    int flags = (int) from.count();
    return new Port(
        from.step(),
        read(flags, PLACED, Packings.POSITION, from),
        read(flags, DIRECTED, Packings.DIRECTION, from),
        from.word(),
        from.word(),
        (flags & TEMPERED) == 0 ? null : from.figure(),
        read(flags, CONNECTED, Packings.KEY, from),
        (flags & TOUCHING) != 0,
        (flags & TAP) != 0);
  }

  private static <T> @Nullable T read(int flags, int flag, Packing<T> packing, PackedReader from) {
    return (flags & flag) == 0 ? null : packing.read(from);
  }

  /** Ends that nothing is connected to. */
  static final Packing<OpenEnd> OPEN_END =
      new Packing<>() {
        @Override
        public void write(OpenEnd end, PackedWriter to) {
          Packings.POSITION.write(end.positionM(), to);
          Packings.DIRECTION.writeOrNull(end.outward(), to);
          Packings.SECTION.writeOrNull(end.section(), to);
        }

        @Override
        public OpenEnd read(PackedReader from) {
          return new OpenEnd(
              Packings.POSITION.read(from),
              Packings.DIRECTION.readOrNull(from),
              Packings.SECTION.readOrNull(from));
        }
      };
}
