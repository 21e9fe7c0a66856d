package org.lagwright.ifc.extract.draft;

import java.util.List;
import org.lagwright.ifc.extract.text.PropertyNames;
import org.lagwright.ifc.extract.text.Word;
import org.lagwright.ifc.extract.text.Words;
import org.lagwright.ifc.model.Property;
import org.lagwright.ifc.model.Section;

/** Whether a duct is round, rectangular or flat oval, as its properties and names say it. */
public final class DuctShapes {

  /** Of names; as the beginning of a word, as removal and approval hold it too. */
  private static final List<Word> OVAL =
      List.of(Word.of("oval-"), Word.of("flachoval-"), Word.of("\u043e\u0432\u0430\u043b-"));

  private DuctShapes() {}

  /** Round, rectangular or flat oval, as a property says it; folded, empty if none does. */
  public static String of(Draft draft) {
    for (Property p : PropertyNames.listOf(draft.properties(), PropertyNames.Role.SHAPE)) {
      return Words.fold(p.text());
    }
    return "";
  }

  /** True if the words for a shape of duct tell of a round one. */
  public static boolean isRound(String shape) {
    return shape.contains("round") || shape.contains("circ") || shape.contains("rund");
  }

  /** True if a property says so, or without one a name of a straight duct. */
  public static boolean isOval(Draft draft, String shape) {
    boolean named = shape.isEmpty() && draft.isSegment() && draft.isDuct();
    for (String name : named ? draft.names().all() : List.<String>of()) {
      String folded = Words.fold(name);
      for (Word word : OVAL) {
        if (word.indexIn(folded) >= 0) {
          return true;
        }
      }
    }
    return shape.contains("oval");
  }

  /** The sides of a flat oval duct are written as those of a rectangular one. */
  public static Section shaped(Draft draft, Section sides) {
    return sides instanceof Section.Rectangular r && isOval(draft, of(draft))
        ? new Section.Oval(r.widthM(), r.heightM())
        : sides;
  }
}
