package org.lagwright.ifc.extract.text;

import java.util.List;
import java.util.Locale;
import org.jspecify.annotations.Nullable;
import org.lagwright.ifc.model.Property;

/** What is true or not, as the schema has it and as people write it into texts. */
public final class YesNo {

  private static final List<String> YES = List.of("T", "TRUE", "1", "YES", "JA", "OUI");
  private static final List<String> NO = List.of("F", "FALSE", "0", "NO", "NEIN", "NON");

  private YesNo() {}

  /** What a property says, null if it is neither yes nor no. */
  public static @Nullable Boolean of(Property property) {
    String bare = property.text().toUpperCase(Locale.ROOT).replace(".", "");
    if (YES.contains(bare)) {
      return true;
    }
    return NO.contains(bare) ? Boolean.FALSE : null;
  }
}
