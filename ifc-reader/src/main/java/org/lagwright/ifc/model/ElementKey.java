package org.lagwright.ifc.model;

import org.jspecify.annotations.Nullable;

/**
 * Names one element among all models read in one run. GlobalIds cannot: real files repeat them.
 *
 * @param model position of the file on the command line, from 0
 * @param step instance number in that file
 */
public record ElementKey(int model, long step) implements Comparable<ElementKey> {

  /** File by file, then by instance number. */
  @Override
  public int compareTo(ElementKey other) {
    int byModel = Integer.compare(model, other.model);
    return byModel != 0 ? byModel : Long.compare(step, other.step);
  }

  /** Spelled out: the compiler's own is put together when first asked, which takes long. */
  @Override
  public boolean equals(@Nullable Object other) {
    return other instanceof ElementKey o && model == o.model && step == o.step;
  }

  @Override
  public int hashCode() {
    return model * 31 + Long.hashCode(step);
  }
}
