package org.lagwright.ifc.extract.draft;

import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import org.lagwright.ifc.extract.text.Words;
import org.lagwright.ifc.model.Effect;
import org.lagwright.ifc.model.Form;
import org.lagwright.ifc.model.Kind;
import org.lagwright.ifc.model.ReadFinding;
import org.lagwright.ifc.schema.IfcRecord;

/**
 * What an element is. The class of the occurrence tells from IFC4 on, that of the type object in
 * IFC2X3; where both are general, words in the names do; where words are silent, the caller decides
 * by shape.
 */
public final class KindReader {

  /**
   * Kind and form as far as class and words tell.
   *
   * @param kind what it is; null for a general flow segment or fitting that only shape can settle
   * @param form its form, UNKNOWN if nothing told
   * @param worded true if words told the form
   */
  public record Reading(@Nullable Kind kind, Form form, boolean worded) {

    /** A reading whose form, if any, comes from a class or an enumeration. */
    public Reading(@Nullable Kind kind, Form form) {
      this(kind, form, false);
    }
  }

  /** What no name of a straight piece speaks of, as one of pumps or valves may. */
  private static final Set<Form> IN_DUCTS = Set.of(Form.DAMPER, Form.SILENCER);

  /** Families of apparatus, with what of the line IFC2X3 has among them. */
  private static final Map<String, Set<Form>> IN_LINE_AMONG_APPARATUS =
      Map.of(
          "IFCFLOWMOVINGDEVICE",
          Set.of(Form.PUMP),
          "IFCFLOWTREATMENTDEVICE",
          Set.of(Form.STRAINER, Form.SILENCER));

  /** Classes of apparatus that radiators come as, by those who do not call them space heaters. */
  private static final Set<String> AMONG_RADIATORS =
      Set.of(
          "IFCENERGYCONVERSIONDEVICE",
          "IFCHEATEXCHANGER",
          "IFCHEATEXCHANGERTYPE",
          "IFCUNITARYEQUIPMENT",
          "IFCUNITARYEQUIPMENTTYPE");

  /** Valves at which a line ends: taps, drain cocks, flush valves. */
  private static final Set<String> DRAW_OFF = Set.of("FAUCET", "DRAWOFFCOCK", "FLUSHING", "GASTAP");

  /** Classes that say no more than that something belongs to the services of a building. */
  private static final Set<String> UNTOLD =
      Set.of("IfcBuildingElementProxy", "IfcDistributionElement", "IfcDistributionFlowElement");

  /** IfcCoveringTypeEnum, as far as it names what no pipe or duct has. */
  private static final Set<String> COVERINGS_OF_ROOMS =
      Set.of(
          "CEILING",
          "FLOORING",
          "CLADDING",
          "ROOFING",
          "SKIRTINGBOARD",
          "MOLDING",
          "COPING",
          "TOPPING");

  private static final Set<String> INSULATION = Set.of("INSULATION", "SLEEVING", "WRAPPING");

  private KindReader() {}

  /**
   * Reads the kind.
   *
   * @param type the type object, null if there is none
   * @param names its names; those of the type are asked before its own
   */
  static Reading read(IfcRecord element, @Nullable IfcRecord type, Names names) {
    if (element.is("IfcCovering")) {
      return new Reading(covering(element, type, names), Form.UNKNOWN);
    }
    if (!element.is("IfcDistributionElement")) {
      return new Reading(Kind.OTHER, Form.UNKNOWN);
    }
    Reading byClass = ClassKinds.of(element, type);
    if (byClass != null) {
      return refine(byClass, element, type, names);
    }
    boolean general = ClassKinds.isOpen(element) && (type == null || ClassKinds.isGeneral(type));
    return general ? general(element, type, names) : new Reading(Kind.OTHER, Form.UNKNOWN);
  }

