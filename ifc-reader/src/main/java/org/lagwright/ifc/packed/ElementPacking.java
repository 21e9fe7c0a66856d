package org.lagwright.ifc.packed;

import java.util.List;
import org.lagwright.ifc.model.ElementKey;
import org.lagwright.ifc.model.Form;
import org.lagwright.ifc.model.Kind;
import org.lagwright.ifc.model.MepElement;
import org.lagwright.ifc.model.MepSystem;
import org.lagwright.ifc.model.OpenEnd;
import org.lagwright.ifc.model.Port;

/**
 * Whole elements of one file. Of their properties only the number is kept; whoever reads the bytes
 * says where the properties themselves come from.
 */
final class ElementPacking {

  private static final Kind[] KINDS = Kind.values();
  private static final Form[] FORMS = Form.values();
  private static final Packing<List<Port>> PORTS = PortPacking.PORT.list();
  private static final Packing<List<OpenEnd>> OPEN_ENDS = PortPacking.OPEN_END.list();
  private static final Packing<List<String>> WORDS = Packings.WORD.list();
  private static final Packing<List<MepSystem>> SYSTEMS = SystemPacking.SYSTEM.list();

  private ElementPacking() {}

  /**
   * Writes an element behind its instance number.
   *
   * @param propertyCount how many properties it has, from -1 on
   */
  static void write(MepElement element, int propertyCount, PackedWriter to) {
    to.text(element.globalId());
    to.word(element.ifcClass());
    to.text(element.name());
    to.word(element.objectType());
    to.word(element.typeName());
    to.text(element.tag());
    to.word(element.typeClass());
    to.count(element.kind().ordinal());
    to.count(element.form().ordinal());
    MeasuredPacking.SECTION.writeOrNull(element.section(), to);
    Packings.DIRECTION.writeOrNull(element.width(), to);
    MeasuredPacking.SECTIONS.writeOrNull(element.endSections(), to);
    to.word(element.nominalSize());
    MeasuredPacking.FIGURE.writeOrNull(element.lengthM(), to);
    MeasuredPacking.FIGURE.writeOrNull(element.angleDeg(), to);
    MeasuredPacking.FIGURE.writeOrNull(element.bendRadiusM(), to);
    MeasuredPacking.FIGURE.writeOrNull(element.eccentricityM(), to);
    MeasuredPacking.FIGURE.writeOrNull(element.branchLengthM(), to);
    PORTS.write(element.ports(), to);
    SYSTEMS.write(element.systems(), to);
    PlacePacking.PLACE.write(element.place(), to);
    to.count(propertyCount + 1L);
    WORDS.write(element.materials(), to);
    WORDS.write(element.layers(), to);
    Packings.INSULATION.writeOrNull(element.existingInsulation(), to);
    Packings.INSULATION.writeOrNull(element.lining(), to);
    OPEN_ENDS.write(element.openEnds(), to);
    Packings.KEY.writeOrNull(element.repeats(), to);
  }

  /** Reads what {@link #write} wrote. */
  static MepElement read(ElementKey key, PropertySource properties, PackedReader from) {
    return MepElement.builder(key, Packings.TEXT.read(from), Packings.WORD.read(from))
        .named(Packings.TEXT.read(from), from.word(), from.word(), from.text())
        .typeClass(from.word())
        .is(KINDS[(int) from.count()], FORMS[(int) from.count()])
        .section(MeasuredPacking.SECTION.readOrNull(from))
        .width(Packings.DIRECTION.readOrNull(from))
        .ends(MeasuredPacking.SECTIONS.readOrNull(from))
        .nominalSize(from.word())
        .lengthM(MeasuredPacking.FIGURE.readOrNull(from))
        .bend(MeasuredPacking.FIGURE.readOrNull(from), MeasuredPacking.FIGURE.readOrNull(from))
        .eccentricityM(MeasuredPacking.FIGURE.readOrNull(from))
        .branchLengthM(MeasuredPacking.FIGURE.readOrNull(from))
        .ports(PORTS.read(from))
        .systems(SYSTEMS.read(from))
        .place(PlacePacking.PLACE.read(from))
        .properties(properties.propertiesOf(key.step(), (int) from.count() - 1))
        .materials(WORDS.read(from))
        .layers(WORDS.read(from))
        .existingInsulation(Packings.INSULATION.readOrNull(from))
        .lining(Packings.INSULATION.readOrNull(from))
        .openEnds(OPEN_ENDS.read(from))
        .repeats(Packings.KEY.readOrNull(from))
        .build();
  }
}
