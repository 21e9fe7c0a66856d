package org.lagwright.ifc.extract.join;

import java.util.ArrayList;
import java.util.Collection;
import java.util.EnumSet;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import org.lagwright.ifc.model.ElementKey;
import org.lagwright.ifc.model.Finding;
import org.lagwright.ifc.model.FindingCode;
import org.lagwright.ifc.model.Georeference.MapConversion;
import org.lagwright.ifc.model.Georeference.WorldSystem;
import org.lagwright.ifc.model.MepElement;
import org.lagwright.ifc.model.MepModel;
import org.lagwright.ifc.model.ReadFinding;

/**
 * Makes several files one model: elements that stand in more than one of them are marked, so that
 * they count once, and contradictions about them are told; ends that touch across files are
 * connected; coverings find the pipes of another file that they lie around, and elements the spaces
 * of another file that they stand in; what is a placeholder in one file is one in the others of its
 * exporter; files that cannot belong together are a finding. Elements keep the file they come from.
 */
public final class ModelJoiner {

  private ModelJoiner() {}

  /**
   * Joins models as they were read.
   *
   * @param models in the order of the command line
   * @param joinToleranceM distance up to which two ends touch, metres; 0 joins none
   * @return the same models with marks, connections and findings
   */
  public static List<MepModel> join(List<MepModel> models, double joinToleranceM) {
    Joining joining = new Joining(models.size() > 1 ? CrossPlaceholders.without(models) : models);
    if (models.size() > 1) {
      Whereabouts.compare(joining);
      CrossParts.leaveOut(joining);
      Set<ElementKey> joined = new LinkedHashSet<>();
      Set<ElementKey> insulated = new LinkedHashSet<>();
      Collection<ElementKey> repeated = Repeats.mark(joining, joined, insulated);
      SamePlaces.note(joining);
      Redrafts drafts = new Redrafts(joining);
      CrossJoints.join(joining, drafts, joinToleranceM, joined);
      CrossMeasures.measure(joining, drafts, joined);
      CrossHosts.find(joining, drafts, insulated);
      RepeatConflicts.note(joining, repeated);
      CrossPlaces.find(joining);
    } else {
      SamePlaces.note(joining);
    }
    return joining.models();
  }

  /** The models on their way: elements that were replaced, findings that came up. */
  static final class Joining {

    /** Contradictions within one file, of which it is enough to know once. */
    private static final Set<FindingCode> OF_FIGURES =
        Set.of(
            ReadFinding.LENGTH_CONFLICT,
            ReadFinding.SECTION_CONFLICT,
            ReadFinding.ANGLE_CONFLICT,
            ReadFinding.RADIUS_CONFLICT,
            ReadFinding.FORM_CONFLICT,
            ReadFinding.INSULATION_CONFLICT);

    private final List<MepModel> models;
    private final Map<ElementKey, MepElement> changed = new HashMap<>();
    private final List<Finding> findings = new ArrayList<>();
    private final Set<ElementKey> hosted = new HashSet<>();

    /** What was found about elements and holds no longer. */
    private final Map<ElementKey, Set<ReadFinding>> forgotten = new HashMap<>();

    /** What is told of the figures of elements in their own files; made when first asked. */
    private @Nullable Map<ElementKey, Set<FindingCode>> told;

    /** Where elements stand in their files, by instance number; made when first asked. */
    private final Map<Integer, Map<Long, Integer>> places = new HashMap<>();

    Joining(List<MepModel> models) {
      this.models = List.copyOf(models);
    }

    List<MepModel> read() {
      return models;
    }

    /** Name of a file as the user gave it. */
    String file(int model) {
      return models.get(model).file().name();
    }

    /**
     * False if both files tell where on earth they lie, or where their zero is, and not the same.
     */
    boolean haveOneOrigin(int model, int other) {
      return haveOneWorld(model, other) && haveOneConversion(model, other);
    }

    boolean haveOneWorld(int model, int other) {
      WorldSystem one = models.get(model).georeference().world();
      return one.agreesWith(models.get(other).georeference().world());
    }

    boolean haveOneConversion(int model, int other) {
      MapConversion one = models.get(model).georeference().conversion();
      MapConversion another = models.get(other).georeference().conversion();
      return one == null || another == null || one.agreesWith(another);
    }

    /** The element as it is by now. */
    MepElement now(MepElement element) {
      return changed.getOrDefault(element.key(), element);
    }

    /** An element as it is by now, null if there is none of that name. */
    @Nullable MepElement find(ElementKey key) {
      MepElement element = changed.get(key);
      if (element == null) {
        Integer place = places.computeIfAbsent(key.model(), this::places).get(key.step());
        element = place == null ? null : models.get(key.model()).elements().get(place);
      }
      return element;
    }

    private Map<Long, Integer> places(int model) {
      Map<Long, Integer> found = new HashMap<>();
      int place = 0;
      for (MepElement element : models.get(model).elements()) {
        found.put(element.key().step(), place++);
      }
      return found;
    }

    void change(MepElement element) {
      changed.put(element.key(), element);
    }

    void note(Finding finding) {
      findings.add(finding);
    }

    /** Its host was found; what its own file says about that holds no longer. */
    void hosted(ElementKey covering) {
      hosted.add(covering);
    }

    /** What was found about an element by these codes holds no longer. */
    void forget(ElementKey element, Set<ReadFinding> codes) {
      Set<ReadFinding> all = EnumSet.copyOf(codes);
      all.addAll(forgotten.getOrDefault(element, Set.of()));
      forgotten.put(element, all);
    }

    private boolean stillHolds(Finding finding) {
      ElementKey about = finding.element();
      if (about == null) {
        return true;
      }
      Set<ReadFinding> gone = forgotten.getOrDefault(about, Set.of());
      return !gone.contains(finding.code())
          && (finding.code() != ReadFinding.COVERING_WITHOUT_HOST || !hosted.contains(about))
          && !isToldOfFirst(finding.code(), about);
    }

    /** True if the figures of a repetition contradict as those of the element that counts do. */
    private boolean isToldOfFirst(FindingCode code, ElementKey about) {
      MepElement element = OF_FIGURES.contains(code) ? find(about) : null;
      ElementKey first = element == null ? null : element.repeats();
      if (first == null) {
        return false;
      }
      if (told == null) {
        told = told();
      }
      return told.getOrDefault(first, Set.of()).contains(code);
    }

    private Map<ElementKey, Set<FindingCode>> told() {
      Map<ElementKey, Set<FindingCode>> found = new HashMap<>();
      for (MepModel model : models) {
        for (Finding finding : model.findings()) {
          ElementKey about = finding.element();
          if (about != null && OF_FIGURES.contains(finding.code())) {
            found.computeIfAbsent(about, key -> new HashSet<>(2)).add(finding.code());
          }
        }
      }
      return found;
    }

    List<MepModel> models() {
      return models.stream().map(this::model).toList();
    }

    private MepModel model(MepModel read) {
      int index = read.file().index();
      List<Finding> own = findings.stream().filter(f -> f.model() == index).toList();
      boolean same =
          own.isEmpty()
              && Stream.concat(changed.keySet().stream(), hosted.stream())
                  .noneMatch(k -> k.model() == index);
      if (same) {
        return read;
      }
      List<Finding> all = new ArrayList<>(read.findings());
      all.removeIf(finding -> !stillHolds(finding));
      all.addAll(own);
      return new MepModel(
          read.file(),
          read.elements().stream().map(this::now).toList(),
          read.systems(),
          all,
          read.otherProducts(),
          read.georeference(),
          read.surroundings(),
          read.premises(),
          read.origin());
    }
  }
}
