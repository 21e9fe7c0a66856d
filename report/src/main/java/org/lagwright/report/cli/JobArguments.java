package org.lagwright.report.cli;

import java.nio.file.Path;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.lagwright.report.app.ServerModels;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Parameters;

/** What every command asks for that reads models and writes files. */
final class JobArguments {

  @Parameters(
      arity = "1..*",
      paramLabel = "MODEL",
      description = {
        "IFC files: .ifc or .ifczip; or revisions on a BIMserver:",
        "bimserver+http://HOST:PORT/PROJECT[@REVISION]"
      })
  private List<String> models = List.of();

  @Mixin private OutputArguments outputs = new OutputArguments();

  /** The files that the models are in, or will be once they are fetched. */
  List<Path> models(ServerModels servers) {
    return models.stream().map(servers::file).toList();
  }

  /** The settings file, null for the defaults. */
  @Nullable Path settings() {
    return outputs.settings();
  }

  Path out() {
    return outputs.out();
  }
}
