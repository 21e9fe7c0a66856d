package org.lagwright.report.bimserver;

import java.util.Map;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.locks.LockSupport;
import java.util.function.Function;
import org.lagwright.ifc.source.ProgressListener;
import tools.jackson.databind.JsonNode;

/** Something that takes the server long; only its progress tells what comes of it. */
final class ServerAction {

  private final JsonInterface json;
  private final Wire wire;
  private final ServerLimits limits;
  private final long topic;
  private final String doing;
  private final ProgressListener listener;
  private final Function<String, ServerException> failure;
  private String lastProgress = "";
  private String progress = "";

  /**
   * An action that has begun.
   *
   * @param topic what the server calls it
   * @param doing what it does, for the listener
   * @param failure what to throw if the server fails, by its words
   */
  ServerAction(
      JsonInterface json,
      Wire wire,
      ServerLimits limits,
      long topic,
      String doing,
      ProgressListener listener,
      Function<String, ServerException> failure) {
    this.json = json;
    this.wire = wire;
    this.limits = limits;
    this.topic = topic;
    this.doing = doing;
    this.listener = listener;
    this.failure = failure;
  }

  /** Looks at the progress once, and tells it; true if it is another than the last time. */
  boolean moved() {
    isFinished();
    return changed();
  }

  /** Waits as long as something moves. */
  void awaitEnd() {
    long since = System.nanoTime();
    while (!isFinished()) {
      if (changed()) {
        since = System.nanoTime();
      } else if (System.nanoTime() - since >= limits.stall().toNanos()) {
        throw wire.tooSlow(limits.stall());
      }
      LockSupport.parkNanos(TimeUnit.MILLISECONDS.toNanos(limits.poll().toMillis()));
    }
  }

  private boolean changed() {
    boolean changed = !progress.equals(lastProgress);
    lastProgress = progress;
    return changed;
  }

  private boolean isFinished() {
    JsonNode state =
        json.call("NotificationRegistryInterface", "getProgress", Map.of("topicId", topic));
    String name = json.text(state.path("state"));
    if (name.equals("AS_ERROR")) {
      JsonNode errors = state.path("errors");
      throw failure.apply(json.words(errors.isEmpty() ? state.path("title") : errors.get(0)));
    }
    long percent = Math.max(0, Math.min(100, json.number(state.path("progress"))));
    progress = name + " " + state.path("title") + " " + percent;
    listener.progress(doing, percent / 100.0);
    return name.equals("FINISHED");
  }
}
