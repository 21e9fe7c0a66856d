package org.lagwright.takeoff;

import java.util.stream.Collectors;
import org.lagwright.ifc.model.Form;
import org.lagwright.ifc.model.Kind;
import org.lagwright.ifc.model.MepElement;
import org.lagwright.ifc.model.MepSystem;

/** Kind and form in words, in the plural: {@code pipe segments}, {@code duct bends}. */
final class ElementWords {

  private ElementWords() {}

  /** Name and GlobalId, for looking an element up: {@code 'Pipe 7' (3t3TDZl_D9NOIWB0BSjzJI)}. */
  static String named(MepElement element) {
    String id = element.globalId().isEmpty() ? "#" + element.key().step() : element.globalId();
    return element.name().isBlank() ? id : "'" + element.name() + "' (" + id + ")";
  }

  /** Names of the systems that it belongs to, in quotes; empty if none is named. */
  static String systems(MepElement element) {
    String names =
        element.systems().stream()
            .map(MepSystem::name)
            .filter(name -> !name.isBlank())
            .distinct()
            .sorted()
            .collect(Collectors.joining("', '"));
    return names.isEmpty() ? "" : "'" + names + "'";
  }

  static String plural(MepElement element) {
    Form form = element.form();
    return switch (element.kind()) {
      case PIPE_SEGMENT, DUCT_SEGMENT ->
          (form == Form.FLEXIBLE ? "flexible " : "") + carrier(element.kind()) + " segments";
      case PIPE_FITTING, DUCT_FITTING ->
          carrier(element.kind()) + " " + (form == Form.UNKNOWN ? "fittings" : plural(form));
      case VALVE -> "valves";
      case INLINE -> form == Form.UNKNOWN ? "inline items" : plural(form);
      case EQUIPMENT -> form == Form.PUMP ? "pumps" : "apparatus";
      case TERMINAL -> "terminals";
      case COVERING -> "coverings";
      case OTHER -> "other items";
    };
  }

  private static String carrier(Kind kind) {
    return kind == Kind.PIPE_SEGMENT || kind == Kind.PIPE_FITTING ? "pipe" : "duct";
  }

  private static String plural(Form form) {
    return switch (form) {
      case CROSS -> "crosses";
      case VALVE_BODY -> "valve bodies";
      case APPARATUS -> "apparatus";
      default -> form.label().replace('-', ' ') + "s";
    };
  }
}
