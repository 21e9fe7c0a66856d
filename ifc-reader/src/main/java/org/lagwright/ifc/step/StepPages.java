package org.lagwright.ifc.step;

import org.jspecify.annotations.Nullable;

/**
 * Records as bytes in memory. Records that are asked for one after the other mostly lie close
 * together, so the file is copied page by page, and the pages used last are kept. Safe for several
 * threads: a page never changes, and one that is lost to another thread is only copied again.
 */
final class StepPages {

  private static final int SHIFT = 13;

  /** From the start of one page to the next, bytes. */
  private static final int PAGE = 1 << SHIFT;

  /** How far each page reaches into the next, so that most records lie in one. */
  private static final int OVERLAP = 1 << 9;

  private static final int KEPT = 1 << 9;

  private record Page(long number, byte[] bytes) {}

  private final StepBytes file;
  private final @Nullable Page[] kept = new Page[KEPT];

  StepPages(StepBytes file) {
    this.file = file;
  }

  /** Where a record lies in a page. */
  static int inPage(long offset) {
    return (int) (offset & (PAGE - 1));
  }

  /** The page that a record starts in; it may end beyond. */
  byte[] page(long offset) {
    long number = offset >>> SHIFT;
    int slot = (int) number & (KEPT - 1);
    Page page = kept[slot];
    if (page == null || page.number != number) {
      page = new Page(number, file.piece(number << SHIFT, PAGE + OVERLAP));
      kept[slot] = page;
    }
    return page.bytes;
  }
}
