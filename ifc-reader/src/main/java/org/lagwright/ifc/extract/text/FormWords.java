package org.lagwright.ifc.extract.text;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import org.lagwright.ifc.model.Form;

/**
 * The form that a name tells: its first telling word, and in a compound the last part, as a
 * Kappenventil is a valve. Words for a change of size tell after those for a shape, as a reducing
 * tee is a tee; flange, coupling and union tell last, as they also say how a piece is joined: a
 * flanged elbow is a bend. What stands behind a "for" or "with" is asked only if nothing before it
 * tells.
 */
final class FormWords {

  private static final Set<Form> JOINTS = EnumSet.of(Form.FLANGE, Form.COUPLING, Form.UNION);

  private static final Set<Form> REDUCING = EnumSet.of(Form.REDUCER, Form.TRANSITION);

  private static final Set<Form> SHAPES = EnumSet.allOf(Form.class);

  /** Shapes of the line itself; a joint at the end of a compound does not change them. */
  private static final Set<Form> OF_THE_LINE = EnumSet.range(Form.BEND, Form.WYE);

  /** What a piece of the line leads to: behind a flange it says which flange. */
  private static final Set<Form> LED_TO = EnumSet.of(Form.APPARATUS, Form.PUMP);

  static {
    SHAPES.removeAll(JOINTS);
    SHAPES.removeAll(REDUCING);
    OF_THE_LINE.add(Form.CAP);
    OF_THE_LINE.add(Form.OFFSET);
  }

  private final Map<Form, List<Word>> forms = new EnumMap<>(Form.class);

  /** Words for pipes and ducts at the end of compounds. */
  final List<Word> lines = new ArrayList<>();

  /** Words behind which stands what a piece is for, or comes with. */
  final List<Word> context = new ArrayList<>();

  /** Words that call something flexible without saying what it is. */
  final List<Word> flexible = new ArrayList<>();

  /** A word that tells a form, with the compound that it begins in. */
  private record Told(Form form, int start, int at, int end) {

    /** True if this is the part of a compound, or of a phrase, that counts instead of another. */
    boolean replaces(Told other) {
      boolean later = end > other.end || (end == other.end && at < other.at);
      return start == other.start
          && later
          && (SHAPES.contains(form) || !OF_THE_LINE.contains(other.form));
    }
  }

  void add(Form form, List<Word> words) {
    forms.put(form, words);
  }

  List<Word> of(Form form) {
    return forms.getOrDefault(form, List.of());
  }

  /** The form that a folded name tells. */
  Optional<Form> read(String folded) {
    int end = folded.length();
    for (Word word : context) {
      int at = word.indexIn(folded);
      end = at > 0 ? Math.min(end, at) : end;
    }
    Form form = formIn(folded.substring(0, end));
    return Optional.ofNullable(form == null && end < folded.length() ? formIn(folded) : form);
  }

  private @Nullable Form formIn(String folded) {
    List<Told> told = told(folded);
    Told shape = first(told, SHAPES);
    Told reducing = first(told, REDUCING);
    Told other = reducing == null ? first(told, JOINTS) : reducing;
    boolean leadsTo =
        shape != null && other != null && LED_TO.contains(shape.form) && other.at < shape.at;
    Told best = shape == null || leadsTo ? other : shape;
    if (best != null) {
      return best.form;
    }
    for (Word word : flexible) {
      if (word.indexIn(folded) >= 0) {
        return Form.FLEXIBLE;
      }
    }
    return null;
  }

  /** All words that tell, without those that are only a part of a longer one. */
  private List<Told> told(String folded) {
    List<Told> all = new ArrayList<>();
    for (Map.Entry<Form, List<Word>> entry : forms.entrySet()) {
      for (Word word : entry.getValue()) {
        int at = word.indexIn(folded);
        int end = at + word.text().length();
        if (at >= 0 && isHead(folded, end)) {
          all.add(new Told(entry.getKey(), Word.startOfCompound(folded, at), at, end));
        }
      }
    }
    List<Told> left = new ArrayList<>();
    for (Told one : all) {
      boolean replaced = false;
      for (Told other : all) {
        replaced |= other.replaces(one);
      }
      if (!replaced) {
        left.add(one);
      }
    }
    return left;
  }

  private static @Nullable Told first(List<Told> told, Set<Form> asked) {
    Told first = null;
    for (Told one : told) {
      if (asked.contains(one.form) && (first == null || one.at < first.at)) {
        first = one;
      }
    }
    return first;
  }

  /** False if the word that ends here only begins a compound that names a pipe or duct. */
  private boolean isHead(String folded, int end) {
    String rest = folded.substring(end, Word.endOfCompound(folded, end));
    for (Word word : rest.isEmpty() ? List.<Word>of() : lines) {
      if (rest.endsWith(word.text())) {
        return false;
      }
    }
    return true;
  }
}
