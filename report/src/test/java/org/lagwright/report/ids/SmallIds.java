package org.lagwright.report.ids;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.function.Predicate;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import javax.xml.parsers.DocumentBuilderFactory;
import javax.xml.parsers.ParserConfigurationException;
import org.lagwright.report.ids.SmallStep.Item;
import org.w3c.dom.Element;
import org.w3c.dom.NodeList;
import org.xml.sax.SAXException;

/**
 * Holds a file against IDS 1.0 with nothing of the program: entity, attribute, property and part-of
 * facets of occurrences, as the IDS documentation of buildingSMART tells them. In IFC2X3 a name
 * stands for occurrences typed by the type of that name.
 */
final class SmallIds {

  private static final Pattern VALUE = Pattern.compile("(IFC\\w+)\\(([-+.\\dE]+)\\)");
  private static final double TOLERANCE = 1e-6;

  private final SmallStep step;
  private final Map<Integer, Integer> types = new HashMap<>();
  private final Map<Integer, List<Integer>> sets = new HashMap<>();
  private final Map<Integer, List<Integer>> groups = new HashMap<>();
  private final Map<Integer, List<Integer>> wholes = new HashMap<>();

  /** How many met and missed a specification. */
  record Count(int met, int missed) {
    Count plus(Count other) {
      return new Count(met + other.met, missed + other.missed);
    }
  }

  SmallIds(SmallStep step) {
    this.step = step;
    step.all("IFCRELDEFINESBYTYPE")
        .forEach(r -> r.references(4).forEach(o -> types.put(o, r.references(5).get(0))));
    bind("IFCRELDEFINESBYPROPERTIES", 4, 5, sets);
    bind("IFCRELASSIGNSTOGROUP", 4, 6, groups);
    bind("IFCRELCONTAINEDINSPATIALSTRUCTURE", 4, 5, wholes);
    bind("IFCRELAGGREGATES", 5, 4, wholes);
  }

  private void bind(String relation, int members, int whole, Map<Integer, List<Integer>> into) {
    step.all(relation)
        .forEach(
            r ->
                r.references(members)
                    .forEach(
                        m ->
                            into.computeIfAbsent(m, k -> new ArrayList<>())
                                .addAll(r.references(whole))));
  }

  /** By identifier of the specification; of those that hold for the schema of the file. */
  Map<String, Count> check(byte[] ids)
      throws IOException, ParserConfigurationException, SAXException {
    Element root =
        DocumentBuilderFactory.newInstance()
            .newDocumentBuilder()
            .parse(new ByteArrayInputStream(ids))
            .getDocumentElement();
    Map<String, Count> counts = new TreeMap<>();
    String version = step.schema().startsWith("IFC4X3") ? "IFC4X3_ADD2" : step.schema();
    for (Element specification :
        children(children(root, "specifications").get(0), "specification")) {
      if (List.of(specification.getAttribute("ifcVersion").split(" ", -1)).contains(version)) {
        counts.merge(specification.getAttribute("identifier"), count(specification), Count::plus);
      }
    }
    return counts;
  }

  private Count count(Element specification) {
    Element applicability = children(specification, "applicability").get(0);
    Element facet = elements(children(specification, "requirements").get(0)).get(0);
    List<Item> items = applicable(applicability);
    int met = (int) items.stream().filter(item -> holds(facet, item)).count();
    boolean lacks = items.isEmpty() && applicability.getAttribute("minOccurs").equals("1");
    return new Count(met, items.size() - met + (lacks ? 1 : 0));
  }

  private List<Item> applicable(Element applicability) {
    Element name = children(children(applicability, "entity").get(0), "name").get(0);
    return step.all().filter(item -> matches(name, classOf(item))).toList();
  }

  private String classOf(Item item) {
    Integer type = types.get(item.id());
    return step.schema().equals("IFC2X3") && type != null
        ? step.item(type).keyword().replaceAll("TYPE$", "")
        : item.keyword();
  }

  private boolean holds(Element facet, Item item) {
    return switch (facet.getTagName()) {
      case "attribute" -> attribute(facet, item);
      case "property" -> property(facet, item);
      case "partOf" -> partOf(facet, item);
      default -> throw new IllegalArgumentException(facet.getTagName());
    };
  }

  private static boolean attribute(Element facet, Item item) {
    String name = children(children(facet, "name").get(0), "simpleValue").get(0).getTextContent();
    int position =
        switch (name) {
          case "GlobalId" -> 0;
          case "ObjectPlacement" -> 5;
          case "Representation" -> 6;
          case "UnitsInContext" -> 8;
          default -> throw new IllegalArgumentException(name);
        };
    List<Element> value = children(facet, "value");
    return !List.of("$", "''").contains(item.argument(position))
        && (value.isEmpty() || matches(value.get(0), item.text(position)));
  }

