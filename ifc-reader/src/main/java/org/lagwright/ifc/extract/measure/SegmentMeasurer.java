package org.lagwright.ifc.extract.measure;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.lagwright.ifc.extract.draft.Draft;
import org.lagwright.ifc.extract.draft.KindReader;
import org.lagwright.ifc.extract.text.InWords;
import org.lagwright.ifc.extract.text.Tolerances;
import org.lagwright.ifc.geometry.Coaxiality;
import org.lagwright.ifc.geometry.ShapeMeasurer;
import org.lagwright.ifc.geometry.frame.ShapeEnd;
import org.lagwright.ifc.geometry.shape.Shape;
import org.lagwright.ifc.model.Effect;
import org.lagwright.ifc.model.Evidence;
import org.lagwright.ifc.model.How;
import org.lagwright.ifc.model.Kind;
import org.lagwright.ifc.model.Measured;
import org.lagwright.ifc.model.Point;
import org.lagwright.ifc.model.Port;
import org.lagwright.ifc.model.ReadFinding;
import org.lagwright.ifc.model.Section;

/**
 * Size and length of straight pipes and ducts: collects what geometry, ports, properties,
 * quantities and texts say, chooses, and notes where they differ.
 */
public final class SegmentMeasurer {

  private static final String ACROSS = "straight across a curved piece";

  private final NominalSizes nominals;
  private final SegmentSections sections;
  private final StatedLengths lengths;

  /** Measures with these. */
  public SegmentMeasurer(
      Placeholders placeholders,
      NominalSizes nominals,
      SegmentSections sections,
      double lengthUnitM) {
    this.nominals = nominals;
    this.sections = sections;
    this.lengths = new StatedLengths(placeholders, lengthUnitM);
  }

  /** Sets section and length, and notes what is doubtful. */
  public void measure(Draft draft) {
    List<Nominal> stated = nominals.of(draft);
    draft.change().setSection(sections.choose(draft, stated));
    nominal(draft, stated);
    length(draft);
    note(draft);
  }

  /** A general segment that nothing named is told apart by its shape. */
  public void settleKind(Draft draft) {
    if (draft.kind() == null) {
      Measured<Section> section =
          draft.section() != null ? draft.section() : draft.shape().section();
      boolean round = section == null || section.value() instanceof Section.Round;
      Kind kind = KindReader.byShape(draft.generalSegment(), round);
      draft.setKind(kind);
      draft.note(
          ReadFinding.KIND_ASSUMED,
          Effect.ASSUMED,
          KindReader.inWords(kind),
          section == null
              ? "no shape could be measured"
              : "its section is " + (round ? "round" : "not round"));
    }
  }

  /** The nominal size as the model gives it, and the outside diameter by table if none is known. */
  private static void nominal(Draft draft, List<Nominal> stated) {
    if (draft.kind() == Kind.DUCT_SEGMENT) {
      return;
    }
    Measured<Section> section = draft.section();
    if (section != null) {
      Nominal meant = Nominal.meant(stated, section.value());
      draft.change().setNominalSize(meant == null ? null : Nominal.named(meant.dn()));
    } else if (!stated.isEmpty()) {
      Nominal first = stated.get(0);
      draft.change().setNominalSize(Nominal.named(first.dn()));
      draft.change().setSection(byTable(draft, first, stated));
    }
  }

  private static @Nullable Measured<Section> byTable(
      Draft draft, Nominal nominal, List<Nominal> stated) {
    Section section = nominal.called().orElse(null);
    if (section == null) {
      return null;
    }
    nominal.noteFrom(draft);
    Options<Section> options = new Options.Sections();
    options.add(section, nominal.how(), nominal.evidence());
    for (Section also : nominal.alsoCalled()) {
      options.rule(also, nominal.how(), nominal.evidence(), StatedSections.NOMINAL);
    }
    for (Nominal other : stated) {
      if (other.contradicts(section, nominal)) {
        options.add(other.section(), other.how(), other.evidence());
      } else if (other != nominal) {
        options.rule(section, other.how(), other.evidence(), StatedSections.NOMINAL);
      }
    }
    return options.choose();
  }

