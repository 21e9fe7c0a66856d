package org.lagwright.report.cli;

import java.util.concurrent.Callable;
import java.util.stream.Stream;
import org.lagwright.report.MaterialFacts;
import org.lagwright.takeoff.material.MaterialFamily;
import org.lagwright.takeoff.pack.PackInfo;
import picocli.CommandLine.Command;

/** {@code lagwright packs}: which data the program rests on. */
@Command(
    name = "packs",
    description = "Lists data packs and materials with status and source.",
    mixinStandardHelpOptions = true,
    versionProvider = VersionText.class)
final class PacksCommand implements Callable<Integer> {

  private final Session session;

  PacksCommand(Session session) {
    this.session = session;
  }

  @Override
  public Integer call() {
    Stream<String> packs = session.pipeline().packs().stream().flatMap(PacksCommand::lines);
    Stream<String> materials =
        session.pipeline().defaultSettings().packs().materials().families().stream()
            .flatMap(PacksCommand::lines);
    session.print(Stream.concat(packs, materials).toList());
    return ExitCode.DONE;
  }

  private static Stream<String> lines(PackInfo pack) {
    TextTable table = new TextTable("  ", "ll").wrapped();
    table.row("version", pack.version());
    table.row("status", pack.status());
    table.row("source", pack.source());
    return Stream.concat(Stream.of(pack.id()), table.lines().stream());
  }

  private static Stream<String> lines(MaterialFamily family) {
    TextTable table = new TextTable("  ", "ll").wrapped();
    table.row("name", family.name());
    for (MaterialFacts.Fact fact : MaterialFacts.of(family)) {
      String status = fact.status().isEmpty() ? "" : "; " + fact.status();
      table.row(fact.property(), fact.figures() + status);
    }
    return Stream.concat(Stream.of("material " + family.id()), table.lines().stream());
  }
}
