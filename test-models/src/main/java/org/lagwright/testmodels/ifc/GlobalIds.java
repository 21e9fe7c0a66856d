package org.lagwright.testmodels.ifc;

import java.nio.charset.StandardCharsets;
import java.util.UUID;

/** GlobalIds made from names, so that the same thing has the same id in every file. */
public final class GlobalIds {

  private static final String DIGITS =
      "0123456789ABCDEFGHIJKLMNOPQRSTUVWXYZabcdefghijklmnopqrstuvwxyz_$";
  private static final int LENGTH = 22;
  private static final int DIGIT_BITS = 6;
  private static final int LAST_DIGIT = (1 << DIGIT_BITS) - 1;

  private GlobalIds() {}

  /** The 22 characters for a name. */
  public static String of(String name) {
    return compress(UUID.nameUUIDFromBytes(name.getBytes(StandardCharsets.UTF_8)));
  }

  /**
   * Base 64 of the 128 bits, in the alphabet of IFC. Source: IFC4X3 documentation of
   * IfcGloballyUniqueId, with the vector used in our test.
   */
  static String compress(UUID uuid) {
    char[] out = new char[LENGTH];
    long high = uuid.getMostSignificantBits();
    long low = uuid.getLeastSignificantBits();
    for (int i = LENGTH - 1; i >= 0; i--) {
      out[i] = DIGITS.charAt((int) (low & LAST_DIGIT));
      low = low >>> DIGIT_BITS | high << Long.SIZE - DIGIT_BITS;
      high >>>= DIGIT_BITS;
    }
    return new String(out);
  }
}
