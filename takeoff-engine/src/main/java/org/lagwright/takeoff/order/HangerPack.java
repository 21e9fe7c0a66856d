package org.lagwright.takeoff.order;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import org.lagwright.takeoff.pack.PackInfo;
import org.lagwright.takeoff.pack.PackReader;
import org.lagwright.takeoff.pack.SourceStatus;

/**
 * How far apart hangers may be, how long shields are, and which names mean a hanger.
 *
 * @param compounding languages whose words are also found inside longer words
 * @param shortestInside letters a word must have for that
 * @param words names of hangers and supports by language
 */
public record HangerPack(
    String id,
    String version,
    String source,
    String status,
    List<SpacingTable> tables,
    Shields shields,
    List<String> compounding,
    int shortestInside,
    Map<String, List<String>> words) {

  /** In the settings: no load-bearing inserts from spacing. */
  public static final String NO_TABLE = "none";

  /** The table that holds where the user names none. */
  public static final String DEFAULT_TABLE = "us-steel-water";

  public HangerPack {
    tables = List.copyOf(tables);
    compounding = List.copyOf(compounding);
    words = Map.copyOf(words);
  }

  /** Spacing for one kind of pipe, by rising size. */
  public record SpacingTable(
      String id, String name, String source, SourceStatus status, List<Span> rows) {
    public SpacingTable {
      rows = List.copyOf(rows);
      for (int i = 1; i < rows.size(); i++) {
        if (!(rows.get(i).fromMm() > rows.get(i - 1).fromMm())) {
          throw new IllegalArgumentException("fromMm must rise from row to row.");
        }
      }
      if (rows.isEmpty()) {
        throw new IllegalArgumentException("a table of spacing needs a row.");
      }
    }

    /**
     * Largest distance of two hangers, metres: that of the largest size listed that is not larger
     * than the pipe, because larger pipes may span further; of the smallest for thinner pipes.
     */
    public double spanM(double outsideDiameterM) {
      double spanM = rows.get(0).spanM();
      for (Span row : rows) {
        if (row.fromMm() <= outsideDiameterM * 1000 + 0.5) {
          spanM = row.spanM();
        }
      }
      return spanM;
    }
  }

  /** Pipes from this outside diameter on. */
  public record Span(double fromMm, double spanM) {
    public Span {
      if (!(spanM > 0)) {
        throw new IllegalArgumentException("spanM must be above 0.");
      }
    }
  }

  /** Lengths of shields by rising size. */
  public record Shields(String source, SourceStatus status, List<Shield> rows) {
    public Shields {
      rows = List.copyOf(rows);
    }

    double lengthM(double outsideDiameterM) {
      return rows.stream()
              .filter(row -> row.fromMm() <= outsideDiameterM * 1000)
              .reduce((a, b) -> b)
              .orElseThrow()
              .lengthMm()
          / 1000;
    }
  }

  /** Pipes from this outside diameter on. */
  public record Shield(double fromMm, double lengthMm) {}

  /** The pack that belongs to the program. */
  public static HangerPack bundled() {
    return PackReader.readBundled(HangerPack.class, "hangers.yaml", HangerPack.class);
  }

  /** Ids that settings may name. */
  public Set<String> choices() {
    Set<String> ids = new TreeSet<>(tables.stream().map(SpacingTable::id).toList());
    ids.add(NO_TABLE);
    return ids;
  }

  /** The table of this id, empty for {@link #NO_TABLE}. */
  Optional<SpacingTable> findTable(String tableId) {
    return tables.stream().filter(table -> table.id().equals(tableId)).findFirst();
  }

  /** Names the pack in the results. */
  public PackInfo info() {
    return new PackInfo(id, version, source, status);
  }
}
