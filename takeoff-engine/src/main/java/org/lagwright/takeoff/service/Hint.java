package org.lagwright.takeoff.service;

import org.jspecify.annotations.Nullable;

/**
 * A vote before it is known which service it means.
 *
 * @param family family voted for, null where only a direction is told
 * @param direction direction voted for, null where only a family is told
 * @param otherwise families meant instead, by what further hints tell
 * @param hydronic true for words that tell a circuit which heats or cools rooms
 * @param notBeside kind of service beside whose words alone this is no vote
 * @param circuit the circuit that it may be a half of
 * @param exact service id given by the user, null for all other hints
 */
record Hint(
    @Nullable String family,
    @Nullable String direction,
    Otherwise otherwise,
    boolean hydronic,
    @Nullable String notBeside,
    @Nullable HalfOfCircuit circuit,
    @Nullable String exact,
    String from,
    String text,
    double weight) {

  static Hint ofWords(Words.Meaning meaning, String from, String text, double weight) {
    return new Hint(
        meaning.family(),
        meaning.direction(),
        meaning.otherwise(),
        meaning.hydronic(),
        meaning.notBeside(),
        meaning.circuit(),
        null,
        from,
        text,
        weight);
  }

  /** What the user says of a name. */
  static Hint ofSettings(String service, String text, double weight) {
    String from = VotePack.FROM_SETTINGS;
    return new Hint(null, null, Otherwise.NOTHING, false, null, null, service, from, text, weight);
  }

  static Hint ofFamily(
      String family, @Nullable String direction, String from, String text, double weight) {
    return new Hint(
        family, direction, Otherwise.NOTHING, false, null, null, null, from, text, weight);
  }

  /**
   * Where it stands, as far as that counts: exporters write one text into the name, the type name
   * and the object type, which must not outweigh the system by saying it three times.
   */
  String place() {
    return switch (from) {
      case VotePack.FROM_TYPE_NAME, VotePack.FROM_OBJECT_TYPE -> VotePack.FROM_NAME;
      default -> from;
    };
  }

  /** The same without a say. */
  Hint weightless() {
    return new Hint(
        family, direction, otherwise, hydronic, notBeside, circuit, exact, from, text, 0);
  }

  /** The same as half of its circuit and nothing else, which leaves the family open. */
  Hint asHalf() {
    return new Hint(
        null, null, Otherwise.NOTHING, hydronic, null, circuit, exact, from, text, weight);
  }

  /** The family meant, given what all hints tell of a circuit. */
  @Nullable String familyMeant(Circuit circuit) {
    return family == null ? null : otherwise.meant(family, circuit);
  }

  /** The hint as a vote. */
  Vote toVote(ServicePack pack, Circuit circuit) {
    String meant = familyMeant(circuit);
    String label;
    if (exact != null) {
      label = exact;
    } else if (meant == null) {
      label = direction == null ? Classification.UNKNOWN : direction;
    } else {
      label = direction == null ? meant : pack.service(meant, direction).id();
    }
    return new Vote(label, from, text, weight);
  }
}
