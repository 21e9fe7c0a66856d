package org.lagwright.ifc.packed;

import java.util.List;
import java.util.Objects;
import org.lagwright.ifc.model.ElementKey;
import org.lagwright.ifc.model.Evidence;
import org.lagwright.ifc.model.ExistingInsulation;
import org.lagwright.ifc.model.Point;
import org.lagwright.ifc.model.Property;
import org.lagwright.ifc.model.Section;

/** The plain values of the model. */
public final class Packings {

  private static final List<Point> AXES =
      List.of(
          new Point(1, 0, 0),
          new Point(-1, 0, 0),
          new Point(0, 1, 0),
          new Point(0, -1, 0),
          new Point(0, 0, 1),
          new Point(0, 0, -1));

  private Packings() {}

  /** Texts of the element's own. */
  public static final Packing<String> TEXT =
      new Packing<>() {
        @Override
        public void write(String text, PackedWriter to) {
          to.text(text);
        }

        @Override
        public String read(PackedReader from) {
          return Objects.requireNonNull(from.text());
        }
      };

  /** Texts that other elements have as well. */
  public static final Packing<String> WORD =
      new Packing<>() {
        @Override
        public void write(String word, PackedWriter to) {
          to.word(word);
        }

        @Override
        public String read(PackedReader from) {
          return Objects.requireNonNull(from.word());
        }
      };

  /** What starts with a letter is worded, and stands on many elements; figures do not. */
  static final Packing<String> PHRASE =
      new Packing<>() {
        @Override
        public void write(String phrase, PackedWriter to) {
          boolean worded = !phrase.isEmpty() && Character.isLetter(phrase.charAt(0));
          to.count(worded ? 1 : 0);
          (worded ? WORD : TEXT).write(phrase, to);
        }

        @Override
        public String read(PackedReader from) {
          return (from.count() == 1 ? WORD : TEXT).read(from);
        }
      };

  /** Figures. */
  public static final Packing<Double> FIGURE =
      new Packing<>() {
        @Override
        public void write(Double figure, PackedWriter to) {
          to.figure(figure);
        }

        @Override
        public Double read(PackedReader from) {
          return from.figure();
        }
      };

  /** Positions. */
  public static final Packing<Point> POSITION =
      new Packing<>() {
        @Override
        public void write(Point p, PackedWriter to) {
          to.figure(p.x());
          to.figure(p.y());
          to.figure(p.z());
        }

        @Override
        public Point read(PackedReader from) {
          return new Point(from.figure(), from.figure(), from.figure());
        }
      };

  /** Directions, most of which lie along an axis. */
  public static final Packing<Point> DIRECTION =
      new Packing<>() {
        @Override
        public void write(Point direction, PackedWriter to) {
          int axis = AXES.indexOf(direction) + 1;
          to.count(axis);
          if (axis == 0) {
            POSITION.write(direction, to);
          }
        }

        @Override
        public Point read(PackedReader from) {
          int axis = (int) from.count();
          return axis == 0 ? POSITION.read(from) : AXES.get(axis - 1);
        }
      };

  /** Sections. */
  public static final Packing<Section> SECTION =
      new Packing<>() {
        private static final int ROUND = 0;
        private static final int RECTANGULAR = 1;
        private static final int OVAL = 2;

        @Override
        public void write(Section section, PackedWriter to) {
          if (section instanceof Section.Round round) {
            to.count(ROUND);
            to.figure(round.outsideDiameterM());
          } else if (section instanceof Section.Rectangular sides) {
            to.count(RECTANGULAR);
            to.figure(sides.widthM());
            to.figure(sides.heightM());
          } else {
            Section.Oval oval = (Section.Oval) section;
            to.count(OVAL);
            to.figure(oval.widthM());
            to.figure(oval.heightM());
          }
        }

        @Override
        public Section read(PackedReader from) {
          return switch ((int) from.count()) {
            case ROUND -> new Section.Round(from.figure());
            case RECTANGULAR -> new Section.Rectangular(from.figure(), from.figure());
            default -> new Section.Oval(from.figure(), from.figure());
          };
        }
      };

  /** Where a value comes from. */
  public static final Packing<Evidence> EVIDENCE =
      new Packing<>() {
        @Override
        public void write(Evidence evidence, PackedWriter to) {
          if (to.isNew(evidence)) {
            to.word(evidence.owner());
            to.word(evidence.member());
            PHRASE.write(evidence.raw(), to);
          }
        }

        @Override
        public Evidence read(PackedReader from) {
          long code = from.count();
          if (code == 0) {
            return from.seen((int) from.count());
          }
          long step = from.step(code - 1);
          return from.see(new Evidence(step, WORD.read(from), WORD.read(from), PHRASE.read(from)));
        }
      };

  /** Names of elements. */
  public static final Packing<ElementKey> KEY =
      new Packing<>() {
        @Override
        public void write(ElementKey key, PackedWriter to) {
          to.count(key.model());
          to.step(key.step());
        }

        @Override
        public ElementKey read(PackedReader from) {
          return new ElementKey((int) from.count(), from.step());
        }
      };

  private static final Packing<List<ElementKey>> KEYS = KEY.list();

  /** Insulation that the model shows. */
  public static final Packing<ExistingInsulation> INSULATION =
      new Packing<>() {
        @Override
        public void write(ExistingInsulation shown, PackedWriter to) {
          FIGURE.writeOrNull(shown.thicknessM(), to);
          to.word(shown.material());
          to.figure(shown.share());
          EVIDENCE.write(shown.evidence(), to);
          KEYS.write(shown.coverings(), to);
        }

        @Override
        public ExistingInsulation read(PackedReader from) {
          return new ExistingInsulation(
              FIGURE.readOrNull(from),
              from.word(),
              from.figure(),
              EVIDENCE.read(from),
              KEYS.read(from));
        }
      };

  /** Properties. */
  public static final Packing<Property> PROPERTY =
      new Packing<>() {
        private static final int QUANTITY = 1;
        private static final int FROM_TYPE = 2;

        @Override
        public void write(Property p, PackedWriter to) {
          to.count((p.quantity() ? QUANTITY : 0) | (p.fromType() ? FROM_TYPE : 0));
          to.word(p.set());
          to.word(p.name());
          PHRASE.write(p.text(), to);
          FIGURE.writeOrNull(p.number(), to);
          to.word(p.measure());
          to.step(p.step());
        }

        @Override
        public Property read(PackedReader from) {
          int flags = (int) from.count();
          return new Property(
              WORD.read(from),
              WORD.read(from),
              PHRASE.read(from),
              FIGURE.readOrNull(from),
              from.word(),
              (flags & QUANTITY) != 0,
              (flags & FROM_TYPE) != 0,
              from.step());
        }
      };
}
