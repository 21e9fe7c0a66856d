package org.lagwright.report.bimserver;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/** Who asks. Never shown: the text of these values holds no secret. */
sealed interface Credentials {

  /** What to do where there are none. */
  String ADVICE =
      "Set LAGWRIGHT_BIMSERVER_USER and LAGWRIGHT_BIMSERVER_PASSWORD, or LAGWRIGHT_BIMSERVER_TOKEN,"
          + " or name a file that holds them in LAGWRIGHT_BIMSERVER_CREDENTIALS.";

  String PREFIX = "LAGWRIGHT_BIMSERVER_";
  String FILE = PREFIX + "CREDENTIALS";

  /** User and password. */
  record Login(String user, String password) implements Credentials {
    @Override
    public String secret() {
      return password;
    }

    @Override
    public String toString() {
      return "user and password";
    }
  }

  /** A token that the server gave out. */
  record Token(String token) implements Credentials {
    @Override
    public String secret() {
      return token;
    }

    @Override
    public String toString() {
      return "token";
    }
  }

  /** What must never be shown. */
  String secret();

  /**
   * Finds credentials in the file that the environment names, else in the environment itself.
   *
   * @throws ServerException if there are none, too many, or the file is wrong
   */
  static Credentials of(Map<String, String> environment) {
    String file = environment.get(FILE);
    if (file != null && !file.isBlank()) {
      return choose(read(Path.of(file)), file + ": ");
    }
    Map<String, String> values = new HashMap<>();
    for (String key : List.of("user", "password", "token")) {
      String value = environment.get(PREFIX + key.toUpperCase(Locale.ROOT));
      if (value != null && !value.isEmpty()) {
        values.put(key, value);
      }
    }
    return choose(values, "");
  }

  private static Credentials choose(Map<String, String> values, String where) {
    @Nullable String user = values.get("user");
    @Nullable String password = values.get("password");
    @Nullable String token = values.get("token");
    if (token != null && user == null && password == null) {
      return new Token(token);
    }
    if (token == null && user != null && password != null) {
      return new Login(user, password);
    }
    String what =
        token != null
            ? "both a token and a user or password are given for the BIMserver; one has to do. "
            : "there is no user with password and no token for the BIMserver. ";
    throw new ServerException(where + what + ADVICE);
  }

  /** Lines {@code user=...}, {@code password=...}, {@code token=...}; values as they stand. */
  private static Map<String, String> read(Path file) {
    Map<String, String> values = new HashMap<>();
    List<String> lines;
    try {
      lines = Files.readAllLines(file);
    } catch (IOException e) {
      throw new ServerException(
          file + ": the file of " + FILE + " cannot be read. Check the path, and that it is yours.",
          e);
    }
    for (int i = 0; i < lines.size(); i++) {
      String[] parts = lines.get(i).split("=", 2);
      String key = parts[0].strip();
      if (lines.get(i).isBlank()) {
        continue;
      }
      if (parts.length < 2 || !List.of("user", "password", "token").contains(key)) {
        throw new ServerException(
            file + ":" + (i + 1) + ": expected user=..., password=... or token=...");
      }
      values.put(key, parts[1]);
    }
    return values;
  }
}
