package org.lagwright.ifc.step;

import java.util.Arrays;
import org.jspecify.annotations.Nullable;

/**
 * Records as bytes in memory, for one thread. A small file is one page. Of others, records that are
 * asked for one after the other mostly lie close together, so the file is copied page by page, and
 * the pages used last are kept. The copies are made into the same arrays again and again, as the
 * garbage collector would else have to move them; so nobody may hold on to a page.
 */
final class StepPages {

  private static final int SHIFT = 13;

  /** From the start of one page to the next, bytes. */
  private static final int PAGE = 1 << SHIFT;

  /** How far each page reaches into the next, so that most records lie in one. */
  private static final int OVERLAP = 1 << 9;

  /** Pages kept: what lies close to the elements that a thread works on. */
  private static final int KEPT = 1 << 6;

  private final StepBytes file;
  private final byte @Nullable [] whole;
  private final long[] numbers;
  private final byte[] @Nullable [] kept;

  StepPages(StepBytes file) {
    this.file = file;
    this.whole = file.whole();
    this.numbers = new long[whole == null ? KEPT : 0];
    this.kept = new byte[numbers.length][];
  }

  /** True if pages are written over; a small file stays. */
  boolean change() {
    return whole == null;
  }

  /** Where a record lies in its page. */
  int inPage(long offset) {
    return (int) (whole == null ? offset & (PAGE - 1) : offset);
  }

  /**
   * The page that a record starts in; it may end beyond. Where pages {@link #change}, only good
   * until the next one is asked for.
   */
  byte[] page(long offset) {
    if (whole != null) {
      return whole;
    }
    long number = offset >>> SHIFT;
    int slot = (int) number & (KEPT - 1);
    byte[] page = kept[slot];
    return page != null && numbers[slot] == number ? page : copied(number, slot);
  }

  private byte[] copied(long number, int slot) {
    byte[] before = kept[slot];
    byte[] page = before == null ? new byte[PAGE + OVERLAP] : before;
    int length = file.read(number << SHIFT, page);
    Arrays.fill(page, length, page.length, (byte) 0);
    numbers[slot] = number;
    kept[slot] = page;
    return page;
  }
}
