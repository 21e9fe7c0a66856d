package org.lagwright.ifc.append;

import java.math.BigInteger;
import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.Arrays;

/** Identities of new records, the same again for the same name. */
public final class GlobalId {

  private static final String DIGITS =
      "0123456789ABCDEFGHIJKLMNOPQRSTUVWXYZabcdefghijklmnopqrstuvwxyz_$";

  private static final int LENGTH = 22;
  private static final int BYTES = 16;
  private static final int VERSION_BYTE = 6;
  private static final int VARIANT_BYTE = 8;

  private GlobalId() {}

  /**
   * A UUID of version 8 (RFC 9562) from the SHA-256 of a name, written as IfcGloballyUniqueId: the
   * 128 bits to the base of 64, most significant first.
   */
  public static String of(String name) {
    byte[] bits = Arrays.copyOf(sha256(name.getBytes(StandardCharsets.UTF_8)), BYTES);
    bits[VERSION_BYTE] = (byte) (bits[VERSION_BYTE] & 0x0F | 0x80);
    bits[VARIANT_BYTE] = (byte) (bits[VARIANT_BYTE] & 0x3F | 0x80);
    return compressed(bits);
  }

  /** The 22 characters of 16 bytes. */
  static String compressed(byte[] bits) {
    BigInteger rest = new BigInteger(1, bits);
    BigInteger base = BigInteger.valueOf(DIGITS.length());
    char[] out = new char[LENGTH];
    for (int i = LENGTH - 1; i >= 0; i--) {
      BigInteger[] parts = rest.divideAndRemainder(base);
      out[i] = DIGITS.charAt(parts[1].intValue());
      rest = parts[0];
    }
    return new String(out);
  }

  private static byte[] sha256(byte[] bytes) {
    try {
      return MessageDigest.getInstance("SHA-256").digest(bytes);
    } catch (NoSuchAlgorithmException e) {
      throw new IllegalStateException("every Java platform has SHA-256", e);
    }
  }
}
