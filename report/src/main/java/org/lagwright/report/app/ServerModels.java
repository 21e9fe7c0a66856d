package org.lagwright.report.app;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import org.lagwright.ifc.model.MepModel;
import org.lagwright.ifc.model.ModelFile;
import org.lagwright.ifc.source.ModelException;
import org.lagwright.ifc.source.ModelReader;
import org.lagwright.ifc.source.ProgressListener;
import org.lagwright.report.bimserver.BimServer;
import org.lagwright.report.bimserver.CheckIn;
import org.lagwright.report.bimserver.Revision;
import org.lagwright.report.bimserver.ServerAccess;
import org.lagwright.report.bimserver.ServerAddress;
import org.lagwright.report.bimserver.ServerException;
import org.lagwright.takeoff.Takeoff;
import org.lagwright.takeoff.pack.PackInfo;
import org.lagwright.takeoff.settings.Settings;

/**
 * The models of one run that lie on servers. Each has a path from the start, but is fetched only
 * when it is read; the files are gone on close.
 */
public final class ServerModels implements AutoCloseable {

  private static final String TEMPORARY = "lagwright-server-";

  private final ServerAccess access;
  private final Map<Path, ServerAddress> addresses = new LinkedHashMap<>();
  private final Map<Path, BimServer> fetched = new LinkedHashMap<>();
  private final Map<Path, Path> downloads = new HashMap<>();
  private final List<Path> temporary = new ArrayList<>();

  /** No models so far. */
  public ServerModels(ServerAccess access) {
    this.access = access;
  }

  /** True if no model lies on a server. */
  public boolean isEmpty() {
    return addresses.isEmpty();
  }

  /**
   * The file of a model, or where it will be.
   *
   * @param name path of a file or address on a server
   * @throws ModelException if it can be neither
   */
  public Path file(String name) {
    try {
      if (!ServerAddress.isAddress(name)) {
        return Path.of(name);
      }
      ServerAddress address = ServerAddress.parse(name);
      // never looked for on the disk; errors may show it
      Path file = Path.of("bimserver", fileName(name.replaceFirst("^[^/]*//", "")));
      addresses.put(file, address);
      return file;
    } catch (InvalidPathException e) {
      throw new ModelException(
          name
              + ": no file can have this name. Check the path; names with letters beyond a to z need a"
              + " locale that has them, such as LC_ALL=C.UTF-8.",
          e);
    } catch (ServerException e) {
      throw new ModelException(String.valueOf(e.getMessage()), e);
    }
  }

  /** The files of several models, as {@link #file} gives them. */
  public List<Path> files(List<String> names) {
    return names.stream().map(this::file).toList();
  }

  /** A pipeline that fetches what is read from a server, and else is the one given. */
  public Pipeline before(Pipeline pipeline) {
    return new Fetching(pipeline);
  }

  /**
   * Attaches files to every revision that was fetched.
   *
   * @return what was done, a line for each revision
   * @throws OutputException if a server does not take them
   */
  public List<String> attach(List<Path> outputs) {
    String names =
        outputs.stream()
            .map(f -> String.valueOf(f.getFileName()))
            .collect(Collectors.joining(", "));
    return onEach(
        fetched,
        (model, server) -> {
          server.attach(outputs);
          return "attached to " + server.revision() + ": " + names;
        });
  }

  /**
   * Checks enriched models in, each as a revision that is made from the one that was fetched.
   *
   * @param enriched files that were written, by the models that they were made from
   * @param where into which projects
   * @return what was done, a line for each revision
   * @throws OutputException if a server does not take one
   */
  public List<String> checkIn(Map<Path, Path> enriched, CheckIn where, ProgressListener progress) {
    return onEach(
        fetched,
        (model, server) -> {
          Path file = enriched.get(model);
          if (file == null) {
            throw new IllegalStateException(model + " was fetched but not enriched");
          }
          String maker = "Lagwright " + Version.text();
          Revision made = server.checkIn(file, where, maker, progress);
          return "checked in as " + made + ": " + file.getFileName();
        });
  }

