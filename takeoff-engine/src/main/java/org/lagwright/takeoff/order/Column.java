package org.lagwright.takeoff.order;

/** One way to cut one stock piece: how many pieces of each size come out of it. */
interface Column {

  /** Pieces of one size, 0 or more. */
  int count(int size);
}
