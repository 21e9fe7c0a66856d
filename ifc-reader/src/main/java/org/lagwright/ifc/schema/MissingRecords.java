package org.lagwright.ifc.schema;

import static java.util.stream.Collectors.joining;

import java.util.List;
import java.util.Set;
import java.util.concurrent.ConcurrentHashMap;

/**
 * Records that bodies refer to and that the file does not have, as where a part of a model was
 * exported or a file was damaged: the bodies are read without them. Any thread may add to them.
 */
public final class MissingRecords {

  /** More are not counted. */
  private static final int MOST = 10_000;

  private static final int NAMED = 5;

  private static final List<String> OF_BODIES =
      List.of("IfcRepresentationItem", "IfcRepresentation", "IfcProfileDef");

  private final Set<Long> ids = ConcurrentHashMap.newKeySet();

  MissingRecords() {}

  void add(IfcEntity referring, long id) {
    if (referring.isOneOf(OF_BODIES) && ids.size() < MOST) {
      ids.add(id);
    }
  }

  /** True if nothing is missing. */
  public boolean isEmpty() {
    return ids.isEmpty();
  }

  /** How many, in words. */
  public String count() {
    String count = ids.size() + (ids.size() == 1 ? " record" : " records");
    return ids.size() < MOST ? count : "at least " + count;
  }

  /** The first of them: {@code #7 #12}. */
  public String named() {
    String first = ids.stream().sorted().limit(NAMED).map(id -> "#" + id).collect(joining(" "));
    return ids.size() > NAMED ? first + " and others" : first;
  }
}
