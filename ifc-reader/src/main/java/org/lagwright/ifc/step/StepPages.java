package org.lagwright.ifc.step;

import org.jspecify.annotations.Nullable;
import org.lagwright.ifc.threads.Workers;

/**
 * Records as bytes in memory. A small file is one page. Of others, records that are asked for one
 * after the other mostly lie close together, so the file is copied page by page, and the pages used
 * last are kept. Safe for several threads: a page never changes, and one that is lost to another
 * thread is only copied again.
 */
final class StepPages {

  private static final int SHIFT = 13;

  /** From the start of one page to the next, bytes. */
  private static final int PAGE = 1 << SHIFT;

  /** How far each page reaches into the next, so that most records lie in one. */
  private static final int OVERLAP = 1 << 9;

  /** Pages kept for each thread: what lies close to the elements that it works on. */
  private static final int KEPT_FOR_ONE = 1 << 6;

  private record Page(long number, byte[] bytes) {}

  private final StepBytes file;
  private final byte @Nullable [] whole;
  private final @Nullable Page[] kept;

  StepPages(StepBytes file) {
    this.file = file;
    this.whole = file.whole();
    int threads = Integer.highestOneBit(2 * Workers.threadsOfThisMachine() - 1);
    this.kept = new Page[whole == null ? KEPT_FOR_ONE * threads : 0];
  }

  /** Where a record lies in its page. */
  int inPage(long offset) {
    return (int) (whole == null ? offset & (PAGE - 1) : offset);
  }

  /** The page that a record starts in; it may end beyond. */
  byte[] page(long offset) {
    if (whole != null) {
      return whole;
    }
    long number = offset >>> SHIFT;
    int slot = (int) number & (kept.length - 1);
    Page page = kept[slot];
    if (page == null || page.number != number) {
      page = new Page(number, file.piece(number << SHIFT, PAGE + OVERLAP));
      kept[slot] = page;
    }
    return page.bytes;
  }
}
