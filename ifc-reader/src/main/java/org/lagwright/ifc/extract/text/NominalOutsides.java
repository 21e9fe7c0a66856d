package org.lagwright.ifc.extract.text;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.lagwright.ifc.model.Section;

/** Outside diameters of pipes that are no steel, by nominal size (nominal-outsides.csv). */
public final class NominalOutsides {

  /**
   * The outside of a pipe of some material and nominal size.
   *
   * @param inInches true if it holds for sizes in inches, which DN stands for
   * @param alsoM other outside diameters that are called by this nominal size, metres
   */
  public record Outside(
      PipeMaterial material,
      boolean inInches,
      int dn,
      double outsideDiameterM,
      List<Double> alsoM,
      String series) {

    private boolean has(double diameterM) {
      boolean has = PipeSizes.isSame(outsideDiameterM, diameterM);
      for (double also : alsoM) {
        has |= PipeSizes.isSame(also, diameterM);
      }
      return has;
    }

    /** True for the outside of a pipe of its material, of whatever nominal size. */
    public boolean isOfItsMaterial(double diameterM) {
      return have(material, diameterM);
    }

    /** What a pipe of this size has outside. */
    public Section section() {
      return new Section.Round(outsideDiameterM);
    }
  }

  private static final List<Outside> OUTSIDES = read();

  private NominalOutsides() {}

  private static List<Outside> read() {
    List<String> lines = Resource.lines("nominal-outsides.csv");
    List<Outside> outsides = new ArrayList<>(lines.size());
    for (String line : lines.subList(1, lines.size())) {
      outsides.add(parse(line.split(",", -1)));
    }
    return List.copyOf(outsides);
  }

  private static Outside parse(String[] cells) {
    List<Double> alsoM = new ArrayList<>(2);
    for (String also : cells[4].isEmpty() ? new String[0] : cells[4].split("/", -1)) {
      alsoM.add(FigureCursor.wholeNumber(also) / 1000);
    }
    return new Outside(
        PipeMaterial.named(cells[0]),
        !cells[1].isEmpty(),
        Integer.parseInt(cells[2]),
        FigureCursor.wholeNumber(cells[3]) / 1000,
        List.copyOf(alsoM),
        PipeSizes.series(cells[5], cells[6]));
  }

  /** All of them. */
  static List<Outside> all() {
    return OUTSIDES;
  }

  /** True if pipes of a material, of whatever nominal size, have this outside diameter. */
  static boolean have(PipeMaterial material, double diameterM) {
    for (Outside each : OUTSIDES) {
      if (each.material == material && each.has(diameterM)) {
        return true;
      }
    }
    return false;
  }

  /**
   * What a pipe of a material and nominal size has outside; empty where steel's tables hold.
   *
   * @param inInches true if the size was written in inches
   */
  public static Optional<Outside> of(PipeMaterial material, int dn, boolean inInches) {
    for (Outside each : OUTSIDES) {
      if (each.material == material && each.dn == dn && each.inInches == inInches) {
        return Optional.of(each);
      }
    }
    return Optional.empty();
  }
}
