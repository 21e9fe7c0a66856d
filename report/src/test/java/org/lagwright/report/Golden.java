package org.lagwright.report;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;

/**
 * Expected texts in {@code src/test/resources}, beside the package of the test. {@code mvn -pl
 * report -am test -Dlagwright.golden=write} writes them anew; look at the difference before
 * committing it, and say in the commit why a number moved.
 */
public final class Golden {

  private static final String WRITE = "write";

  private Golden() {}

  /** Compares a text with the file of this name; with the property set, writes it instead. */
  public static void check(Class<?> test, String name, String shown) throws IOException {
    String folder = test.getPackageName().replace('.', '/');
    Path file = Path.of("src/test/resources").resolve(folder).resolve(name);
    if (System.getProperty("lagwright.golden", "").equals(WRITE)) {
      Files.createDirectories(file.getParent());
      Files.writeString(file, shown);
    }
    assertThat(file).as("write it with -Dlagwright.golden=write").exists();
    assertThat(shown).as(name).isEqualTo(Files.readString(file).replace("\r\n", "\n"));
  }
}
