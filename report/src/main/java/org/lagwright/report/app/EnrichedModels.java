package org.lagwright.report.app;

import java.io.IOException;
import java.io.OutputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.lagwright.ifc.model.MepModel;
import org.lagwright.ifc.model.ModelFile;
import org.lagwright.ifc.schema.IfcSchema;
import org.lagwright.ifc.source.ModelException;
import org.lagwright.report.enrich.Enrichment;
import org.lagwright.takeoff.Takeoff;

/** The enriched models of one run: what they are called, and that nothing is written over. */
final class EnrichedModels {

  private static final String ENDING = "-insulated.ifc";

  private final Pipeline pipeline;
  private final List<Path> files;
  private final Map<String, ModelFile> models = new LinkedHashMap<>();
  private final Map<String, Enrichment> enrichments = new LinkedHashMap<>();

  /**
   * Chooses a name for each model.
   *
   * @param files where the models were read from
   * @throws ModelException if the schema of one is a draft, whose records are not known
   */
  EnrichedModels(Pipeline pipeline, List<Path> files, List<MepModel> read) {
    this.pipeline = pipeline;
    this.files = List.copyOf(files);
    for (MepModel model : read) {
      refuseDraft(files.get(model.file().index()), model.file());
      String stem = model.file().name().replaceFirst("(?i)\\.(ifc|ifczip|zip)$", "");
      String name = stem + ENDING;
      for (int i = 2; isTaken(name); i++) {
        name = stem + "-" + i + ENDING;
      }
      models.put(name, model.file());
    }
  }

  private boolean isTaken(String name) {
    return models.keySet().stream()
        .anyMatch(n -> n.toLowerCase(Locale.ROOT).equals(name.toLowerCase(Locale.ROOT)));
  }

  private static void refuseDraft(Path file, ModelFile model) {
    if (!IfcSchema.isReleased(model.schema())) {
      throw new ModelException(
          file
              + ": schema '"
              + model.schema()
              + "' is no released one, so what may be added is not known. Leave out --ifc, or"
              + " export in a released schema.");
    }
  }

  /** Names of the files, in the order of the models. */
  List<String> names() {
    return List.copyOf(models.keySet());
  }

  /** The files in a folder by the models that they are made from. */
  Map<Path, Path> in(Path folder) {
    Map<Path, Path> written = new HashMap<>();
    models.forEach((name, model) -> written.put(files.get(model.index()), folder.resolve(name)));
    return written;
  }

  /**
   * Refuses to write where a model is read from.
   *
   * @throws OutputException if an output is one of the models
   */
  void refuseOverwriting(Path folder) {
    for (String name : models.keySet()) {
      Path target = folder.resolve(name);
      if (files.stream().anyMatch(file -> isSame(file, target))) {
        throw new OutputException(
            target
                + ": is a model of this run and is not written over. Choose another folder with"
                + " --out.");
      }
    }
  }

  private static boolean isSame(Path file, Path target) {
    try {
      return Files.exists(file) && Files.exists(target) && Files.isSameFile(file, target);
    } catch (IOException e) {
      return file.toAbsolutePath().normalize().equals(target.toAbsolutePath().normalize());
    }
  }

  /** What writes them. */
  Map<String, OutputFolder.Content> contents(Takeoff takeoff, String version) {
    Map<String, OutputFolder.Content> contents = new LinkedHashMap<>();
    models.forEach(
        (name, model) -> {
          Enrichment enrichment = new Enrichment(takeoff, model.index(), version);
          enrichments.put(name, enrichment);
          contents.put(name, out -> write(model, enrichment, out));
        });
    return contents;
  }

  private void write(ModelFile model, Enrichment enrichment, OutputStream out) throws IOException {
    Path file = files.get(model.index());
    pipeline.readAgain(file, model, (bytes, ifc) -> enrichment.write(bytes, ifc, out));
  }

  /** What was written into each, in words; only afterwards. */
  List<String> inWords() {
    List<String> lines = new ArrayList<>();
    enrichments.forEach(
        (name, enrichment) -> {
          lines.add(name);
          enrichment.inWords().forEach(line -> lines.add("  " + line));
        });
    return lines;
  }
}
