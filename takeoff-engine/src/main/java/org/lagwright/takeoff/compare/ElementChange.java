package org.lagwright.takeoff.compare;

import java.util.Collections;
import java.util.EnumSet;
import java.util.Objects;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import org.lagwright.takeoff.TakenElement;

/**
 * One element in both revisions, or in one of them.
 *
 * @param before as it was; null if it was not there
 * @param now as it is; null if it is no longer there
 * @param moneyBefore its part of the price without tax before; 0 without a price
 * @param moneyNow its part now
 * @param changes what became of it, empty if nothing that counts
 */
public record ElementChange(
    @Nullable TakenElement before,
    @Nullable TakenElement now,
    double moneyBefore,
    double moneyNow,
    Set<Change> changes) {

  public ElementChange {
    if (before == null && now == null) {
      throw new IllegalArgumentException("an element that is in neither revision");
    }
    EnumSet<Change> ordered = EnumSet.noneOf(Change.class);
    ordered.addAll(changes);
    changes = Collections.unmodifiableSet(ordered);
  }

  /** The element as it is, else as it was. */
  public TakenElement any() {
    return now != null ? now : Objects.requireNonNull(before);
  }

  /** What it amounted to before. */
  public Amount amountBefore() {
    return before == null ? Amount.NONE : Amount.of(before, moneyBefore);
  }

  /** What it amounts to now. */
  public Amount amountNow() {
    return now == null ? Amount.NONE : Amount.of(now, moneyNow);
  }

  /** What it amounts to now more than before. */
  public Amount difference() {
    return amountNow().minus(amountBefore());
  }
}
