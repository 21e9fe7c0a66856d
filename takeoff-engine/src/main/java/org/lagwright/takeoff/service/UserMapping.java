package org.lagwright.takeoff.service;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.lagwright.ifc.model.MepElement;
import org.lagwright.ifc.model.MepSystem;
import org.lagwright.takeoff.words.Token;

/**
 * A name that the user says means a service. Case and accents do not matter.
 *
 * @param contains text looked for
 * @param in {@code system}, {@code name} or {@code type}; null for all of them
 * @param service service id
 */
public record UserMapping(String contains, @Nullable String in, String service) {

  /** The text of the element that the mapping speaks of, empty if none. */
  public Optional<String> findIn(MepElement element) {
    String wanted = Token.fold(Token.composed(contains));
    return texts(element).stream()
        .filter(text -> Token.fold(Token.composed(text)).contains(wanted))
        .findFirst();
  }

  /** The mapping with the text it was found in: {@code 'Vorlauf' in 'Pipe - Vorlauf 1'}. */
  String inWords(String text) {
    return "'" + contains + "' in '" + text + "'";
  }

  private List<String> texts(MepElement element) {
    List<String> texts = new ArrayList<>();
    if (in == null || in.equals("system")) {
      for (MepSystem system : element.systems()) {
        texts.add(system.name());
        addIfPresent(texts, system.longName());
      }
    }
    if (in == null || in.equals("name")) {
      texts.add(element.name());
    }
    if (in == null || in.equals("type")) {
      addIfPresent(texts, element.typeName());
      addIfPresent(texts, element.objectType());
    }
    return texts;
  }

  private static void addIfPresent(List<String> texts, @Nullable String text) {
    if (text != null) {
      texts.add(text);
    }
  }
}
