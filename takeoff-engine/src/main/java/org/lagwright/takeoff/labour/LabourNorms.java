package org.lagwright.takeoff.labour;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import org.lagwright.ifc.model.Form;
import org.lagwright.takeoff.pack.CsvTables;
import org.lagwright.takeoff.pack.DataTable;
import org.lagwright.takeoff.pack.PackInfo;

/**
 * The norms and factors to reckon with: those of the program, and over them those of the user.
 *
 * @param pack factors and shares
 * @param norms the first of an item that fits decides
 * @param packs what is named in the results
 */
public record LabourNorms(LabourPack pack, List<Norm> norms, List<PackInfo> packs) {

  public LabourNorms {
    norms = List.copyOf(norms);
    packs = List.copyOf(packs);
  }

  /** What belongs to the program. */
  public static LabourNorms bundled() {
    LabourPack pack = LabourPack.bundled();
    DataTable table = CsvTables.readBundled(LabourNorms.class, "norms.csv");
    Set<String> materials =
        table.rows().stream()
            .map(row -> Optional.ofNullable(row.findText("material")).orElse(""))
            .collect(Collectors.toSet());
    return new LabourNorms(pack, NormTable.norms(table, materials), List.of(pack.info()));
  }

  /**
   * The same with norms out of a table of the user: an item it names has those norms and no other.
   *
   * @param materials ids of the known materials
   * @throws org.lagwright.takeoff.pack.PackException naming the cell that is wrong
   */
  public LabourNorms with(DataTable table, Set<String> materials) {
    List<Norm> users = NormTable.norms(table, materials);
    Set<String> items = users.stream().map(Norm::item).collect(Collectors.toSet());
    List<Norm> all = new ArrayList<>(users);
    norms.stream().filter(norm -> !items.contains(norm.item())).forEach(all::add);
    List<PackInfo> named = new ArrayList<>(packs);
    named.add(
        new PackInfo(
            "labour-norms", "as given", table.fileName(), "given by the user, not checked"));
    return new LabourNorms(pack, all, named);
  }

  /** The same with factors of the user by id. */
  public LabourNorms with(Map<String, Double> factors) {
    return new LabourNorms(pack.with(factors), norms, packs);
  }

  /** Ids of the factors that settings may change. */
  public Set<String> factorIds() {
    return pack.factors().stream()
        .map(LabourFactor::id)
        .collect(Collectors.toCollection(TreeSet::new));
  }

  /** The norm for straight work: {@code tube}, {@code sheet}, {@code section}, {@code jacket}. */
  Optional<Norm> findStraight(
      String item, boolean duct, String materialId, double sizeM, double thicknessM) {
    return find(item, duct, materialId, sizeM, thicknessM);
  }

  /** The norm of a form: its own rows, where it has none those of any fitting. */
  Optional<Norm> findFitting(
      Form form, boolean duct, String materialId, double sizeM, double thicknessM) {
    boolean own =
        norms.stream()
            .anyMatch(
                norm ->
                    norm.item().equals(form.label())
                        && (norm.on() == null || norm.on().equals(duct ? "duct" : "pipe")));
    String item = own ? form.label() : NormTable.FITTING;
    return find(item, duct, materialId, sizeM, thicknessM);
  }

  private Optional<Norm> find(
      String item, boolean duct, String materialId, double sizeM, double thicknessM) {
    return norms.stream()
        .filter(norm -> norm.item().equals(item) && norm.fits(duct, materialId, sizeM, thicknessM))
        .findFirst();
  }
}
