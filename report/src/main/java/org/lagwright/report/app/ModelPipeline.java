package org.lagwright.report.app;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import org.lagwright.ifc.extract.ReadOptions;
import org.lagwright.ifc.extract.join.ModelJoiner;
import org.lagwright.ifc.model.MepModel;
import org.lagwright.ifc.model.ModelFile;
import org.lagwright.ifc.source.ModelReader;
import org.lagwright.ifc.source.ProgressListener;
import org.lagwright.takeoff.Takeoff;
import org.lagwright.takeoff.pack.PackInfo;
import org.lagwright.takeoff.settings.Settings;
import org.lagwright.takeoff.settings.SettingsReader;

/** Reader and engine as they are: from files on disk to a takeoff. */
public final class ModelPipeline implements Pipeline {

  @Override
  public Settings defaultSettings() {
    return SettingsReader.defaults();
  }

  @Override
  public Settings readSettings(Path file) {
    return SettingsReader.read(file, UserTables::read);
  }

  @Override
  public MepModel readModel(Path file, int index, Settings settings, ProgressListener progress) {
    return ModelReader.read(file, index, new ReadOptions(settings.joinToleranceM()), progress);
  }

  @Override
  public void readAgain(Path file, ModelFile described, ModelReader.Use use) throws IOException {
    ModelReader.again(file, described, use);
  }

  @Override
  public List<MepModel> join(List<MepModel> models, Settings settings) {
    return ModelJoiner.join(models, settings.joinToleranceM());
  }

  @Override
  public Takeoff takeOff(List<MepModel> models, Settings settings) {
    return Takeoff.of(models, settings);
  }

  @Override
  public List<PackInfo> packs() {
    return Takeoff.availablePacks();
  }
}
