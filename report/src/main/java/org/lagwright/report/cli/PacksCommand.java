package org.lagwright.report.cli;

import java.util.concurrent.Callable;
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
    TextTable table = new TextTable("", "llll");
    table.row("PACK", "VERSION", "STATUS", "SOURCE");
    session
        .pipeline()
        .packs()
        .forEach(pack -> table.row(pack.id(), pack.version(), pack.status(), pack.source()));
    session.print(table.lines());
    return ExitCode.DONE;
  }
}
