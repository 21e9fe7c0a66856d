package org.lagwright.ifc.model;

import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * Something noticed about an element or a file. Holds values; the sentence is made when shown.
 *
 * @param code stable code
 * @param effect what it did to the quantities
 * @param model position of the file on the command line
 * @param element the element concerned, null for findings about the file
 * @param values what goes into the template, already formatted
 */
public record Finding(
    FindingCode code, Effect effect, int model, @Nullable ElementKey element, List<String> values) {

  public Finding {
    values = List.copyOf(values);
  }

  /** A finding about one element. */
  public static Finding about(
      ElementKey element, FindingCode code, Effect effect, String... values) {
    return new Finding(code, effect, element.model(), element, List.of(values));
  }

  /** A finding about a whole file. */
  public static Finding ofFile(int model, FindingCode code, Effect effect, String... values) {
    return new Finding(code, effect, model, null, List.of(values));
  }

  /** The sentence for the user. */
  public String message() {
    String text = code.template();
    for (int i = 0; i < values.size(); i++) {
      text = text.replace("{" + i + "}", values.get(i));
    }
    // a raw number may end in a point, and the sentence has one of its own
    return text.replace(".. ", ". ");
  }
}