  /**
   * True for a straight piece or a fitting that only its shape, or what flows in it, tells pipe
   * from duct: nothing names it, or but as a tube.
   */
  static boolean isOpen(Reading reading, IfcRecord element, @Nullable IfcRecord type, Names names) {
    Kind kind = reading.kind();
    if (kind == null) {
      return true;
    }
    if (!kind.isOfPipe()
        || !ClassKinds.isOpen(element)
        || (type != null && !ClassKinds.isGeneral(type))) {
      return false;
    }
    for (String name : names.all()) {
      if (Words.isPipe(name) && !Words.isTube(name)) {
        return false;
      }
    }
    String description = element.label("Description");
    return description == null || !Words.isPipe(description) || Words.isTube(description);
  }

  /** True for a general controller that neither a type nor a name calls a valve. */
  static boolean isAssumedValve(
      Reading reading, IfcRecord element, @Nullable IfcRecord type, Names names) {
    return reading.kind() == Kind.VALVE
        && element.keyword().equals("IFCFLOWCONTROLLER")
        && (type == null || ClassKinds.isGeneral(type))
        && formInWords(names.all()).isEmpty();
  }

  /** True for a covering that its enumeration, or that of its type, calls insulation. */
  static boolean isInsulation(IfcRecord covering, @Nullable IfcRecord type) {
    return INSULATION.contains(predefined(covering, type));
  }

  /**
   * Fire collars, sleeves through walls and heat tracing come as coverings; they insulate nothing,
   * nor does a membrane, which is the vapour barrier of a pipe or duct (IfcCoveringTypeEnum).
   */
  private static Kind covering(IfcRecord element, @Nullable IfcRecord type, Names names) {
    String predefined = predefined(element, type);
    boolean beside =
        !predefined.equals("INSULATION")
            && names.all().stream().noneMatch(Words::isInsulation)
            && (predefined.equals("MEMBRANE")
                || isBesideThePipe(Form.UNKNOWN, names.all())
                || names.all().stream().anyMatch(Words::isNoInsulation));
    return beside || COVERINGS_OF_ROOMS.contains(predefined) ? Kind.OTHER : Kind.COVERING;
  }

  /** Adds what words and the predefined type say, without leaving the family of the class. */
  private static Reading refine(
      Reading byClass, IfcRecord element, @Nullable IfcRecord type, Names names) {
    Kind kind = byClass.kind();
    if (kind == null) {
      return byClass;
    }
    String predefined = predefined(element, type);
    boolean line = kind.isSegment() || kind.isFitting();
    if (line && isNeither(kind, names.ofTypeElseOwn())) {
      return new Reading(Kind.OTHER, Form.UNKNOWN);
    }
    if (kind.isSegment()) {
      return segment(byClass, predefined, names.ofTypeElseOwn());
    }
    if (kind == Kind.VALVE && DRAW_OFF.contains(predefined)) {
      return new Reading(Kind.TERMINAL, Form.APPARATUS);
    }
    Optional<Form> worded = formInWords(names.all());
    if (predefined.equals("ELECTRICMETER")) {
      return new Reading(Kind.OTHER, Form.UNKNOWN);
    }
    if (kind == Kind.VALVE && worded.isPresent() && isNoValve(element, worded.get())) {
      return new Reading(Kind.INLINE, worded.get(), true);
    }
    if (kind == Kind.EQUIPMENT && worded.isEmpty() && isRoomHeater(element, type, names.all())) {
      return new Reading(Kind.TERMINAL, Form.APPARATUS);
    }
    if (kind == Kind.EQUIPMENT && worded.isPresent() && isInLine(element, type, worded.get())) {
      return new Reading(Kind.INLINE, worded.get(), true);
    }
    if (kind == Kind.VALVE && worded.isEmpty() && isBesideThePipe(Form.UNKNOWN, names.all())) {
      return new Reading(Kind.OTHER, Form.UNKNOWN);
    }
    if (!kind.isFitting()) {
      return byClass;
    }
    String ownType = worded.isPresent() || type == null ? null : type.label("ElementType");
    worded = ownType == null ? worded : Words.form(ownType);
    Form form = worded.orElse(formOf(predefined));
    if (worded.isEmpty() && isBesideThePipe(form, names.all())) {
      return new Reading(Kind.OTHER, Form.UNKNOWN);
    }
    if (kind == Kind.DUCT_FITTING && form == Form.VALVE_BODY) {
      form = Form.DAMPER;
    }
    return new Reading(kindOfFitting(kind, form), form, worded.isPresent());
  }

