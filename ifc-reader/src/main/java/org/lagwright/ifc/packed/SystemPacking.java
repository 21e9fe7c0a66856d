package org.lagwright.ifc.packed;

import java.util.List;
import org.lagwright.ifc.model.MepSystem;
import org.lagwright.ifc.model.Property;

/** Systems, each of which has many elements. */
final class SystemPacking implements Packing<MepSystem> {

  /** The only one. */
  static final Packing<MepSystem> SYSTEM = new SystemPacking();

  private SystemPacking() {}

  @Override
  public void write(MepSystem system, PackedWriter to) {
    to.shared(to.vocabulary().systems, system, WHOLE);
  }

  @Override
  public MepSystem read(PackedReader from) {
    return from.shared(from.vocabulary().systems, WHOLE);
  }

  private static final Packing<List<Property>> PROPERTIES = Packings.PROPERTY.list();

  private static final Packing<MepSystem> WHOLE =
      new Packing<>() {
        @Override
        public void write(MepSystem system, PackedWriter to) {
          to.step(system.step());
          to.text(system.globalId());
          to.text(system.name());
          to.text(system.longName());
          to.word(system.objectType());
          to.word(system.predefinedType());
          PROPERTIES.write(system.properties(), to);
        }

        @Override
        public MepSystem read(PackedReader from) {
          return new MepSystem(
              from.step(),
              Packings.TEXT.read(from),
              Packings.TEXT.read(from),
              from.text(),
              from.word(),
              from.word(),
              PROPERTIES.read(from));
        }
      };
}