  /** Something that a server is given. */
  @FunctionalInterface
  private interface Gift {
    String to(Path model, BimServer server) throws IOException;
  }

  /** What was done before something failed is told with the failure. */
  private static List<String> onEach(Map<Path, BimServer> servers, Gift gift) {
    List<String> lines = new ArrayList<>();
    for (Map.Entry<Path, BimServer> entry : servers.entrySet()) {
      String before = lines.isEmpty() ? "" : " Before that: " + String.join("; ", lines) + ".";
      try {
        lines.add(gift.to(entry.getKey(), entry.getValue()));
      } catch (ServerException e) {
        throw new OutputException(e.getMessage() + " The files here are complete." + before, e);
      } catch (IOException e) {
        throw new OutputException(
            "what was written cannot be read again (" + e.getMessage() + ")." + before, e);
      }
    }
    return lines;
  }

  private MepModel fetch(
      Path named,
      ServerAddress address,
      Pipeline pipeline,
      int index,
      Settings settings,
      ProgressListener to) {
    try {
      to.progress("asking " + address.server(), 0);
      BimServer server = BimServer.connect(address, access);
      Path file = newFile(index, fileName(server.revision().toString()) + ".ifc");
      server.download(file, to);
      downloads.put(named, file);
      fetched.put(named, server);
      return read(file, address, pipeline, index, settings, to);
    } catch (ServerException e) {
      throw new ModelException(String.valueOf(e.getMessage()), e);
    }
  }

  /** Names the address and not the temporary file, which is gone when the user sees it. */
  private static MepModel read(
      Path file,
      ServerAddress address,
      Pipeline pipeline,
      int index,
      Settings settings,
      ProgressListener progress) {
    try {
      return pipeline.readModel(file, index, settings, progress);
    } catch (ModelException e) {
      String message = String.valueOf(e.getMessage());
      throw new ModelException(message.replace(file.toString(), address.toString()), e);
    }
  }

  /** Names of projects may hold what names of files may not. */
  private static String fileName(String text) {
    return text.replaceAll("[^\\p{L}\\p{N} @._-]", "_");
  }

  /** Outputs show the name, so it has a folder of its own. */
  private Path newFile(int index, String name) {
    try {
      long process = ProcessHandle.current().pid();
      Path folder = Files.createTempDirectory(TEMPORARY + process + "-" + index + "-");
      Path file = folder.resolve(name);
      temporary.add(file);
      temporary.add(folder);
      return file;
    } catch (IOException e) {
      throw new ModelException(
          "no temporary folder can be made for models of a server (" + e.getMessage() + ").", e);
    }
  }

  @Override
  public void close() {
    temporary.forEach(ServerModels::discard);
    temporary.clear();
  }

  private static void discard(Path path) {
    try {
      Files.deleteIfExists(path);
    } catch (IOException e) {
      path.toFile().deleteOnExit();
    }
  }

  /** Stands before the pipeline that reads files. */
  private final class Fetching implements Pipeline {

    private final Pipeline pipeline;

    Fetching(Pipeline pipeline) {
      this.pipeline = pipeline;
    }

    @Override
    public Settings defaultSettings() {
      return pipeline.defaultSettings();
    }

    @Override
    public Settings readSettings(Path file) {
      return pipeline.readSettings(file);
    }

    @Override
    public MepModel readModel(Path file, int index, Settings settings, ProgressListener progress) {
      ServerAddress address = addresses.get(file);
      return address == null
          ? pipeline.readModel(file, index, settings, progress)
          : fetch(file, address, pipeline, index, settings, progress);
    }

    @Override
    public void readAgain(Path file, ModelFile described, ModelReader.Use use) throws IOException {
      pipeline.readAgain(downloads.getOrDefault(file, file), described, use);
    }

    @Override
    public List<MepModel> join(List<MepModel> models, Settings settings) {
      return pipeline.join(models, settings);
    }

    @Override
    public Takeoff takeOff(List<MepModel> models, Settings settings) {
      return pipeline.takeOff(models, settings);
    }

    @Override
    public List<PackInfo> packs() {
      return pipeline.packs();
    }
  }
}