  /** A general controller may be a damper or a meter; strainers come even as valves. */
  private static boolean isNoValve(IfcRecord element, Form form) {
    boolean general = !element.is("IfcValve");
    return form == Form.STRAINER || (general && (form == Form.DAMPER || form == Form.METER));
  }

  /** Nobody lags a radiator: it is where the heating ends. */
  private static boolean isRoomHeater(
      IfcRecord element, @Nullable IfcRecord type, List<String> texts) {
    IfcRecord telling = type == null || ClassKinds.isGeneral(type) ? element : type;
    return AMONG_RADIATORS.contains(telling.keyword())
        && texts.stream().anyMatch(Words::isRoomHeater);
  }

  /** A general moving device that is called a pump is one, and no apparatus. */
  private static boolean isInLine(IfcRecord element, @Nullable IfcRecord type, Form form) {
    Set<Form> forms = IN_LINE_AMONG_APPARATUS.get(element.keyword());
    return forms != null && forms.contains(form) && (type == null || ClassKinds.isGeneral(type));
  }

  /**
   * Cables, their carriers and chambers come as pipes and ducts. The class is left only if the
   * first telling name speaks of nothing else: a pipe with a heating cable is a pipe.
   */
  private static boolean isNeither(Kind kind, List<String> texts) {
    String text = telling(texts);
    boolean french = kind == Kind.DUCT_SEGMENT || kind == Kind.DUCT_FITTING;
    return text != null && Words.isNeitherPipeNorDuct(text) && !(french && Words.isConduit(text));
  }

  /** Gauges and fire collars come as fittings; one with a bend or branch of its own is one. */
  private static boolean isBesideThePipe(Form byEnumeration, List<String> texts) {
    if (byEnumeration != Form.UNKNOWN && byEnumeration != Form.COUPLING) {
      return false;
    }
    for (String text : texts) {
      if (Words.isBesideThePipe(text)) {
        return true;
      }
    }
    return false;
  }

  /** Manifolds come as segments. */
  private static Reading segment(Reading byClass, String predefined, List<String> texts) {
    if (predefined.equals("GUTTER")) {
      return new Reading(Kind.OTHER, Form.UNKNOWN);
    }
    Optional<Form> worded = formInWords(texts);
    if (worded.isPresent() && worded.get() == Form.APPARATUS) {
      return new Reading(Kind.EQUIPMENT, Form.APPARATUS);
    }
    boolean flexible =
        predefined.equals("FLEXIBLESEGMENT")
            || (worded.isPresent() && worded.get() == Form.FLEXIBLE);
    return flexible ? new Reading(byClass.kind(), Form.FLEXIBLE) : byClass;
  }

  /** The first name that speaks of pipes, ducts or neither, null if none does. */
  private static @Nullable String telling(List<String> texts) {
    for (String text : texts) {
      if (Words.line(text) != null) {
        return text;
      }
    }
    return null;
  }

  /** Valve bodies, pumps and apparatus are found among the fittings of some exporters. */
  private static Kind kindOfFitting(Kind kind, Form form) {
    return switch (form) {
      case VALVE_BODY -> Kind.VALVE;
      case STRAINER, PUMP, DAMPER, METER, SILENCER -> Kind.INLINE;
      case APPARATUS -> Kind.EQUIPMENT;
      case FLEXIBLE -> kind == Kind.DUCT_FITTING ? Kind.DUCT_SEGMENT : Kind.PIPE_SEGMENT;
      default -> kind;
    };
  }

