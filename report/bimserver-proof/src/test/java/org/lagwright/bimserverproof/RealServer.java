package org.lagwright.bimserverproof;

import java.io.BufferedReader;
import java.io.File;
import java.io.IOException;
import java.io.InputStreamReader;
import java.io.PrintWriter;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.TimeoutException;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** The process of {@link StartServer}; its log goes to {@code target/bimserver.log}. */
final class RealServer implements AutoCloseable {

  static final String USER = "admin@alder-quay.example";
  static final String PASSWORD = "tide-table-74";

  private static final long START_S = 600;
  private static final String PLUGINS = "ifcplugins-";

  private final Process process;
  private final String address;

  private RealServer(Process process, String address) {
    this.process = process;
    this.address = address;
  }

  /** Starts it with an empty database. */
  static RealServer start(Path home)
      throws IOException, InterruptedException, ExecutionException, TimeoutException {
    List<String> jars =
        Stream.of(System.getProperty("java.class.path").split(File.pathSeparator)).toList();
    String plugins = jars.stream().filter(RealServer::isPlugins).findFirst().orElseThrow();
    String classPath =
        jars.stream()
            .filter(jar -> !isPlugins(jar))
            .collect(Collectors.joining(File.pathSeparator));
    String java = Path.of(System.getProperty("java.home"), "bin", "java").toString();
    Process process =
        new ProcessBuilder(
                java,
                "-Xmx768m",
                "-cp",
                classPath,
                StartServer.class.getName(),
                home.toString(),
                plugins,
                USER,
                PASSWORD)
            .redirectErrorStream(true)
            .start();
    try {
      return new RealServer(process, "http://127.0.0.1:" + port(process));
    } catch (InterruptedException | ExecutionException | TimeoutException e) {
      process.destroyForcibly();
      throw e;
    }
  }

  private static boolean isPlugins(String jar) {
    return Path.of(jar).getFileName().toString().startsWith(PLUGINS);
  }

  private static String port(Process process)
      throws InterruptedException, ExecutionException, TimeoutException {
    CompletableFuture<String> port = new CompletableFuture<>();
    Thread log =
        new Thread(
            () -> {
              try {
                log(process, port);
                port.completeExceptionally(
                    new IOException("the server ended; see target/bimserver.log"));
              } catch (IOException e) {
                port.completeExceptionally(e);
              }
            },
            "bimserver-log");
    log.setDaemon(true);
    log.start();
    return port.get(START_S, TimeUnit.SECONDS);
  }

  private static void log(Process process, CompletableFuture<String> port) throws IOException {
    Path file = Files.createDirectories(Path.of("target")).resolve("bimserver.log");
    try (BufferedReader lines =
            new BufferedReader(
                new InputStreamReader(process.getInputStream(), StandardCharsets.UTF_8));
        PrintWriter log = new PrintWriter(Files.newBufferedWriter(file), true)) {
      for (String line = lines.readLine(); line != null; line = lines.readLine()) {
        log.println(line);
        if (line.startsWith(StartServer.LISTENING)) {
          port.complete(line.substring(StartServer.LISTENING.length()));
        }
      }
    }
  }

  String address() {
    return address;
  }

  @Override
  public void close() throws IOException, InterruptedException {
    process.getOutputStream().close();
    if (!process.waitFor(60, TimeUnit.SECONDS)) {
      process.destroyForcibly().waitFor();
    }
  }
}
