package org.lagwright.ifc.step;

import java.nio.charset.StandardCharsets;
import java.util.Random;

/**
 * Writes files made of what breaks readers, at random: statements inside strings and comments,
 * numbers used twice, cut and damaged places.
 */
final class HostileFiles {

  private final Random random;
  private final StringBuilder out = new StringBuilder();
  private long lastId;

  private HostileFiles(long seed) {
    this.random = new Random(seed);
  }

  static byte[] write(long seed) {
    return new HostileFiles(seed).run();
  }

  private byte[] run() {
    out.append(oneOf("", "", "", "\u00EF\u00BB\u00BF")).append("ISO-10303-21;").append(gap());
    out.append("HEADER;FILE_DESCRIPTION((''),'2;1');");
    out.append(oneOf("FILE_SCHEMA(('IFC4'));", "file_schema (('ifc2x3') ) ;", "FILE_SCHEMA(());"));
    out.append("ENDSEC;").append(gap()).append("DATA;");
    int statements = random.nextInt(60);
    for (int i = 0; i < statements; i++) {
      out.append(gap()).append(statement());
    }
    out.append(gap()).append("ENDSEC;").append(gap()).append("END-ISO-10303-21;").append(gap());
    if (random.nextInt(4) == 0) {
      damage();
    }
    return out.toString().getBytes(StandardCharsets.ISO_8859_1);
  }

  private String statement() {
    int kind = random.nextInt(40);
    return switch (kind) {
      case 0 -> oneOf(";", "rubbish;", "#=A();", "#0=A();", "#x;", "# 5=A();", "ENDSEC;DATA;");
      case 1 -> "#" + id() + "=(A(1)B('x'));";
      case 2 -> "#" + id() + oneOf("=A", "=", "", "=A B(1)", "=A('", "=A(/*", "='A'(1)") + ";";
      case 3 -> "ENDSEC;" + gap() + oneOf("", "DATA;") + "lost;";
      default ->
          "#" + id() + blank() + "=" + blank() + keyword() + blank() + "(" + arguments() + ");";
    };
  }

  private String id() {
    lastId =
        switch (random.nextInt(12)) {
          case 0 -> 1 + random.nextInt(40);
          case 1 -> random.nextLong(1L << 40);
          case 2 -> 99_999_995L + random.nextInt(10);
          case 3 -> 999_999_999_999_999_000L - random.nextInt(500);
          default -> lastId % 1_000_000 + 1;
        };
    return (random.nextInt(30) == 0 ? "000" : "") + lastId;
  }

  private String keyword() {
    return oneOf("IFCWALL", "IfcWall", "IFCCARTESIANPOINT", "A", "IFC_ODD-NAME9", "IFCPIPEFITTING")
        + (random.nextInt(40) == 0 ? "X".repeat(random.nextInt(100)) : "");
  }

  private String arguments() {
    StringBuilder arguments = new StringBuilder();
    int count = random.nextInt(5);
    for (int i = 0; i < count; i++) {
      arguments.append(i == 0 ? "" : ",").append(blank()).append(argument());
    }
    return arguments.toString();
  }

  private String argument() {
    return oneOf(
        "1.5",
        "$",
        "#12",
        "(1,(2,3))",
        "'a;b'",
        "''",
        "'it''s'",
        "'two\nlines;\n#17=A();\n#18=B();'",
        "';\n#19=IFCWALL('",
        "/* ;\n#20=A(); ' */ 3",
        "'\\S\\'','x'",
        "'\\S\\''",
        "'/*'",
        "IFCLABEL('#1=A();')",
        "a/b");
  }

  private String gap() {
    return oneOf(
        "\n", "\n", "\n", "\r\n", "", "  ", "/* one */", "\n/*;\n#21=A();\n#22=B();\n*/\n");
  }

  private String blank() {
    return oneOf("", "", "", "", "", " ", "\n", "/*,*/");
  }

  /** Cuts the end off, or puts a byte that matters somewhere. */
  private void damage() {
    int place = random.nextInt(out.length());
    if (random.nextBoolean()) {
      out.setLength(place);
    } else {
      out.insert(place, oneOf("'", ";", "/*", "*/", "#", "(", ")", "\\", "=", "\u0000", "\u00FF"));
    }
  }

  private String oneOf(String... choices) {
    return choices[random.nextInt(choices.length)];
  }
}
