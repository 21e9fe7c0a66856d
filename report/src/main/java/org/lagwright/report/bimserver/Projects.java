package org.lagwright.report.bimserver;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Collectors;
import java.util.stream.StreamSupport;
import org.jspecify.annotations.Nullable;
import tools.jackson.databind.JsonNode;

/** Finds a revision by the names of projects and numbers of revisions. */
final class Projects {

  private static final int MAX_SHOWN = 30;
  private static final int MAX_DEPTH = 50;

  private final JsonInterface json;
  private final ServerAddress address;

  Projects(JsonInterface json, ServerAddress address) {
    this.json = json;
    this.address = address;
  }

  /**
   * The revision of the address.
   *
   * @throws ServerException if there is no such project or revision; it names those that there are
   */
  Revision revision() {
    TreeMap<String, JsonNode> projects = byPath();
    JsonNode project = projects.get(address.project());
    if (project == null) {
      throw new ServerException(
          address
              + ": no such project. Those you may see: "
              + shown(List.copyOf(projects.keySet())));
    }
    long wanted =
        address.revision().isPresent()
            ? address.revision().getAsInt()
            : json.number(project.path("lastRevisionId"));
    String key = address.revision().isPresent() ? "id" : "oid";
    JsonNode all =
        json.service("getAllRevisionsOfProject", Map.of("poid", json.number(project.path("oid"))));
    for (JsonNode revision : all) {
      if (json.number(revision.path(key)) == wanted) {
        return new Revision(
            json.number(revision.path("oid")),
            json.number(revision.path("id")),
            json.number(project.path("oid")),
            address.project(),
            json.text(project.path("schema")));
      }
    }
    throw noRevision(all);
  }

  /** The project with this path, null where there is none that we may see. */
  @Nullable JsonNode find(String path) {
    return byPath().get(path);
  }

  private ServerException noRevision(JsonNode all) {
    List<String> numbers =
        StreamSupport.stream(all.spliterator(), false)
            .map(revision -> json.number(revision.path("id")))
            .sorted()
            .map(String::valueOf)
            .toList();
    return new ServerException(
        numbers.isEmpty()
            ? address + ": the project has no revision yet. Check a model in first."
            : address + ": no such revision. Those of the project: " + shown(numbers));
  }

  private TreeMap<String, JsonNode> byPath() {
    Map<Long, JsonNode> byId = new HashMap<>();
    for (JsonNode project :
        json.service("getAllProjects", Map.of("onlyTopLevel", false, "onlyActive", true))) {
      byId.put(json.number(project.path("oid")), project);
    }
    TreeMap<String, JsonNode> byPath = new TreeMap<>();
    byId.values().forEach(project -> byPath.put(path(project, byId, 0), project));
    return byPath;
  }

  /** A parent that we may not see is left out. */
  private String path(JsonNode project, Map<Long, JsonNode> byId, int depth) {
    String name = json.text(project.path("name"));
    JsonNode parent = byId.get(json.number(project.path("parentId")));
    return parent == null || depth > MAX_DEPTH ? name : path(parent, byId, depth + 1) + "/" + name;
  }

  private static String shown(List<String> names) {
    if (names.isEmpty()) {
      return "none.";
    }
    String more = names.size() > MAX_SHOWN ? " and " + (names.size() - MAX_SHOWN) + " more" : "";
    return names.stream().limit(MAX_SHOWN).collect(Collectors.joining(", ")) + more + ".";
  }
}
