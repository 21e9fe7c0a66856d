package org.lagwright.ifc.step;

/** Takes instances one by one, in file order. */
@FunctionalInterface
interface RecordSink {

  /**
   * Takes an instance.
   *
   * @param offset place of its {@code #}
   * @return false if the number is taken, and then nothing changed
   */
  boolean take(long id, long offset);
}
