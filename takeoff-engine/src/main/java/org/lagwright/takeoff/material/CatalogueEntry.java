package org.lagwright.takeoff.material;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import org.jspecify.annotations.Nullable;
import org.lagwright.takeoff.pack.DataTable;
import org.lagwright.takeoff.pack.SourceStatus;

/** What the rows of a catalogue say of one material. */
final class CatalogueEntry {

  private static final String FORM = "form";
  private static final String THICKNESS = "thicknessmm";
  private static final String BORE = "boremm";
  private static final String LARGEST_BORE = "largestboremm";
  private static final String LENGTH = "lengthm";
  private static final String WIDTH = "widthm";
  private static final String CONDUCTIVITY = "conductivitywpermk";
  private static final String MEAN = "meanc";
  private static final String SHEET = "sheet";

  /** Every column beside the material. */
  static final Set<String> COLUMNS =
      Set.of(FORM, THICKNESS, BORE, LARGEST_BORE, LENGTH, WIDTH, CONDUCTIVITY, MEAN);

  private final Map<String, TreeSet<Double>> wallsMm = new LinkedHashMap<>();
  private final Map<String, Double> largestBoreMm = new LinkedHashMap<>();
  private final List<Stock.Fit> fits = new ArrayList<>();
  private final List<Stock.Sold> sold = new ArrayList<>();
  private final TreeMap<Double, Double> wPerMKByMeanC = new TreeMap<>();

  /** Takes a row in; refuses it at the cell that is wrong. */
  void add(DataTable.Row row) {
    boolean tellsConductivity = addPoint(row);
    if (row.findText(FORM) == null && row.findText(THICKNESS) == null && tellsConductivity) {
      return;
    }
    String form = row.text(FORM);
    if (!Set.of("tube", SHEET, "section").contains(form)) {
      throw row.refusal(FORM, "'" + form + "' is none of tube, sheet, section.");
    }
    double thicknessMm = row.number(THICKNESS);
    if (!(thicknessMm > 0 && thicknessMm <= 1000)) {
      throw row.refusal(THICKNESS, "the thickness must be above 0 and at most 1000 mm.");
    }
    wallsMm.computeIfAbsent(form, k -> new TreeSet<>()).add(thicknessMm);
    if (!form.equals(SHEET)) {
      addBore(row, form, thicknessMm);
    }
    addSold(row, form, thicknessMm);
  }

  private void addBore(DataTable.Row row, String form, double thicknessMm) {
    Double boreMm = row.findNumber(BORE);
    boolean listed = fits.stream().anyMatch(fit -> fit.form().equals(form));
    if (largestBoreMm.containsKey(form) && listed != (boreMm != null)) {
      throw row.refusal(
          BORE, "give boreMm in all rows of the " + form + "s of a material, or in none.");
    }
    String column = boreMm == null ? LARGEST_BORE : BORE;
    double mm = boreMm == null ? row.number(LARGEST_BORE) : boreMm;
    if (!(mm > 0)) {
      throw row.refusal(column, "the bore must be above 0 mm.");
    }
    if (boreMm != null) {
      fits.add(new Stock.Fit(form, thicknessMm, boreMm));
    }
    largestBoreMm.merge(form, mm, Math::max);
  }

  private boolean addPoint(DataTable.Row row) {
    Double wPerMK = row.findNumber(CONDUCTIVITY);
    Double meanC = row.findNumber(MEAN);
    if (wPerMK == null && meanC == null) {
      return false;
    }
    if (wPerMK == null || meanC == null) {
      throw row.refusal(
          wPerMK == null ? CONDUCTIVITY : MEAN,
          "a conductivity needs its mean temperature. Fill in both conductivityWPerMK and meanC.");
    }
    if (!(wPerMK > 0 && wPerMK < 1)) {
      throw row.refusal(CONDUCTIVITY, "the conductivity must lie between 0 and 1 W/(m K).");
    }
    Double before = wPerMKByMeanC.put(meanC, wPerMK);
    if (before != null && !before.equals(wPerMK)) {
      throw row.refusal(CONDUCTIVITY, "another row says " + before + " at this mean temperature.");
    }
    return true;
  }

  private void addSold(DataTable.Row row, String form, double thicknessMm) {
    Double lengthM = row.findNumber(LENGTH);
    Double widthM = row.findNumber(WIDTH);
    if (lengthM == null && widthM == null) {
      return;
    }
    if (lengthM == null) {
      throw row.refusal(LENGTH, "a width without a length. Fill in both.");
    }
    try {
      sold.add(new Stock.Sold(form, thicknessMm, widthM, lengthM));
    } catch (IllegalArgumentException e) {
      throw row.refusal(LENGTH, e.getMessage() + " Correct lengthM and widthM.");
    }
  }

  /** The stock; null where no row tells a size. */
  @Nullable Stock findStock(String source) {
    if (wallsMm.isEmpty()) {
      return null;
    }
    return new Stock(
        walls("tube"),
        largestBoreMm.getOrDefault("tube", 0.0),
        walls(SHEET),
        walls("section"),
        largestBoreMm.getOrDefault("section", 0.0),
        null,
        fits.isEmpty() ? null : fits,
        sold.isEmpty() ? null : sold.stream().distinct().toList(),
        SourceStatus.USER,
        source);
  }

  /** The conductivity; null where no row tells one. */
  MaterialFamily.@Nullable Points findPoints(String source) {
    if (wPerMKByMeanC.isEmpty()) {
      return null;
    }
    return new MaterialFamily.Points(
        "as declared",
        SourceStatus.USER,
        source,
        wPerMKByMeanC.entrySet().stream()
            .map(point -> new MaterialFamily.Point(point.getKey(), point.getValue()))
            .toList());
  }

  private List<Double> walls(String form) {
    return List.copyOf(wallsMm.getOrDefault(form, new TreeSet<>()));
  }
}
