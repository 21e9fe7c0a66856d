package org.lagwright.report;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.lagwright.ifc.model.MepElement;
import org.lagwright.ifc.model.MepModel;
import org.lagwright.ifc.model.ModelFile;
import org.lagwright.ifc.source.ModelException;
import org.lagwright.ifc.source.ModelReader;
import org.lagwright.ifc.source.ProgressListener;
import org.lagwright.report.app.Pipeline;
import org.lagwright.takeoff.TakenElement;
import org.lagwright.takeoff.Takeoff;
import org.lagwright.takeoff.pack.PackException;
import org.lagwright.takeoff.pack.PackInfo;
import org.lagwright.takeoff.settings.Settings;

/** Gives the sample takeoff whatever the models are; names choose what goes wrong. */
public final class SamplePipeline implements Pipeline {

  /** What was read, in order. */
  public final List<String> read = new ArrayList<>();

  @Override
  public Settings defaultSettings() {
    return SampleTakeoff.takeoff().settings();
  }

  @Override
  public Settings readSettings(Path file) {
    if (file.toString().equals("broken.yaml")) {
      throw new PackException("broken.yaml:3:5: unknown key 'tempratures'. Correct it.");
    }
    return defaultSettings();
  }

  @Override
  public MepModel readModel(Path file, int index, Settings settings, ProgressListener progress) {
    if (file.toString().equals("missing.ifc")) {
      throw new ModelException("missing.ifc: no such file. Check the path.");
    }
    if (file.toString().equals("bug.ifc")) {
      throw new IllegalStateException("two elements\nwith one key");
    }
    if (file.toString().equals("huge.ifc")) {
      throw new OutOfMemoryError("Java heap space");
    }
    read.add(file.toString());
    progress.progress("reading " + file, 0.5);
    ModelFile model = new ModelFile(index, file.toString(), "0".repeat(64), "IFC4");
    List<MepElement> elements =
        SampleTakeoff.takeoff().elements().stream().map(TakenElement::element).toList();
    return new MepModel(model, elements, List.of(), List.of(), Map.of());
  }

  @Override
  public void readAgain(Path file, ModelFile described, ModelReader.Use use) {
    throw new ModelException(file + ": is only a name here. Use a real model.");
  }

  @Override
  public List<MepModel> join(List<MepModel> models, Settings settings) {
    return models;
  }

  @Override
  public Takeoff takeOff(List<MepModel> models, Settings settings) {
    return SampleTakeoff.takeoff();
  }

  @Override
  public List<PackInfo> packs() {
    return SampleTakeoff.takeoff().packs();
  }
}
