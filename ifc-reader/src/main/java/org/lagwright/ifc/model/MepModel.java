package org.lagwright.ifc.model;

import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.function.Function;
import java.util.stream.Collectors;

/**
 * One file, read and measured.
 *
 * @param elements every distribution element, covering and proxy of the file, in file order; of a
 *     large file an {@link ElementList}
 * @param systems every system and group that an element belongs to
 * @param findings what was noticed while reading
 * @param otherProducts how many products of which IFC class were not looked at (walls, doors ...)
 * @param georeference where on earth the coordinates of the file lie
 * @param surroundings walls, slabs, beams and the like, which a list of a file reads when it is
 *     looked at
 * @param premises its spaces, for elements of other files
 * @param origin what it was read from
 */
public record MepModel(
    ModelFile file,
    List<MepElement> elements,
    List<MepSystem> systems,
    List<Finding> findings,
    Map<String, Integer> otherProducts,
    Georeference georeference,
    List<BuildingPart> surroundings,
    Premises premises,
    Origin origin) {

  /** A model without spaces, which no file was read for. */
  public MepModel(
      ModelFile file,
      List<MepElement> elements,
      List<MepSystem> systems,
      List<Finding> findings,
      Map<String, Integer> otherProducts,
      Georeference georeference,
      List<BuildingPart> surroundings) {
    this(
        file,
        elements,
        systems,
        findings,
        otherProducts,
        georeference,
        surroundings,
        Premises.NONE,
        Origin.NONE);
  }

  /** A model that does not tell where on earth it is, and has nothing around its elements. */
  public MepModel(
      ModelFile file,
      List<MepElement> elements,
      List<MepSystem> systems,
      List<Finding> findings,
      Map<String, Integer> otherProducts) {
    this(file, elements, systems, findings, otherProducts, Georeference.NONE, List.of());
  }

  public MepModel {
    elements = elements instanceof ElementList ? elements : List.copyOf(elements);
    systems = List.copyOf(systems);
    findings = List.copyOf(findings);
    otherProducts = Collections.unmodifiableMap(new TreeMap<>(otherProducts));
    surroundings =
        surroundings instanceof BuildingPartList ? surroundings : List.copyOf(surroundings);
  }

  /** The same model under another description of its file. */
  public MepModel of(ModelFile described) {
    return new MepModel(
        described,
        elements,
        systems,
        findings,
        otherProducts,
        georeference,
        surroundings,
        premises,
        origin);
  }

  /** Elements by key. */
  public Map<ElementKey, MepElement> elementsByKey() {
    return elements.stream().collect(Collectors.toMap(MepElement::key, Function.identity()));
  }
}
