package org.lagwright.report.bimserver;

/**
 * A server does not give or take what it is asked to. The message is one line without secrets:
 * {@code address: what is wrong. What to do.}
 */
public class ServerException extends RuntimeException {

  private static final long serialVersionUID = 1L;

  ServerException(String message) {
    super(message);
  }

  ServerException(String message, Throwable cause) {
    super(message, cause);
  }

  /** The server understood and said no. */
  static final class Refusal extends ServerException {

    private static final long serialVersionUID = 1L;

    Refusal(String message) {
      super(message);
    }
  }
}
