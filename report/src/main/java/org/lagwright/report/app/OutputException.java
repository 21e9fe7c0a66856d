package org.lagwright.report.app;

/**
 * An output cannot be written. The message is one line: {@code path: what is wrong. What to do.}
 */
public final class OutputException extends RuntimeException {

  private static final long serialVersionUID = 1L;

  OutputException(String message) {
    super(message);
  }

  OutputException(String message, Throwable cause) {
    super(message, cause);
  }
}
