package org.lagwright.report.json;

import java.util.List;
import org.jspecify.annotations.Nullable;
import org.lagwright.report.Words;
import org.lagwright.takeoff.service.Classification;
import org.lagwright.takeoff.service.Vote;

/** The service of an element with the votes for it. */
record ServiceView(
    String id,
    String name,
    @Nullable Double temperatureC,
    @Nullable Double condensationTemperatureC,
    List<VoteView> votes,
    @Nullable String contradiction) {

  record VoteView(String service, String from, String text, double weight) {
    static VoteView of(Vote vote) {
      return new VoteView(vote.serviceId(), vote.from(), vote.text(), Finite.number(vote.weight()));
    }
  }

  static @Nullable ServiceView of(@Nullable Classification service) {
    return service == null
        ? null
        : new ServiceView(
            service.serviceId(),
            service.name(),
            Finite.orNull(Words.temperatureC(service)),
            Finite.orNull(service.condensationC()),
            service.votes().stream().map(VoteView::of).toList(),
            service.contradiction());
  }
}
