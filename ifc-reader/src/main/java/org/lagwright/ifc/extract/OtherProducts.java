package org.lagwright.ifc.extract;

import java.util.Map;
import java.util.TreeMap;
import org.lagwright.ifc.schema.IfcFile;

/** Elements of the building that are no services. */
final class OtherProducts {

  private OtherProducts() {}

  /** How many there are, by class as the standard spells it. */
  static Map<String, Integer> of(IfcFile file) {
    Map<String, Integer> others = new TreeMap<>();
    for (Map.Entry<String, Integer> each : file.step().counts().entrySet()) {
      String keyword = each.getKey();
      if (file.schema().isA(keyword, "IfcElement") && !isTakenIn(file, keyword)) {
        others.put(file.schema().spelling(keyword), each.getValue());
      }
    }
    return others;
  }

  private static boolean isTakenIn(IfcFile file, String keyword) {
    for (String entity : ModelExtractor.TAKEN_IN) {
      if (file.schema().isA(keyword, entity)) {
        return true;
      }
    }
    return false;
  }
}
