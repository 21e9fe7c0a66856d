package org.lagwright.ifc.extract.draft;

import java.util.Arrays;
import java.util.Objects;
import org.jspecify.annotations.Nullable;
import org.lagwright.ifc.model.ElementKey;
import org.lagwright.ifc.model.ExistingInsulation;
import org.lagwright.ifc.model.Measured;
import org.lagwright.ifc.model.Section;
import org.lagwright.ifc.packed.PackedReader;
import org.lagwright.ifc.packed.PackedWriter;
import org.lagwright.ifc.packed.Packing;
import org.lagwright.ifc.packed.Vocabulary;

/**
 * What is known of a {@link Draft}: open to one thread that works on it, or folded into few bytes,
 * of which what is asked is made anew.
 */
final class DraftParts {

  private static final byte[] NO_BYTES = {};

  /** Of an element of which nothing is decided yet. */
  private static final byte[] NO_FIGURES = new byte[9];

  private final long step;
  private final Vocabulary vocabulary;

  /** False if it stays open all the time, as the model is small. */
  private final boolean folds;

  private @Nullable Open open;

  /** What was drawn, and behind it what is worded; others look at it while it is replaced. */
  private volatile byte[] readBytes = NO_BYTES;

  private byte[] figureBytes = NO_FIGURES;

  /** All that is known, while it is open. */
  private record Open(Worded worded, Drawn drawn, Figures figures) {}

  /**
   * Open parts of which no figure is decided.
   *
   * @param step instance number of the record of the element
   */
  DraftParts(long step, Worded worded, Drawn drawn, Vocabulary vocabulary, boolean folds) {
    this.step = step;
    this.open = new Open(worded, drawn, new Figures());
    this.vocabulary = vocabulary;
    this.folds = folds;
  }

  /** Names the element among those of all files. */
  ElementKey key() {
    return vocabulary.key(step);
  }

  /** Instance number of its record. */
  long step() {
    return step;
  }

  /** Makes everything from its bytes. */
  void open() {
    if (open == null) {
      PackedReader from = reader(readBytes);
      Drawn drawn = DraftPacking.DRAWN.read(from);
      open = new Open(DraftPacking.WORDED.read(from), drawn, figures());
    }
  }

  /** Lets go of what {@link #open} made; for who changed nothing. */
  void close() {
    if (folds) {
      open = null;
    }
  }

  /** Keeps but the bytes. */
  void fold() {
    if (folds) {
      Open all = all();
      if (readBytes.length == 0) {
        keep(all.drawn, all.worded);
      }
      fold(all.figures);
    }
  }

  /** Folds it and lets go of what nobody asks for any more once the figures are decided. */
  void foldMeasured() {
    Open all = all();
    Open left = new Open(all.worded.afterMeasuring(), all.drawn.afterMeasuring(), all.figures);
    if (folds) {
      keep(left.drawn, left.worded);
      fold(left.figures);
    } else {
      open = left;
    }
  }

  /** Lets go of everything. */
  void finish() {
    open = null;
    readBytes = NO_BYTES;
    figureBytes = NO_FIGURES;
  }

  Worded worded() {
    Open all = open;
    if (all != null) {
      return all.worded;
    }
    PackedReader from = reader(readBytes);
    DraftPacking.DRAWN.read(from);
    return DraftPacking.WORDED.read(from);
  }

  Drawn drawn() {
    Open all = open;
    return all != null ? all.drawn : DraftPacking.DRAWN.read(reader(readBytes));
  }

  /** Replaces what was drawn. */
  void redraw(Drawn now) {
    Open all = open;
    if (folds) {
      keep(now, worded());
    }
    open = all == null ? null : new Open(all.worded, now, all.figures);
  }

  /** What is decided; to be set by {@link #change}. */
  Figures figures() {
    Open all = open;
    return all != null ? all.figures : DraftPacking.FIGURES.read(reader(figureBytes));
  }

  /** The section alone, which is asked for most, without making the other figures. */
  @Nullable Measured<Section> section() {
    Open all = open;
    return all != null ? all.figures.section() : DraftPacking.sectionOf(reader(figureBytes));
  }

  /** The insulation in the body alone, without making the other figures. */
  @Nullable ExistingInsulation drawnInsulation() {
    Open all = open;
    return all != null
        ? all.figures.drawnInsulation()
        : DraftPacking.insulationOf(reader(figureBytes));
  }

  /**
   * The figures, to be set.
   *
   * @throws NullPointerException if the element is folded
   */
  Figures change() {
    return all().figures;
  }

  private Open all() {
    return Objects.requireNonNull(open, "element is folded");
  }

  private void fold(Figures figures) {
    byte[] bytes = bytes(DraftPacking.FIGURES, figures);
    figureBytes = Arrays.equals(bytes, NO_FIGURES) ? NO_FIGURES : bytes;
    open = null;
  }

  private void keep(Drawn nowDrawn, Worded nowWorded) {
    PackedWriter to = new PackedWriter(vocabulary, step);
    DraftPacking.DRAWN.write(nowDrawn, to);
    DraftPacking.WORDED.write(nowWorded, to);
    readBytes = to.bytes();
  }

  private <T> byte[] bytes(Packing<T> packing, T part) {
    PackedWriter to = new PackedWriter(vocabulary, step);
    packing.write(part, to);
    return to.bytes();
  }

  private PackedReader reader(byte[] bytes) {
    return new PackedReader(vocabulary, step, bytes);
  }
}
