package org.lagwright.ifc.extract.text;

import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;

/**
 * A regular expression that is compiled when it is first asked: most models hold no text for most
 * of them, and compiling all would take longer than reading a small model.
 */
final class LatePattern {

  private final String regex;
  private volatile @Nullable Pattern compiled;

  LatePattern(String regex) {
    this.regex = regex;
  }

  Matcher matcher(String text) {
    Pattern pattern = compiled;
    if (pattern == null) {
      pattern = Pattern.compile(regex);
      compiled = pattern;
    }
    return pattern.matcher(text);
  }
}
