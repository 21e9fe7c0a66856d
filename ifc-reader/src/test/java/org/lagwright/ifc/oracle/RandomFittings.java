package org.lagwright.ifc.oracle;

import java.util.List;
import java.util.Random;
import org.lagwright.testmodels.demo.Shapes;
import org.lagwright.testmodels.demo.Size;
import org.lagwright.testmodels.ifc.Body;
import org.lagwright.testmodels.ifc.ElementClass;
import org.lagwright.testmodels.ifc.Frame;
import org.lagwright.testmodels.ifc.IfcWriter;
import org.lagwright.testmodels.ifc.MepWriter;
import org.lagwright.testmodels.ifc.Profile;
import org.lagwright.testmodels.ifc.Schema;
import org.lagwright.testmodels.ifc.ShapeWriter;
import org.lagwright.testmodels.ifc.Units;
import org.lagwright.testmodels.ifc.Vec;
import org.lagwright.testmodels.step.Ref;

/**
 * Straight pieces, bends, reducers and tees of random sizes in random places and attitudes; from
 * one seed the same in every schema.
 */
final class RandomFittings {

  private static final int OF_EACH = 6;

  private final Random random;
  private final IfcWriter ifc;
  private final ShapeWriter shapes;
  private final MepWriter mep;
  private final double factor;
  private int count;

  private RandomFittings(Schema schema, long seed, double factor) {
    this.factor = factor;
    random = new Random(seed);
    Units units = schema.isOld() ? Units.MILLIMETRE_DEGREE : Units.MILLIMETRE_RADIAN;
    ifc = new IfcWriter(schema, units, "random");
    shapes = new ShapeWriter(ifc);
    mep = new MepWriter(ifc);
  }

  /** A file. */
  static String write(Schema schema, long seed) {
    return new RandomFittings(schema, seed, 1).text();
  }

  /** A file in which every straight piece is longer by a factor, for the comparison to find. */
  static String writeWrong(Schema schema, long seed, double factor) {
    return new RandomFittings(schema, seed, factor).text();
  }

  private String text() {
    for (int i = 0; i < OF_EACH; i++) {
      double diameter = between(15, 600);
      double width = between(100, 1000);
      double height = between(100, 500);
      double length = between(100, 6000) * factor;
      segment(new Profile.Circle(diameter), length);
      segment(new Profile.Ring(diameter, diameter * between(0.02, 0.1)), length);
      segment(new Profile.Rectangle(width, height), length);
      double degrees = between(15, 150);
      bend(new Profile.Circle(diameter), diameter * between(0.8, 2), degrees);
      bend(new Profile.Rectangle(width, height), width * between(0.7, 2), degrees);
      double smaller = between(0.4, 0.9);
      double depth = between(100, 600);
      fitting(
          new Body.Taper(
              new Profile.Circle(diameter), new Profile.Circle(diameter * smaller), depth));
      fitting(
          new Body.Taper(
              new Profile.Rectangle(width, height),
              new Profile.Rectangle(width * smaller, height * smaller),
              depth));
      Size run = new Size.Rectangular(Math.rint(width), Math.rint(height));
      Size branch = new Size.Rectangular(Math.rint(width * smaller), Math.rint(height));
      Shapes.tee(run, branch, false).forEach(placed -> put(ElementClass.DUCT_FITTING, placed));
    }
    return ifc.text();
  }

  private void segment(Profile profile, double length) {
    put(ElementClass.PIPE_SEGMENT, new Body.Extrusion(profile, length).inPlace());
  }

  private void bend(Profile profile, double radius, double degrees) {
    fitting(new Body.Revolution(profile, radius, degrees));
  }

  private void fitting(Body body) {
    put(ElementClass.PIPE_FITTING, body.inPlace());
  }

  private void put(ElementClass what, Body.Placed body) {
    String name = body.body().getClass().getSimpleName() + " " + ++count;
    Ref placement = shapes.placement(null, anywhere());
    Ref shape = shapes.shape(List.of(body));
    mep.element(what, MepWriter.Label.of(name, name), placement, shape, null);
  }

  private Frame anywhere() {
    Vec z = direction();
    Vec other = direction();
    Vec x = other.minus(z.times(z.dot(other))).unit();
    return new Frame(new Vec(between(-9e4, 9e4), between(-9e4, 9e4), between(0, 4e4)), z, x);
  }

  private Vec direction() {
    return new Vec(random.nextGaussian(), random.nextGaussian(), random.nextGaussian()).unit();
  }

  private double between(double low, double high) {
    return low + (high - low) * random.nextDouble();
  }
}
