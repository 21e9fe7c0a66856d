package org.lagwright.testmodels.check;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;
import org.lagwright.testmodels.check.StepReading.Instance;
import org.lagwright.testmodels.check.StepReading.Many;
import org.lagwright.testmodels.check.StepReading.Plain;
import org.lagwright.testmodels.check.StepReading.Typed;
import org.lagwright.testmodels.check.StepReading.Value;

/**
 * Holds every record of a file against the EXPRESS schema: entity, number of arguments, which may
 * be missing or derived, types of numbers, strings, references and enumerations, bounds of lists,
 * and that GlobalIds are well formed and unique. Rules written as WHERE are not looked at.
 */
public final class SchemaCheck {

  private static final Pattern AGGREGATE =
      Pattern.compile("(LIST|SET|ARRAY|BAG)\\[(\\d+):(\\d+|\\?)\\](.*)");
  private static final Pattern GLOBAL_ID = Pattern.compile("'[0-3][0-9A-Za-z_$]{21}'");
  private static final Pattern REAL = Pattern.compile("[+-]?\\d+\\.\\d*(E[+-]?\\d+)?");
  private static final Pattern INTEGER = Pattern.compile("[+-]?\\d+");
  private static final Pattern STRING = Pattern.compile("'[\\x20-\\x7E]*'");

  private final Map<String, Entity> entities = new HashMap<>();
  private final Map<String, Set<String>> enumerations = new HashMap<>();
  private final Map<String, String> definedTypes = new HashMap<>();

  private record Attribute(String name, String type, boolean optional) {}

  private record Entity(
      String name,
      String supertype,
      boolean isAbstract,
      List<Attribute> own,
      Set<String> derived) {}

  /**
   * @param entityLines of each entity its name, {@code !} before it if abstract, its supertype or
   *     {@code -}, and the names of its own attributes
   * @param typeLines of each entity the types of those, {@code ?} before optional ones and {@code
   *     *} before names of derived ones; enumerations after {@code =}, defined types after {@code
   *     ~}
   */
  public SchemaCheck(List<String> entityLines, List<String> typeLines) {
    Map<String, List<String>> types = new HashMap<>();
    for (String line : typeLines) {
      List<String> words = Arrays.asList(line.split(" ", -1));
      List<String> rest = words.subList(1, words.size());
      switch (line.charAt(0)) {
        case '#' -> {}
        case '=' -> enumerations.put(words.get(0).substring(1), Set.copyOf(rest));
        case '~' -> definedTypes.put(words.get(0).substring(1), rest.get(0));
        default -> types.put(words.get(0), rest);
      }
    }
    for (String line : entityLines) {
      if (!line.startsWith("#")) {
        add(Arrays.asList(line.split(" ", -1)), types);
      }
    }
  }

  private void add(List<String> words, Map<String, List<String>> types) {
    boolean isAbstract = words.get(0).startsWith("!");
    String name = isAbstract ? words.get(0).substring(1) : words.get(0);
    List<String> its = types.getOrDefault(name, List.of());
    List<Attribute> own = new ArrayList<>();
    for (int i = 2; i < words.size(); i++) {
      String type = its.get(i - 2);
      boolean optional = type.startsWith("?");
      own.add(new Attribute(words.get(i), optional ? type.substring(1) : type, optional));
    }
    Set<String> derived = new HashSet<>();
    its.subList(own.size(), its.size()).forEach(word -> derived.add(word.substring(1)));
    entities.put(
        name.toUpperCase(Locale.ROOT), new Entity(name, words.get(1), isAbstract, own, derived));
  }

  /** Everything that is wrong with a file, a line for each record and attribute. */
  public Set<String> problems(String file) {
    Map<Long, Instance> instances = StepReading.instances(file);
    Set<String> problems = new TreeSet<>();
    Map<String, Long> globalIds = new HashMap<>();
    instances.forEach(
        (id, instance) -> {
          String where = "#" + id + "=" + instance.keyword();
          Entity entity = entities.get(instance.keyword());
          if (entity == null || entity.isAbstract()) {
            problems.add(where + " is no entity that has instances");
            return;
          }
          check(where, entity, instance, instances, problems);
          if (isA(entity, "IfcRoot") && instance.arguments().get(0) instanceof Plain root) {
            Long before = globalIds.put(root.written(), id);
            if (before != null) {
              problems.add(where + " has the GlobalId of #" + before);
            }
          }
        });
    return problems;
  }

  private @Nullable Entity entity(String name) {
    return entities.get(name.toUpperCase(Locale.ROOT));
  }

  private boolean isA(Entity entity, String ancestor) {
    for (Entity at = entity; at != null; at = entity(at.supertype())) {
      if (at.name().equals(ancestor)) {
        return true;
      }
    }
    return false;
  }

