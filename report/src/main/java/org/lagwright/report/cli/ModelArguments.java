package org.lagwright.report.cli;

import java.nio.file.Path;
import java.util.List;
import org.lagwright.report.app.ServerModels;
import picocli.CommandLine.Parameters;

/** What every command asks for that reads one or several models. */
final class ModelArguments {

  @Parameters(
      arity = "1..*",
      paramLabel = "MODEL",
      description = {
        "IFC files: .ifc or .ifczip; or revisions on a BIMserver:",
        "bimserver+http://HOST:PORT/PROJECT[@REVISION]"
      })
  private List<String> models = List.of();

  /** The files that the models are in, or will be once they are fetched. */
  List<Path> in(ServerModels servers) {
    return servers.files(models);
  }
}
