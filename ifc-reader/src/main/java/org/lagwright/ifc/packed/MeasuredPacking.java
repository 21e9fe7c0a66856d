package org.lagwright.ifc.packed;

import java.util.List;
import org.lagwright.ifc.model.Candidate;
import org.lagwright.ifc.model.How;
import org.lagwright.ifc.model.Measured;
import org.lagwright.ifc.model.Section;

/** Values with their origin and what lost against them. */
public final class MeasuredPacking<T> implements Packing<Measured<T>> {

  private static final How[] WAYS = How.values();

  /** Figures that were measured. */
  public static final Packing<Measured<Double>> FIGURE = new MeasuredPacking<>(Packings.FIGURE);

  /** Sections that were measured. */
  public static final Packing<Measured<Section>> SECTION = new MeasuredPacking<>(Packings.SECTION);

  /** Sections of all ends of an element. */
  public static final Packing<Measured<List<Section>>> SECTIONS =
      new MeasuredPacking<>(Packings.SECTION.list());

  private final Packing<T> values;
  private final Packing<List<Candidate<T>>> candidates;

  private MeasuredPacking(Packing<T> values) {
    this.values = values;
    this.candidates = new CandidatePacking().list();
  }

  @Override
  public void write(Measured<T> measured, PackedWriter to) {
    values.write(measured.value(), to);
    to.count(measured.how().ordinal());
    Packings.EVIDENCE.write(measured.evidence(), to);
    candidates.write(measured.lost(), to);
  }

  @Override
  public Measured<T> read(PackedReader from) {
    return new Measured<>(
        values.read(from), way(from), Packings.EVIDENCE.read(from), candidates.read(from));
  }

  private static How way(PackedReader from) {
    return WAYS[(int) from.count()];
  }

  private final class CandidatePacking implements Packing<Candidate<T>> {

    @Override
    public void write(Candidate<T> candidate, PackedWriter to) {
      values.write(candidate.value(), to);
      to.count(candidate.how().ordinal());
      Packings.EVIDENCE.write(candidate.evidence(), to);
      to.word(candidate.why());
    }

    @Override
    public Candidate<T> read(PackedReader from) {
      return new Candidate<>(
          values.read(from), way(from), Packings.EVIDENCE.read(from), Packings.WORD.read(from));
    }
  }
}
