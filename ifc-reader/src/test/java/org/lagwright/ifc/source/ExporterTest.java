package org.lagwright.ifc.source;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The program that wrote a file, by FILE_NAME of its header (ISO 10303-21). */
class ExporterTest {

  @TempDir Path folder;

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '"',
      value = {
        "'a.ifc','2026-01-01T00:00:00',(''),(''),'toolkit','Drawing office 7','' | Drawing office 7",
        "'a.ifc','2026-01-01T00:00:00',('A, B','C'),(''),'toolkit','','' | toolkit",
        "'a.ifc','2026-01-01T00:00:00',(''),(''),$,' ',$ | \"\"",
        "'a.ifc' | \"\"",
        "'it''s (a) file','',(''),(''),'','B\\X2\\00FC\\X0\\ro','' | B\u00FCro"
      })
  void itIsTheOriginatingSystemElseThePreprocessor(String arguments, String exporter)
      throws IOException {
    Path file = folder.resolve("model.ifc");
    Files.writeString(
        file,
        "ISO-10303-21;\nHEADER;\nFILE_NAME("
            + arguments
            + ");\nFILE_SCHEMA(('IFC4'));\nENDSEC;\nDATA;\nENDSEC;\nEND-ISO-10303-21;\n");

    assertThat(ModelReader.read(file, 0, ProgressListener.SILENT).file().exporter())
        .isEqualTo(exporter);
  }
}
