package org.lagwright.report.bimserver;

import java.io.IOException;
import java.nio.file.Path;
import java.time.Instant;
import java.util.List;
import java.util.Map;
import org.lagwright.ifc.source.ProgressListener;

/** A server to which we are known, and the revision on it that the user named. */
public final class BimServer {

  private final ServerAddress address;
  private final ServerLimits limits;
  private final Wire wire;
  private final JsonInterface json;
  private final Projects projects;
  private final Revision revision;

  private BimServer(ServerAddress address, ServerLimits limits, Wire wire, JsonInterface json) {
    this.address = address;
    this.limits = limits;
    this.wire = wire;
    this.json = json;
    this.projects = new Projects(json, address);
    this.revision = projects.revision();
  }

  /**
   * Logs in and finds the revision.
   *
   * @throws ServerException if there are no credentials, the server does not answer, does not let
   *     us in, or has no such project or revision
   */
  public static BimServer connect(ServerAddress address, ServerAccess access) {
    Credentials credentials = Credentials.of(access.environment());
    Wire wire = new Wire(address.server(), access.limits());
    JsonInterface json = new JsonInterface(address.server(), wire, access.limits(), credentials);
    try {
      json.login();
      // the first question of all that a stranger may not ask
      json.call("AuthInterface", "getLoggedInUser", Map.of());
    } catch (ServerException.Refusal e) {
      throw new ServerException(
          address.server()
              + ": the server refuses the "
              + credentials
              + ". Check the variables "
              + "or the file that hold them.",
          e);
    }
    return new BimServer(address, access.limits(), wire, json);
  }

  /** The revision. */
  public Revision revision() {
    return revision;
  }

  /**
   * Brings the revision here. Its records have other numbers than in the file that was checked in;
   * what stays is the GlobalId.
   *
   * @throws ServerException if it does not arrive whole; the file is of no use then
   */
  public void download(Path file, ProgressListener listener) {
    new ModelDownload(json, wire, limits, address, listener).to(file, revision);
  }

  /**
   * Attaches files to the revision.
   *
   * @throws ServerException if the server does not take one of them
   * @throws IOException if one cannot be read
   */
  public void attach(List<Path> files) throws IOException {
    new Attachment(json).of(files, revision, Instant.now().toEpochMilli());
  }

  /**
   * Checks a model in as a revision that is made from this one.
   *
   * @param where into which project
   * @param maker the program and its version, for the comment of the revision
   * @return the new revision
   * @throws ServerException if the server does not take it
   * @throws IOException if it cannot be read
   */
  public Revision checkIn(Path model, CheckIn where, String maker, ProgressListener listener)
      throws IOException {
    return new ModelCheckIn(json, wire, limits, address, projects, listener)
        .of(model, revision, where, maker);
  }
}
