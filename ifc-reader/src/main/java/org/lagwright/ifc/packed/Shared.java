package org.lagwright.ifc.packed;

import java.util.Arrays;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;

/**
 * Values that stand on many elements, each kept once and named by its number. Once full it takes no
 * more. Safe for several threads.
 */
final class Shared<T> {

  /** Of what there is no room for. */
  static final int NONE = -1;

  private final int most;
  private final Map<T, Integer> numbers = new ConcurrentHashMap<>();
  private volatile Object[] values = new Object[64];
  private volatile int count;

  /**
   * @param most values that it takes
   */
  Shared(int most) {
    this.most = most;
  }

  /** Number of a value, {@link #NONE} if it is new and there is no room. */
  int numberOf(T value) {
    Integer known = numbers.get(value);
    return known != null ? known : count < most ? add(value) : NONE;
  }

  private synchronized int add(T value) {
    Integer known = numbers.get(value);
    if (known != null || count >= most) {
      return known == null ? NONE : known;
    }
    int number = count;
    if (number == values.length) {
      values = Arrays.copyOf(values, 2 * number);
    }
    values[number] = value;
    // last, so that who finds the number finds the value
    numbers.put(value, number);
    count = number + 1;
    return number;
  }

  @SuppressWarnings("unchecked")
  T value(int number) {
    return (T) values[number];
  }
}
