package org.lagwright.ifc.model;

import java.util.AbstractList;
import java.util.Iterator;
import java.util.List;
import java.util.Spliterator;
import java.util.Spliterators;

/**
 * Properties that are read from the file when somebody looks at them, each time anew. A large model
 * has millions, of which few are ever asked for. Cannot be changed.
 */
public abstract class PropertyList extends AbstractList<Property> {

  /** Stands for a number that only reading can tell. */
  public static final int UNCOUNTED = -1;

  private final int count;

  /**
   * @param count how many there are, {@link #UNCOUNTED} if that is not known
   */
  protected PropertyList(int count) {
    this.count = count;
  }

  /** All of them, read now. */
  protected abstract List<Property> read();

  @Override
  public Property get(int index) {
    return read().get(index);
  }

  @Override
  public int size() {
    return count == UNCOUNTED ? read().size() : count;
  }

  @Override
  public Iterator<Property> iterator() {
    return read().iterator();
  }

  @Override
  public Spliterator<Property> spliterator() {
    return Spliterators.spliterator(read(), Spliterator.ORDERED);
  }
}
