package org.lagwright.testmodels.large;

import java.util.ArrayList;
import java.util.List;
import org.lagwright.testmodels.ifc.PropertyWriter;
import org.lagwright.testmodels.step.Ref;
import org.lagwright.testmodels.step.Value;

/**
 * Seven property sets with 35 values for each element, as authoring programs write them by the
 * thousand: a few that tell its size, most that tell nothing to a takeoff. Names and values are
 * invented.
 */
final class PartProperties {

  /** How many properties {@link #write} writes. */
  static final int COUNT = 35;

  private final PropertyWriter properties;

  PartProperties(PropertyWriter properties) {
    this.properties = properties;
  }

  /** The sets of one element. */
  List<Ref> write(Run run, Part part) {
    String key = "part " + part.mark() + " ";
    List<Ref> sets = new ArrayList<>();
    sets.add(properties.set(key + 1, "Placement", placement(run)));
    sets.add(properties.set(key + 2, "Drawn sizes", sizes(part)));
    sets.add(properties.set(key + 3, "Hydraulics", hydraulics(part)));
    sets.add(properties.set(key + 4, "Identity", identity(run, part)));
    sets.add(properties.set(key + 5, "Schedule", schedule(part)));
    sets.add(properties.set(key + 6, "Procurement", procurement(part)));
    sets.add(properties.set(key + 7, "Approval", approval(part)));
    return sets;
  }

  private List<Ref> placement(Run run) {
    return List.of(
        properties.label("Reference level", "Level " + run.storey()),
        properties.real("Offset from level", 2800),
        properties.real("Start offset", 2800),
        properties.real("End offset", 2800),
        properties.label("Justification", "Middle of the section, insulation not regarded"));
  }

  private List<Ref> sizes(Part part) {
    boolean straight = part.form().equals("straight");
    double arc = Math.round(part.radiusMm() * Math.PI / 2 * 10) / 10.0;
    double alongMm = part.form().equals("bend") ? arc : part.lengthMm();
    return List.of(
        properties.length(straight ? "Length" : "Laying length", alongMm),
        properties.label("Size", part.from().words()),
        properties.real("Surface", Math.round(alongMm * part.from().largest()) / 1000.0),
        properties.real("Contents", Math.round(alongMm * part.mark() % 100_000) / 100.0),
        properties.truth("Sloped", false));
  }

  private List<Ref> hydraulics(Part part) {
    return List.of(
        properties.real("Volume flow", part.mark() % 977 / 10.0),
        properties.real("Velocity", part.mark() % 31 / 10.0),
        properties.real("Friction", part.mark() % 211 / 100.0),
        properties.real("Loss coefficient", 0.35),
        properties.real("Reynolds number", 20_000 + part.mark() % 50_000),
        properties.real("Roughness", 0.045));
  }

  private List<Ref> identity(Run run, Part part) {
    return List.of(
        properties.single("Mark", Value.typed("IfcInteger", part.mark())),
        properties.label("Line number", "L-" + (run.index() + 1)),
        properties.label(
            "Comment",
            "Höhe örtlich prüfen – Träger frei halten, Dämmung nach Liste, Aufhängung bauseits, siehe Detail "
                + part.mark() % 60),
        properties.label("Keynote", "Services, piping and air ducts, note " + part.mark() % 90),
        properties.label(
            "Part number",
            "Catalogue of parts, section " + part.mark() % 40 + ", item " + part.mark() % 5000));
  }

  private List<Ref> schedule(Part part) {
    return List.of(
        properties.label("Phase created", "New construction"),
        properties.label("Phase demolished", "None"),
        properties.real("Week", 1 + part.mark() % 52),
        properties.label("Workset", "Services"));
  }

  private List<Ref> procurement(Part part) {
    return List.of(
        properties.label("Package", "Mechanical services, work package " + part.mark() % 12),
        properties.real("Mass", Math.round(part.lengthMm() / 10) / 10.0),
        properties.real("Unit cost", 0),
        properties.truth("Prefabricated", part.mark() % 2 == 0),
        properties.label("Delivery", "Yard " + part.mark() % 5));
  }

  private List<Ref> approval(Part part) {
    return List.of(
        properties.label("Drawn by", "Building services office, coordination group"),
        properties.label("Checked", part.mark() % 3 == 0 ? "yes" : "no"),
        properties.label("Revision", "C" + part.mark() % 4),
        properties.label(
            "Status", "Issued for construction after coordination of services and structure"),
        properties.label("Sheet", "A-" + part.mark() % 400));
  }
}
