package org.lagwright.ifc.extract.draft;

import java.util.List;
import java.util.Objects;
import org.jspecify.annotations.Nullable;
import org.lagwright.ifc.geometry.frame.ShapeEnd;
import org.lagwright.ifc.geometry.shape.Shape;
import org.lagwright.ifc.geometry.shape.Sheath;
import org.lagwright.ifc.model.ExistingInsulation;
import org.lagwright.ifc.model.Form;
import org.lagwright.ifc.model.Measured;
import org.lagwright.ifc.model.Port;
import org.lagwright.ifc.model.Property;
import org.lagwright.ifc.model.Section;
import org.lagwright.ifc.packed.MeasuredPacking;
import org.lagwright.ifc.packed.PackedReader;
import org.lagwright.ifc.packed.PackedWriter;
import org.lagwright.ifc.packed.Packing;
import org.lagwright.ifc.packed.Packings;
import org.lagwright.ifc.packed.PortPacking;

/** The parts of a {@link Draft} in few bytes. */
final class DraftPacking {

  private static final Form[] FORMS = Form.values();
  private static final Packing<List<Property>> PROPERTIES = Packings.PROPERTY.list();
  private static final Packing<List<Port>> PORTS = PortPacking.PORT.list();
  private static final Packing<List<String>> TEXTS = Packings.TEXT.list();
  private static final Packing<List<ShapeEnd>> ENDS = new EndPacking().list();

  private DraftPacking() {}

  static final Packing<Worded> WORDED =
      new Packing<>() {
        @Override
        public void write(Worded worded, PackedWriter to) {
          Names names = worded.names();
          to.word(worded.ifcClass());
          to.text(names.own());
          to.word(names.objectType());
          to.word(names.typeName());
          to.text(names.tag());
          TEXTS.write(names.described(), to);
          PROPERTIES.write(worded.properties(), to);
        }

        @Override
        public Worded read(PackedReader from) {
          return new Worded(
              Packings.WORD.read(from),
              new Names(
                  Packings.TEXT.read(from),
                  from.word(),
                  from.word(),
                  from.text(),
                  TEXTS.read(from)),
              PROPERTIES.read(from));
        }
      };

  private static final Packing<Sheath> SHEATH =
      new Packing<>() {
        @Override
        public void write(Sheath sheath, PackedWriter to) {
          MeasuredPacking.SECTION.write(sheath.inner(), to);
          Packings.SECTION.write(sheath.outer(), to);
          to.figure(sheath.share());
        }

        @Override
        public Sheath read(PackedReader from) {
          return new Sheath(
              MeasuredPacking.SECTION.read(from), Packings.SECTION.read(from), from.figure());
        }
      };

  static final Packing<Drawn> DRAWN =
      new Packing<>() {
        @Override
        public void write(Drawn drawn, PackedWriter to) {
          Shape shape = drawn.shape();
          to.count(shape.form().ordinal());
          MeasuredPacking.SECTION.writeOrNull(shape.section(), to);
          MeasuredPacking.FIGURE.writeOrNull(shape.lengthM(), to);
          MeasuredPacking.FIGURE.writeOrNull(shape.angleDeg(), to);
          MeasuredPacking.FIGURE.writeOrNull(shape.bendRadiusM(), to);
          ENDS.write(shape.ends(), to);
          TEXTS.write(shape.problems(), to);
          SHEATH.writeOrNull(shape.sheath(), to);
          PORTS.write(drawn.ports(), to);
          PORTS.writeOrNull(drawn.areJoined() ? drawn.joints() : null, to);
        }

        @Override
        public Drawn read(PackedReader from) {
          Shape shape =
              new Shape(
                  FORMS[(int) from.count()],
                  MeasuredPacking.SECTION.readOrNull(from),
                  MeasuredPacking.FIGURE.readOrNull(from),
                  MeasuredPacking.FIGURE.readOrNull(from),
                  MeasuredPacking.FIGURE.readOrNull(from),
                  ENDS.read(from),
                  TEXTS.read(from),
                  SHEATH.readOrNull(from));
          List<Port> ports = PORTS.read(from);
          return new Drawn(shape, ports, Objects.requireNonNullElse(PORTS.readOrNull(from), ports));
        }
      };

  static final Packing<Figures> FIGURES =
      new Packing<>() {
        @Override
        public void write(Figures figures, PackedWriter to) {
          // first what others ask for
          Packings.INSULATION.writeOrNull(figures.drawnInsulation(), to);
          MeasuredPacking.SECTION.writeOrNull(figures.section(), to);
          MeasuredPacking.SECTIONS.writeOrNull(figures.ends(), to);
          to.word(figures.nominalSize());
          MeasuredPacking.FIGURE.writeOrNull(figures.lengthM(), to);
          MeasuredPacking.FIGURE.writeOrNull(figures.angleDeg(), to);
          MeasuredPacking.FIGURE.writeOrNull(figures.bendRadiusM(), to);
          MeasuredPacking.FIGURE.writeOrNull(figures.eccentricityM(), to);
          MeasuredPacking.FIGURE.writeOrNull(figures.branchLengthM(), to);
        }

        @Override
        public Figures read(PackedReader from) {
          Figures figures = new Figures();
          figures.setDrawnInsulation(insulationOf(from));
          figures.setSection(MeasuredPacking.SECTION.readOrNull(from));
          figures.setEnds(MeasuredPacking.SECTIONS.readOrNull(from));
          figures.setNominalSize(from.word());
          figures.setLengthM(MeasuredPacking.FIGURE.readOrNull(from));
          figures.setAngleDeg(MeasuredPacking.FIGURE.readOrNull(from));
          figures.setBendRadiusM(MeasuredPacking.FIGURE.readOrNull(from));
          figures.setEccentricityM(MeasuredPacking.FIGURE.readOrNull(from));
          figures.setBranchLengthM(MeasuredPacking.FIGURE.readOrNull(from));
          return figures;
        }
      };

  /** The drawn insulation alone, from the bytes of all figures. */
  static @Nullable ExistingInsulation insulationOf(PackedReader figures) {
    return Packings.INSULATION.readOrNull(figures);
  }

  /** The section alone, from the bytes of all figures. */
  static @Nullable Measured<Section> sectionOf(PackedReader figures) {
    insulationOf(figures);
    return MeasuredPacking.SECTION.readOrNull(figures);
  }

  private static final class EndPacking implements Packing<ShapeEnd> {

    @Override
    public void write(ShapeEnd end, PackedWriter to) {
      Packings.POSITION.write(end.centreM(), to);
      Packings.DIRECTION.write(end.outward(), to);
      Packings.SECTION.write(end.section(), to);
      Packings.DIRECTION.writeOrNull(end.width(), to);
    }

    @Override
    public ShapeEnd read(PackedReader from) {
      return new ShapeEnd(
          Packings.POSITION.read(from),
          Packings.DIRECTION.read(from),
          Packings.SECTION.read(from),
          Packings.DIRECTION.readOrNull(from));
    }
  }
}
