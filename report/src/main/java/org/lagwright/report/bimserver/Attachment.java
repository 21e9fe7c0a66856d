package org.lagwright.report.bimserver;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import tools.jackson.databind.JsonNode;

/** Hangs files onto a revision as what the server calls extended data. */
final class Attachment {

  private static final Map<String, String> MIME_TYPES =
      Map.of(
          ".xlsx", "application/vnd.openxmlformats-officedocument.spreadsheetml.sheet",
          ".json", "application/json");

  private final JsonInterface json;

  Attachment(JsonInterface json) {
    this.json = json;
  }

  /** All files are on the server before the first of them is hung onto the revision. */
  void of(List<Path> files, Revision revision, long nowMillis) throws IOException {
    Map<Path, Map<String, Object>> uploaded = new LinkedHashMap<>();
    for (Path file : files) {
      uploaded.put(file, upload(file, nowMillis));
    }
    for (Map<String, Object> data : uploaded.values()) {
      json.service(
          "addExtendedDataToRevision", Map.of("roid", revision.id(), "extendedData", data));
    }
  }

  private Map<String, Object> upload(Path file, long nowMillis) throws IOException {
    String name = String.valueOf(file.getFileName());
    String type =
        MIME_TYPES.getOrDefault(name.replaceFirst("^.*(?=\\.)", ""), "application/octet-stream");
    long size = Files.size(file);
    long schema = schema("Lagwright " + name, type);
    long id = json.upload(Map.of("action", "file"), new Upload.Content(file, name, type), "fileId");
    return Map.of(
        "__type", "SExtendedData",
        "title", name,
        "added", nowMillis,
        "size", size,
        "schemaId", schema,
        "fileId", id);
  }

  /** The kind of data, made known to the server where it is not. */
  private long schema(String name, String type) {
    for (JsonNode known : json.service("getAllExtendedDataSchemas", Map.of())) {
      if (name.equals(known.path("name").asString())) {
        return json.number(known.path("oid"));
      }
    }
    Map<String, Object> schema =
        Map.of(
            "__type",
            "SExtendedDataSchema",
            "name",
            name,
            "contentType",
            type,
            "description",
            "Insulation takeoff",
            "url",
            "",
            "fileId",
            -1,
            "size",
            0,
            "users",
            List.of(),
            "extendedData",
            List.of());
    return json.number(json.service("addExtendedDataSchema", Map.of("extendedDataSchema", schema)));
  }
}
