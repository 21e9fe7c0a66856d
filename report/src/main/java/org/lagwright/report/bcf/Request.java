package org.lagwright.report.bcf;

import java.util.List;
import org.lagwright.takeoff.Takeoff;

/**
 * Something to be asked of the designers: a question or a finding that is more than information,
 * with the topic that carries it in {@code issues.bcf}.
 *
 * @param reason why it is asked: {@code service unknown}
 * @param untilAnswered what the figures do meanwhile: {@code left out}
 */
public record Request(Topic topic, String reason, String untilAnswered) {

  /** Questions first, then findings; what the model shows bare or too close has its own sheets. */
  public static List<Request> of(Takeoff takeoff) {
    return TopicList.requests(takeoff);
  }
}
