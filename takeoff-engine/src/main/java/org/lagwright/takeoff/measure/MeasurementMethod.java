package org.lagwright.takeoff.measure;

import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import org.lagwright.ifc.model.Form;
import org.lagwright.takeoff.pack.SourceStatus;

/**
 * A method of measurement. For each quantity, the first rule that fits an element measures it;
 * where none fits, that quantity is not measured.
 *
 * @param wholeFrom where given, totals of a line are whole numbers, rounded up from this part on
 * @param note what the user should know, null where nothing
 */
public record MeasurementMethod(
    String id,
    String name,
    String source,
    SourceStatus status,
    @Nullable String note,
    @Nullable Double wholeFrom,
    List<Rule> rules) {

  static final String PIPE = "pipe";
  static final String DUCT = "duct";
  static final String SEGMENT = "segment";
  static final String ITEM = "item";
  static final String GAP = "gap";

  private static final Set<String> FACTS = facts();

  private static Set<String> facts() {
    Set<String> facts = new HashSet<>();
    Stream.of(Form.values()).map(Form::label).forEach(facts::add);
    facts.addAll(List.of(PIPE, DUCT, SEGMENT, ITEM, GAP, "round", "not-round"));
    return Set.copyOf(facts);
  }

  public MeasurementMethod {
    rules = List.copyOf(rules);
    Set<String> seen = new HashSet<>();
    for (Rule rule : rules) {
      if (!seen.add(rule.id())) {
        throw new IllegalArgumentException("rule '" + rule.id() + "' is listed twice.");
      }
    }
    if (rules.isEmpty()) {
      throw new IllegalArgumentException("a method needs a rule.");
    }
    if (wholeFrom != null && !(wholeFrom > 0 && wholeFrom < 1)) {
      throw new IllegalArgumentException("wholeFrom must lie between 0 and 1.");
    }
  }

  /** What a rule measures. */
  public enum Quantity {
    LENGTH("m"),
    PIECES("pcs"),
    AREA("m2"),
    VOLUME("m3");

    private final String unit;

    Quantity(String unit) {
      this.unit = unit;
    }

    /** The unit. */
    public String unit() {
      return unit;
    }

    /** In words. */
    public String words() {
      return name().toLowerCase(Locale.ROOT);
    }
  }

  /** Along what a rule measures. */
  public enum Along {
    /** Net length of straights and flexible pieces. */
    NET,
    /** Axes of everything, bends by their arc. */
    AXIS,
    /** Axes of everything, bends to the crossing of their centre lines. */
    CORNERS,
    /** A length that stands for the piece: diameters times diameter, and metres. */
    EQUIVALENT,
    /** An arc of a radius of so many diameters. */
    ARC,
    /** Nothing: the exact surface or volume of the insulation, or the piece itself. */
    ITSELF,
    /** The flat end of a pipe. */
    END
  }

  /** Which end the piece is counted in. */
  public enum CountedAs {
    LARGEST_END,
    SMALLEST_END
  }

  /**
   * Parts of the surface that something stands on or that are bare.
   *
   * @param upToM2 up to this area nothing is deducted; null for no such limit
   * @param upToPct up to this part of the surface nothing is deducted, percent; null for none
   * @param largeTimes how often a larger one is measured in addition, once deducted
   */
  public record Openings(
      @Nullable Double upToM2, @Nullable Double upToPct, @Nullable Double largeTimes) {

    /** True where this one is deducted. */
    boolean deducts(double openingM2, double surfaceM2) {
      boolean overArea = upToM2 == null || openingM2 > upToM2;
      boolean overShare = upToPct == null || openingM2 > surfaceM2 * upToPct / 100;
      return overArea && overShare;
    }

    double largeFactor() {
      return largeTimes == null ? 0 : largeTimes;
    }
  }

  /**
   * One rule.
   *
   * @param when facts that must all hold: forms, pipe or duct, segment, item or gap, round
   * @param upToMm largest diameter it holds for, null for all
   * @param upToLengthM longest gap it holds for, null for all
   * @param factor times the quantity, 1 where null
   * @param diameters equivalent length or radius over diameter
   * @param metres equivalent length
   * @param thicknessFactor times the thickness, in volumes; 1 where null
   * @param outerFactor outer diameter is D + this times the thickness, in areas; 2 where null
   * @param outerPlusMm added to the outer diameter, in areas
   * @param openings what is deducted from the surface, null where nothing is said
   * @param least least quantity for one element, null for none
   * @param countedAs the end whose size the piece is counted in, null for its own size
   * @param text the rule in words, printed beside the number
   * @param source where this rule comes from, null for that of the method
   * @param status how far it was checked, null for that of the method
   */
  public record Rule(
      String id,
      List<String> when,
      @Nullable Double upToMm,
      @Nullable Double upToLengthM,
      Quantity of,
      Along along,
      @Nullable Double factor,
      @Nullable Double diameters,
      @Nullable Double metres,
      @Nullable Double thicknessFactor,
      @Nullable Double outerFactor,
      @Nullable Double outerPlusMm,
      @Nullable Openings openings,
      @Nullable Double least,
      @Nullable CountedAs countedAs,
      String text,
      @Nullable String source,
      @Nullable SourceStatus status) {

    public Rule {
      when = List.copyOf(when);
      for (String fact : when) {
        if (!FACTS.contains(fact)) {
          throw new IllegalArgumentException(
              "rule '" + id + "': fact '" + fact + "' is not known.");
        }
      }
      boolean needsLength = of == Quantity.LENGTH && (along == Along.ITSELF || along == Along.END);
      boolean needsNone = of == Quantity.PIECES && along != Along.ITSELF;
      if (needsLength || needsNone) {
        throw new IllegalArgumentException(
            "rule '" + id + "': " + of + " is not measured along " + along + ".");
      }
    }

    boolean fits(GeometricTruth truth, Set<String> facts) {
      boolean gapAsked = when.contains(GAP);
      return facts.containsAll(when)
          && gapAsked == truth.gap()
          && (upToMm == null || truth.section().largestSideM() * 1000 <= upToMm + 0.5)
          && (upToLengthM == null || truth.axes().throughM() <= upToLengthM + 1e-9);
    }
  }

  /** Source of a rule. */
  public String sourceOf(Rule rule) {
    return rule.source() == null ? source : rule.source();
  }

  /** Status of a rule. */
  public SourceStatus statusOf(Rule rule) {
    return rule.status() == null ? status : rule.status();
  }
}
