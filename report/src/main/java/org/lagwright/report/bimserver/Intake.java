package org.lagwright.report.bimserver;

import java.io.IOException;
import java.io.OutputStream;
import java.net.http.HttpResponse.BodySubscriber;
import java.nio.ByteBuffer;
import java.nio.channels.Channels;
import java.nio.channels.WritableByteChannel;
import java.util.List;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.CompletionStage;
import java.util.concurrent.Flow.Subscription;
import org.jspecify.annotations.Nullable;

/** Takes a body in piece by piece, counts it, and stops where it grows beyond a limit. */
final class Intake implements BodySubscriber<Long> {

  private final WritableByteChannel to;
  private final long maxBytes;
  private final CompletableFuture<Long> whole = new CompletableFuture<>();
  private @Nullable Subscription subscription;
  private volatile long bytes;

  /** The server sends more than we take. */
  static final class TooMuch extends IOException {
    private static final long serialVersionUID = 1L;
  }

  /** What arrives cannot be kept here. */
  static final class NoRoom extends IOException {
    private static final long serialVersionUID = 1L;

    NoRoom(IOException cause) {
      super(cause.getMessage(), cause);
    }
  }

  Intake(OutputStream to, long maxBytes) {
    this.to = Channels.newChannel(to);
    this.maxBytes = maxBytes;
  }

  /** How much has arrived. */
  long bytes() {
    return bytes;
  }

  @Override
  public void onSubscribe(Subscription given) {
    subscription = given;
    given.request(1);
  }

  @Override
  public void onNext(List<ByteBuffer> pieces) {
    Subscription source = subscription;
    if (source == null) {
      throw new IllegalStateException("a piece before the subscription");
    }
    try {
      long arrived = bytes;
      for (ByteBuffer piece : pieces) {
        arrived += piece.remaining();
        keep(piece, arrived);
      }
      bytes = arrived;
      source.request(1);
    } catch (IOException e) {
      source.cancel();
      whole.completeExceptionally(e);
    }
  }

  private void keep(ByteBuffer piece, long arrived) throws IOException {
    if (arrived > maxBytes) {
      throw new TooMuch();
    }
    try {
      to.write(piece);
    } catch (IOException e) {
      throw new NoRoom(e);
    }
  }

  @Override
  public void onError(Throwable failure) {
    whole.completeExceptionally(failure);
  }

  @Override
  public void onComplete() {
    whole.complete(bytes);
  }

  @Override
  public CompletionStage<Long> getBody() {
    return whole;
  }
}
