package org.lagwright.report.bimserver;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.net.ConnectException;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpConnectTimeoutException;
import java.net.http.HttpRequest;
import java.net.http.HttpRequest.BodyPublisher;
import java.net.http.HttpResponse;
import java.nio.channels.UnresolvedAddressException;
import java.security.cert.CertPathBuilderException;
import java.time.Duration;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.TimeoutException;
import javax.net.ssl.SSLException;

/** Requests to one server with bounds on time and length. Follows no redirection. */
final class Wire {

  private final URI server;
  private final ServerLimits limits;
  private final HttpClient client;

  /** Asked while an answer is awaited. */
  @FunctionalInterface
  interface Pulse {

    /** True if something moved since the last time. */
    boolean moved(long bytes);
  }

  Wire(URI server, ServerLimits limits) {
    this.server = server;
    this.limits = limits;
    this.client =
        HttpClient.newBuilder()
            .version(HttpClient.Version.HTTP_1_1)
            .followRedirects(HttpClient.Redirect.NEVER)
            .connectTimeout(limits.connect())
            .build();
  }

  /**
   * Sends a body and gives the answer.
   *
   * @param patience until all of the answer is there
   */
  byte[] post(String path, String contentType, BodyPublisher body, Duration patience) {
    HttpRequest request =
        HttpRequest.newBuilder(server.resolve(path))
            .header("Content-Type", contentType)
            .POST(body)
            .build();
    ByteArrayOutputStream answer = new ByteArrayOutputStream();
    exchange(request, new Intake(answer, limits.maxAnswerBytes()), patience, bytes -> false);
    return answer.toByteArray();
  }

  /** Sends a file, as long as it keeps going, and gives the answer. */
  byte[] send(String path, Upload upload) {
    HttpRequest request =
        HttpRequest.newBuilder(server.resolve(path))
            .header("Content-Type", upload.contentType())
            .POST(upload)
            .build();
    ByteArrayOutputStream answer = new ByteArrayOutputStream();
    Intake intake = new Intake(answer, limits.maxAnswerBytes());
    exchange(request, intake, limits.stall(), bytes -> upload.moved());
    return answer.toByteArray();
  }

  /** Brings a model, as long as it keeps coming. */
  void get(String path, OutputStream to, Pulse pulse) {
    HttpRequest request = HttpRequest.newBuilder(server.resolve(path)).GET().build();
    exchange(request, new Intake(to, limits.maxModelBytes()), limits.stall(), pulse);
  }

  private void exchange(HttpRequest request, Intake intake, Duration patience, Pulse pulse) {
    CompletableFuture<HttpResponse<Long>> answer = client.sendAsync(request, info -> intake);
    try {
      int status = await(answer, intake, patience, pulse).statusCode();
      if (status != 200) {
        throw new ServerException(
            server
                + ": answers with HTTP status "
                + status
                + ". Check that a BIMserver is at this address, and ask who runs it.");
      }
    } finally {
      answer.cancel(true);
    }
  }

  private HttpResponse<Long> await(
      CompletableFuture<HttpResponse<Long>> answer, Intake intake, Duration patience, Pulse pulse) {
    long since = System.nanoTime();
    while (true) {
      try {
        return answer.get(
            Math.min(limits.poll().toNanos(), patience.toNanos()), TimeUnit.NANOSECONDS);
      } catch (TimeoutException e) {
        if (pulse.moved(intake.bytes())) {
          since = System.nanoTime();
        } else if (System.nanoTime() - since >= patience.toNanos()) {
          throw tooSlow(patience);
        }
      } catch (ExecutionException e) {
        throw failure(e.getCause() == null ? e : e.getCause());
      } catch (InterruptedException e) {
        Thread.currentThread().interrupt();
        throw new ServerException(server + ": interrupted.", e);
      }
    }
  }

  /** Nothing came for so long. */
  ServerException tooSlow(Duration patience) {
    return new ServerException(
        server
            + ": no answer within "
            + patience.toMillis() / 1000.0
            + " s. Try again later, or ask who runs the server.");
  }

  private RuntimeException failure(Throwable cause) {
    if (cause instanceof Intake.TooMuch) {
      return new ServerException(
          server + ": sends more than the limits allow. Check that a BIMserver is there.", cause);
    }
    if (cause instanceof Intake.NoRoom) {
      return new ServerException(
          server
              + ": what it sends cannot be kept ("
              + cause.getMessage()
              + "). Free room for temporary files.",
          cause);
    }
    if (cause instanceof HttpConnectTimeoutException) {
      return tooSlow(limits.connect());
    }
    if (cause instanceof ConnectException || cause instanceof UnresolvedAddressException) {
      return new ServerException(
          server + ": no server answers there. Check host and port, and that it runs.", cause);
    }
    if (cause instanceof SSLException) {
      return new ServerException(
          server + ": no secure connection (" + cause.getMessage() + "). " + advice(cause), cause);
    }
    if (cause instanceof IOException) {
      return new ServerException(
          server + ": the connection broke before the answer was complete. Try again.", cause);
    }
    return new IllegalStateException("request failed", cause);
  }

  /** A certificate that leads to no known authority is common where an office issues its own. */
  private static String advice(Throwable failure) {
    for (Throwable cause = failure; cause != null; cause = cause.getCause()) {
      if (cause instanceof CertPathBuilderException) {
        return "Java trusts nobody who vouches for its certificate. If you do, put it into a trust"
            + " store (keytool -importcert -storetype JKS), and name that with java"
            + " -Djavax.net.ssl.trustStore=FILE.";
      }
    }
    return "Check its certificate, and that the host is one it names.";
  }
}
