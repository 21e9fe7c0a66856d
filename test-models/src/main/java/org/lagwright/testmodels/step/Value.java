package org.lagwright.testmodels.step;

/** Values that plain Java objects cannot express. */
public sealed interface Value {

  /** An enumeration value, written {@code .BEND.}. */
  record Token(String name) implements Value {}

  /** A value of a select, written {@code IFCLABEL('x')}. */
  record Typed(String type, Object value) implements Value {}

  /** Text written as it stands, for escapes that our own encoder does not produce. */
  record Verbatim(String text) implements Value {}

  /** A derived attribute, written {@code *}. */
  Value DERIVED = new Verbatim("*");

  /** True, written {@code .T.}. */
  Value TRUE = new Token("T");

  /** False, written {@code .F.}. */
  Value FALSE = new Token("F");

  /** Shorthand for {@code .name.}. */
  static Value token(String name) {
    return new Token(name);
  }

  /** Shorthand for {@code TYPE(value)}. */
  static Value typed(String type, Object value) {
    return new Typed(type, value);
  }
}
