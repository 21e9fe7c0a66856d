package org.lagwright.ifc.model;

/** What reading a model can notice. Names are stable; the README lists them. */
public enum ReadFinding implements FindingCode {
  DRAFT_SCHEMA(
      Severity.INFO,
      "The file says schema {0}, which is a draft; it is read as {1}. Ask for an export in a"
          + " released schema."),
  SYNTAX(Severity.WARNING, "Line {0}: {1}. Have the export checked."),
  UNKNOWN_ENTITY(
      Severity.WARNING,
      "{0} is in no supported schema; {1} records of it were not looked at. Check whether they are"
          + " pipes or ducts."),
  CIRCULAR_REFERENCES(
      Severity.WARNING,
      "{0} times records lead back to themselves: {1}. Each is followed once; what hangs on them"
          + " may lack its place, system or size. Have the export checked."),
  RECORDS_MISSING(
      Severity.WARNING,
      "Bodies refer to {0} that the file does not have: {1}. They are measured without, so parts of"
          + " them may lack. Export the whole model again."),
  UNITS_ASSUMED(
      Severity.WARNING, "The file declares no unit for {0}; {1} is assumed. Check one {0}."),
  UNITS_CONFLICT(
      Severity.WARNING,
      "The file declares two units of {0}: {1} and {2}. The first is used. Check one {0}."),
  MISSING_GLOBAL_ID(Severity.WARNING, "The element has no GlobalId. Export again."),
  DUPLICATE_GLOBAL_ID(
      Severity.WARNING,
      "GlobalId {0} is used by {1} elements; each is counted. Check for copies in the model."),
  KIND_ASSUMED(Severity.WARNING, "The file does not say what this is; {0} is assumed because {1}."),
  NO_GEOMETRY(Severity.INFO, "Not measured on a body ({0}): {1}. Check it on the drawing."),
  GEOMETRY_ONLY_PARTLY_MEASURED(Severity.INFO, "{0}. Check it on the drawing."),
  LENGTH_CONFLICT(
      Severity.WARNING,
      "Length {0} m is used ({1}), but {2} m is given by {3}. Check which holds."),
  SECTION_CONFLICT(
      Severity.WARNING, "Size {0} is used ({1}), but {2} is given by {3}. Check which holds."),
  ANGLE_CONFLICT(
      Severity.WARNING,
      "Angle {0} degrees is used ({1}), but {2} degrees is given by {3}. Check which holds."),
  ANGLE_UNKNOWN(
      Severity.WARNING,
      "Neither body nor ports, properties or names tell the angle of this bend; it counts as a"
          + " piece without area. Add its angle to the model."),
  RADIUS_CONFLICT(
      Severity.WARNING,
      "Bend radius {0} m is used ({1}), but {2} m is given by {3}. Check which holds."),
  PLACEHOLDER_VALUES(
      Severity.WARNING,
      "{0} is {1} on {2} elements of different measured size: a placeholder, not used. Tell the"
          + " exporter's user."),
  SIZE_FROM_NOMINAL(
      Severity.WARNING,
      "Only the nominal size {0} is known; {1} mm outside diameter is taken from {2}. Check the"
          + " pipe material."),
  DUPLICATE_PROPERTY(
      Severity.INFO,
      "{0} stands twice in one set, with {1} and with {2}, in {3} sets; the first is used. Tell the"
          + " exporter's user."),
  INSULATION_CONFLICT(
      Severity.WARNING,
      "Insulation thickness that is taken to be there: {0}; but the model also says {1}. Check on"
          + " site."),
  FORM_CONFLICT(
      Severity.WARNING, "It counts as {0} ({1}), but {2} says {3}. Check it on the drawing."),
  PROXY_LOOKS_LIKE_SERVICE(
      Severity.INFO,
      "The name says {0}, but the class in the file, such as a proxy, stands for anything; it"
          + " is not counted. Have it modelled as pipe or duct if it is one."),
  COUNTED_BY_PARTS(
      Severity.INFO,
      "It has no body but that of {0} parts that are counted, such as {1}; it is not counted"
          + " beside them. Check that they are all of it."),
  ENDS_JOINED(
      Severity.INFO,
      "{0} joints rest on ends that touch within {1}, where the file connects nothing. Sizes and"
          + " services follow them; ask for an export with connected ports."),
  INSULATION_IN_BODY(
      Severity.INFO,
      "The body of {0} shows the insulation too: the size is {1}, the insulation {2} ({3}). Check"
          + " it on the drawing."),
  DRAWN_TWICE(
      Severity.WARNING,
      "{0} elements lie, at least for the most part, in another one of the same size, or from end to"
          + " end in one of another size, in {2} ({1}); all are counted. Delete or shorten them in the"
          + " model."),
  REPEATED_ELEMENTS(
      Severity.INFO,
      "{0} elements stand in {1} too and are counted there only: {2} by their GlobalId, {3} by body"
          + " and place, such as {4}."),
  SAME_ID_ELSEWHERE(
      Severity.WARNING,
      "{0} elements have the GlobalId of another one in {1} that is in another place or of another"
          + " size, such as {2}; each is counted. Check for copies of the file."),
  FILES_CONNECTED(
      Severity.INFO,
      "{0} joints to {1} rest on ends that touch within {2}. Sizes and services follow them."),
  FILES_FAR_APART(
      Severity.WARNING,
      "The elements lie {0} m from those of {1}. Check the origin of both exports; nothing can be"
          + " connected between them."),
  MAP_CONVERSIONS_DIFFER(
      Severity.WARNING,
      "The map conversion ({0}) differs from that of {2} ({1}). It is not applied, so nothing was"
          + " joined or found again between both files by its place. If they have one origin,"
          + " export them with one map conversion."),
  WORLD_SYSTEMS_DIFFER(
      Severity.WARNING,
      "The world coordinate system ({0}) is not that of {2} ({1}). It is not applied, so nothing was"
          + " joined or found again between both files by its place. If they have one origin, export"
          + " them with one world coordinate system."),
  PLACE_UNKNOWN(
      Severity.WARNING,
      "Its {0} is broken or of a kind that is not read, so it has no place: it is joined to nothing"
          + " and stands in no storey or space but those it is related to. Export it with local"
          + " placements and coordinates."),
  STOREY_CONFLICT(
      Severity.WARNING,
      "It is contained in storey {0} and in {1}; it counts in {0}. Check where it is built."),
  PORT_WITHOUT_OWNER(
      Severity.INFO, "{0} ports belong to no element. Connections through them are not known."),
  COVERING_WITHOUT_HOST(
      Severity.INFO,
      "This covering names no element that it covers and lies around none, or around a crowd that"
          + " is drawn at one place, so it is no proof of insulation anywhere.");

  private final Severity severity;
  private final String template;

  ReadFinding(Severity severity, String template) {
    this.severity = severity;
    this.template = template;
  }

  @Override
  public Severity severity() {
    return severity;
  }

  @Override
  public String template() {
    return template;
  }
}
