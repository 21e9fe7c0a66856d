package org.lagwright.report.app;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import org.lagwright.ifc.model.MepModel;
import org.lagwright.ifc.model.ModelFile;
import org.lagwright.ifc.source.ModelReader;
import org.lagwright.ifc.source.ProgressListener;
import org.lagwright.takeoff.Takeoff;
import org.lagwright.takeoff.pack.PackInfo;
import org.lagwright.takeoff.settings.Settings;

/** What the use case needs from reader and engine. */
public interface Pipeline {

  /** The settings where the user gives none. */
  Settings defaultSettings();

  /**
   * The settings of a file, defaults filled in.
   *
   * @throws org.lagwright.takeoff.pack.PackException if the file is missing or wrong
   */
  Settings readSettings(Path file);

  /**
   * Reads and measures one model.
   *
   * @param index position of the file on the command line, from 0
   * @param settings of which those about reading count
   * @throws org.lagwright.ifc.source.ModelException if it cannot be read
   */
  MepModel readModel(Path file, int index, Settings settings, ProgressListener progress);

  /**
   * Opens a model that was read before, for what copies it.
   *
   * @param file as it was given to {@link #readModel}
   * @param described what was read then
   * @throws org.lagwright.ifc.source.ModelException if it cannot be read, or has changed
   * @throws IOException what the use of it throws
   */
  void readAgain(Path file, ModelFile described, ModelReader.Use use) throws IOException;

  /** Makes several files one model: repeats marked, ends that touch across files connected. */
  List<MepModel> join(List<MepModel> models, Settings settings);

  /**
   * Decides and measures.
   *
   * @throws org.lagwright.takeoff.pack.PackException if settings or packs do not fit together
   */
  Takeoff takeOff(List<MepModel> models, Settings settings);

  /** The data packs that come with the program. */
  List<PackInfo> packs();
}
