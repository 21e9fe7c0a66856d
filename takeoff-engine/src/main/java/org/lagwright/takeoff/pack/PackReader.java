package org.lagwright.takeoff.pack;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.ByteBuffer;
import java.nio.CharBuffer;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.util.Collection;
import java.util.List;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import org.snakeyaml.engine.v2.exceptions.Mark;
import org.snakeyaml.engine.v2.exceptions.MarkedYamlEngineException;
import tools.jackson.core.JacksonException;
import tools.jackson.core.JsonParser;
import tools.jackson.core.StreamReadFeature;
import tools.jackson.core.TokenStreamLocation;
import tools.jackson.databind.DatabindException;
import tools.jackson.databind.DeserializationFeature;
import tools.jackson.databind.exc.MismatchedInputException;
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
    return parse(readBundledText(owner, name), name, type);
  }

  /** Reads a text that belongs to the program. */
  static String readBundledText(Class<?> owner, String name) {
    InputStream in = owner.getResourceAsStream(name);
    if (in == null) {
      throw new IllegalStateException("resource missing from the build: " + name);
    }
    try (in) {
      return decoded(in.readAllBytes(), name);
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
    return parse(readText(file), file.toString(), type);
  }

  /**
   * Reads a text file of the user.
   *
   * @throws PackException if the file is missing, unreadable or no UTF-8
   */
  static String readText(Path file) {
    String name = file.toString();
    try {
      return decoded(Files.readAllBytes(file), name);
    } catch (NoSuchFileException e) {
      throw new PackException(name + ": no such file. Check the path.", e);
    } catch (IOException e) {
      throw new PackException(
          name + ": cannot be read (" + e.getMessage() + "). Check that it is a readable file.", e);
    }
  }

  private static String decoded(byte[] bytes, String name) {
    ByteBuffer in = ByteBuffer.wrap(bytes);
    CharBuffer out = CharBuffer.allocate(bytes.length);
    if (StandardCharsets.UTF_8.newDecoder().decode(in, out, true).isError()) {
      long line = out.flip().chars().filter(c -> c == '\n').count() + 1;
      throw new PackException(name + ":" + line + ": this is no UTF-8 text. Save it as UTF-8.");
    }
    return out.flip().toString();
  }

  private static <T> T parse(String text, String name, Class<T> type) {
    try {
      T value = STRICT.readValue(text, type);
      if (value == null) {
        throw empty(name);
      }
      MissingValue.find(value)
          .ifPresent(
              missing -> {
                throw refused(missing, name, text);
              });
      return value;
    } catch (JacksonException e) {
      if (isEmpty(text)) {
        throw empty(name);
      }
      String pointer = pointer(e.getPath());
      MissingKey.find(e, STRICT, text, pointer)
          .ifPresent(
              what -> {
                throw new PackException(place(find(pointer, text), name) + what, e);
              });
      throw new PackException(place(name, e, text) + describe(e), e);
    }
  }

  private static PackException refused(MissingValue missing, String name, String text) {
    String place = place(find(missing.pointer(), text), name);
    return new PackException(place + MissingKey.inWords(missing.key()));
  }

  private static String place(@Nullable TokenStreamLocation at, String name) {
    return at == null
        ? name + ":1:1: "
        : name + ":" + at.getLineNr() + ":" + at.getColumnNr() + ": ";
  }

  private static PackException empty(String name) {
    return new PackException(name + ":1:1: the file is empty. Write at least one key.");
  }

  /** Nothing but comments and blank lines. */
  private static boolean isEmpty(String text) {
    return text.lines().allMatch(line -> line.isBlank() || line.stripLeading().startsWith("#"));
  }

  private static String place(String name, JacksonException e, String text) {
    if (e.getCause() instanceof MarkedYamlEngineException marked
        && marked.getProblemMark().isPresent()) {
      Mark mark = marked.getProblemMark().get();
      return name + ":" + (mark.getLine() + 1) + ":" + (mark.getColumn() + 1) + ": ";
    }
    TokenStreamLocation at = locate(e, text);
    return at == null ? name + ": " : name + ":" + at.getLineNr() + ":" + at.getColumnNr() + ": ";
  }

  /** Unknown keys are reported late, without a location; the path of the exception finds it. */
  private static @Nullable TokenStreamLocation locate(JacksonException e, String text) {
    TokenStreamLocation known = e.getLocation();
    if (known != null && known.getLineNr() > 0) {
      return known;
    }
    return find(pointer(e.getPath()), text);
  }

  private static @Nullable TokenStreamLocation find(String wanted, String text) {
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
    if (e.getOriginalMessage().startsWith("Trailing token")) {
      return "a second document begins here. Keep one.";
    }
    if (e instanceof MismatchedInputException mismatched) {
      return expected(mismatched.getTargetType()) + " is expected here. Correct this value.";
    }
    if (e.getCause() instanceof MarkedYamlEngineException marked) {
      return marked.getProblem() + ". Correct this line.";
    }
    return e.getOriginalMessage().lines().findFirst().orElse("not readable")
        + ". Correct this line.";
  }

  private static String expected(@Nullable Class<?> type) {
    if (type == null) {
      return "another kind of value";
    } else if (Number.class.isAssignableFrom(type) || type.isPrimitive()) {
      return "a number";
    } else if (type == String.class) {
      return "a text";
    }
    return Collection.class.isAssignableFrom(type) ? "a list" : "a key with a value";
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
}
