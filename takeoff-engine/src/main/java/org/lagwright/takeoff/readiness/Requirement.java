package org.lagwright.takeoff.readiness;

import java.util.Arrays;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import org.lagwright.ifc.model.Kind;
import org.lagwright.takeoff.pack.SourceStatus;

/**
 * One thing a model must carry.
 *
 * @param id stable id
 * @param title in words
 * @param kinds kinds of element it concerns, by label; empty where it concerns the whole file
 * @param known what the takeoff must know in the end
 * @param stated what says that the model states it itself, where no facet can; null else
 * @param why what hangs on it, one sentence
 * @param ask what to ask the designer, one sentence
 * @param asked what the model is asked to state; empty where IDS cannot say it
 * @param notInIds why IDS cannot say it; null where it can
 */
public record Requirement(
    String id,
    String title,
    Need need,
    List<String> kinds,
    Known known,
    @Nullable Known stated,
    String why,
    String ask,
    List<Asked> asked,
    @Nullable String notInIds,
    String source,
    SourceStatus status) {

  private static final Set<String> KINDS =
      Arrays.stream(Kind.values()).map(Kind::label).collect(Collectors.toSet());

  public Requirement {
    kinds = List.copyOf(kinds);
    asked = List.copyOf(asked);
    if (!KINDS.containsAll(kinds)) {
      throw new IllegalArgumentException("kinds must be of " + KINDS + ".");
    }
    if (asked.isEmpty() == (notInIds == null)) {
      throw new IllegalArgumentException("either asked or notInIds must say something.");
    }
    for (Asked one : asked) {
      if (!kinds.containsAll(one.kinds())) {
        throw new IllegalArgumentException("asked has kinds that the requirement lacks.");
      }
    }
  }

  /** True where it concerns the whole file and no element. */
  public boolean isOfFile() {
    return kinds.isEmpty();
  }

  boolean concerns(Kind kind) {
    return kinds.contains(kind.label());
  }
}
