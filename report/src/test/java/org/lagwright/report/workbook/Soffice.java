package org.lagwright.report.workbook;

import java.io.File;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.TimeUnit;
import java.util.stream.Stream;

/** LibreOffice without a window, with a profile of its own that recalculates whatever it opens. */
final class Soffice {

  private static final long MINUTES = 5;

  /** 0 is "always" of {@code RecalcMode} in the schema org.openoffice.Office.Calc. */
  private static final String ALWAYS =
      """
      <?xml version="1.0" encoding="UTF-8"?>
      <oor:items xmlns:oor="http://openoffice.org/2001/registry">
      <item oor:path="/org.openoffice.Office.Calc/Formula/Load">
      <prop oor:name="OOXMLRecalcMode" oor:op="fuse"><value>0</value></prop></item>
      </oor:items>
      """;

  private Soffice() {}

  /** True where it is installed. */
  static boolean isInstalled() {
    return Stream.of(System.getenv("PATH").split(File.pathSeparator))
        .anyMatch(folder -> Files.isExecutable(Path.of(folder, "soffice")));
  }

  /** The workbook as LibreOffice saves it after a hard recalculation. */
  static Path recalculated(Path workbook, Path folder) throws IOException, InterruptedException {
    Path user = Files.createDirectories(folder.resolve("profile").resolve("user"));
    Files.writeString(user.resolve("registrymodifications.xcu"), ALWAYS);
    Path out = Files.createDirectories(folder.resolve("recalculated"));
    Process process =
        new ProcessBuilder(
                List.of(
                    "soffice",
                    "-env:UserInstallation=" + folder.resolve("profile").toUri(),
                    "--headless",
                    "--convert-to",
                    "xlsx",
                    "--outdir",
                    out.toString(),
                    workbook.toString()))
            .redirectErrorStream(true)
            .redirectOutput(folder.resolve("soffice.log").toFile())
            .start();
    if (!process.waitFor(MINUTES, TimeUnit.MINUTES)) {
      process.destroyForcibly();
      throw new IOException("soffice took more than " + MINUTES + " minutes");
    }
    return out.resolve(workbook.getFileName());
  }
}
