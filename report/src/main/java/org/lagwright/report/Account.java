package org.lagwright.report;

import org.lagwright.takeoff.TakenElement;

/** Where an element stands in the account: every element read is in exactly one place. */
public enum Account {
  ON_LINE("on line"),
  LEFT_OUT("left out"),
  OUT_OF_SCOPE("out of scope");

  private final String label;

  Account(String label) {
    this.label = label;
  }

  /** The place of one element. */
  public static Account of(TakenElement taken) {
    if (taken.lineId() != null) {
      return ON_LINE;
    }
    return taken.leftOutWith() != null ? LEFT_OUT : OUT_OF_SCOPE;
  }

  /** As written in the outputs: {@code on line}. */
  public String label() {
    return label;
  }
}
