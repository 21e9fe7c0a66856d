package org.lagwright.ifc.extract.text;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.lagwright.ifc.model.Section;

/** Tabulated outside diameters of pipes (pipe-sizes.csv names the standards). */
public final class PipeSizes {

  /** Tables print tenths of a millimetre; drawn sizes differ by as much. */
  private static final double TOLERANCE_M = 0.00015;

  /** One size of one standard; dn is 0 where the standard sizes by diameter. */
  public record Size(String series, int dn, double outsideDiameterM) {

    /** What a pipe of this size has outside. */
    public Section section() {
      return new Section.Round(outsideDiameterM);
    }
  }

  private static final List<Size> SIZES = read();

  private PipeSizes() {}

  private static List<Size> read() {
    List<String> lines = Resource.lines("pipe-sizes.csv");
    List<Size> sizes = new ArrayList<>(lines.size());
    for (String line : lines.subList(1, lines.size())) {
      sizes.add(parse(line));
    }
    return List.copyOf(sizes);
  }

  private static Size parse(String line) {
    String[] cells = line.split(",", -1);
    int dn = cells[1].isEmpty() ? 0 : Integer.parseInt(cells[1]);
    return new Size(series(cells[0], cells[3]), dn, FigureCursor.wholeNumber(cells[2]) / 1000);
  }

  /** The name of a standard as users see it, who are told of what is from memory. */
  static String series(String name, String status) {
    return status.startsWith("memory") ? name + " (from memory)" : name;
  }

  /** True if two outside diameters in metres are one, as tables print them. */
  static boolean isSame(double aM, double bM) {
    return Math.abs(aM - bM) < TOLERANCE_M;
  }

  /** True if some standard has this outside diameter. */
  public static boolean isOutsideDiameter(double diameterM) {
    for (Size size : SIZES) {
      if (isSame(size.outsideDiameterM, diameterM)) {
        return true;
      }
    }
    return false;
  }

  /** All tabulated sizes, steel first. */
  public static List<Section> all() {
    List<Section> sections = new ArrayList<>(SIZES.size());
    for (Size size : SIZES) {
      sections.add(size.section());
    }
    return sections;
  }

  /** The tabulated sizes of a nominal diameter, steel first. */
  public static List<Section> ofNominal(int dn) {
    List<Section> sections = new ArrayList<>();
    for (Size size : SIZES) {
      if (size.dn == dn) {
        sections.add(size.section());
      }
    }
    return sections;
  }

  /** True if a table has about this section for a nominal diameter. */
  public static boolean has(int dn, Section section) {
    for (Size size : SIZES) {
      if (size.dn == dn && Tolerances.sameSection(size.section(), section)) {
        return true;
      }
    }
    return false;
  }

  /** True if tables have this outside diameter, and all of them by another nominal size. */
  public static boolean isOfOtherNominal(int dn, double outsideDiameterM) {
    boolean other = false;
    for (Size size : SIZES) {
      if (isSame(size.outsideDiameterM, outsideDiameterM)) {
        if (size.dn == 0 || size.dn == dn) {
          return false;
        }
        other = true;
      }
    }
    return other;
  }

  /** The first tabulated size of a nominal diameter: steel by EN 10255 / EN 10220. */
  public static Optional<Size> forNominal(int dn) {
    for (Size size : SIZES) {
      if (size.dn == dn) {
        return Optional.of(size);
      }
    }
    return Optional.empty();
  }

  /**
   * What pipes called by a nominal size may be by a table: the first that has it as such, else one
   * that sizes by the outside, as plastic pipes of DN 110 have 110 mm.
   */
  public static Optional<Size> called(int dn) {
    Optional<Size> nominal = forNominal(dn);
    for (int i = 0; nominal.isEmpty() && i < SIZES.size(); i++) {
      Size size = SIZES.get(i);
      if (size.dn == 0 && Math.abs(size.outsideDiameterM * 1000 - dn) < 1e-6) {
        return Optional.of(size);
      }
    }
    return nominal;
  }

  /** The nominal size of an outside diameter by the first table that has it; 0 if none has. */
  static int nominalOf(double outsideDiameterM) {
    for (Size size : SIZES) {
      if (size.dn > 0 && isSame(size.outsideDiameterM, outsideDiameterM)) {
        return size.dn;
      }
    }
    return 0;
  }

  /** True if a pipe of the nominal size of a tabulated one may have another section. */
  public static boolean mayBeOfOneNominal(Section tabulated, Section other) {
    return tabulated instanceof Section.Round round
        && other instanceof Section.Round pipe
        && mayBe(nominalOf(round.outsideDiameterM()), pipe.outsideDiameterM());
  }

  /**
   * True if a pipe of this nominal size may have this outside diameter. Wide on purpose: from thin
   * tubes that are sized by their outside to thick plastic sized by their bore.
   */
  public static boolean mayBe(int dn, double outsideDiameterM) {
    double mm = outsideDiameterM * 1000;
    return mm >= 0.85 * dn && mm <= 1.45 * dn + 8;
  }

  /** As {@link #mayBe(int, double)}; false for what is not round. */
  public static boolean mayBe(int dn, Section section) {
    return section instanceof Section.Round round && mayBe(dn, round.outsideDiameterM());
  }

  /**
   * True if a diameter is a whole number of millimetres that may be the nominal size of another.
   */
  public static boolean isNominalOf(double diameterM, double outsideDiameterM) {
    double mm = diameterM * 1000;
    int dn = (int) Math.round(mm);
    return Math.abs(mm - dn) < 0.01 && outsideDiameterM > diameterM && mayBe(dn, outsideDiameterM);
  }
}
