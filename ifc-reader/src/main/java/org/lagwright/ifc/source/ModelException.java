package org.lagwright.ifc.source;

/**
 * A model cannot be read. The message is one line: {@code file:line: what is wrong. What to do.}
 */
public final class ModelException extends RuntimeException {

  private static final long serialVersionUID = 1L;

  public ModelException(String message) {
    super(message);
  }

  public ModelException(String message, Throwable cause) {
    super(message, cause);
  }
}
