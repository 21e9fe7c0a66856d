package org.lagwright.report;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Objects;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import org.lagwright.ifc.model.Effect;
import org.lagwright.ifc.model.ExistingInsulation;
import org.lagwright.ifc.model.FindingCode.Severity;
import org.lagwright.ifc.model.Form;
import org.lagwright.ifc.model.How;
import org.lagwright.ifc.model.Kind;
import org.lagwright.ifc.model.Measured;
import org.lagwright.ifc.model.MepElement;
import org.lagwright.ifc.model.MepSystem;
import org.lagwright.ifc.model.ModelFile;
import org.lagwright.ifc.model.Place;
import org.lagwright.ifc.model.Section;
import org.lagwright.takeoff.TakeoffLine;
import org.lagwright.takeoff.labour.LabourItem;
import org.lagwright.takeoff.labour.Norm;
import org.lagwright.takeoff.measure.Size;
import org.lagwright.takeoff.service.Classification;
import org.lagwright.takeoff.settings.Settings;
import org.lagwright.takeoff.thickness.Demand;
import org.lagwright.takeoff.verify.Coverage;

/**
 * Sections, sizes, kinds and other values in words, the same in every output that people read.
 * Labels for machines stand in {@code takeoff.json} only.
 */
public final class Words {

  private static final int SHORT_SHA = 12;

  /** Insulation stops a little short of the ends it belongs to. */
  private static final double WHOLE_SHARE = 0.95;

  private Words() {}

  /** Millimetres with one decimal where needed: {@code 60.3}, {@code 25}. */
  public static String millimetres(double metres) {
    double mm = roundedMm(metres);
    return mm == Math.rint(mm)
        ? String.format(Locale.ROOT, "%.0f", mm)
        : String.format(Locale.ROOT, "%.1f", mm);
  }

  /** Metres as millimetres, rounded to a tenth so that 0.019 m is 19 and not 18.999999. */
  public static double roundedMm(double metres) {
    return Math.round(metres * 10_000) / 10.0;
  }

  /** A section: {@code 60.3 mm}, {@code 300 x 200 mm}, {@code 300 x 200 mm oval}. */
  public static String section(Section section) {
    if (section instanceof Section.Round round) {
      return millimetres(round.outsideDiameterM()) + " mm";
    }
    if (section instanceof Section.Oval oval) {
      return sides(oval.widthM(), oval.heightM()) + " oval";
    }
    Section.Rectangular rectangular = (Section.Rectangular) section;
    return sides(rectangular.widthM(), rectangular.heightM());
  }

  private static String sides(double widthM, double heightM) {
    return millimetres(widthM) + " x " + millimetres(heightM) + " mm";
  }

  /** The size as lines show it: {@code DN50 / 60.3 mm}; null if nothing tells. */
  public static @Nullable String size(MepElement element) {
    return Size.find(element).map(Size::words).orElse(element.nominalSize());
  }

  /** The sections of the ends of a fitting; null where none is known. */
  public static @Nullable String ends(List<Section> ends) {
    return ends.isEmpty()
        ? null
        : ends.stream().map(Words::section).collect(Collectors.joining("; "));
  }

  /** The names of all systems of an element; null where it belongs to none. */
  public static @Nullable String systems(List<MepSystem> systems) {
    return systems.isEmpty()
        ? null
        : systems.stream().map(MepSystem::name).distinct().collect(Collectors.joining("; "));
  }

  /** The name of its type, or what the occurrence says instead. */
  public static @Nullable String type(MepElement element) {
    return element.typeName() != null ? element.typeName() : element.objectType();
  }

  /**
   * The temperature of the medium, degC: the one for the energy rule, or the one for condensation
   * where the service has no other.
   */
  public static @Nullable Double temperatureC(@Nullable Classification service) {
    if (service == null) {
      return null;
    }
    return service.energyC() != null ? service.energyC() : service.condensationC();
  }

  /** Insulation the model already shows: {@code 25 mm, mineral wool}; null where none. */
  public static @Nullable String existing(@Nullable ExistingInsulation existing) {
    if (existing == null) {
      return null;
    }
    Double thicknessM = existing.thicknessM();
    String thick = thicknessM == null ? "thickness not told" : millimetres(thicknessM) + " mm";
    String made = existing.material() == null ? thick : thick + ", " + existing.material();
    boolean whole = existing.share() > WHOLE_SHARE;
    return whole ? made : made + ", on " + Math.round(existing.share() * 100) + " % of it";
  }

  /**
   * Where an element is: {@code Level 1, 0.12 Plant room, 2.85 m above the floor}; null where the
   * model does not tell.
   */
  public static @Nullable String place(Place place) {
    List<String> parts = new ArrayList<>();
    Stream.of(place.building(), place.storey(), place.space())
        .filter(Objects::nonNull)
        .forEach(parts::add);
    if (place.heightAboveFloorM() != null) {
      parts.add(String.format(Locale.ROOT, "%.2f m above the floor", place.heightAboveFloorM()));
    }
    if (place.external() != null) {
      parts.add(place.external() ? "outdoors" : "indoors");
    }
    return parts.isEmpty() ? null : String.join(", ", parts);
  }

