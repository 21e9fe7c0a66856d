package org.lagwright.bimserverproof;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;

/**
 * One run of the finished program, as a user starts it.
 *
 * @param code exit code
 * @param out what was printed
 * @param err what was complained about
 */
record Program(int code, String out, String err) {

  private static final Path JAR = Path.of("../target/lagwright.jar");

  /** Runs it with the environment given and no other variable that begins alike. */
  static Program run(Map<String, String> environment, Path folder, String... args)
      throws IOException, InterruptedException {
    if (!Files.exists(JAR)) {
      throw new IllegalStateException(JAR + " is missing; run mvn -B -DskipTests package first");
    }
    Files.createDirectories(folder);
    Path out = folder.resolve("stdout.txt");
    Path err = folder.resolve("stderr.txt");
    List<String> command = new ArrayList<>();
    command.add(Path.of(System.getProperty("java.home"), "bin", "java").toString());
    command.addAll(List.of("-Xmx512m", "-jar", JAR.toString()));
    command.addAll(List.of(args));
    ProcessBuilder builder =
        new ProcessBuilder(command).redirectOutput(out.toFile()).redirectError(err.toFile());
    builder.environment().keySet().removeIf(name -> name.startsWith("LAGWRIGHT_"));
    builder.environment().putAll(environment);
    int code = builder.start().waitFor();
    return new Program(code, Files.readString(out), Files.readString(err));
  }
}
