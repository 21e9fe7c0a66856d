package org.lagwright.takeoff.pack;

import java.lang.reflect.InvocationTargetException;
import java.lang.reflect.RecordComponent;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.BiFunction;
import org.jspecify.annotations.Nullable;

/**
 * Finds what a file left out: a component of a record that is null, or a text that is blank,
 * without being marked {@code @Nullable}.
 *
 * @param pointer JSON pointer of the record it belongs to: {@code /rows/3}
 * @param key name of the component
 */
record MissingValue(String pointer, String key) {

  static Optional<MissingValue> find(@Nullable Object value) {
    return find(value, "");
  }

  private static Optional<MissingValue> find(@Nullable Object value, String pointer) {
    if (value instanceof Record record) {
      return inRecord(record, pointer);
    } else if (value instanceof List<?> list) {
      return first(list.size(), (i, at) -> find(list.get(i), at), pointer);
    } else if (value instanceof Map<?, ?> map) {
      return map.entrySet().stream()
          .map(e -> find(e.getValue(), pointer + "/" + e.getKey()))
          .flatMap(Optional::stream)
          .findFirst();
    }
    return Optional.empty();
  }

  private static Optional<MissingValue> first(
      int size, BiFunction<Integer, String, Optional<MissingValue>> each, String pointer) {
    for (int i = 0; i < size; i++) {
      Optional<MissingValue> missing = each.apply(i, pointer + "/" + i);
      if (missing.isPresent()) {
        return missing;
      }
    }
    return Optional.empty();
  }

  private static Optional<MissingValue> inRecord(Record record, String pointer) {
    for (RecordComponent component : record.getClass().getRecordComponents()) {
      Object value = valueOf(component, record);
      boolean mayBeLeftOut = component.getAnnotatedType().isAnnotationPresent(Nullable.class);
      boolean blank = value == null || value instanceof String text && text.isBlank();
      if (blank && !mayBeLeftOut) {
        return Optional.of(new MissingValue(pointer, component.getName()));
      }
      Optional<MissingValue> inside = find(value, pointer + "/" + component.getName());
      if (inside.isPresent()) {
        return inside;
      }
    }
    return Optional.empty();
  }

  private static @Nullable Object valueOf(RecordComponent component, Record record) {
    try {
      component.getAccessor().setAccessible(true);
      return component.getAccessor().invoke(record);
    } catch (IllegalAccessException | InvocationTargetException e) {
      throw new IllegalStateException(e);
    }
  }
}
