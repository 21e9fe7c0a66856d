package org.lagwright.ifc.extract;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.lagwright.ifc.model.Effect;
import org.lagwright.ifc.model.ElementKey;
import org.lagwright.ifc.model.Finding;
import org.lagwright.ifc.model.MepElement;
import org.lagwright.ifc.model.ReadFinding;

/** Elements without a GlobalId, and those that have that of another one. */
final class Identities {

  /** Of all GlobalIds in their order; only those with the same number are looked at again. */
  private int[] hashes = new int[16];

  private int count;

  private static final class Seen {
    final ElementKey first;
    int times = 1;

    Seen(ElementKey first) {
      this.first = first;
    }
  }

  /** Tells the GlobalId of the next element. */
  void add(String globalId) {
    if (count == hashes.length) {
      hashes = Arrays.copyOf(hashes, 2 * count);
    }
    hashes[count++] = globalId.hashCode();
  }

  /**
   * In the order of the identities, so that the findings do not depend on that of the file.
   *
   * @param elements those whose GlobalIds were told, in the same order
   */
  List<Finding> findings(List<MepElement> elements) {
    int[] doubtful = doubtful();
    Map<String, Seen> seen = new TreeMap<>();
    for (int i = 0; i < count; i++) {
      if (Arrays.binarySearch(doubtful, hashes[i]) >= 0) {
        MepElement element = elements.get(i);
        Seen before = seen.putIfAbsent(element.globalId(), new Seen(element.key()));
        if (before != null) {
          before.times++;
        }
      }
    }
    List<Finding> findings = new ArrayList<>();
    for (Map.Entry<String, Seen> each : seen.entrySet()) {
      note(each.getKey(), each.getValue(), findings);
    }
    return findings;
  }

  /** Numbers that stand twice, ascending, and that of the empty text. */
  private int[] doubtful() {
    int[] sorted = Arrays.copyOf(hashes, count + 1);
    sorted[count] = "".hashCode();
    Arrays.sort(sorted);
    int found = 0;
    for (int i = 0; i <= count; i++) {
      boolean again = i > 0 && sorted[i] == sorted[i - 1];
      boolean noted = found > 0 && sorted[found - 1] == sorted[i];
      if ((again || sorted[i] == "".hashCode()) && !noted) {
        sorted[found++] = sorted[i];
      }
    }
    return Arrays.copyOf(sorted, found);
  }

  private static void note(String globalId, Seen seen, List<Finding> findings) {
    if (globalId.isEmpty()) {
      findings.add(Finding.about(seen.first, ReadFinding.MISSING_GLOBAL_ID, Effect.NONE));
    } else if (seen.times > 1) {
      findings.add(
          Finding.about(
              seen.first,
              ReadFinding.DUPLICATE_GLOBAL_ID,
              Effect.NONE,
              globalId,
              String.valueOf(seen.times)));
    }
  }
}