  private boolean property(Element facet, Item item) {
    Element set = children(facet, "propertySet").get(0);
    Element name = children(facet, "baseName").get(0);
    List<Item> found =
        setsOf(item)
            .filter(s -> matches(set, s.text(2)))
            .flatMap(s -> s.references(s.keyword().equals("IFCPROPERTYSET") ? 4 : 5).stream())
            .map(step::item)
            .filter(p -> matches(name, p.text(0)))
            .toList();
    Predicate<Item> fits = p -> fits(facet, p);
    return !found.isEmpty() && found.stream().allMatch(fits);
  }

  private Stream<Item> setsOf(Item item) {
    Integer type = types.get(item.id());
    return Stream.concat(
            sets.getOrDefault(item.id(), List.of()).stream(),
            type == null ? Stream.of() : step.item(type).references(5).stream())
        .map(step::item)
        .filter(s -> s.keyword().matches("IFCPROPERTYSET|IFCELEMENTQUANTITY"));
  }

  private boolean fits(Element facet, Item property) {
    String measure;
    double number;
    if (property.keyword().equals("IFCQUANTITYLENGTH")) {
      measure = "IFCLENGTHMEASURE";
      number = Double.parseDouble(property.argument(3));
    } else {
      Matcher value = VALUE.matcher(property.argument(2));
      if (!value.find()) {
        return false;
      }
      measure = value.group(1);
      number = Double.parseDouble(value.group(2));
    }
    double si = measure.endsWith("LENGTHMEASURE") ? number * lengthUnitM() : number;
    Element restriction = elements(children(facet, "value").get(0)).get(0);
    double from = bound(restriction, "xs:minInclusive");
    double to = bound(restriction, "xs:maxInclusive");
    return measure.equals(facet.getAttribute("dataType"))
        && si >= from - TOLERANCE * (1 + from)
        && si <= to + TOLERANCE * (1 + to);
  }

  private static double bound(Element restriction, String name) {
    return Double.parseDouble(children(restriction, name).get(0).getAttribute("value"));
  }

  private double lengthUnitM() {
    return step.all("IFCPROJECT")
        .flatMap(project -> project.references(8).stream())
        .flatMap(assignment -> step.item(assignment).references(0).stream())
        .map(step::item)
        .filter(u -> u.keyword().equals("IFCSIUNIT"))
        .filter(u -> u.argument(1).equals(".LENGTHUNIT."))
        .map(u -> u.argument(2).equals(".MILLI.") ? 0.001 : 1)
        .findFirst()
        .orElse(1.0);
  }

  private boolean partOf(Element facet, Item item) {
    boolean grouped = facet.getAttribute("relation").equals("IFCRELASSIGNSTOGROUP");
    Element entity = children(facet, "entity").get(0);
    return above(item.id(), grouped ? groups : wholes).anyMatch(whole -> isWhole(entity, whole));
  }

  private static boolean isWhole(Element entity, Item whole) {
    List<Element> type = children(entity, "predefinedType");
    return matches(children(entity, "name").get(0), whole.keyword())
        && (type.isEmpty() || matches(type.get(0), whole.argument(6).replace(".", "")));
  }

  private Stream<Item> above(int id, Map<Integer, List<Integer>> relations) {
    return relations.getOrDefault(id, List.of()).stream()
        .flatMap(up -> Stream.concat(Stream.of(step.item(up)), above(up, relations)));
  }

  private static boolean matches(Element value, String text) {
    Element inner = elements(value).get(0);
    if (inner.getTagName().equals("simpleValue")) {
      return inner.getTextContent().equals(text);
    }
    return elements(inner).stream()
        .anyMatch(
            allowed ->
                allowed.getTagName().equals("xs:pattern")
                    ? text.matches(allowed.getAttribute("value"))
                    : allowed.getAttribute("value").equals(text));
  }

  private static List<Element> children(Element parent, String name) {
    return elements(parent).stream().filter(e -> e.getTagName().equals(name)).toList();
  }

  private static List<Element> elements(Element parent) {
    NodeList nodes = parent.getChildNodes();
    return IntStream.range(0, nodes.getLength())
        .mapToObj(nodes::item)
        .filter(Element.class::isInstance)
        .map(Element.class::cast)
        .toList();
  }
}
