package org.lagwright.ifc.packed;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.function.Supplier;
import org.jspecify.annotations.Nullable;
import org.lagwright.ifc.model.Candidate;
import org.lagwright.ifc.model.ElementKey;
import org.lagwright.ifc.model.Evidence;
import org.lagwright.ifc.model.ExistingInsulation;
import org.lagwright.ifc.model.Form;
import org.lagwright.ifc.model.How;
import org.lagwright.ifc.model.Kind;
import org.lagwright.ifc.model.Measured;
import org.lagwright.ifc.model.MepElement;
import org.lagwright.ifc.model.MepSystem;
import org.lagwright.ifc.model.OpenEnd;
import org.lagwright.ifc.model.Place;
import org.lagwright.ifc.model.Point;
import org.lagwright.ifc.model.Port;
import org.lagwright.ifc.model.Property;
import org.lagwright.ifc.model.Section;

/** Elements of which every value may be anything that its type allows. */
final class RandomElements {

  private static final List<String> TEXTS =
      List.of("", "DN 40", "24.15", "Höhe", "Труба", "配管", "\uD83D\uDE00", "x".repeat(70));

  private static final double[] FIGURES = {
    0,
    -0.0,
    1,
    -1,
    0.0483,
    12345.6789,
    -9.223372036854775808E14,
    1e15,
    1e-300,
    Double.MAX_VALUE,
    Double.NaN,
    Double.NEGATIVE_INFINITY
  };

  private final Random random;
  private Evidence last = new Evidence(1, "", "");

  RandomElements(long seed) {
    random = new Random(seed);
  }

  MepElement element(ElementKey key) {
    return MepElement.builder(key, text(), text())
        .named(text(), orNull(this::text), orNull(this::text), orNull(this::text))
        .typeClass(orNull(this::text))
        .is(one(Kind.values()), one(Form.values()))
        .section(orNull(() -> measured(this::section)))
        .width(orNull(this::point))
        .ends(orNull(() -> measured(() -> list(this::section))))
        .nominalSize(orNull(this::text))
        .lengthM(orNull(() -> measured(this::figure)))
        .bend(orNull(() -> measured(this::figure)), orNull(() -> measured(this::figure)))
        .eccentricityM(orNull(() -> measured(this::figure)))
        .branchLengthM(orNull(() -> measured(this::figure)))
        .ports(list(this::port))
        .systems(list(this::system))
        .place(place())
        .materials(list(this::text))
        .layers(list(this::text))
        .existingInsulation(orNull(this::insulation))
        .lining(orNull(this::insulation))
        .openEnds(list(() -> new OpenEnd(point(), orNull(this::point), orNull(this::section))))
        .repeats(orNull(this::key))
        .build();
  }

  private <T> @Nullable T orNull(Supplier<T> value) {
    return random.nextBoolean() ? value.get() : null;
  }

  private <T> List<T> list(Supplier<T> value) {
    List<T> values = new ArrayList<>();
    for (int i = random.nextInt(4); i > 0; i--) {
      values.add(value.get());
    }
    return List.copyOf(values);
  }

  private <T> T one(T[] values) {
    return values[random.nextInt(values.length)];
  }

  /** Often one that comes again, often one that does not. */
  private String text() {
    return random.nextInt(4) > 0
        ? TEXTS.get(random.nextInt(TEXTS.size()))
        : Long.toString(random.nextLong(), 36);
  }

  private double figure() {
    return random.nextInt(4) > 0 ? random.nextGaussian() : FIGURES[random.nextInt(FIGURES.length)];
  }

  private long step() {
    return random.nextInt(3) > 0 ? random.nextInt(2000) : random.nextLong() >>> 1;
  }

  private ElementKey key() {
    return new ElementKey(random.nextInt(300), step());
  }

  private Point point() {
    return random.nextBoolean()
        ? new Point(0, random.nextBoolean() ? 0.0 : -0.0, 1)
        : new Point(figure(), figure(), figure());
  }

  private Section section() {
    double aM = random.nextDouble() + 1e-9;
    double bM = random.nextDouble() + 1e-9;
    return switch (random.nextInt(3)) {
      case 0 -> new Section.Round(aM);
      case 1 -> new Section.Rectangular(aM, bM);
      default -> new Section.Oval(aM, bM);
    };
  }

  /** Often the one before. */
  private Evidence evidence() {
    if (random.nextInt(3) > 0) {
      last = new Evidence(step(), text(), text(), text());
    }
    return last;
  }

  private <T> Measured<T> measured(Supplier<T> value) {
    return new Measured<>(
        value.get(),
        one(How.values()),
        evidence(),
        list(() -> new Candidate<>(value.get(), one(How.values()), evidence(), text())));
  }

  private Port port() {
    return new Port(
        step(),
        orNull(this::point),
        orNull(this::point),
        orNull(this::text),
        orNull(this::text),
        orNull(this::figure),
        orNull(this::key),
        random.nextBoolean(),
        random.nextBoolean());
  }

  private MepSystem system() {
    return new MepSystem(
        step(),
        text(),
        text(),
        orNull(this::text),
        orNull(this::text),
        orNull(this::text),
        list(this::property));
  }

  private Property property() {
    return new Property(
        text(),
        text(),
        text(),
        orNull(this::figure),
        orNull(this::text),
        random.nextBoolean(),
        random.nextBoolean(),
        step());
  }

  private Place place() {
    return new Place(
        orNull(this::text),
        orNull(this::text),
        orNull(this::figure),
        orNull(this::text),
        orNull(random::nextBoolean),
        orNull(this::point),
        orNull(this::figure),
        list(this::evidence));
  }

  private ExistingInsulation insulation() {
    return new ExistingInsulation(
        orNull(this::figure), orNull(this::text), figure(), evidence(), list(this::key));
  }
}
