package org.lagwright.takeoff.readiness;

import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.TreeMap;
import org.lagwright.ifc.model.MepElement;
import org.lagwright.ifc.model.MepModel;
import org.lagwright.ifc.model.Property;
import org.lagwright.takeoff.readiness.Readiness.ModelReadiness;
import org.lagwright.takeoff.readiness.ReadinessRow.Group;

/** Counts, file by file, how requirements are met. */
final class ReadinessBook {

  private static final Comparator<Group> BY_GROUP =
      Comparator.comparing(Group::exporter)
          .thenComparing(Group::ifcClass)
          .thenComparing(Group::typeName);

  private final RequirementPack pack;
  private final Map<String, Map<Group, ReadinessRow>> rows = new LinkedHashMap<>();

  ReadinessBook(RequirementPack pack) {
    this.pack = pack;
    pack.requirements().forEach(r -> rows.put(r.id(), new TreeMap<>(BY_GROUP)));
  }

  /** Counts a file and its elements. */
  ModelReadiness add(MepModel model, Facts facts) {
    boolean fileIsReady = true;
    for (Requirement requirement : pack.requirements()) {
      if (requirement.isOfFile()) {
        boolean known = facts.holds(requirement.known());
        Group group = new Group(model.file().exporter(), "IfcProject", "");
        count(requirement, group, known ? Grade.AS_ASKED : Grade.MISSING, model.file().name());
        fileIsReady &= known || requirement.need() != Need.NEEDED;
      }
    }
    int elements = 0;
    int ready = 0;
    for (MepElement element : model.elements()) {
      if (element.kind().isLagged() && element.repeats() == null) {
        elements++;
        ready += add(element, model, facts) && fileIsReady ? 1 : 0;
      }
    }
    return new ModelReadiness(model.file(), elements, ready);
  }

  /** True if it misses nothing that is needed. */
  private boolean add(MepElement element, MepModel model, Facts facts) {
    // they may be read from the file each time
    List<Property> properties = List.copyOf(element.properties());
    String type = Objects.requireNonNullElse(element.typeName(), "");
    Group group = new Group(model.file().exporter(), element.ifcClass(), type);
    boolean ready = true;
    for (Requirement requirement : pack.requirements()) {
      if (requirement.concerns(element.kind())) {
        Grade grade = grade(requirement, element, properties, model.file().schema(), facts);
        count(requirement, group, grade, element.globalId());
        ready &= grade != Grade.MISSING || requirement.need() != Need.NEEDED;
      }
    }
    return ready;
  }

  private static Grade grade(
      Requirement requirement,
      MepElement element,
      List<Property> properties,
      String schema,
      Facts facts) {
    if (!facts.holds(requirement.known(), element)) {
      return Grade.MISSING;
    }
    boolean stated =
        requirement.asked().isEmpty()
            ? requirement.stated() == null || facts.holds(requirement.stated(), element)
            : requirement.asked().stream()
                .filter(asked -> asked.holdsIn(schema))
                .filter(asked -> asked.kinds().contains(element.kind().label()))
                .allMatch(asked -> Stated.by(asked, element, properties));
    return stated ? Grade.AS_ASKED : Grade.WORKED_OUT;
  }

  private void count(Requirement requirement, Group group, Grade grade, String example) {
    boolean missing = grade == Grade.MISSING;
    ReadinessRow one =
        new ReadinessRow(
            requirement,
            group,
            grade == Grade.AS_ASKED ? 1 : 0,
            grade == Grade.WORKED_OUT ? 1 : 0,
            missing ? 1 : 0,
            missing ? List.of(example) : List.of());
    Objects.requireNonNull(rows.get(requirement.id())).merge(group, one, ReadinessRow::plus);
  }

  /** By requirement, then by group. */
  List<ReadinessRow> rows() {
    return rows.values().stream().flatMap(r -> r.values().stream()).toList();
  }
}
