package org.lagwright.bimserverproof;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpRequest.BodyPublishers;
import java.net.http.HttpResponse;
import java.net.http.HttpResponse.BodyHandlers;
import java.nio.charset.StandardCharsets;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.locks.LockSupport;

/**
 * Someone of the design team who makes projects, checks models in and looks at what hangs there.
 */
final class Modeller {

  private static final ObjectMapper MAPPER = new ObjectMapper();

  private final HttpClient client = HttpClient.newHttpClient();
  private final String address;
  private final String token;

  Modeller(RealServer server) throws IOException, InterruptedException {
    address = server.address();
    token =
        ask(
                "",
                "AuthInterface",
                "login",
                Map.of("username", RealServer.USER, "password", RealServer.PASSWORD))
            .asText();
  }

  String token() {
    return token;
  }

  long addProject(String name, String schema) throws IOException, InterruptedException {
    return service("addProject", Map.of("projectName", name, "schema", schema))
        .path("oid")
        .asLong();
  }

  long addSubProject(String name, long parent, String schema)
      throws IOException, InterruptedException {
    return service(
            "addProjectAsSubProject",
            Map.of("projectName", name, "parentPoid", parent, "schema", schema))
        .path("oid")
        .asLong();
  }

  /** Adds a user who is no administrator, with rights to one project. */
  void addUser(String name, String password, long project)
      throws IOException, InterruptedException {
    long user =
        service(
                "addUserWithPassword",
                Map.of(
                    "username",
                    name,
                    "password",
                    password,
                    "name",
                    "Estimator",
                    "type",
                    "USER",
                    "selfRegistration",
                    false,
                    "resetUrl",
                    ""))
            .path("oid")
            .asLong();
    service("addUserToProject", Map.of("uoid", user, "poid", project));
  }

  /** Checks a model in and gives the last state of that action. */
  JsonNode checkIn(long project, byte[] model) throws IOException, InterruptedException {
    long deserializer =
        service("getSuggestedDeserializerForExtension", Map.of("extension", "ifc", "poid", project))
            .path("oid")
            .asLong();
    Map<String, Object> fields = new LinkedHashMap<>();
    fields.put("token", token);
    fields.put("deserializerOid", deserializer);
    fields.put("merge", false);
    fields.put("poid", project);
    fields.put("comment", "as designed");
    fields.put("sync", false);
    long topic = upload(fields, model).path("topicId").asLong();
    while (true) {
      JsonNode state =
          ask(token, "NotificationRegistryInterface", "getProgress", Map.of("topicId", topic));
      String name = state.path("state").asText();
      if (name.equals("FINISHED") || name.equals("AS_ERROR")) {
        return state;
      }
      LockSupport.parkNanos(TimeUnit.MILLISECONDS.toNanos(200));
    }
  }

  private JsonNode upload(Map<String, Object> fields, byte[] model)
      throws IOException, InterruptedException {
    String boundary = "a-boundary-that-no-model-holds";
    StringBuilder head = new StringBuilder();
    String part = "--" + boundary + "\r\nContent-Disposition: form-data; name=";
    fields.forEach(
        (name, value) ->
            head.append(part).append("\"" + name + "\"\r\n\r\n").append(value).append("\r\n"));
    head.append(part).append("\"data\"; filename=\"model.ifc\"\r\n\r\n");
    HttpRequest request =
        HttpRequest.newBuilder(URI.create(address + "/upload"))
            .header("Content-Type", "multipart/form-data; boundary=" + boundary)
            .POST(
                BodyPublishers.concat(
                    BodyPublishers.ofString(head.toString()),
                    BodyPublishers.ofByteArray(model),
                    BodyPublishers.ofString("\r\n--" + boundary + "--\r\n")))
            .build();
    return MAPPER.readTree(client.send(request, BodyHandlers.ofString()).body());
  }

  /** What hangs on the last revision of a project, by its title. */
  Map<String, byte[]> attached(long project) throws IOException, InterruptedException {
    long revision =
        service("getProjectByPoid", Map.of("poid", project)).path("lastRevisionId").asLong();
    Map<String, byte[]> attached = new LinkedHashMap<>();
    for (JsonNode data : service("getAllExtendedDataOfRevision", Map.of("roid", revision))) {
      URI uri =
          URI.create(
              address
                  + "/download?token="
                  + token
                  + "&action=extendeddata&edid="
                  + data.path("oid").asLong());
      HttpResponse<byte[]> file =
          client.send(HttpRequest.newBuilder(uri).build(), BodyHandlers.ofByteArray());
      attached.put(data.path("title").asText(), file.body());
    }
    return attached;
  }

  JsonNode service(String method, Map<String, Object> parameters)
      throws IOException, InterruptedException {
    return ask(token, "ServiceInterface", method, parameters);
  }

  private JsonNode ask(String known, String part, String method, Map<String, Object> parameters)
      throws IOException, InterruptedException {
    Map<String, Object> message = new LinkedHashMap<>();
    if (!known.isEmpty()) {
      message.put("token", known);
    }
    message.put("request", Map.of("interface", part, "method", method, "parameters", parameters));
    HttpRequest request =
        HttpRequest.newBuilder(URI.create(address + "/json"))
            .POST(
                BodyPublishers.ofString(MAPPER.writeValueAsString(message), StandardCharsets.UTF_8))
            .build();
    String answer = client.send(request, BodyHandlers.ofString()).body();
    JsonNode response = MAPPER.readTree(answer).path("response");
    if (!response.has("result")) {
      throw new IOException(method + ": " + answer);
    }
    return response.path("result");
  }
}
