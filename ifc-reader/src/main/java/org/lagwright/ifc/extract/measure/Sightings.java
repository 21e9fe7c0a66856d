package org.lagwright.ifc.extract.measure;

import java.util.Objects;
import org.lagwright.ifc.extract.text.PropertyNames.Role;
import org.lagwright.ifc.model.Property;

/** What was seen of one property, as the answer to one question, on all elements. */
final class Sightings {

  /** Fewer equal values may well be equal in truth. */
  private static final int AT_LEAST = 3;

  private final Property first;
  private final long firstDrawnMm;
  private int count;
  private int wrong;
  private boolean sameValue = true;
  private boolean sameSize = true;

  /** Nothing yet but which element is the first. */
  Sightings(Property first, Counterpart drawn) {
    this.first = first;
    this.firstDrawnMm = Math.round(drawn.value() * 1000);
  }

  /** A copy, to be added to. */
  Sightings(Sightings same) {
    first = same.first;
    firstDrawnMm = same.firstDrawnMm;
    addAll(same);
  }

  /** Adds one element. */
  void add(Property property, Counterpart drawn) {
    count++;
    wrong += drawn.agrees() ? 0 : 1;
    sameValue &= Objects.equals(first.number(), property.number());
    sameSize &= firstDrawnMm == Math.round(drawn.value() * 1000);
  }

  /** Adds what was seen on the elements that follow. */
  void addAll(Sightings later) {
    count += later.count;
    wrong += later.wrong;
    sameValue &= later.sameValue && Objects.equals(first.number(), later.first.number());
    sameSize &= later.sameSize && firstDrawnMm == later.firstDrawnMm;
  }

  /** The property as it stands on the first element. */
  Property first() {
    return first;
  }

  /** On how many elements it was seen. */
  int count() {
    return count;
  }

  /** True for one value on elements of several sizes, wrong on too many to be an error of each. */
  boolean showPlaceholder(Role role) {
    boolean oftenWrong = wrong > wrongShare(role) * count;
    return count >= AT_LEAST && sameValue && !sameSize && oftenWrong;
  }

  /**
   * Share of elements on which a property must be wrong. A length is wrong on most where it is a
   * placeholder; a nominal size is vague and fits many by chance.
   */
  private static double wrongShare(Role role) {
    return role == Role.INSIDE_DIAMETER || role == Role.NOMINAL ? 0.05 : 0.5;
  }
}
