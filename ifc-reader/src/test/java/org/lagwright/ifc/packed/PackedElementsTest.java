package org.lagwright.ifc.packed;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.lagwright.ifc.model.ElementKey;
import org.lagwright.ifc.model.ElementList;
import org.lagwright.ifc.model.MepElement;
import org.lagwright.ifc.model.Property;
import org.lagwright.ifc.model.PropertyList;

class PackedElementsTest {

  private static final int MODEL = 3;

  private static final Property PROPERTY =
      new Property("set", "name", "text", null, null, false, false, 1);

  private static PropertyList counted(long step, int count) {
    return new PropertyList(count) {
      @Override
      protected List<Property> read() {
        return Collections.nCopies(Math.max(0, count), PROPERTY);
      }
    };
  }

  private static List<MepElement> elements(long seed, int count) {
    RandomElements random = new RandomElements(seed);
    List<MepElement> elements = new ArrayList<>();
    for (int i = 0; i < count; i++) {
      elements.add(random.element(new ElementKey(MODEL, 1 + 7L * i)));
    }
    return elements;
  }

  private static ElementList packed(List<MepElement> elements, int inPiece, Vocabulary vocabulary) {
    List<PackedElements.Packed> pieces = new ArrayList<>();
    for (int from = 0; from < elements.size(); from += inPiece) {
      List<MepElement> some = elements.subList(from, Math.min(from + inPiece, elements.size()));
      PackedElements.Piece piece = new PackedElements.Piece(vocabulary, some.size());
      some.forEach(element -> piece.add(element, PropertyList.UNCOUNTED));
      pieces.add(piece.packed());
    }
    return new PackedElements(vocabulary, PackedElementsTest::counted, pieces);
  }

  @Test
  void whatComesOutEqualsWhatWentIn() {
    long seed = new Random().nextLong();
    System.out.println("seed " + seed);
    List<MepElement> elements = elements(seed, 1000);
    ElementList packed = packed(elements, 64, new Vocabulary(MODEL));
    assertThat(packed).hasSameSizeAs(elements);
    for (int i = 0; i < elements.size(); i++) {
      assertThat(packed.get(i)).isEqualTo(elements.get(i));
    }
  }

  @Test
  void wordsThatFindNoRoomStandWithTheElement() {
    Vocabulary full = new Vocabulary(MODEL);
    for (int i = 0; i < 1 << 18; i++) {
      full.words.numberOf("word " + i);
    }
    List<MepElement> elements = elements(11, 100);
    assertThat(packed(elements, 7, full).equals(elements)).isTrue();
  }

  @Test
  void theNumberOfPropertiesIsKept() {
    Vocabulary vocabulary = new Vocabulary(MODEL);
    PackedElements.Piece piece = new PackedElements.Piece(vocabulary, 1);
    piece.add(elements(5, 1).get(0), 35);
    ElementList packed =
        new PackedElements(vocabulary, PackedElementsTest::counted, List.of(piece.packed()));
    assertThat(packed.get(0).properties()).hasSize(35);
  }

  @Test
  void aListOfNothingIsEmpty() {
    ElementList packed = packed(List.of(), 1, new Vocabulary(MODEL));
    assertThat(packed).isEmpty();
    assertThatThrownBy(() -> packed.get(0)).isInstanceOf(IndexOutOfBoundsException.class);
  }
}
