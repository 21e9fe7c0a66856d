package org.lagwright.report.enrich;

import java.io.IOException;
import java.io.OutputStream;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.lagwright.ifc.append.IfcAppender;
import org.lagwright.ifc.append.StepAppender;
import org.lagwright.ifc.extract.HostReader;
import org.lagwright.ifc.model.Effect;
import org.lagwright.ifc.model.Finding;
import org.lagwright.ifc.model.Kind;
import org.lagwright.ifc.schema.IfcFile;
import org.lagwright.ifc.step.StepBytes;
import org.lagwright.report.Words;
import org.lagwright.takeoff.TakenElement;
import org.lagwright.takeoff.Takeoff;
import org.lagwright.takeoff.TakeoffFinding;
import org.lagwright.takeoff.TakeoffLine;
import org.lagwright.takeoff.body.ElementBodies;
import org.lagwright.takeoff.body.Joints;

/** What goes into the enriched form of one of the models of a takeoff. */
public final class Enrichment {

  private final String origin;
  private final List<TakenElement> insulated;
  private final Map<String, TakeoffLine> lines;
  private final Set<String> coveringsThere = new HashSet<>();
  private final CoveringIds ids;
  private final Joints joints;
  private final Count count = new Count();

  /** What was written, for telling the user. */
  private static final class Count {
    private int elements;
    private int coverings;
    private int withoutBody;
    private int there;
    private int beside;
    private int offTheLines;
  }

  /**
   * @param model position of the model among those of the takeoff
   * @param version of this program, which the coverings name as their origin
   */
  public Enrichment(Takeoff takeoff, int model, String version) {
    this.origin = "Lagwright " + version;
    this.lines =
        takeoff.lines().stream().collect(Collectors.toMap(TakeoffLine::id, Function.identity()));
    this.insulated = new ArrayList<>();
    List<TakenElement> own = new ArrayList<>();
    for (TakenElement taken : takeoff.elements()) {
      if (taken.element().key().model() == model) {
        own.add(taken);
        sort(taken);
      }
    }
    this.ids = new CoveringIds(own);
    this.joints = new Joints(own);
  }

  private void sort(TakenElement taken) {
    if (taken.element().kind() == Kind.COVERING) {
      coveringsThere.add(taken.element().globalId());
    } else if (taken.lineId() != null) {
      insulated.add(taken);
    } else if (taken.element().existingInsulation() != null) {
      count.offTheLines++;
    }
  }

  /** A finding for each element whose covering has no body. */
  public static List<Finding> findings(Takeoff takeoff) {
    List<Finding> findings = new ArrayList<>();
    Joints joints = new Joints(takeoff.elements());
    for (TakenElement taken : takeoff.elements()) {
      if (taken.lineId() != null) {
        String missing = ElementBodies.of(taken, joints).missing();
        if (!missing.isEmpty()) {
          findings.add(
              Finding.about(
                  taken.element().key(),
                  TakeoffFinding.COVERING_WITHOUT_BODY,
                  Effect.NONE,
                  missing));
        }
      }
    }
    return findings;
  }

  /**
   * Writes the enriched model.
   *
   * @param bytes the model as it is
   * @param file the same, indexed
   * @throws IOException if it cannot be written
   */
  public void write(StepBytes bytes, IfcFile file, OutputStream out) throws IOException {
    StepAppender.append(bytes, file.step(), out, appender -> addTo(file, appender));
  }

  private void addTo(IfcFile file, StepAppender appender) {
    HostReader hosts = new HostReader(file);
    CoveringWriter writer =
        new CoveringWriter(new IfcAppender(file.schema(), appender), hosts, origin);
    for (TakenElement taken : insulated) {
      add(taken, writer);
    }
    writer.finish();
  }

  private void add(TakenElement taken, CoveringWriter writer) {
    ElementBodies.Made made = ElementBodies.of(taken, joints);
    List<String> its = ids.of(taken, made.layers().size());
    if (its.stream().anyMatch(coveringsThere::contains)) {
      count.there++;
      return;
    }
    TakeoffLine line = Objects.requireNonNull(lines.get(taken.lineId()), taken.lineId());
    writer.add(taken, line, made, its);
    count.elements++;
    count.coverings += its.size();
    count.withoutBody += made.missing().isEmpty() ? 0 : 1;
    count.beside += taken.element().existingInsulation() == null ? 0 : 1;
  }

  /** What was written and what was not, in lines. */
  public List<String> inWords() {
    List<String> lines = new ArrayList<>();
    lines.add(
        Words.counted(count.coverings, "covering")
            + " on "
            + Words.counted(count.elements, "element"));
    tell(lines, count.withoutBody, "of these without body, finding COVERING_WITHOUT_BODY");
    tell(lines, count.beside, "of these beside insulation that the model shows already");
    tell(lines, count.there, "elements passed over: their coverings are in the model already");
    tell(lines, count.offTheLines, "elements passed over: insulated in the model, but on no line");
    return lines;
  }

  private static void tell(List<String> lines, int many, String what) {
    if (many > 0) {
      lines.add(many + " " + what);
    }
  }
}
