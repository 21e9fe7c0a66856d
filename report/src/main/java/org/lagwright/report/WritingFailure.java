package org.lagwright.report;

import java.io.IOException;
import tools.jackson.core.JacksonException;

/** Why an output could not be written, out of what Jackson wraps round it. */
public final class WritingFailure {

  private WritingFailure() {}

  /** What the stream threw, however deep it is wrapped; anything else is our own bug. */
  public static IOException of(JacksonException e) {
    for (Throwable cause = e.getCause(); cause != null; cause = cause.getCause()) {
      if (cause instanceof IOException failure) {
        return failure;
      }
    }
    throw e;
  }
}