  private void length(Draft draft) {
    Options<Double> options = new Options.Lengths();
    Measured<Double> drawn = draft.shape().lengthM();
    boolean drawnFirst = drawn != null && (drawn.how() == How.SOLID || winds(draft.shape(), drawn));
    if (drawnFirst) {
      options.addAll(drawn);
    }
    portDistance(draft, options);
    if (!drawnFirst) {
      options.addAll(drawn);
    }
    lengths.addTo(options, draft);
    draft.change().setLengthM(options.choose());
  }

  /** True for a body that is longer than its ends are apart, which do not lie on one line. */
  private static boolean winds(Shape drawn, Measured<Double> lengthM) {
    return drawn.ends().size() == 2
        && !Coaxiality.isStraight(drawn)
        && lengthM.value() > drawn.ends().get(0).centreM().distanceM(drawn.ends().get(1).centreM());
  }

  private static void portDistance(Draft draft, Options<Double> options) {
    Port first = null;
    List<Point> placesM = new ArrayList<>();
    for (Port port : draft.ports()) {
      Point atM = port.positionM();
      if (atM != null) {
        first = first == null ? port : first;
        placesM.add(atM);
      }
    }
    double farthestM = new FarthestPoints(placesM).apartM();
    if (first != null && ShapeMeasurer.isPossible(farthestM)) {
      Evidence evidence =
          new Evidence(first.step(), "distance of ports", InWords.metres(farthestM) + " m");
      if (isStraightAcross(draft.shape(), farthestM, options.leading())) {
        options.rule(farthestM, How.PORTS, evidence, ACROSS);
      } else {
        options.add(farthestM, How.PORTS, evidence);
      }
    }
  }

  /**
   * True if a distance is that of the drawn ends, and the way between them that was drawn is
   * longer: a curved piece, such as a flexible duct.
   */
  private static boolean isStraightAcross(Shape drawn, double apartM, @Nullable Double alongM) {
    List<ShapeEnd> ends = drawn.ends();
    return alongM != null
        && alongM > apartM
        && ends.size() == 2
        && !Coaxiality.isStraight(drawn)
        && Tolerances.sameLength(ends.get(0).centreM().distanceM(ends.get(1).centreM()), apartM);
  }

  /** A piece of which nothing gives the size has that of its ports or neighbours, if they agree. */
  public void takeOver(Draft draft, Neighbours neighbours) {
    if (draft.section() != null) {
      return;
    }
    draft.open();
    List<Neighbours.Found> met = new ArrayList<>();
    List<Neighbours.Found> stated = new ArrayList<>();
    for (Neighbours.Joint joint : neighbours.jointsOf(draft)) {
      addKnown(joint.met(), met);
      addKnown(joint.stated(), stated);
    }
    takeAgreed(draft, met, How.NEIGHBOUR);
    if (draft.section() == null) {
      takeAgreed(draft, stated, How.PROPERTY);
      WeakSources.note(draft, draft.section(), null);
    }
    draft.fold();
  }

  private static void addKnown(Neighbours.@Nullable Found size, List<Neighbours.Found> to) {
    if (size != null) {
      to.add(size);
    }
  }

  private static void takeAgreed(Draft draft, List<Neighbours.Found> sizes, How how) {
    for (Neighbours.Found size : sizes) {
      if (!Tolerances.sameSection(size.section(), sizes.get(0).section())) {
        return;
      }
    }
    if (!sizes.isEmpty()) {
      Neighbours.Found first = sizes.get(0);
      SizeDoubts.noteBodyNextDoor(draft, first);
      draft
          .change()
          .setSection(Measured.of(Tolerances.withoutNoise(first.section()), how, first.evidence()));
    }
  }

  private static void note(Draft draft) {
    Conflicts.noteSizes(draft);
    Conflicts.noteLength(draft, draft.lengthM());
    WeakSources.note(draft, draft.section(), draft.lengthM());
    WeakSources.noteBody(draft);
  }
}
