package org.lagwright.ifc.source;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.io.OutputStream;
import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.Objects;
import java.util.zip.CRC32;
import java.util.zip.ZipEntry;
import java.util.zip.ZipOutputStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.lagwright.ifc.model.MepModel;
import org.lagwright.ifc.step.StepLimits;
import org.lagwright.testmodels.tiny.TinyModels;

class ModelReaderTest {

  private static final byte[] PIPE = TinyModels.read("extruded-circle-gives-diameter-and-length");

  @TempDir Path folder;

  @Test
  void aPackedModelIsReadLikeAPlainOne() throws IOException {
    Path plain = Files.write(folder.resolve("pipe.ifc"), PIPE);
    Path packed = zip("pipe.ifczip", "model/pipe.ifc", PIPE);

    MepModel fromPlain = read(plain);
    MepModel fromPacked = read(packed);

    assertThat(fromPacked.elements()).isEqualTo(fromPlain.elements());
    assertThat(fromPacked.file().sha256()).hasSize(64).isNotEqualTo(fromPlain.file().sha256());
    assertThat(fromPlain.file().schema()).isEqualTo("IFC4");
  }

  @Test
  void aModelReadFromAFileKeepsItsMapConversion() throws IOException {
    String text =
        new String(PIPE, StandardCharsets.UTF_8)
            .replaceFirst(
                "ENDSEC;\\s*END-ISO",
                """
                #980=IFCMAPCONVERSION(#981,#982,500000.,4000000.,12.,0.,1.,1.);
                #981=IFCGEOMETRICREPRESENTATIONCONTEXT(\\$,'Model',3,1.E-05,\\$,\\$);
                #982=IFCPROJECTEDCRS('EPSG:25832',\\$,\\$,\\$,\\$,\\$,\\$);
                ENDSEC;
                END-ISO""");
    Path file = Files.writeString(folder.resolve("pipe.ifc"), text);

    var kept = Objects.requireNonNull(read(file).georeference().conversion());
    assertThat(kept.eastings()).isEqualTo(500_000);
  }

  @Test
  void missingFile() {
    assertRefused(folder.resolve("none.ifc"), "no such file");
  }

  @Test
  void folderInsteadOfFile() {
    assertRefused(folder, "not a file");
  }

  @Test
  void emptyFile() throws IOException {
    assertRefused(Files.write(folder.resolve("empty.ifc"), new byte[0]), "is empty");
  }

  @Test
  void notAnExchangeFile() throws IOException {
    assertRefused(Files.writeString(folder.resolve("a.ifc"), "hello"), ":1: this is not an IFC");
  }

  @Test
  void cutOffFileNamesTheLine() throws IOException {
    String text = new String(PIPE, StandardCharsets.US_ASCII);
    String cut = text.substring(0, text.lastIndexOf("IFCPIPESEGMENT") + 20);
    long line = cut.lines().count();

    assertRefused(
        Files.writeString(folder.resolve("cut.ifc"), cut), "cut.ifc:" + line + ": the record");
  }

  @Test
  void unsupportedSchema() throws IOException {
    String text = new String(PIPE, StandardCharsets.US_ASCII);
    Path file =
        Files.writeString(folder.resolve("old.ifc"), text.replace("'IFC4'", "'IFC2X2_FINAL'"));

    assertRefused(file, "schema 'IFC2X2_FINAL' is not supported");
  }

  @Test
  void ifcXml() throws IOException {
    assertRefused(Files.writeString(folder.resolve("a.ifcxml"), "<x/>"), "ifcXML is not supported");
  }

  @Test
  void archiveWithoutAModel() throws IOException {
    assertRefused(zip("a.ifczip", "readme.txt", PIPE), "holds no .ifc file");
  }

  @Test
  void archiveWithXml() throws IOException {
    assertRefused(zip("a.ifczip", "a.ifcxml", PIPE), "ifcXML");
  }

  @Test
  void damagedArchive() throws IOException {
    byte[] packed = Files.readAllBytes(zip("a.ifczip", "a.ifc", PIPE));
    byte[] half = Arrays.copyOf(packed, packed.length / 2);

    assertRefused(Files.write(folder.resolve("half.ifczip"), half), "damaged");
  }

