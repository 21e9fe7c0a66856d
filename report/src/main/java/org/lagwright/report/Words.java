package org.lagwright.report;

import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import org.lagwright.ifc.model.ExistingInsulation;
import org.lagwright.ifc.model.Measured;
import org.lagwright.ifc.model.MepElement;
import org.lagwright.ifc.model.MepSystem;
import org.lagwright.ifc.model.Section;
import org.lagwright.takeoff.service.Classification;
import org.lagwright.takeoff.thickness.Demand;

/** Sections, sizes and other values in words, the same in every output. */
public final class Words {

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

  /** Nominal size and section, as far as known: {@code DN50 / 60.3 mm}; null if neither is. */
  public static @Nullable String size(MepElement element) {
    Measured<Section> section = element.section();
    if (section == null) {
      return element.nominalSize();
    }
    String measured = section(section.value());
    return element.nominalSize() == null ? measured : element.nominalSize() + " / " + measured;
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
    return existing.material() == null ? thick : thick + ", " + existing.material();
  }

  /** A demand: {@code condensation (dew-point)}. */
  public static String demand(Demand demand) {
    return demand.kind().label() + " (" + demand.rule() + ")";
  }

  /** How a value was obtained; null where there is no value. */
  public static @Nullable String how(@Nullable Measured<?> measured) {
    return measured == null ? null : measured.how().name();
  }
}