  private static String predefined(IfcRecord element, @Nullable IfcRecord type) {
    String own = element.enumeration("PredefinedType");
    if (own != null && !own.equals("NOTDEFINED") && !own.equals("USERDEFINED")) {
      return own;
    }
    String ofType = type == null ? null : type.enumeration("PredefinedType");
    return ofType == null ? "" : ofType;
  }

  /** IfcPipeFittingTypeEnum and IfcDuctFittingTypeEnum as far as they name a shape. */
  private static Form formOf(String predefined) {
    return switch (predefined) {
      case "BEND" -> Form.BEND;
      case "TRANSITION" -> Form.REDUCER;
      case "CONNECTOR" -> Form.COUPLING;
      case "JUNCTION" -> Form.TEE;
      case "OBSTRUCTION" -> Form.CAP;
      default -> Form.UNKNOWN;
    };
  }

  static Optional<Form> formInWords(List<String> texts) {
    for (String text : texts) {
      Optional<Form> form = Words.form(text);
      if (form.isPresent()) {
        return form;
      }
    }
    return Optional.empty();
  }

  /**
   * A general segment or fitting without a telling type: words settle pipe or duct, if anything;
   * those of its description only where no name does.
   */
  private static Reading general(IfcRecord element, @Nullable IfcRecord type, Names names) {
    List<String> texts = element.is("IfcFlowSegment") ? names.ofTypeElseOwn() : names.all();
    String telling = telling(texts);
    if (telling == null) {
      telling = element.label("Description");
    }
    Words.Line line = telling == null ? null : Words.line(telling);
    if (line == Words.Line.NEITHER) {
      return new Reading(Kind.OTHER, Form.UNKNOWN);
    }
    boolean segment = element.is("IfcFlowSegment");
    Kind kind = line == null ? null : byShape(segment, line == Words.Line.PIPE);
    Reading plain = new Reading(kind, segment ? Form.STRAIGHT : Form.UNKNOWN);
    Optional<Form> worded = formInWords(texts);
    if (segment && worded.isPresent() && worded.get() == Form.APPARATUS) {
      return new Reading(Kind.EQUIPMENT, Form.APPARATUS);
    }
    if (kind != null) {
      return refine(plain, element, type, names);
    }
    if (segment) {
      boolean inDuct = worded.isPresent() && IN_DUCTS.contains(worded.get());
      return inDuct ? new Reading(Kind.INLINE, worded.get(), true) : plain;
    }
    Form form = worded.orElse(formOf(predefined(element, type)));
    if (worded.isEmpty() && isBesideThePipe(form, texts)) {
      return new Reading(Kind.OTHER, Form.UNKNOWN);
    }
    Kind told = kindOfFitting(Kind.PIPE_FITTING, form);
    boolean fitting = told.isFitting() || told.isSegment();
    return new Reading(fitting ? null : told, form, worded.isPresent());
  }

  /** A proxy stands for anything, so its name alone makes it no pipe; but the user should know. */
  public static void noteProxy(Draft draft) {
    if (draft.kind() == Kind.OTHER && UNTOLD.contains(draft.ifcClass())) {
      draft.names().all().stream()
          .filter(name -> Words.isPipe(name) || Words.isDuct(name))
          .findFirst()
          .ifPresent(name -> draft.note(ReadFinding.PROXY_LOOKS_LIKE_SERVICE, Effect.NONE, name));
    }
  }

  /** Kind for a general segment or fitting from the shape of its section. */
  public static Kind byShape(boolean segment, boolean round) {
    if (segment) {
      return round ? Kind.PIPE_SEGMENT : Kind.DUCT_SEGMENT;
    }
    return round ? Kind.PIPE_FITTING : Kind.DUCT_FITTING;
  }

  /** The words used in findings: {@code pipe segment}. */
  public static String inWords(Kind kind) {
    return kind.name().toLowerCase(Locale.ROOT).replace('_', ' ');
  }
}
