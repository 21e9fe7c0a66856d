package org.lagwright.testmodels.ifc;

import java.math.BigInteger;
import java.nio.charset.StandardCharsets;
import java.util.UUID;

/** GlobalIds made from names, so that the same thing has the same id in every file. */
public final class GlobalIds {

  private static final String DIGITS =
      "0123456789ABCDEFGHIJKLMNOPQRSTUVWXYZabcdefghijklmnopqrstuvwxyz_$";
  private static final int LENGTH = 22;

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
    BigInteger rest = new BigInteger(uuid.toString().replace("-", ""), 16);
    char[] out = new char[LENGTH];
    BigInteger base = BigInteger.valueOf(DIGITS.length());
    for (int i = LENGTH - 1; i >= 0; i--) {
      BigInteger[] parts = rest.divideAndRemainder(base);
      out[i] = DIGITS.charAt(parts[1].intValue());
      rest = parts[0];
    }
    return new String(out);
  }
}
