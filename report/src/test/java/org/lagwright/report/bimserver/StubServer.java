package org.lagwright.report.bimserver;

import com.sun.net.httpserver.HttpExchange;
import com.sun.net.httpserver.HttpServer;
import java.io.IOException;
import java.io.OutputStream;
import java.io.UncheckedIOException;
import java.net.InetAddress;
import java.net.InetSocketAddress;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/**
 * Answers in the forms that release 1.5.186 was seen to answer in. It has the projects Alder Quay
 * (ifc4, revisions 1 and 2), Alder Quay/Pier (ifc2x3tc1, none) and Bollards (ifc4x3, revision 1).
 */
final class StubServer implements AutoCloseable {

  static final String USER = "estimator@alder-quay.example";
  static final String PASSWORD = "tide-table-74";
  static final String TOKEN = "0123456789abcdef";

  private static final JsonMapper MAPPER = new JsonMapper();

  /** Methods that were called, in order, and what was fetched or sent beside them. */
  final List<String> called = new ArrayList<>();

  /** Bodies of files that were sent. */
  final List<String> uploads = new ArrayList<>();

  /** Answers that differ from the usual ones, by method or path. */
  final Map<String, Answer> instead = new HashMap<>();

  private final HttpServer server;
  private final ExecutorService threads = Executors.newCachedThreadPool();
  private final CountDownLatch end = new CountDownLatch(1);
  private final byte[] model;
  private JsonNode lastParameters = MAPPER.createObjectNode();

  /** One way to answer. */
  @FunctionalInterface
  interface Answer {
    void to(HttpExchange exchange) throws IOException;
  }

  StubServer(byte[] model) throws IOException {
    this.model = model.clone();
    server = HttpServer.create(new InetSocketAddress(InetAddress.getLoopbackAddress(), 0), 0);
    server.setExecutor(threads);
    server.createContext("/", this::receive);
    server.start();
  }

  String address() {
    return "http://127.0.0.1:" + server.getAddress().getPort();
  }

  private synchronized void receive(HttpExchange exchange) throws IOException {
    String path = exchange.getRequestURI().getPath();
    byte[] body = exchange.getRequestBody().readAllBytes();
    String what = path.equals("/json") ? method(body) : path;
    called.add(what);
    if (path.equals("/upload")) {
      uploads.add(new String(body, StandardCharsets.ISO_8859_1));
    }
    Answer answer = instead.get(what);
    if (answer != null) {
      answer.to(exchange);
    } else if (path.equals("/download")) {
      send(exchange, model);
    } else {
      send(exchange, usual(what));
    }
    exchange.close();
  }

  private String method(byte[] body) {
    JsonNode message = MAPPER.readTree(body);
    String method = message.path("request").path("method").asString();
    lastParameters = message.path("request").path("parameters");
    boolean known = TOKEN.equals(message.path("token").asString(""));
    return known || method.equals("login") ? method : "stranger";
  }

  private String usual(String what) {
    return switch (what) {
      case "login" ->
          PASSWORD.equals(lastParameters.path("password").asString())
              ? result("\"" + TOKEN + "\"")
              : refusal("Invalid username/password combination");
      case "stranger" -> refusal("Anonymous has no rights for this call");
      case "getLoggedInUser", "addExtendedDataToRevision" -> result("{}");
      case "getAllProjects" ->
          result(
              "["
                  + project(10, "Alder Quay", -1, "ifc4", 102)
                  + ","
                  + project(11, "Pier", 10, "ifc2x3tc1", -1)
                  + ","
                  + project(12, "Bollards", -1, "ifc4x3", 121)
                  + "]");
      case "getAllRevisionsOfProject" ->
          result(
              switch (lastParameters.path("poid").asInt()) {
                case 10 -> "[{\"oid\": 101, \"id\": 1}, {\"oid\": 102, \"id\": 2}]";
                case 12 -> "[{\"oid\": 121, \"id\": 1}]";
                default -> "[]";
              });
      case "getSerializerByName" ->
          lastParameters.path("serializerName").asString().equals("Ifc4 (Streaming)")
              ? result("{\"oid\": 7}")
              : refusal("No SerializerPluginConfiguration found");
      case "download" -> result("9");
      case "getProgress" -> progress("FINISHED", 100, "");
      case "getAllExtendedDataSchemas" -> result("[]");
      case "addExtendedDataSchema" -> result("55");
      case "/upload" -> "{\"fileId\": 66}";
      default -> throw new IllegalStateException("the stub does not know " + what);
    };
  }

  static String project(int id, String name, int parent, String schema, int last) {
    return """
    {"oid": %d, "name": "%s", "parentId": %d, "schema": "%s", "lastRevisionId": %d}"""
        .formatted(id, name, parent, schema, last);
  }

  static String progress(String state, int percent, String error) {
    String errors = error.isEmpty() ? "[]" : "[\"" + error + "\"]";
    return result(
        "{\"state\": \"%s\", \"progress\": %d, \"title\": \"Done preparing\", \"errors\": %s}"
            .formatted(state, percent, errors));
  }

  static String result(String json) {
    return "{\"response\": {\"result\": " + json + "}}";
  }

  static String refusal(String message) {
    return "{\"response\": {\"exception\": {\"__type\": \"UserException\", \"message\": \""
        + message
        + "\"}}}";
  }

  static void send(HttpExchange exchange, String text) throws IOException {
    send(exchange, text.getBytes(StandardCharsets.UTF_8));
  }

  private static void send(HttpExchange exchange, byte[] body) throws IOException {
    exchange.sendResponseHeaders(200, body.length);
    try (OutputStream out = exchange.getResponseBody()) {
      out.write(body);
    }
  }

  /** Promises the whole model, sends half of it, and is gone. */
  void breakOff(HttpExchange exchange) throws IOException {
    exchange.sendResponseHeaders(200, model.length);
    exchange.getResponseBody().write(model, 0, model.length / 2);
    exchange.getResponseBody().flush();
    // closing the exchange with bytes owed cuts the connection
  }

  /** Says nothing until this server ends. */
  void stall(HttpExchange exchange) {
    try {
      end.await();
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
      throw new UncheckedIOException(new IOException("interrupted", e));
    }
  }

  @Override
  public void close() {
    end.countDown();
    server.stop(0);
    threads.shutdownNow();
  }
}
