package org.lagwright.report.cli;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import org.lagwright.ifc.model.ElementKey;
import org.lagwright.report.PlainText;
import org.lagwright.report.Words;
import org.lagwright.takeoff.TakenElement;
import org.lagwright.takeoff.Takeoff;
import org.lagwright.takeoff.TakeoffLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** {@code lagwright explain}: how the numbers of one element or line came about. */
@Command(
    name = "explain",
    description = "Shows how the numbers of one element came about, or the elements of a line.",
    mixinStandardHelpOptions = true,
    versionProvider = VersionText.class)
final class ExplainCommand implements Callable<Integer> {

  private final Session session;

  @Spec private @Nullable CommandSpec spec;

  @Parameters(index = "0", paramLabel = "ID", description = "GlobalId, or a line such as L003")
  private String id = "";

  @Parameters(
      index = "1..*",
      arity = "1..*",
      paramLabel = "MODEL",
      description = "the same IFC files, or revisions on a BIMserver, as in the takeoff")
  private List<String> models = List.of();

  @Mixin private SettingsArgument settings = new SettingsArgument();

  ExplainCommand(Session session) {
    this.session = session;
  }

  @Override
  public Integer call() {
    List<Path> files = session.servers().files(models);
    Takeoff takeoff = session.with(job -> job.compute(files, settings.file()));
    Optional<TakeoffLine> line =
        takeoff.lines().stream().filter(l -> l.id().equals(id)).findFirst();
    if (line.isPresent()) {
      session.print(elements(takeoff, line.get()));
      return ExitCode.DONE;
    }
    List<String> text = new ArrayList<>();
    for (TakenElement taken : takeoff.elements()) {
      if (taken.element().globalId().equals(id)) {
        text.addAll(text.isEmpty() ? List.of() : List.of(""));
        text.addAll(ExplainText.of(takeoff, taken));
      }
    }
    if (text.isEmpty()) {
      throw unknown(takeoff);
    }
    session.print(text);
    return ExitCode.DONE;
  }

  private static List<String> elements(Takeoff takeoff, TakeoffLine line) {
    List<String> text = new ArrayList<>();
    text.add(
        PlainText.oneLine(
            line.id()
                + "  "
                + line.serviceName()
                + ", "
                + Words.kind(line.kind())
                + ", "
                + Words.form(line.form())
                + ", "
                + line.size()
                + ", "
                + line.layers()
                + ": "
                + quantity(line)));
    Set<ElementKey> keys = new HashSet<>(line.elements());
    TextTable table = new TextTable("  ", "lrl").wrapped();
    takeoff.elements().stream()
        .filter(taken -> keys.contains(taken.element().key()))
        .forEach(
            taken ->
                table.row(taken.element().globalId(), quantity(taken), taken.element().name()));
    text.addAll(table.lines());
    List<String> bought = OrderText.of(takeoff.order(), keys);
    if (!bought.isEmpty()) {
      text.addAll(List.of("", "What is bought for them, beside others"));
      text.addAll(bought);
    }
    return text;
  }

  private static String quantity(TakeoffLine line) {
    String format = line.unit().equals("m") ? "%.3f m" : "%.0f pcs";
    return String.format(Locale.ROOT, format, line.quantity());
  }

  private static String quantity(TakenElement taken) {
    return taken.quantities().pieces() > 0
        ? taken.quantities().pieces() + " pcs"
        : String.format(Locale.ROOT, "%.3f m", taken.quantities().lengthM());
  }

  private ParameterException unknown(Takeoff takeoff) {
    if (spec == null) {
      throw new IllegalStateException("the command line did not set the command up");
    }
    List<String> near = NearIds.of(id, takeoff);
    String hint =
        near.isEmpty()
            ? "GlobalIds stand in takeoff.xlsx, sheet Elements."
            : "Did you mean " + String.join(" or ", near) + "?";
    return new ParameterException(
        spec.commandLine(), "no element or line '" + TextTable.shown(id) + "'. " + hint);
  }
}
