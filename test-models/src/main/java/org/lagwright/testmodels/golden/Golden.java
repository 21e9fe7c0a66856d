package org.lagwright.testmodels.golden;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;

/**
 * Expected texts in {@code src/test/resources}, in the folder of the test's package. {@code mvn
 * test -Dlagwright.golden=write} writes them anew; look at the difference before committing it, and
 * say in the commit why a number moved.
 */
public final class Golden {

  private static final String WRITE = "write";

  private Golden() {}

  /**
   * Compares a text with the file of this name; with the property set, writes it first.
   *
   * @throws AssertionError if the file is missing or differs, with the first line that does
   */
  public static void check(Class<?> test, String name, String shown) throws IOException {
    String folder = test.getPackageName().replace('.', '/');
    Path file = Path.of("src/test/resources").resolve(folder).resolve(name);
    if (System.getProperty("lagwright.golden", "").equals(WRITE)) {
      Files.createDirectories(file.getParent());
      Files.writeString(file, shown);
    }
    if (!Files.exists(file)) {
      throw new AssertionError(name + " is missing; write it with -Dlagwright.golden=" + WRITE);
    }
    String expected = Files.readString(file).replace("\r\n", "\n");
    if (!shown.equals(expected)) {
      throw new AssertionError(firstDifference(name, expected, shown));
    }
  }

  private static String firstDifference(String name, String expected, String shown) {
    String[] before = expected.split("\n", -1);
    String[] after = shown.split("\n", -1);
    int line = 0;
    while (line < before.length && line < after.length && before[line].equals(after[line])) {
      line++;
    }
    return name
        + " differs from line "
        + (line + 1)
        + " on\nexpected: "
        + (line < before.length ? before[line] : "(end)")
        + "\nbut was:  "
        + (line < after.length ? after[line] : "(end)")
        + "\nIf that is meant, write the file with -Dlagwright.golden="
        + WRITE
        + ".";
  }
}
