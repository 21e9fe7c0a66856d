package org.lagwright.ifc.extract;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.lagwright.ifc.extract.draft.Assembly;
import org.lagwright.ifc.extract.draft.Draft;
import org.lagwright.ifc.extract.draft.Drawn;
import org.lagwright.ifc.extract.draft.Figures;
import org.lagwright.ifc.extract.graph.ReadEnds;
import org.lagwright.ifc.extract.insulation.CoveringFiles;
import org.lagwright.ifc.extract.insulation.Coverings;
import org.lagwright.ifc.extract.insulation.InsulationChoice;
import org.lagwright.ifc.extract.insulation.LooseCovering;
import org.lagwright.ifc.extract.measure.Placeholders;
import org.lagwright.ifc.extract.measure.SeenValues;
import org.lagwright.ifc.extract.property.OpenedFile;
import org.lagwright.ifc.geometry.shape.Shape;
import org.lagwright.ifc.model.ExistingInsulation;
import org.lagwright.ifc.model.Kind;
import org.lagwright.ifc.model.MepElement;
import org.lagwright.ifc.model.MepModel;
import org.lagwright.ifc.model.OpenEnd;
import org.lagwright.ifc.model.Origin;
import org.lagwright.ifc.schema.IfcRecord;

/**
 * Works out single elements of a file once more, after all of it was read: few are joined to those
 * of another file, and what they were worked out from would take much memory until then.
 */
public final class Remeasurer implements Origin {

  private final OpenedFile opened;
  private final ReadOptions options;
  private final Placeholders placeholders;
  private final List<LooseCovering> loose;
  private final List<Assembly> assemblies;
  private @Nullable Reading reading;

  /** Made when the first element is asked for. */
  private record Reading(ElementReaders readers, Measurers measurers) {}

  /**
   * @param loose coverings that may lie around elements of other files
   * @param assemblies elements of parts, which other files may hold too
   */
  Remeasurer(
      OpenedFile opened,
      ReadOptions options,
      Placeholders placeholders,
      List<LooseCovering> loose,
      List<Assembly> assemblies) {
    this.opened = opened;
    this.options = options;
    this.placeholders = placeholders;
    this.loose = loose;
    this.assemblies = assemblies;
  }

  private Reading reading() {
    Reading now = reading;
    if (now == null) {
      ElementReaders readers = new ElementReaders(opened, false);
      now = new Reading(readers, new Measurers(placeholders, readers, opened));
      reading = now;
    }
    return now;
  }

  /** The GlobalId of a record, empty if it has none. */
  public String globalId(long step) {
    IfcRecord record = opened.file().find(step);
    String globalId = record == null ? null : record.text("GlobalId");
    return globalId == null ? "" : globalId;
  }

  /** Values that stand in too many places of this file to be measured. */
  public Placeholders placeholders() {
    return placeholders;
  }

  /**
   * All of the file once more.
   *
   * @param seenInOthers what was seen in other files of the same exporter
   */
  public MepModel again(List<SeenValues> seenInOthers) {
    return ModelExtractor.again(opened.file(), opened.source(), options, seenInOthers);
  }

  /** What may lie around elements of other files. */
  public List<LooseCovering> loose() {
    return loose;
  }

  /** Elements of parts, which other files may hold too. */
  public List<Assembly> assemblies() {
    return assemblies;
  }

  /** The coverings of this file. */
  public Coverings coverings() {
    return reading().readers.coverings;
  }

  /** Chooses the insulation of elements of this file. */
  public InsulationChoice choice(CoveringFiles files) {
    return reading().readers.choice(files);
  }

  /** What its elements are measured with. */
  public Measurers measurers() {
    return reading().measurers;
  }

  /**
   * An element with the joints that it has by now. Straight pieces have their size; of all else
   * nothing is decided yet.
   *
   * @return null if the file has no such record any more
   */
  public @Nullable Draft draft(MepElement element) {
    IfcRecord record = opened.file().find(element.key().step());
    if (record == null) {
      return null;
    }
    Reading now = reading();
    Draft draft =
        now.readers.drafts.read(
            record, now.readers.ports.again(element.ports()), new ArrayList<>());
    boolean settled = draft.kind() == null || element.kind() == Kind.OTHER;
    draft.setKind(settled ? element.kind() : draft.kind());
    draft.join(element.ports());
    if (draft.mayLieOtherwise()) {
      lieAs(element, draft);
    }
    if (draft.isSegment()) {
      now.measurers.segments().measure(draft);
      draft.change().setSection(element.section());
    }
    draft.forgetFindings();
    return draft;
  }

  /**
   * An element with all that was decided of it, as it is asked for its insulation.
   *
   * @param choice chooses its insulation
   * @return null if the file has no such record any more
   */
  public @Nullable Draft decided(MepElement element, InsulationChoice choice) {
    Draft draft = draft(element);
    if (draft != null) {
      settle(draft, element);
      if (!draft.isSegment()) {
        draft.change().setDrawnInsulation(drawnInto(element, choice.stated().on(draft)));
      }
      draft.foldMeasured();
    }
    return draft;
  }

  /** Gives an element that was read once more what had been decided of it. */
  public static void settle(Draft draft, MepElement element) {
    draft.setKind(element.kind());
    draft.setForm(element.form());
    Figures figures = draft.change();
    figures.setSection(element.section());
    figures.setEnds(element.endSections());
    figures.setLengthM(element.lengthM());
  }

  /** What no covering and no statement shows was found in the body. */
  private static @Nullable ExistingInsulation drawnInto(
      MepElement element, Optional<ExistingInsulation> stated) {
    ExistingInsulation shown = element.existingInsulation();
    if (shown == null || !shown.coverings().isEmpty()) {
      return null;
    }
    return stated.isPresent() && stated.get().equals(shown) ? null : shown;
  }

  /**
   * A covering of this file.
   *
   * @param element as it was read, null if it is but a part of another one
   * @return null if the file has no such record any more
   */
  public @Nullable Draft covering(long step, @Nullable MepElement element) {
    IfcRecord record = opened.file().find(step);
    if (record == null || element == null) {
      return reading().readers.drafts.insulationPart(step);
    }
    Draft draft = reading().readers.drafts.read(record, List.of(), new ArrayList<>());
    draft.setKind(element.kind());
    return draft;
  }

  /** A box that its neighbours turned stays turned. */
  private static void lieAs(MepElement element, Draft box) {
    for (Shape other : box.shape().otherReadings()) {
      if (!endsWhere(element, box.shape()) && endsWhere(element, other)) {
        box.measured(other);
      }
    }
  }

  private static boolean endsWhere(MepElement element, Shape reading) {
    for (OpenEnd end : ReadEnds.of(element)) {
      if (!Drawn.isAnEnd(reading.ends(), end.positionM())) {
        return false;
      }
    }
    return true;
  }
}
