package org.lagwright.report.bimserver;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.File;
import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.GeneralSecurityException;
import java.security.KeyStore;
import java.util.ArrayList;
import java.util.List;
import javax.net.ssl.KeyManagerFactory;
import javax.net.ssl.SSLContext;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.lagwright.report.cli.Main;

/** The stub over TLS, with certificates that keytool of the JDK makes on the spot. */
class BimServerTlsTest extends StubRun {

  private static final String STORE_PASSWORD = "slack-water";

  @TempDir static Path certificates;

  private static String java(String program) {
    return Path.of(System.getProperty("java.home"), "bin", program).toString();
  }

  private static void keytool(String command, String store, String... more)
      throws IOException, InterruptedException {
    List<String> line =
        new ArrayList<>(List.of(java("keytool"), command, "-keystore", store, "-alias", "server"));
    line.addAll(List.of("-storepass", STORE_PASSWORD));
    line.addAll(List.of(more));
    File log = certificates.resolve(store + command + ".txt").toFile();
    Process keytool =
        new ProcessBuilder(line)
            .directory(certificates.toFile())
            .redirectErrorStream(true)
            .redirectOutput(log)
            .start();
    assertThat(keytool.waitFor()).as(Files.readString(log.toPath())).isZero();
  }

  /** A key whose certificate it signs itself, and a trust store as the README makes it. */
  private static void certificate(String name, String host)
      throws IOException, InterruptedException {
    String subject = "CN=bim.alder-quay.example";
    keytool(
        "-genkeypair", name + ".p12", "-keyalg", "EC", "-dname", subject, "-ext", "SAN=" + host);
    keytool("-exportcert", name + ".p12", "-file", name + ".crt");
    keytool("-importcert", name + ".jks", "-storetype", "JKS", "-noprompt", "-file", name + ".crt");
  }

  @BeforeAll
  static void makeCertificates() throws IOException, InterruptedException {
    certificate("own", "ip:127.0.0.1");
    certificate("other", "dns:bim.alder-quay.example");
  }

  private void serve(String certificate) throws IOException, GeneralSecurityException {
    KeyStore keys = KeyStore.getInstance("PKCS12");
    try (InputStream in = Files.newInputStream(certificates.resolve(certificate + ".p12"))) {
      keys.load(in, STORE_PASSWORD.toCharArray());
    }
    KeyManagerFactory managers =
        KeyManagerFactory.getInstance(KeyManagerFactory.getDefaultAlgorithm());
    managers.init(keys, STORE_PASSWORD.toCharArray());
    SSLContext context = SSLContext.getInstance("TLS");
    context.init(managers.getKeyManagers(), null, null);
    server.close();
    server = StubServer.secure(MODEL, context);
  }

  /** The program in a machine of its own, which trusts the certificate given. */
  private int trusting(String certificate) throws IOException, InterruptedException {
    Path shown = folder.resolve("out.txt");
    Path complaints = folder.resolve("err.txt");
    ProcessBuilder program =
        new ProcessBuilder(
                java("java"),
                "-Djavax.net.ssl.trustStore=" + certificates.resolve(certificate + ".jks"),
                "-cp",
                System.getProperty("java.class.path"),
                Main.class.getName(),
                "takeoff",
                project("Alder Quay"),
                "--out",
                output().toString(),
                "--fail-on",
                "never",
                "--attach",
                "--check-in",
                "same")
            .redirectOutput(shown.toFile())
            .redirectError(complaints.toFile());
    program.environment().putAll(environment);
    int code = program.start().waitFor();
    out.write(Files.readString(shown));
    err.write(Files.readString(complaints));
    return code;
  }

  @Test
  void modelsAndResultsTravelOverASecureConnection() throws Exception {
    serve("own");
    assertThat(trusting("own")).as(err.toString()).isZero();

    assertThat(out.toString())
        .contains("attached to Alder Quay@2: ", "checked in as Alder Quay@3: ");
    assertThat(server.uploads).hasSize(3);
    noTrace();
  }

  @Test
  void certificateOfAnotherHostIsRefused() throws Exception {
    serve("other");
    int code = trusting("other");
    refused(code, "no secure connection (");
    assertThat(err.toString()).contains("Check its certificate, and that the host is one");
    assertThat(server.called).isEqualTo(List.of());
  }

  @Test
  void untrustedCertificateIsRefusedWithWhatToDo() throws Exception {
    serve("own");
    refused(takeoff(project("Alder Quay")), "Java trusts nobody who vouches for its certificate.");
    assertThat(err.toString())
        .contains("keytool -importcert", "java -Djavax.net.ssl.trustStore=FILE.");
    assertThat(server.called).isEmpty();
  }
}
