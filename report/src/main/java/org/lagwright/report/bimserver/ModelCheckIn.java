package org.lagwright.report.bimserver;

import java.io.IOException;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.Map;
import org.lagwright.ifc.source.ProgressListener;
import tools.jackson.databind.JsonNode;

/** Checks a model in as a new revision. The server reads it into its database record by record. */
final class ModelCheckIn {

  /** Name of the sub-project. */
  static final String SUB_PROJECT = "Insulation";

  private static final String DESERIALIZER_ADVICE =
      "What reads IFC there is the plug-in bundle IfcPlugins, which its administrator installs.";

  private final JsonInterface json;
  private final Wire wire;
  private final ServerLimits limits;
  private final ServerAddress address;
  private final Projects projects;
  private final ProgressListener listener;

  ModelCheckIn(
      JsonInterface json,
      Wire wire,
      ServerLimits limits,
      ServerAddress address,
      Projects projects,
      ProgressListener listener) {
    this.json = json;
    this.wire = wire;
    this.limits = limits;
    this.address = address;
    this.projects = projects;
    this.listener = listener;
  }

  /** The new revision. */
  Revision of(Path model, Revision from, CheckIn where, String maker) throws IOException {
    listener.progress("checking in", 0);
    boolean sub = where == CheckIn.SUB;
    String project = sub ? from.project() + "/" + SUB_PROJECT : from.project();
    long id = sub ? subProject(project, from) : from.projectId();
    String comment = "insulation by " + maker + ", from " + from;
    long topic = upload(model, id, comment, deserializer(id, project));
    new ServerAction(
            json,
            wire,
            limits,
            topic,
            "checking in " + project,
            listener,
            words -> refusal(project, words))
        .awaitEnd();
    return newest(id, project, comment, from.schema());
  }

  /** Made where it is missing. */
  private long subProject(String path, Revision from) {
    JsonNode project = projects.find(path);
    if (project == null) {
      project =
          json.service(
              "addProjectAsSubProject",
              Map.of(
                  "projectName",
                  SUB_PROJECT,
                  "parentPoid",
                  from.projectId(),
                  "schema",
                  from.schema()));
    }
    String schema = json.text(project.path("schema"));
    if (!schema.equals(from.schema())) {
      throw new ServerException(
          address.server()
              + ": the sub-project "
              + path
              + " is of "
              + schema
              + " and the model of "
              + from.schema()
              + ". Rename the sub-project there.");
    }
    return json.number(project.path("oid"));
  }

  private long deserializer(long project, String name) {
    try {
      JsonNode found =
          json.service(
                  "getSuggestedDeserializerForExtension",
                  Map.of("extension", "ifc", "poid", project))
              .path("oid");
      if (found.isIntegralNumber()) {
        return json.number(found);
      }
    } catch (ServerException.Refusal e) {
      throw new ServerException(e.getMessage() + ". " + DESERIALIZER_ADVICE, e);
    }
    throw new ServerException(
        address.server()
            + ": the server has no deserializer for the IFC files of "
            + name
            + ". "
            + DESERIALIZER_ADVICE);
  }

  private long upload(Path model, long project, String comment, long deserializer)
      throws IOException {
    Map<String, Object> fields = new LinkedHashMap<>();
    fields.put("deserializerOid", deserializer);
    fields.put("merge", false);
    fields.put("poid", project);
    fields.put("comment", comment);
    fields.put("sync", false);
    // the server may store it under that name, so it is a plain one
    Upload.Content content = new Upload.Content(model, "insulated.ifc", "application/x-step");
    return json.upload(fields, content, "topicId");
  }

  /** Quirks that were seen are told as what they are; the server's words come last. */
  private ServerException refusal(String project, String words) {
    String why = "the server failed to read the model";
    if (words.contains("has no literal value")) {
      why = "the server refuses the model for a value that its schema does not know";
    } else if (words.contains("is not supported")) {
      why = "the server knows no such schema";
    }
    return new ServerException(
        address.server() + ": nothing is checked in to " + project + ", as " + why + ": " + words);
  }

  /** The project may have got another one meanwhile; the comment tells which is ours. */
  private Revision newest(long project, String name, String comment, String schema) {
    Revision newest = null;
    JsonNode all = json.service("getAllRevisionsOfProject", Map.of("poid", project));
    for (JsonNode revision : all) {
      long number = json.number(revision.path("id"));
      boolean ours = comment.equals(revision.path("comment").asString(""));
      if (ours && (newest == null || number > newest.number())) {
        newest = new Revision(json.number(revision.path("oid")), number, project, name, schema);
      }
    }
    if (newest == null) {
      throw new ServerException(
          address.server()
              + ": the server says that it finished, but there is no new revision of "
              + name
              + ". Ask who runs it to look at its log.");
    }
    return newest;
  }
}
