package org.lagwright.ifc.extract;

import java.util.ArrayList;
import java.util.List;
import org.lagwright.ifc.model.Evidence;

/** Texts of an element in which people write its size: its names and properties called size. */
final class SizeTexts {

  /** A text and where it stands. */
  record Text(String value, Evidence evidence) {}

  private SizeTexts() {}

  /** Properties first, as they hold the size and nothing else; the own name last. */
  static List<Text> of(Draft draft) {
    List<Text> texts = new ArrayList<>();
    PropertyNames.of(draft.properties, PropertyNames.Role.SIZE)
        .filter(p -> p.measure() == null || !p.measure().contains("LENGTHMEASURE"))
        .map(p -> new Text(p.text(), p.evidence()))
        .forEach(texts::add);
    for (String name : draft.names.all()) {
      texts.add(new Text(name, new Evidence(draft.key.step(), "name", name)));
    }
    return texts;
  }
}
