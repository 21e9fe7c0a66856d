package org.lagwright.takeoff;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.lagwright.ifc.model.ElementKey;
import org.lagwright.ifc.model.ExistingInsulation;
import org.lagwright.ifc.model.MepElement;
import org.lagwright.ifc.model.MepModel;
import org.lagwright.takeoff.scope.ScopePack;
import org.lagwright.takeoff.scope.StatusText;

/**
 * What other elements tell of one: a covering is that of its host, and what stands in several files
 * is there, or to be demolished, if any of them says so.
 *
 * @param inWords for each covering what it covers, and for each repeated element which it repeats
 * @param statuses texts on the status of elements that repeat one
 * @param pack tells which properties speak of a status
 */
record OtherElements(
    Map<ElementKey, String> inWords, Map<ElementKey, String> statuses, ScopePack pack) {

  /**
   * Looks through all elements of a takeoff.
   *
   * @param models in the order of their numbers
   */
  static OtherElements of(List<MepModel> models, List<MepElement> elements, ScopePack pack) {
    Map<ElementKey, MepElement> byKey = new HashMap<>();
    Map<ElementKey, String> inWords = new HashMap<>();
    for (MepElement element : elements) {
      byKey.put(element.key(), element);
      note(element, element.existingInsulation(), inWords);
      note(element, element.lining(), inWords);
    }
    Map<ElementKey, String> statuses = new HashMap<>();
    for (MepElement element : elements) {
      MepElement first = element.repeats() == null ? null : byKey.get(element.repeats());
      if (first != null) {
        String file = models.get(first.key().model()).file().name();
        inWords.put(element.key(), inWords(first) + " in " + file);
        String status = StatusText.of(element.properties(), pack);
        if (status != null) {
          statuses.putIfAbsent(first.key(), status);
        }
      }
    }
    return new OtherElements(inWords, statuses, pack);
  }

  private static void note(
      MepElement host, @Nullable ExistingInsulation insulation, Map<ElementKey, String> inWords) {
    if (insulation != null) {
      insulation.coverings().forEach(covering -> inWords.put(covering, inWords(host)));
    }
  }

  private static String inWords(MepElement element) {
    return element.name().isBlank() ? element.globalId() : "'" + element.name() + "'";
  }

  /** The element that one covers or repeats, in words. */
  String other(MepElement element) {
    return inWords.getOrDefault(element.key(), "an element that is not in the files");
  }

  /** What the element's own file says of its status, else another that holds it too. */
  @Nullable String statusOf(MepElement element) {
    String own = StatusText.of(element.properties(), pack);
    return own == null ? statuses.get(element.key()) : own;
  }
}
