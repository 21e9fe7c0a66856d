package org.lagwright.ifc.extract.measure;

import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.lagwright.ifc.extract.draft.Draft;
import org.lagwright.ifc.extract.text.InWords;
import org.lagwright.ifc.model.Candidate;
import org.lagwright.ifc.model.Effect;
import org.lagwright.ifc.model.Measured;
import org.lagwright.ifc.model.ReadFinding;
import org.lagwright.ifc.model.Section;

/** Findings where another reading of a measure differs from the chosen one for no known reason. */
final class Conflicts {

  private Conflicts() {}

  /** Of the size, and of the ends where they differ though the size does not. */
  static void noteSizes(Draft draft) {
    Measured<Section> section = draft.section();
    Optional<Candidate<Section>> other = Options.firstConflict(section);
    Measured<List<Section>> ends = draft.ends();
    Optional<Candidate<List<Section>>> otherEnds = Options.firstConflict(ends);
    if (section != null && other.isPresent()) {
      note(
          draft,
          ReadFinding.SECTION_CONFLICT,
          InWords.section(section.value()),
          section,
          InWords.section(other.get().value()),
          other.get());
    } else if (ends != null && otherEnds.isPresent()) {
      note(
          draft,
          ReadFinding.SECTION_CONFLICT,
          inWords(ends.value()),
          ends,
          inWords(otherEnds.get().value()),
          otherEnds.get());
    }
  }

  private static String inWords(List<Section> ends) {
    StringBuilder words = new StringBuilder();
    for (Section end : ends) {
      words.append(words.isEmpty() ? "" : " / ").append(InWords.section(end));
    }
    return words.toString();
  }

  static void noteLength(Draft draft, @Nullable Measured<Double> lengthM) {
    noteMetres(draft, ReadFinding.LENGTH_CONFLICT, "", lengthM);
  }

  /** Of a tee's branch, beside the length of its run. */
  static void noteBranch(Draft draft) {
    noteMetres(draft, ReadFinding.LENGTH_CONFLICT, "of the branch, ", draft.branchLengthM());
  }

  static void noteBend(Draft draft) {
    noteMetres(draft, ReadFinding.RADIUS_CONFLICT, "", draft.bendRadiusM());
    Measured<Double> deg = draft.angleDeg();
    Optional<Candidate<Double>> other = Options.firstConflict(deg);
    if (deg != null && other.isPresent()) {
      note(
          draft,
          ReadFinding.ANGLE_CONFLICT,
          InWords.degrees(deg.value()),
          deg,
          InWords.degrees(other.get().value()),
          other.get());
    }
  }

  private static void noteMetres(
      Draft draft, ReadFinding code, String of, @Nullable Measured<Double> lengthM) {
    Optional<Candidate<Double>> other = Options.firstConflict(lengthM);
    if (lengthM != null && other.isPresent()) {
      draft.note(
          code,
          Effect.NONE,
          InWords.metres(lengthM.value()),
          of + lengthM.evidence(),
          InWords.metres(other.get().value()),
          other.get().evidence().toString());
    }
  }

  private static void note(
      Draft draft,
      ReadFinding code,
      String used,
      Measured<?> chosen,
      String given,
      Candidate<?> other) {
    draft.note(
        code, Effect.NONE, used, chosen.evidence().toString(), given, other.evidence().toString());
  }
}
