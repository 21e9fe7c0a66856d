package org.lagwright.ifc.extract;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import org.lagwright.ifc.extract.draft.Draft;
import org.lagwright.ifc.extract.draft.KindReader;
import org.lagwright.ifc.extract.property.PropertyReader;
import org.lagwright.ifc.model.MepElement;
import org.lagwright.ifc.model.MepSystem;
import org.lagwright.ifc.packed.PackedElements;
import org.lagwright.ifc.packed.Vocabulary;
import org.lagwright.ifc.threads.Workers;

/** Makes the elements of the model, some at a time. */
final class Making implements Workers.Work<Making.Made> {

  private final List<Draft> drafts;
  private final ElementMaker maker;
  private final PropertyReader properties;

  /** Null if elements stay as they are, not packed. */
  private final @Nullable Vocabulary vocabulary;

  private final List<MepElement> elements = new ArrayList<>();
  private final List<PackedElements.Packed> packed = new ArrayList<>();
  private final Identities identities = new Identities();
  private final Set<MepSystem> systems = new LinkedHashSet<>();

  /** Some elements, and what is wanted of all; packed if the model is large. */
  record Made(
      List<MepElement> elements,
      PackedElements.@Nullable Packed packed,
      List<String> globalIds,
      Set<MepSystem> systems) {}

  /**
   * @param vocabulary of packed elements, null if they are not packed
   */
  Making(
      List<Draft> drafts,
      ElementMaker maker,
      PropertyReader properties,
      @Nullable Vocabulary vocabulary) {
    this.drafts = drafts;
    this.maker = maker;
    this.properties = properties;
    this.vocabulary = vocabulary;
  }

  List<MepElement> elements() {
    return vocabulary == null ? elements : new PackedElements(vocabulary, properties, packed);
  }

  /** The GlobalIds of all. */
  Identities identities() {
    return identities;
  }

  /** Every system that an element belongs to, in the order they turned up. */
  List<MepSystem> systems() {
    return List.copyOf(systems);
  }

  @Override
  public Made on(int from, int to) {
    List<MepElement> made = new ArrayList<>(to - from);
    PackedElements.Piece piece =
        vocabulary == null ? null : new PackedElements.Piece(vocabulary, to - from);
    List<String> globalIds = new ArrayList<>(to - from);
    Set<MepSystem> itsSystems = new LinkedHashSet<>();
    for (Draft draft : drafts.subList(from, to)) {
      draft.open();
      MepElement element = maker.element(draft);
      if (piece == null) {
        made.add(element);
      } else {
        piece.add(element, draft.propertyCount());
      }
      globalIds.add(element.globalId());
      itsSystems.addAll(element.systems());
      KindReader.noteProxy(draft);
      draft.finish();
    }
    return new Made(made, piece == null ? null : piece.packed(), globalIds, itsSystems);
  }

  @Override
  public void take(Made done) {
    elements.addAll(done.elements);
    if (done.packed != null) {
      packed.add(done.packed);
    }
    for (String globalId : done.globalIds) {
      identities.add(globalId);
    }
    systems.addAll(done.systems);
  }
}