  /** What an element is: {@code pipe}, {@code duct fitting}, {@code in-line item}. */
  public static String kind(Kind kind) {
    return switch (kind) {
      case PIPE_SEGMENT -> "pipe";
      case PIPE_FITTING -> "pipe fitting";
      case DUCT_SEGMENT -> "duct";
      case DUCT_FITTING -> "duct fitting";
      case VALVE -> "valve";
      case INLINE -> "in-line item";
      case EQUIPMENT -> "equipment";
      case TERMINAL -> "terminal";
      case COVERING -> "covering";
      case OTHER -> "other";
    };
  }

  /** The form of an element: {@code bend}, {@code valve body}. */
  public static String form(Form form) {
    return form == Form.UNKNOWN ? "form not told" : spaced(form);
  }

  /** A labour norm: {@code tube on pipe up to 60.5 mm, up to 25.5 mm thick}. */
  public static String norm(Norm norm) {
    StringBuilder words = new StringBuilder(norm.item().replace('-', ' '));
    String on = norm.on();
    Double upToM = norm.upToM();
    words.append(on == null ? "" : " on " + on);
    words.append(upToM == null ? "" : " up to " + millimetres(upToM) + " mm");
    Double thicknessM = norm.upToThicknessM();
    words.append(thicknessM == null ? "" : ", up to " + millimetres(thicknessM) + " mm thick");
    String material = norm.material();
    return material == null ? words.toString() : words + ", " + material;
  }

  /** What is done in a row of labour: {@code tube}, {@code valve body}, {@code hanger}. */
  public static String work(LabourItem item) {
    Norm norm = item.equivalent() == null ? item.norm() : item.equivalent();
    return norm.item().replace('-', ' ');
  }

  /** How much a finding weighs: {@code warning}. */
  public static String severity(Severity severity) {
    return spaced(severity);
  }

  /** What a finding did to the quantities: {@code left out}, {@code no change}. */
  public static String effect(Effect effect) {
    return effect == Effect.NONE ? "no change" : spaced(effect);
  }

  /** How a value was obtained: {@code quantity set}. */
  public static String how(How how) {
    return spaced(how);
  }

  /** How a value was obtained; null where there is no value. */
  public static @Nullable String how(@Nullable Measured<?> measured) {
    return measured == null ? null : how(measured.how());
  }

  private static String spaced(Enum<?> constant) {
    return constant.name().toLowerCase(Locale.ROOT).replace('_', ' ');
  }

  /** The material of a line. */
  public static String material(TakeoffLine line) {
    return line.materialName();
  }

  /** Which demand: {@code condensation}, {@code energy rule}, {@code thickness given}. */
  public static String demand(Demand.Kind kind) {
    return switch (kind) {
      case CONDENSATION -> "condensation";
      case ENERGY_RULE -> "energy rule";
      case HEAT_LOSS -> "heat loss limit";
      case TOUCH -> "touch temperature";
      case FROST -> "frost protection";
      case ECONOMIC -> "least cost";
      case SPECIFICATION -> "project specification";
      case USER -> "thickness given";
    };
  }

  /** A demand with its rule: {@code condensation (condensation-still-air)}. */
  public static String demand(Demand demand) {
    return demand(demand.kind()) + " (" + demand.rule() + ")";
  }

  /** Temperature and humidity of air: {@code 24 degC, 55 % relative humidity}. */
  public static String air(Settings.Air air) {
    return plain(air.temperatureC())
        + " degC, "
        + plain(air.relativeHumidityPct())
        + " % relative humidity";
  }

  /** Soil round buried pipes in words. */
  public static String ground(Settings.Ground ground) {
    return plain(ground.soilWPerMK())
        + " W/(m K), axis "
        + plain(ground.depthM())
        + " m deep ("
        + (ground.source() == null ? "settings" : ground.source())
        + ")";
  }

  /** Of how many elements the outer area is missing; empty if of none. */
  public static String withoutArea(Coverage coverage) {
    return coverage.withoutArea() == 0
        ? ""
        : "The outer area of "
            + coverage.withoutArea()
            + " elements is not known; per cent of the area are of the rest.";
  }

  /** {@code 1 element}, {@code 2 elements}. */
  public static String counted(int count, String one) {
    return count + " " + one + (count == 1 ? "" : "s");
  }

  /** A number without needless zeros: {@code 24}, {@code 0.9}. */
  public static String plain(double number) {
    return BigDecimal.valueOf(number).stripTrailingZeros().toPlainString();
  }

  /** The first figures of a SHA-256, enough to tell two files apart. */
  public static String shortSha(ModelFile model) {
    return model.sha256().substring(0, Math.min(SHORT_SHA, model.sha256().length()));
  }

  /** A part of the building in plain words: {@code wall} of IfcWallStandardCase. */
  public static String building(String ifcClass) {
    return ifcClass
        .replaceFirst("^Ifc", "")
        .replaceFirst("(StandardCase|ElementedCase)$", "")
        .replaceAll("(?<=[a-z])(?=[A-Z])", " ")
        .toLowerCase(Locale.ROOT);
  }
}
