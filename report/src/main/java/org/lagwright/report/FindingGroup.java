package org.lagwright.report;

import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import org.lagwright.ifc.model.Effect;
import org.lagwright.ifc.model.Finding;
import org.lagwright.ifc.model.FindingCode.Severity;

/**
 * Findings that share code and effect, counted.
 *
 * @param count how many there are, at least 1
 * @param example the message of the first one
 */
public record FindingGroup(
    String code, Severity severity, Effect effect, int count, String example) {

  private static final Comparator<FindingGroup> WORST_FIRST =
      Comparator.comparing(FindingGroup::severity)
          .reversed()
          .thenComparing(FindingGroup::code)
          .thenComparing(FindingGroup::effect);

  private record Key(String code, Effect effect) {}

  /** All groups: errors first, then by code. */
  public static List<FindingGroup> of(List<Finding> findings) {
    Map<Key, List<Finding>> grouped =
        findings.stream().collect(Collectors.groupingBy(f -> new Key(f.code().name(), f.effect())));
    return grouped.values().stream().map(FindingGroup::group).sorted(WORST_FIRST).toList();
  }

  private static FindingGroup group(List<Finding> alike) {
    Finding first = alike.get(0);
    return new FindingGroup(
        first.code().name(),
        first.code().severity(),
        first.effect(),
        alike.size(),
        first.message());
  }
}
