package org.lagwright.takeoff;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import org.jspecify.annotations.Nullable;
import org.lagwright.ifc.model.ElementKey;
import org.lagwright.ifc.model.ExistingInsulation;
import org.lagwright.ifc.model.MepElement;
import org.lagwright.ifc.model.MepModel;
import org.lagwright.takeoff.scope.ElementStatus;
import org.lagwright.takeoff.scope.ScopePack;

/**
 * What other elements tell of one: a covering is that of its host, and what stands in several files
 * is there, or to be demolished, if any of them says so.
 *
 * @param inWords for each covering what it covers, and for each repeated element which it repeats
 * @param statuses what those that repeat an element say of its status
 * @param pack tells which properties speak of a status
 */
record OtherElements(
    Map<ElementKey, String> inWords, Map<ElementKey, List<Told>> statuses, ScopePack pack) {

  /** The status of an element, and the file it stands in. */
  record Told(ElementStatus status, String file) {}

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
    Map<ElementKey, List<Told>> statuses = new HashMap<>();
    for (MepElement element : elements) {
      MepElement first = element.repeats() == null ? null : byKey.get(element.repeats());
      if (first != null) {
        String file = models.get(first.key().model()).file().name();
        inWords.put(element.key(), inWords(first) + " in " + file);
        ElementStatus status = ElementStatus.of(element.properties(), pack);
        if (status != null) {
          String again = models.get(element.key().model()).file().name();
          statuses
              .computeIfAbsent(first.key(), key -> new ArrayList<>(1))
              .add(new Told(status, again));
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

  /**
   * What the element's own file says of its status, else the first of the others that tells one.
   */
  @Nullable ElementStatus statusOf(MepElement element) {
    ElementStatus own = ElementStatus.of(element.properties(), pack);
    List<Told> others = statuses.getOrDefault(element.key(), List.of());
    if (own != null || others.isEmpty()) {
      return own;
    }
    for (Told told : others) {
      if (told.status.status() != null) {
        return told.status;
      }
    }
    return others.get(0).status;
  }

  /**
   * What another file says that is not the status that is used, null if they agree.
   *
   * @param used the status by {@link #statusOf}
   */
  @Nullable Told otherStatus(MepElement element, @Nullable String used) {
    for (Told told : statuses.getOrDefault(element.key(), List.of())) {
      if (!Objects.equals(told.status.status(), used)) {
        return told;
      }
    }
    return null;
  }
}
