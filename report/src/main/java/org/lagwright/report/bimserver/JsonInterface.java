package org.lagwright.report.bimserver;

import java.io.FileNotFoundException;
import java.net.URI;
import java.net.http.HttpRequest.BodyPublishers;
import java.util.LinkedHashMap;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import tools.jackson.core.JacksonException;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/**
 * The JSON interface of the server: {@code {"token", "request": {"interface", "method",
 * "parameters"}}} is answered with {@code {"response": {"result"}}} or {@code {"response":
 * {"exception": {"__type", "message"}}}}, both with HTTP status 200.
 */
final class JsonInterface {

  private static final JsonMapper MAPPER = new JsonMapper();
  private static final int MAX_WORDS = 300;

  private final URI server;
  private final Wire wire;
  private final ServerLimits limits;
  private final Credentials credentials;
  private @Nullable String token;

  JsonInterface(URI server, Wire wire, ServerLimits limits, Credentials credentials) {
    this.server = server;
    this.wire = wire;
    this.limits = limits;
    this.credentials = credentials;
  }

  /** Tells who asks; a token is tried with the first question. */
  void login() {
    if (credentials instanceof Credentials.Token given) {
      token = given.token();
    } else if (credentials instanceof Credentials.Login given) {
      Map<String, Object> parameters =
          Map.of("username", given.user(), "password", given.password());
      token = text(call("AuthInterface", "login", parameters));
    }
  }

  /** What every request carries once we are known. */
  String token() {
    if (token == null) {
      throw new IllegalStateException("asked before the login");
    }
    return token;
  }

  /** Calls a method of the interface for models. */
  JsonNode service(String method, Map<String, Object> parameters) {
    return call("ServiceInterface", method, parameters);
  }

  /**
   * Calls a method.
   *
   * @throws ServerException.Refusal if the server says no
   * @throws ServerException if it does not answer as it should
   */
  JsonNode call(String part, String method, Map<String, Object> parameters) {
    Map<String, Object> message = new LinkedHashMap<>();
    if (token != null) {
      message.put("token", token);
    }
    message.put("request", Map.of("interface", part, "method", method, "parameters", parameters));
    byte[] answer =
        wire.post(
            "/json",
            "application/json",
            BodyPublishers.ofByteArray(MAPPER.writeValueAsBytes(message)),
            limits.answer());
    return result(parse(answer).path("response"), "result", method);
  }

  /**
   * Sends a file beside the calls, as long as it keeps going.
   *
   * @param fields what the server is told of it; the token is among them by itself
   * @param answer the number that the server answers with
   * @throws FileNotFoundException if it cannot be read
   */
  long upload(Map<String, Object> fields, Upload.Content content, String answer)
      throws FileNotFoundException {
    Map<String, Object> all = new LinkedHashMap<>();
    all.put("token", token());
    all.putAll(fields);
    return number(
        result(parse(wire.send("/upload", new Upload(all, content))), answer, "the file"));
  }

  private JsonNode result(JsonNode response, String name, String what) {
    JsonNode exception = response.path("exception");
    if (exception.isObject()) {
      throw new ServerException.Refusal(
          server + ": the server refuses " + what + ": " + words(exception.path("message")));
    }
    if (!response.has(name)) {
      throw garbage();
    }
    return response.path(name);
  }

  private JsonNode parse(byte[] answer) {
    try {
      JsonNode document = MAPPER.readTree(answer);
      if (document.isObject()) {
        return document;
      }
    } catch (JacksonException e) {
      throw garbage();
    }
    throw garbage();
  }

  /** A whole number that must be there. */
  long number(JsonNode node) {
    if (!node.isIntegralNumber() || !node.canConvertToLong()) {
      throw garbage();
    }
    return node.longValue();
  }

  /** A text that must be there. */
  String text(JsonNode node) {
    if (!node.isString()) {
      throw garbage();
    }
    return node.stringValue();
  }

  /** The server's own words, cut to a length that can be read, secrets blotted out. */
  String words(JsonNode node) {
    String words = node.isString() ? node.stringValue() : "no reason given";
    words = words.replace(credentials.secret(), "***");
    if (token != null) {
      words = words.replace(token, "***");
    }
    return words.length() > MAX_WORDS ? words.substring(0, MAX_WORDS) + "..." : words;
  }

  private ServerException garbage() {
    return new ServerException(
        server + ": the answer is none of a BIMserver. Check that this is its address.");
  }
}
