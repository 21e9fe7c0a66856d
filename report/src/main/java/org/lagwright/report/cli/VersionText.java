package org.lagwright.report.cli;

import org.lagwright.report.app.Version;
import picocli.CommandLine.IVersionProvider;

/** What {@code --version} prints. */
final class VersionText implements IVersionProvider {

  @Override
  public String[] getVersion() {
    return new String[] {"lagwright " + Version.text()};
  }
}
