package org.lagwright.report.cli;

import java.nio.file.Path;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.lagwright.report.app.ServerModels;
import picocli.CommandLine.Mixin;

/** What every command asks for that reads models and writes files. */
final class JobArguments {

  @Mixin private ModelArguments models = new ModelArguments();

  @Mixin private OutputArguments outputs = new OutputArguments();

  /** The files that the models are in, or will be once they are fetched. */
  List<Path> models(ServerModels servers) {
    return models.in(servers);
  }

  /** The settings file, null for the defaults. */
  @Nullable Path settings() {
    return outputs.settings();
  }

  Path out() {
    return outputs.out();
  }
}
