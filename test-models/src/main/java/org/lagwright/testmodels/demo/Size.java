package org.lagwright.testmodels.demo;

import org.lagwright.testmodels.ifc.Profile;

/** The outer size of a pipe or duct. Lengths in millimetres. */
public sealed interface Size {

  /** The text used in quantities.csv: {@code 60.3} or {@code 800x400}. */
  String label();

  /** The words used in element names. */
  String words();

  /** The section a straight piece is drawn with. */
  Profile drawn();

  /** The outer section without a hole. */
  Profile outer();

  /** The larger side across. */
  double largest();

  /** Centre-line radius of a bend; the side is the one that lies in the plane of the bend. */
  double bendRadius(double side);

  /**
   * A pipe.
   *
   * @param nominal DN of steel pipe (EN 10255) or the outside diameter of copper (EN 1057)
   */
  record Pipe(String material, double nominal, double diameter, double wall) implements Size {
    @Override
    public String label() {
      return text(diameter);
    }

    @Override
    public String words() {
      return material.equals("Steel") ? "DN " + text(nominal) : text(diameter) + " mm";
    }

    /** Steel is drawn solid, as many programs do; the others hollow. */
    @Override
    public Profile drawn() {
      return material.equals("Steel") ? outer() : new Profile.Ring(diameter, wall);
    }

    @Override
    public Profile outer() {
      return new Profile.Circle(diameter);
    }

    @Override
    public double largest() {
      return diameter;
    }

    @Override
    public double bendRadius(double side) {
      return 1.5 * nominal;
    }
  }

  /** A round duct. */
  record Round(double diameter) implements Size {
    @Override
    public String label() {
      return text(diameter);
    }

    @Override
    public String words() {
      return "d=" + text(diameter) + " mm";
    }

    @Override
    public Profile drawn() {
      return outer();
    }

    @Override
    public Profile outer() {
      return new Profile.Circle(diameter);
    }

    @Override
    public double largest() {
      return diameter;
    }

    @Override
    public double bendRadius(double side) {
      return diameter;
    }
  }

  /** A rectangular duct; the width lies level in level runs. */
  record Rectangular(double width, double height) implements Size {

    /** Inner radius of a rectangular bend. */
    private static final double THROAT = 150;

    @Override
    public String label() {
      return text(width) + "x" + text(height);
    }

    @Override
    public String words() {
      return label();
    }

    @Override
    public Profile drawn() {
      return outer();
    }

    @Override
    public Profile outer() {
      return new Profile.Rectangle(width, height);
    }

    @Override
    public double largest() {
      return Math.max(width, height);
    }

    @Override
    public double bendRadius(double side) {
      return THROAT + side / 2;
    }
  }

  /** True for round ducts and rectangular ducts. */
  default boolean isDuct() {
    return !(this instanceof Pipe);
  }

  /** Steel pipe, outside diameters and medium walls of EN 10255 (secondary source, verify). */
  static Size steel(int dn) {
    return switch (dn) {
      case 15 -> new Pipe("Steel", 15, 21.3, 2.6);
      case 25 -> new Pipe("Steel", 25, 33.7, 3.2);
      case 32 -> new Pipe("Steel", 32, 42.4, 3.2);
      case 40 -> new Pipe("Steel", 40, 48.3, 3.2);
      case 50 -> new Pipe("Steel", 50, 60.3, 3.6);
      case 65 -> new Pipe("Steel", 65, 76.1, 3.6);
      case 80 -> new Pipe("Steel", 80, 88.9, 4.0);
      case 100 -> new Pipe("Steel", 100, 114.3, 4.5);
      default -> throw new IllegalArgumentException("no steel pipe DN " + dn + " in the demo");
    };
  }

  /** Copper tube, walls of EN 1057 (secondary source, verify). */
  static Size copper(int diameter) {
    double wall =
        switch (diameter) {
          case 15 -> 0.7;
          case 22, 28 -> 0.9;
          default -> throw new IllegalArgumentException("no copper " + diameter + " in the demo");
        };
    return new Pipe("Copper", diameter, diameter, wall);
  }

  /** A number without needless zeros. */
  static String text(double number) {
    return number == Math.rint(number) ? Long.toString((long) number) : Double.toString(number);
  }
}