  private List<Attribute> attributes(Entity entity, Set<String> derived) {
    List<Attribute> all = new ArrayList<>();
    for (Entity at = entity; at != null; at = entity(at.supertype())) {
      all.addAll(0, at.own());
      derived.addAll(at.derived());
    }
    return all;
  }

  private void check(
      String where,
      Entity entity,
      Instance instance,
      Map<Long, Instance> instances,
      Set<String> problems) {
    Set<String> derived = new HashSet<>();
    List<Attribute> attributes = attributes(entity, derived);
    if (attributes.size() != instance.arguments().size()) {
      problems.add(where + " has " + instance.arguments().size() + " arguments");
      return;
    }
    for (int i = 0; i < attributes.size(); i++) {
      Attribute attribute = attributes.get(i);
      Value value = instance.arguments().get(i);
      String problem =
          derived.contains(attribute.name())
              ? value.equals(new Plain("*")) ? null : "is derived and has a value"
              : value.equals(new Plain("$"))
                  ? attribute.optional() ? null : "is mandatory and missing"
                  : problem(value, attribute.type(), instances);
      if (problem != null) {
        problems.add(where + "." + attribute.name() + " " + problem);
      }
    }
  }

  /** What is wrong with a value, null if nothing. */
  private @Nullable String problem(Value value, String type, Map<Long, Instance> instances) {
    Matcher aggregate = AGGREGATE.matcher(type);
    if (aggregate.matches()) {
      return ofAggregate(value, aggregate, instances);
    }
    Entity wanted = entity(type);
    if (wanted != null) {
      return ofReference(value, wanted, instances);
    }
    Set<String> words = enumerations.get(type);
    if (words != null) {
      String written = value instanceof Plain plain ? plain.written() : "";
      boolean known = written.length() > 2 && words.contains(written.replace(".", ""));
      return known ? null : "is " + value + ", no value of " + type;
    }
    String below = definedTypes.get(type);
    if (below != null) {
      return problem(value, below, instances);
    }
    Pattern pattern = patternOf(type);
    return pattern == null ? ofSelect(value, type, instances) : ofPattern(value, type, pattern);
  }

  private @Nullable String ofAggregate(
      Value value, Matcher aggregate, Map<Long, Instance> instances) {
    if (!(value instanceof Many many)) {
      return "is no list";
    }
    int count = many.values().size();
    boolean tooMany =
        !aggregate.group(3).equals("?") && count > Integer.parseInt(aggregate.group(3));
    if (count < Integer.parseInt(aggregate.group(2)) || tooMany) {
      return "has " + count + " members";
    }
    if (aggregate.group(1).equals("SET") && new HashSet<>(many.values()).size() < count) {
      return "has a member twice";
    }
    for (Value member : many.values()) {
      String problem = problem(member, aggregate.group(4), instances);
      if (problem != null) {
        return "has a member that " + problem;
      }
    }
    return null;
  }

  private @Nullable String ofReference(Value value, Entity wanted, Map<Long, Instance> instances) {
    Instance target = target(value, instances);
    Entity entity = target == null ? null : entities.get(target.keyword());
    return entity != null && isA(entity, wanted.name())
        ? null
        : "is " + value + ", no " + wanted.name();
  }

  private static @Nullable Instance target(Value value, Map<Long, Instance> instances) {
    boolean reference = value instanceof Plain plain && plain.written().startsWith("#");
    return reference ? instances.get(Long.parseLong(((Plain) value).written().substring(1))) : null;
  }

  private @Nullable String ofSelect(Value value, String type, Map<Long, Instance> instances) {
    if (value instanceof Typed typed) {
      for (Map.Entry<String, String> known : definedTypes.entrySet()) {
        if (known.getKey().toUpperCase(Locale.ROOT).equals(typed.keyword())) {
          return problem(typed.inside().values().get(0), known.getValue(), instances);
        }
      }
      return "is of the unknown type " + typed.keyword();
    }
    return target(value, instances) == null ? "is " + value + ", nothing of " + type : null;
  }

  private static @Nullable Pattern patternOf(String type) {
    if (type.startsWith("STRING(22)")) {
      return GLOBAL_ID;
    }
    if (type.startsWith("STRING")) {
      return STRING;
    }
    return switch (type) {
      case "REAL" -> REAL;
      case "INTEGER" -> INTEGER;
      case "NUMBER" -> Pattern.compile(REAL.pattern() + "|" + INTEGER.pattern());
      case "BOOLEAN" -> Pattern.compile("\\.[TF]\\.");
      case "LOGICAL" -> Pattern.compile("\\.[TFU]\\.");
      default -> type.startsWith("BINARY") ? Pattern.compile("\"[0-9A-F]*\"") : null;
    };
  }

  private static @Nullable String ofPattern(Value value, String type, Pattern pattern) {
    boolean fits = value instanceof Plain plain && pattern.matcher(plain.written()).matches();
    return fits ? null : "is " + value + ", no " + type;
  }
}
