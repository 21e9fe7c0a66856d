package org.lagwright.testmodels.step;

/** A reference to a record: {@code #id}. */
public record Ref(long id) {

  public Ref {
    if (id < 1) {
      throw new IllegalArgumentException("a record number starts at 1, was " + id);
    }
  }
}
