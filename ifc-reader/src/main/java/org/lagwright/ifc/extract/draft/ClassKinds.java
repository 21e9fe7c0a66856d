package org.lagwright.ifc.extract.draft;

import java.util.HashMap;
import java.util.HashSet;
import java.util.Map;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import org.lagwright.ifc.extract.draft.KindReader.Reading;
import org.lagwright.ifc.extract.text.Resource;
import org.lagwright.ifc.model.Form;
import org.lagwright.ifc.model.Kind;
import org.lagwright.ifc.schema.IfcRecord;

/**
 * What the class of an element, or that of its type, says that it is. Families hold several kinds
 * of things: IFC2X3 uses them for everything, later exporters for what they cannot name.
 */
public final class ClassKinds {

  private static final Map<String, Reading> BY_CLASS = new HashMap<>();

  /** The same by the class of the type object. */
  private static final Map<String, Reading> BY_CLASS_OF_TYPE = new HashMap<>();

  /** Classes that say more than their families, which exporters use for what they cannot name. */
  private static final Set<String> LEAVES = new HashSet<>();

  static {
    for (String line : Resource.lines("kinds.txt")) {
      String[] words = line.split(" ", -1);
      Reading reading = new Reading(Kind.valueOf(words[1]), Form.valueOf(words[2]));
      BY_CLASS.put(words[0], reading);
      BY_CLASS_OF_TYPE.put(words[0] + "TYPE", reading);
      boolean family = words[0].contains("FLOW") || words[0].equals("IFCENERGYCONVERSIONDEVICE");
      if (!family || words[0].equals("IFCFLOWMETER")) {
        LEAVES.add(words[0]);
      }
    }
  }

  /** Families that IFC2X3 uses for everything and later exporters for what they cannot name. */
  private static final Set<String> GENERAL = Set.of("IFCFLOWSEGMENT", "IFCFLOWFITTING");

  private ClassKinds() {}

  /** True if the class of an element holds several kinds of things, which its type tells apart. */
  public static boolean isFamily(IfcRecord element) {
    return !LEAVES.contains(element.keyword());
  }

  /** What the classes of both tell; null if nothing, as they are families of several kinds. */
  static @Nullable Reading of(IfcRecord element, @Nullable IfcRecord type) {
    Reading ofType = type == null ? null : BY_CLASS_OF_TYPE.get(type.keyword());
    if (LEAVES.contains(element.keyword())) {
      // a leaf class of the occurrence says more than a type of another family
      return BY_CLASS.get(element.keyword());
    }
    if (ofType != null) {
      return ofType;
    }
    Reading ofFamily = BY_CLASS.get(element.keyword());
    boolean named = type == null || isGeneral(type);
    return named || ofFamily == null || !isLagged(ofFamily) ? ofFamily : null;
  }

  /** Of a family that is lagged, a type that is not listed is the other thing: a switch. */
  private static boolean isLagged(Reading family) {
    return family.kind() != null && family.kind().isLagged();
  }

  /** True for a family of segments or fittings, of which words or shape may tell what they are. */
  static boolean isOpen(IfcRecord element) {
    return GENERAL.contains(element.keyword());
  }

  /** A type that names a family only; a junction box or a cable carrier is no pipe. */
  static boolean isGeneral(IfcRecord type) {
    return type.keyword().startsWith("IFCFLOW")
        || type.keyword().startsWith("IFCDISTRIBUTION")
        || !type.is("IfcDistributionElementType");
  }
}
