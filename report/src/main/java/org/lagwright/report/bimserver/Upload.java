package org.lagwright.report.bimserver;

import java.io.FileNotFoundException;
import java.net.http.HttpRequest.BodyPublisher;
import java.net.http.HttpRequest.BodyPublishers;
import java.nio.ByteBuffer;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import java.util.concurrent.Flow.Subscriber;
import java.util.concurrent.Flow.Subscription;
import java.util.concurrent.atomic.AtomicLong;

/** A file with fields as a form in parts (RFC 7578), which counts what has gone. */
final class Upload implements BodyPublisher {

  private final String boundary = "lagwright-" + UUID.randomUUID();
  private final BodyPublisher form;
  private final AtomicLong gone = new AtomicLong();
  private long lastGone;

  /**
   * A file to send.
   *
   * @param name what the server may call it
   * @param type its media type
   */
  record Content(Path file, String name, String type) {}

  Upload(Map<String, Object> fields, Content content) throws FileNotFoundException {
    String start = "--" + boundary + "\r\nContent-Disposition: form-data; name=";
    List<BodyPublisher> parts = new ArrayList<>();
    fields.forEach(
        (name, value) ->
            parts.add(
                BodyPublishers.ofString(start + "\"" + name + "\"\r\n\r\n" + value + "\r\n")));
    String head =
        "\"data\"; filename=\"" + content.name() + "\"\r\nContent-Type: " + content.type();
    parts.add(BodyPublishers.ofString(start + head + "\r\n\r\n"));
    parts.add(BodyPublishers.ofFile(content.file()));
    parts.add(BodyPublishers.ofString("\r\n--" + boundary + "--\r\n"));
    form = BodyPublishers.concat(parts.toArray(BodyPublisher[]::new));
  }

  String contentType() {
    return "multipart/form-data; boundary=" + boundary;
  }

  /** True if more has gone than the last time. */
  boolean moved() {
    long now = gone.get();
    boolean moved = now != lastGone;
    lastGone = now;
    return moved;
  }

  @Override
  public long contentLength() {
    return form.contentLength();
  }

  @Override
  public void subscribe(Subscriber<? super ByteBuffer> subscriber) {
    form.subscribe(new Counting(subscriber));
  }

  /** Hands everything on. */
  private final class Counting implements Subscriber<ByteBuffer> {

    private final Subscriber<? super ByteBuffer> to;

    Counting(Subscriber<? super ByteBuffer> to) {
      this.to = to;
    }

    @Override
    public void onSubscribe(Subscription subscription) {
      to.onSubscribe(subscription);
    }

    @Override
    public void onNext(ByteBuffer piece) {
      gone.addAndGet(piece.remaining());
      to.onNext(piece);
    }

    @Override
    public void onError(Throwable failure) {
      to.onError(failure);
    }

    @Override
    public void onComplete() {
      to.onComplete();
    }
  }
}