  /** The size that the archive states bounds what is written, whatever comes out of it. */
  @ParameterizedTest
  @ValueSource(ints = {-1000, -1, 1, 1000})
  void archiveThatUnpacksToAnotherSizeThanItStates(int error) throws IOException {
    byte[] packed = Files.readAllBytes(zip("lie.ifczip", "a.ifc", PIPE));
    ByteBuffer bytes = ByteBuffer.wrap(packed).order(ByteOrder.LITTLE_ENDIAN);
    int directory = bytes.getInt(packed.length - 22 + 16);
    assertThat(bytes.getInt(directory + 24)).isEqualTo(PIPE.length);
    bytes.putInt(directory + 24, PIPE.length + error);

    assertRefused(Files.write(folder.resolve("lie.ifczip"), packed), "damaged");
  }

  /** A letter that changed on the way, in an archive that only stores. */
  @Test
  void archiveWhoseContentWasChanged() throws IOException {
    byte[] packed = Files.readAllBytes(stored("flipped.ifczip", "a.ifc", PIPE));
    String text = new String(packed, StandardCharsets.ISO_8859_1);
    packed[text.indexOf('\'', text.indexOf("DATA;")) + 1]++;

    assertRefused(Files.write(folder.resolve("flipped.ifczip"), packed), "checksum");
  }

  /** As packers of some systems write names: in a code page of their own, without saying so. */
  @Test
  void archiveWithANameInACodePage() throws IOException {
    Path file = folder.resolve("a.ifczip");
    OutputStream out = Files.newOutputStream(file);
    try (ZipOutputStream zip = new ZipOutputStream(out, StandardCharsets.ISO_8859_1)) {
      zip.putNextEntry(new ZipEntry("L\u0081ftung.ifc"));
      zip.write(PIPE);
    }

    assertThat(read(file).elements()).hasSize(1);
  }

  @Test
  void archiveWithNotesOfAFileSystemBesideTheModel() throws IOException {
    Path file = folder.resolve("notes.ifczip");
    try (ZipOutputStream zip = new ZipOutputStream(Files.newOutputStream(file))) {
      zip.putNextEntry(new ZipEntry("a.ifc"));
      zip.write(PIPE);
      zip.putNextEntry(new ZipEntry("__MACOSX/._a.ifc"));
      zip.write(0);
    }

    assertThat(read(file).elements()).hasSize(1);
  }

  @Test
  void unpackingLeavesNothingBehind() throws IOException {
    Path packed = zip("pipe.ifczip", "model/pipe.ifc", PIPE);

    ModelArchive archive = ModelArchive.open(packed, StepLimits.DEFAULT);
    assertThat(archive.bytes().size()).isEqualTo(PIPE.length);
    archive.close();

    assertThat(archive.content()).doesNotExist();
  }

  @Test
  void archiveThatUnpacksWithoutEnd() throws IOException {
    assertRefused(zip("bomb.ifczip", "a.ifc", new byte[40_000_000]), "more than the limits allow");
  }

  private static MepModel read(Path file) {
    return ModelReader.read(file, 0, ProgressListener.SILENT);
  }

  private static void assertRefused(Path file, String what) {
    assertThatThrownBy(() -> read(file))
        .isInstanceOf(ModelException.class)
        .hasMessageStartingWith(file.toString())
        .hasMessageContaining(what)
        .hasMessageNotContaining("\n");
  }

  private Path stored(String name, String entry, byte[] content) throws IOException {
    Path file = folder.resolve(name);
    CRC32 sum = new CRC32();
    sum.update(content);
    ZipEntry only = new ZipEntry(entry);
    only.setMethod(ZipEntry.STORED);
    only.setSize(content.length);
    only.setCrc(sum.getValue());
    try (ZipOutputStream zip = new ZipOutputStream(Files.newOutputStream(file))) {
      zip.putNextEntry(only);
      zip.write(content);
    }
    return file;
  }

  private Path zip(String name, String entry, byte[] content) throws IOException {
    Path file = folder.resolve(name);
    try (OutputStream out = Files.newOutputStream(file);
        ZipOutputStream zip = new ZipOutputStream(out)) {
      zip.putNextEntry(new ZipEntry(entry));
      zip.write(content);
      zip.closeEntry();
    }
    return file;
  }
}
