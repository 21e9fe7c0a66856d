package org.lagwright.takeoff.pack;

import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.Reader;
import java.io.StringWriter;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import tools.jackson.core.JacksonException;
import tools.jackson.core.JsonParser;
import tools.jackson.core.StreamReadFeature;
import tools.jackson.core.TokenStreamLocation;
import tools.jackson.databind.DatabindException;
import tools.jackson.databind.DeserializationFeature;
import tools.jackson.databind.exc.UnrecognizedPropertyException;
import tools.jackson.dataformat.yaml.YAMLMapper;

/**
 * Reads YAML strictly into records: unknown keys, duplicate keys, missing and null values are
 * refused with file, line and column. What may be left out is a component marked {@code @Nullable}
 * that the record itself fills.
 */
public final class PackReader {

  private static final YAMLMapper STRICT =
      YAMLMapper.builder()
          .enable(StreamReadFeature.STRICT_DUPLICATE_DETECTION)
          .enable(DeserializationFeature.FAIL_ON_UNKNOWN_PROPERTIES)
          .enable(DeserializationFeature.FAIL_ON_NULL_FOR_PRIMITIVES)
          .enable(DeserializationFeature.FAIL_ON_READING_DUP_TREE_KEY)
          .enable(DeserializationFeature.FAIL_ON_TRAILING_TOKENS)
          .build();

  private PackReader() {}

  /**
   * Reads a file that belongs to the program.
   *
   * @param owner class whose folder on the class path the name is relative to
   * @throws PackException if the content does not fit the type
   */
  public static <T> T readBundled(Class<?> owner, String name, Class<T> type) {
    InputStream in = owner.getResourceAsStream(name);
    if (in == null) {
      throw new IllegalStateException("resource missing from the build: " + name);
    }
    try (Reader reader = new InputStreamReader(in, StandardCharsets.UTF_8)) {
      return read(reader, name, type);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /**
   * Reads a file of the user.
   *
   * @throws PackException if the file is missing, unreadable or does not fit the type
   */
  public static <T> T readFile(Path file, Class<T> type) {
    try (Reader reader = Files.newBufferedReader(file, StandardCharsets.UTF_8)) {
      return read(reader, file.toString(), type);
    } catch (NoSuchFileException e) {
      throw new PackException(file + ": no such file. Check the path.", e);
    } catch (IOException e) {
      throw new PackException(
          file + ": cannot be read (" + e.getMessage() + "). Check that it is UTF-8 text.", e);
    }
  }

  private static <T> T read(Reader reader, String name, Class<T> type) throws IOException {
    StringWriter text = new StringWriter();
    reader.transferTo(text);
    try {
      T value = STRICT.readValue(text.toString(), type);
      if (value == null) {
        throw new PackException(name + ":1:1: the file is empty. Write at least one key.");
      }
      return value;
    } catch (JacksonException e) {
      throw new PackException(place(name, locate(e, text.toString())) + describe(e), e);
    }
  }

  private static String place(String name, @Nullable TokenStreamLocation at) {
    return at == null ? name + ": " : name + ":" + at.getLineNr() + ":" + at.getColumnNr() + ": ";
  }

  /** Unknown keys are reported late, without a location; the path of the exception finds it. */
  private static @Nullable TokenStreamLocation locate(JacksonException e, String text) {
    TokenStreamLocation known = e.getLocation();
    if (known != null && known.getLineNr() > 0) {
      return known;
    }
    String wanted = pointer(e.getPath());
    try (JsonParser parser = STRICT.createParser(text)) {
      while (parser.nextToken() != null) {
        if (parser.streamReadContext().pathAsPointer().toString().equals(wanted)) {
          return parser.currentTokenLocation();
        }
      }
    }
    return null;
  }

  private static String pointer(List<JacksonException.Reference> path) {
    return path.stream()
        .map(r -> "/" + (r.getPropertyName() == null ? r.getIndex() : r.getPropertyName()))
        .collect(Collectors.joining());
  }

  private static String describe(JacksonException e) {
    if (e instanceof UnrecognizedPropertyException unknown) {
      return "unknown key '"
          + unknown.getPropertyName()
          + "'. Known here: "
          + unknown.getKnownPropertyIds()
          + ".";
    }
    String reason = e instanceof DatabindException ? refusedByRecord(e) : null;
    if (reason != null) {
      return reason + " Correct the value or the spelling of its key.";
    }
    return firstLine(e.getOriginalMessage()) + ". Correct this value.";
  }

  /** What the constructor of a record said when it refused a value, null if none did. */
  private static @Nullable String refusedByRecord(Throwable e) {
    for (Throwable cause = e.getCause(); cause != null; cause = cause.getCause()) {
      if (cause instanceof IllegalArgumentException) {
        return cause.getMessage();
      }
    }
    return null;
  }

  private static String firstLine(String message) {
    return message.lines().findFirst().orElse(message);
  }
}
