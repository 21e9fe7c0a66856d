package org.lagwright.takeoff.pack;

/**
 * Settings or a pack are wrong; the message is one line {@code file:line:column: what. What to do.}
 */
public final class PackException extends RuntimeException {

  private static final long serialVersionUID = 1L;

  public PackException(String message) {
    super(message);
  }

  public PackException(String message, Throwable cause) {
    super(message, cause);
  }
}
