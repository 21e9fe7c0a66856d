package org.lagwright.ifc.source;

import java.io.IOException;
import java.nio.file.Path;

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

  /** For a file that the system does not give to us. */
  static ModelException unreadable(Path file, IOException cause) {
    return new ModelException(
        file
            + ": cannot be read ("
            + cause.getMessage()
            + "). Check that it is complete and yours, and that the disk is not full.",
        cause);
  }
}
