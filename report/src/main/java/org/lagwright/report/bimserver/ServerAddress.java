package org.lagwright.report.bimserver;

import java.net.URI;
import java.net.URISyntaxException;
import java.net.URLDecoder;
import java.nio.charset.StandardCharsets;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * A revision on a server, as the user names it: {@code bimserver+http://HOST:PORT/PROJECT@REVISION}
 * or with https.
 *
 * @param server scheme, host and port
 * @param project name; of a sub-project its path, with slashes
 * @param revision its number in the project, from 1; the last one where empty
 */
public record ServerAddress(URI server, String project, OptionalInt revision) {

  private static final String SCHEME = "bimserver+";
  private static final Pattern FORM =
      Pattern.compile("bimserver\\+(https?)://([^/]*)/(.+?)(?:@(\\d{1,9}))?");

  /** True if this is meant to be an address and not a file. */
  public static boolean isAddress(String text) {
    return text.startsWith(SCHEME);
  }

  /**
   * Reads an address.
   *
   * @throws ServerException if it has another form, or holds a user or password
   */
  public static ServerAddress parse(String text) {
    Matcher form = FORM.matcher(text);
    boolean matches = form.matches();
    String beforePath = text.replaceFirst("^[^/]*//", "").replaceFirst("/.*", "");
    if (beforePath.contains("@")) {
      throw new ServerException(
          "a server's address holds no user or password, where others could read them. "
              + Credentials.ADVICE);
    }
    if (!matches) {
      throw malformed(text);
    }
    OptionalInt revision =
        Optional.ofNullable(form.group(4))
            .map(number -> OptionalInt.of(Integer.parseInt(number)))
            .orElse(OptionalInt.empty());
    return new ServerAddress(
        server(form.group(1) + "://" + form.group(2), text),
        decoded(form.group(3), text),
        revision);
  }

  private static URI server(String address, String text) {
    try {
      URI server = new URI(address).parseServerAuthority();
      if (server.getHost() == null) {
        throw malformed(text);
      }
      return server;
    } catch (URISyntaxException e) {
      throw malformed(text);
    }
  }

  /** A plus is a plus in a path. */
  private static String decoded(String path, String text) {
    try {
      return URLDecoder.decode(path.replace("+", "%2B"), StandardCharsets.UTF_8);
    } catch (IllegalArgumentException e) {
      throw malformed(text);
    }
  }

  private static ServerException malformed(String text) {
    return new ServerException(
        text + ": a model on a server is named bimserver+http://HOST:PORT/PROJECT@REVISION.");
  }

  /** For messages. */
  @Override
  public String toString() {
    String number = revision.isPresent() ? "@" + revision.getAsInt() : "";
    return SCHEME + server + "/" + project + number;
  }
}
