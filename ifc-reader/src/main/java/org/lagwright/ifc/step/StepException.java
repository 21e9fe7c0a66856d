package org.lagwright.ifc.step;

/**
 * The file as a whole cannot be read. Carries the line where it was noticed; the caller adds the
 * file name.
 */
public final class StepException extends RuntimeException {

  private static final long serialVersionUID = 1L;

  private final long line;

  /**
   * @param line line number from 1, 0 where it is about the whole file
   * @param message what is wrong and what to do, in full sentences
   */
  public StepException(long line, String message) {
    super(message);
    this.line = line;
  }

  /** Line number from 1, 0 where it is about the whole file. */
  public long line() {
    return line;
  }
}
