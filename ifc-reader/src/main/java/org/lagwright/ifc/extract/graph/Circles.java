package org.lagwright.ifc.extract.graph;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Collections;
import java.util.Deque;
import java.util.HashSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Queue;
import java.util.Set;
import java.util.concurrent.ConcurrentLinkedQueue;
import java.util.stream.Collectors;
import org.lagwright.ifc.extract.draft.Draft;
import org.lagwright.ifc.extract.property.Relations;
import org.lagwright.ifc.model.Effect;
import org.lagwright.ifc.model.Finding;
import org.lagwright.ifc.model.MepElement;
import org.lagwright.ifc.model.ReadFinding;
import org.lagwright.ifc.schema.IfcFile;
import org.lagwright.ifc.schema.IfcRecord;

/**
 * Names the records that lead back to themselves. Whoever follows them stops by itself; here they
 * are looked for where an element has no position, a body gave trouble, or something is part of
 * something, so that sound files cost next to nothing.
 */
public final class Circles {

  /** Records looked at in one file; a damaged one need not be gone through wholly. */
  private static final int MAX_RECORDS = 200_000;

  private static final int SHOWN = 5;

  /** Records named of one circle. */
  private static final int SHOWN_RECORDS = 6;

  private final IfcFile file;
  private final Relations relations;
  private final Queue<Long> doubtful = new ConcurrentLinkedQueue<>();
  private final Queue<Long> parts = new ConcurrentLinkedQueue<>();
  private final Set<List<Long>> found = new LinkedHashSet<>();
  private final boolean hasComplexProperties;
  private int left = MAX_RECORDS;

  /** Looks for circles in one file. */
  public Circles(IfcFile file, Relations relations) {
    this.file = file;
    this.relations = relations;
    this.hasComplexProperties = file.step().counts().containsKey("IFCCOMPLEXPROPERTY");
  }

  /** Remembers an element if a circle may be what it suffers from; safe for several threads. */
  public void suspect(IfcRecord record, MepElement element, Draft draft) {
    boolean lost = element.place().positionM() == null && record.has("ObjectPlacement");
    if (lost || !draft.shape().problems().isEmpty()) {
      doubtful.add(record.refId("ObjectPlacement"));
      doubtful.add(record.refId("Representation"));
    }
    if (hasComplexProperties) {
      for (long set : relations.propertySetsOf(record.id())) {
        doubtful.add(set);
      }
    }
    if (relations.wholeOf(record.id()) != 0) {
      parts.add(record.id());
    }
  }

  /**
   * One finding that names all circles of the file; empty if there is none.
   *
   * @param unitsAndMaterials records of these that were met again while they were followed
   */
  public Optional<Finding> finding(int model, Collection<Long> unitsAndMaterials) {
    doubtful.addAll(unitsAndMaterials);
    for (long space : file.ids("IfcSpace")) {
      IfcRecord record = file.find(space);
      doubtful.add(record == null ? 0 : record.refId("Representation"));
      parts.add(space);
    }
    walk(doubtful, Way.RECORDS);
    walk(parts, Way.WHOLE);
    walk(relations.types(), Way.TYPE);
    walk(ids("IfcGroup"), Way.GROUPS);
    walk(ids("IfcCovering"), Way.COVERINGS);
    return found.isEmpty()
        ? Optional.empty()
        : Optional.of(
            Finding.ofFile(
                model,
                ReadFinding.CIRCULAR_REFERENCES,
                Effect.NONE,
                String.valueOf(found.size()),
                inWords()));
  }

  private List<Long> ids(String entity) {
    List<Long> ids = new ArrayList<>();
    for (long id : file.ids(entity)) {
      ids.add(id);
    }
    return ids;
  }

  /** What leads from one record to the next. */
  private enum Way {
    RECORDS,
    WHOLE,
    TYPE,
    GROUPS,
    COVERINGS
  }

  private long[] next(long id, Way along) {
    return switch (along) {
      case RECORDS -> referred(id);
      case WHOLE -> new long[] {relations.wholeOf(id)};
      case TYPE -> new long[] {relations.typeOf(id)};
      case GROUPS -> relations.groupsOf(id);
      case COVERINGS -> relations.coveringsOf(id);
    };
  }

  /** What a placement, a shape or a property is made of; faces and points refer to no circle. */
  private long[] referred(long id) {
    IfcRecord record = file.find(id);
    return record == null || record.is("IfcTopologicalRepresentationItem") || record.is("IfcPoint")
        ? new long[0]
        : record.references();
  }

  private void walk(Collection<Long> starts, Way along) {
    Set<Long> done = new HashSet<>();
    for (long start : starts) {
      walk(start, along, done);
    }
  }

  /** A record on the way, and which of those it leads to comes next. */
  private static final class Step {
    private final long id;
    private final long[] next;
    private int at;

    Step(long id, long[] next) {
      this.id = id;
      this.next = next;
    }
  }

  /** Depth first, without recursion, as chains may be long. */
  private void walk(long start, Way along, Set<Long> done) {
    Deque<Step> steps = new ArrayDeque<>();
    Set<Long> onWay = new HashSet<>();
    enter(start, along, done, steps, onWay);
    while (!steps.isEmpty()) {
      Step last = steps.getLast();
      if (last.at == last.next.length) {
        onWay.remove(steps.removeLast().id);
        continue;
      }
      long id = last.next[last.at++];
      if (onWay.contains(id)) {
        note(id, steps);
      } else {
        enter(id, along, done, steps, onWay);
      }
    }
  }

  private void enter(long id, Way along, Set<Long> done, Deque<Step> steps, Set<Long> onWay) {
    if (id != 0 && left > 0 && done.add(id)) {
      left--;
      steps.addLast(new Step(id, next(id, along)));
      onWay.add(id);
    }
  }

  /** The circle starts at its least number, wherever it was entered. */
  private void note(long backTo, Deque<Step> way) {
    List<Long> circle =
        new ArrayList<>(way.stream().map(s -> s.id).dropWhile(id -> id != backTo).toList());
    Collections.rotate(circle, -circle.indexOf(Collections.min(circle)));
    found.add(circle);
  }

  private String inWords() {
    String shown = found.stream().limit(SHOWN).map(this::inWords).collect(Collectors.joining("; "));
    return found.size() > SHOWN ? shown + "; and others" : shown;
  }

  private String inWords(List<Long> circle) {
    IfcRecord first = file.find(circle.get(0));
    String names =
        circle.stream().limit(SHOWN_RECORDS).map(id -> "#" + id).collect(Collectors.joining(" "));
    String more = circle.size() > SHOWN_RECORDS ? " and " + (circle.size() - SHOWN_RECORDS) : "";
    return (first == null ? "" : first.entityName() + " ") + names + more;
  }
}
