package org.lagwright.ifc.packed;

import org.lagwright.ifc.model.ElementKey;
import org.lagwright.ifc.model.MepSystem;
import org.lagwright.ifc.model.Place;

/** What the elements of one model have in common: words, systems, places. */
public final class Vocabulary {

  /** A model in which more texts are called words than this has different ones everywhere. */
  private static final int MOST_WORDS = 1 << 14;

  private static final int MOST_PLACES = 1 << 12;
  private static final int MOST_SYSTEMS = 1 << 18;

  private final int model;

  /**
   * @param model position of the file among all read
   */
  public Vocabulary(int model) {
    this.model = model;
  }

  /** The name of an element of this model. */
  public ElementKey key(long step) {
    return new ElementKey(model, step);
  }

  final Shared<String> words = new Shared<>(MOST_WORDS);
  final Shared<MepSystem> systems = new Shared<>(MOST_SYSTEMS);

  /** Without the position, which each element has of its own. */
  final Shared<Place> places = new Shared<>(MOST_PLACES);
}
