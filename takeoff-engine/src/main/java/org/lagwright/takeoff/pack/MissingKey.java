package org.lagwright.takeoff.pack;

import java.lang.reflect.RecordComponent;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import tools.jackson.core.JacksonException;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.ObjectMapper;
import tools.jackson.databind.exc.ValueInstantiationException;

/**
 * Tells what a file left out where the constructor of a record stumbled over it before {@link
 * MissingValue} could look: a list or map that it copies.
 */
final class MissingKey {

  private MissingKey() {}

  /** What to tell the user of a key that is missing. */
  static String inWords(String key) {
    return "'" + key + "' is missing here. Add it.";
  }

  /**
   * What is missing, in words; empty where the exception says something else.
   *
   * @param pointer JSON pointer of the record that could not be built
   */
  static Optional<String> find(
      JacksonException e, ObjectMapper mapper, String text, String pointer) {
    if (!(e instanceof ValueInstantiationException refused)
        || !(e.getCause() instanceof NullPointerException)
        || !refused.getType().getRawClass().isRecord()) {
      return Optional.empty();
    }
    JsonNode record = mapper.readTree(text).at(pointer);
    for (RecordComponent component : refused.getType().getRawClass().getRecordComponents()) {
      String key = component.getName();
      JsonNode value = record.path(key);
      boolean mayBeLeftOut = component.getAnnotatedType().isAnnotationPresent(Nullable.class);
      if (!mayBeLeftOut && (value.isMissingNode() || value.isNull())) {
        return Optional.of(inWords(key));
      }
      if (value.isArray() && value.valueStream().anyMatch(JsonNode::isNull)) {
        return Optional.of("an entry of '" + key + "' is empty. Fill it, or drop it.");
      }
    }
    return Optional.empty();
  }
}
