package org.lagwright.ifc.packed;

import java.util.Arrays;
import java.util.List;
import java.util.Objects;
import java.util.RandomAccess;
import org.lagwright.ifc.model.ElementList;
import org.lagwright.ifc.model.MepElement;

/** Elements of one model, some hundreds of bytes each. */
public final class PackedElements extends ElementList implements RandomAccess {

  /** A run of elements that are packed one behind the other, by one thread. */
  public static final class Piece {
    private final PackedWriter to;
    private final int[] starts;
    private int count;

    /**
     * @param size how many elements will be added
     */
    public Piece(Vocabulary vocabulary, int size) {
      this.to = new PackedWriter(vocabulary, 0);
      this.starts = new int[size];
    }

    /**
     * Adds an element.
     *
     * @param propertyCount as {@link PropertySource#propertiesOf} will be told
     */
    public void add(MepElement element, int propertyCount) {
      starts[count++] = to.length();
      to.count(element.key().step());
      to.about(element.key().step());
      ElementPacking.write(element, propertyCount, to);
    }

    /** What is kept of it. */
    public Packed packed() {
      return new Packed(starts, to.bytes());
    }
  }

  /** A piece that nothing is added to any more. */
  public static final class Packed {
    private final int[] starts;
    private final byte[] bytes;

    private Packed(int[] starts, byte[] bytes) {
      this.starts = starts;
      this.bytes = bytes;
    }
  }

  private final Vocabulary vocabulary;
  private final PropertySource properties;
  private final List<Packed> pieces;
  private final int[] firsts;

  /**
   * All elements of a model.
   *
   * @param vocabulary that of all pieces
   * @param pieces in the order of the elements
   */
  public PackedElements(Vocabulary vocabulary, PropertySource properties, List<Packed> pieces) {
    this.vocabulary = vocabulary;
    this.properties = properties;
    this.pieces = List.copyOf(pieces);
    this.firsts = new int[pieces.size() + 1];
    for (int i = 0; i < pieces.size(); i++) {
      firsts[i + 1] = firsts[i] + pieces.get(i).starts.length;
    }
  }

  @Override
  public MepElement get(int index) {
    Objects.checkIndex(index, size());
    int at = Arrays.binarySearch(firsts, index);
    int number = at < 0 ? -at - 2 : at;
    Packed piece = pieces.get(number);
    PackedReader from =
        new PackedReader(vocabulary, 0, piece.bytes, piece.starts[index - firsts[number]]);
    long step = from.count();
    from.about(step);
    return ElementPacking.read(vocabulary.key(step), properties, from);
  }

  @Override
  public int size() {
    return firsts[pieces.size()];
  }
}
