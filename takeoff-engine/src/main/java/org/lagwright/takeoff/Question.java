package org.lagwright.takeoff;

import java.util.List;
import org.lagwright.ifc.model.ElementKey;

/**
 * Something to be settled before it can be priced: elements left out, whether in scope {@code ask}
 * or in scope without a size, length or thickness, grouped by cause, kind, form and size.
 *
 * @param code code of the finding these elements carry
 * @param question what is asked, in one sentence
 * @param what kind and form in words: {@code pipe segments}, {@code bends}
 * @param size size in words
 * @param pieces how many elements
 * @param lengthM their length in metres, 0 where counted
 * @param example name and GlobalId of one of them, for looking it up
 */
public record Question(
    String code,
    String question,
    String what,
    String size,
    int pieces,
    double lengthM,
    String example,
    List<ElementKey> elements) {

  public Question {
    elements = List.copyOf(elements);
  }

  /** The question with its example. */
  public String inFull() {
    return question + " Such as " + example + ".";
  }
}
