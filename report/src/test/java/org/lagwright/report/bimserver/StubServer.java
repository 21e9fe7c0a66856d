package org.lagwright.report.bimserver;

import com.sun.net.httpserver.HttpExchange;
import com.sun.net.httpserver.HttpServer;
import com.sun.net.httpserver.HttpsConfigurator;
import com.sun.net.httpserver.HttpsServer;
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
import javax.net.ssl.SSLContext;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/**
 * Answers in the forms that release 1.5.186 was seen to answer in. It has the projects Alder Quay
 * (ifc4, revisions 1 and 2), Alder Quay/Pier (ifc2x3tc1, none) and Bollards (ifc4x3, revision 1).
 * What is checked in becomes one more revision; a sub-project that is added stays.
 */
final class StubServer implements AutoCloseable {

  static final String USER = "estimator@alder-quay.example";
  static final String PASSWORD = "tide-table-74";
  static final String TOKEN = "0123456789abcdef";

  /** What it calls a check-in in the questions for its progress. */
  static final int CHECK_IN = 12;

  private static final JsonMapper MAPPER = new JsonMapper();

  /** Methods that were called, in order, and what was fetched or sent beside them. */
  final List<String> called = new ArrayList<>();

  /** Bodies of files that were sent. */
  final List<String> uploads = new ArrayList<>();

  /** Answers that differ from the usual ones, by method or path. */
  final Map<String, Answer> instead = new HashMap<>();

  private final HttpServer server;
  private final String scheme;
  private final ExecutorService threads = Executors.newCachedThreadPool();
  private final CountDownLatch end = new CountDownLatch(1);
  private final byte[] model;
  private JsonNode lastParameters = MAPPER.createObjectNode();
  private final List<String> projects =
      new ArrayList<>(
          List.of(
              project(10, "Alder Quay", -1, "ifc4", 102),
              project(11, "Pier", 10, "ifc2x3tc1", -1),
              project(12, "Bollards", -1, "ifc4x3", 121)));

  /** Revisions of each project, by what it is called. */
  private final Map<Integer, List<String>> revisions =
      new HashMap<>(
          Map.of(
              10, new ArrayList<>(List.of(revision(101, 1, ""), revision(102, 2, ""))),
              12, new ArrayList<>(List.of(revision(121, 1, "")))));

  /** One way to answer. */
  @FunctionalInterface
  interface Answer {
    void to(HttpExchange exchange) throws IOException;
  }

  StubServer(byte[] model) throws IOException {
    this(model, HttpServer.create(), "http");
  }

  private StubServer(byte[] model, HttpServer server, String scheme) throws IOException {
    this.model = model.clone();
    this.server = server;
    this.scheme = scheme;
    server.bind(new InetSocketAddress(InetAddress.getLoopbackAddress(), 0), 0);
    server.setExecutor(threads);
    server.createContext("/", this::receive);
    server.start();
  }

  /** The same over TLS. */
  static StubServer secure(byte[] model, SSLContext context) throws IOException {
    HttpsServer server = HttpsServer.create();
    server.setHttpsConfigurator(new HttpsConfigurator(context));
    return new StubServer(model, server, "https");
  }

  String address() {
    return scheme + "://127.0.0.1:" + server.getAddress().getPort();
  }

  private synchronized void receive(HttpExchange exchange) throws IOException {
    String path = exchange.getRequestURI().getPath();
    byte[] body = exchange.getRequestBody().readAllBytes();
    String what = path.equals("/json") ? method(body) : path;
    called.add(what);
    if (path.equals("/upload")) {
      uploads.add(new String(body, StandardCharsets.ISO_8859_1));
    }
    boolean checkIn = path.equals("/upload") && !uploaded("poid").isEmpty();
    Answer answer = instead.get(what);
    if (answer != null) {
      answer.to(exchange);
    } else if (path.equals("/download")) {
      send(exchange, model);
    } else if (checkIn) {
      addRevision(Integer.parseInt(uploaded("poid")), uploaded("comment"));
      send(exchange, "{\"topicId\": " + CHECK_IN + "}");
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
      case "getAllProjects" -> result(projects.toString());
      case "getAllRevisionsOfProject" ->
          result(revisions.getOrDefault(lastParameters.path("poid").asInt(), List.of()).toString());
      case "addProjectAsSubProject" -> result(addSubProject());
      case "getSuggestedDeserializerForExtension" -> result("{\"oid\": 8}");
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

  private String addSubProject() {
    String name = lastParameters.path("projectName").asString();
    int parent = lastParameters.path("parentPoid").asInt();
    projects.add(project(13, name, parent, lastParameters.path("schema").asString(), -1));
    return projects.get(projects.size() - 1);
  }

  private void addRevision(int project, String comment) {
    List<String> known = revisions.computeIfAbsent(project, id -> new ArrayList<>());
    int number = known.size() + 1;
    known.add(revision(10 * project + number, number, comment));
  }

  private static String revision(int id, int number, String comment) {
    return "{\"oid\": %d, \"id\": %d, \"comment\": \"%s\"}".formatted(id, number, comment);
  }

  /** A field of the last upload, empty where it has none of that name. */
  String uploaded(String field) {
    String form = uploads.get(uploads.size() - 1);
    String start = "name=\"" + field + "\"\r\n\r\n";
    int at = form.indexOf(start);
    return at < 0
        ? ""
        : form.substring(at + start.length(), form.indexOf("\r\n", at + start.length()));
  }

  /** True if the last question was for the progress of a check-in. */
  boolean isAskedForCheckIn() {
    return lastParameters.path("topicId").asInt() == CHECK_IN;
  }

  /** Adds a project as if it had always been there. */
  void add(String project) {
    projects.add(project);
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
