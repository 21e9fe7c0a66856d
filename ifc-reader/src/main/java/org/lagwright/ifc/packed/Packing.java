package org.lagwright.ifc.packed;

import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * How values of one type are written into bytes and read again; what comes out equals what went in.
 */
public interface Packing<T> {

  /** Writes a value. */
  void write(T value, PackedWriter to);

  /** Reads what {@link #write} wrote. */
  T read(PackedReader from);

  /** Writes a value or its absence. */
  default void writeOrNull(@Nullable T value, PackedWriter to) {
    to.count(value == null ? 0 : 1);
    if (value != null) {
      write(value, to);
    }
  }

  /** Reads what {@link #writeOrNull} wrote. */
  default @Nullable T readOrNull(PackedReader from) {
    return from.count() == 0 ? null : read(from);
  }

  /** Lists of such values. */
  default Packing<List<T>> list() {
    return new Packing<>() {
      @Override
      public void write(List<T> values, PackedWriter to) {
        to.count(values.size());
        for (int i = 0; i < values.size(); i++) {
          Packing.this.write(values.get(i), to);
        }
      }

      @Override
      @SuppressWarnings("unchecked")
      public List<T> read(PackedReader from) {
        int count = (int) from.count();
        if (count == 0) {
          return List.of();
        }
        if (count == 1) {
          return List.of(Packing.this.read(from));
        }
        Object[] values = new Object[count];
        for (int i = 0; i < count; i++) {
          values[i] = Packing.this.read(from);
        }
        return (List<T>) List.of(values);
      }
    };
  }
}
