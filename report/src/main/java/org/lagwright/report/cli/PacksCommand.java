package org.lagwright.report.cli;

import java.util.concurrent.Callable;
import java.util.stream.Stream;
import org.lagwright.takeoff.pack.PackInfo;
import picocli.CommandLine.Command;

/** {@code lagwright packs}: which data the program rests on. */
@Command(
    name = "packs",
    description = "Lists the data packs with version, status and source.",
    mixinStandardHelpOptions = true,
    versionProvider = VersionText.class)
final class PacksCommand implements Callable<Integer> {

  private final Session session;

  PacksCommand(Session session) {
    this.session = session;
  }

  @Override
  public Integer call() {
    session.print(session.pipeline().packs().stream().flatMap(PacksCommand::lines).toList());
    return ExitCode.DONE;
  }

  private static Stream<String> lines(PackInfo pack) {
    TextTable table = new TextTable("  ", "ll").wrapped();
    table.row("version", pack.version());
    table.row("status", pack.status());
    table.row("source", pack.source());
    return Stream.concat(Stream.of(pack.id()), table.lines().stream());
  }
}
