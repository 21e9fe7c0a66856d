package org.lagwright.report.bimserver;

import java.io.BufferedOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.Map;
import org.lagwright.ifc.source.ProgressListener;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/**
 * Brings one revision as a STEP file. The server writes it while it sends it and answers with HTTP
 * status 200 whatever comes of it; only its progress tells whether the file is whole.
 */
final class ModelDownload {

  /** Asked for by content type, the server hands out the one for IFC2X3 whatever the schema. */
  private static final Map<String, String> SERIALIZERS =
      Map.of("ifc2x3tc1", "Ifc2x3tc1 (Streaming)", "ifc4", "Ifc4 (Streaming)");

  private static final byte[] MAGIC = "ISO-10303-21".getBytes(StandardCharsets.US_ASCII);

  private final JsonInterface json;
  private final Wire wire;
  private final ServerLimits limits;
  private final ServerAddress address;
  private final ProgressListener listener;
  private long lastBytes;

  ModelDownload(
      JsonInterface json,
      Wire wire,
      ServerLimits limits,
      ServerAddress address,
      ProgressListener listener) {
    this.json = json;
    this.wire = wire;
    this.limits = limits;
    this.address = address;
    this.listener = listener;
  }

  /** Writes the revision to a file; after a failure that file holds nothing of use. */
  void to(Path file, Revision revision) {
    long topic = json.number(request(revision));
    ServerAction action =
        new ServerAction(
            json,
            wire,
            limits,
            topic,
            "downloading " + address.project(),
            listener,
            words ->
                new ServerException(address + ": the server failed to write the model: " + words));
    String path = "/download?token=" + json.token() + "&topicId=" + topic;
    try (OutputStream out = new BufferedOutputStream(Files.newOutputStream(file), 1 << 16)) {
      wire.get(
          path,
          out,
          bytes -> {
            boolean more = bytes != lastBytes;
            lastBytes = bytes;
            return action.moved() || more;
          });
    } catch (IOException e) {
      throw new ServerException(
          file + ": cannot be written (" + e.getMessage() + "). Free room for temporary files.", e);
    }
    action.awaitEnd();
    refuseOther(file);
  }

  private JsonNode request(Revision revision) {
    String name = SERIALIZERS.get(revision.schema());
    if (name == null) {
      throw new ServerException(
          address
              + ": the schema of the project is '"
              + revision.schema()
              + "'; from a BIMserver models of ifc2x3tc1 and ifc4 are taken (its release 1.5.186"
              + " knows no IFC4X3). Give the exported file instead.");
    }
    long serializer = serializer(name);
    // all records with all their attributes
    String query = new JsonMapper().writeValueAsString(Map.of("includeAllFields", true));
    return json.service(
        "download",
        Map.of(
            "roids",
            new long[] {revision.id()},
            "query",
            query,
            "serializerOid",
            serializer,
            "sync",
            false));
  }

  private long serializer(String name) {
    try {
      return json.number(
          json.service("getSerializerByName", Map.of("serializerName", name)).path("oid"));
    } catch (ServerException.Refusal e) {
      throw new ServerException(
          address.server()
              + ": the server has no serializer '"
              + name
              + "'. Its administrator installs the plug-in bundle IfcPlugins.",
          e);
    }
  }

  private void refuseOther(Path file) {
    try (InputStream in = Files.newInputStream(file)) {
      if (Arrays.equals(in.readNBytes(MAGIC.length), MAGIC)) {
        return;
      }
    } catch (IOException e) {
      throw new ServerException(file + ": cannot be read (" + e.getMessage() + ").", e);
    }
    throw new ServerException(
        address + ": what the server sent is no STEP file. Ask who runs it to look at its log.");
  }
}
