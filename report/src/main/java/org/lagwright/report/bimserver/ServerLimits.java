package org.lagwright.report.bimserver;

import java.time.Duration;
import org.lagwright.ifc.step.StepLimits;

/**
 * How long we wait for a server and how much we take from it.
 *
 * @param connect until it accepts a connection
 * @param answer until the whole answer to a question is there
 * @param stall how long nothing may move while a model is prepared or a file travels
 * @param poll between two looks at its progress
 * @param maxAnswerBytes length of an answer that is no model
 * @param maxModelBytes length of a model
 */
public record ServerLimits(
    Duration connect,
    Duration answer,
    Duration stall,
    Duration poll,
    long maxAnswerBytes,
    long maxModelBytes) {

  /**
   * For servers in an office or across the internet; a model may be as large as an unpacked one.
   */
  public static final ServerLimits DEFAULT =
      new ServerLimits(
          Duration.ofSeconds(10),
          Duration.ofSeconds(60),
          Duration.ofMinutes(10),
          Duration.ofMillis(500),
          64L << 20,
          StepLimits.DEFAULT.maxInflatedBytes());

  public ServerLimits {
    if (connect.isNegative() || answer.isNegative() || stall.isNegative() || poll.isNegative()) {
      throw new IllegalArgumentException("times are not negative");
    }
    if (maxAnswerBytes <= 0 || maxModelBytes <= 0) {
      throw new IllegalArgumentException("lengths are positive");
    }
  }
}
