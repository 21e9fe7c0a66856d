package org.lagwright.takeoff.fitting;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import org.lagwright.ifc.model.MepElement;
import org.lagwright.ifc.model.Section;
import org.lagwright.takeoff.fitting.Making.LayerMaking;
import org.lagwright.takeoff.thickness.Layer;

/**
 * Chooses how each layer of an element is made, makes its pieces, and says why. Equal elements give
 * equal makings.
 */
public final class MakingChooser {

  private final MakingPack pack;
  private final Limits limits;
  private final Map<String, Method> wanted;

  /** Equal cases share one making, so that a big model does not hold thousands of them. */
  private final Map<Object, Making> known = new HashMap<>();

  /**
   * A chooser with the limits of the pack, where given changed by the user.
   *
   * @param changed limits by name
   * @param methods the user's own choice of method label by label of a form; where it cannot be
   *     made, the rules decide
   */
  public MakingChooser(MakingPack pack, Map<String, Double> changed, Map<String, String> methods) {
    this.pack = pack;
    Map<String, Double> values = new HashMap<>(pack.limitValues());
    values.putAll(changed);
    this.limits = new Limits(values);
    Map<String, Method> chosen = new HashMap<>();
    methods.forEach((form, label) -> chosen.put(form, Method.of(label)));
    this.wanted = Map.copyOf(chosen);
  }

  /** A limit as the pack gives it or the user changed it. */
  public double limit(String name) {
    return limits.number(name);
  }

  /** The pack used. */
  public MakingPack pack() {
    return pack;
  }

  /**
   * How an element is covered.
   *
   * @param section bare section that decided the thickness
   * @param layers from the inside out, at least one
   * @param duct true for ducts and what sits in them
   */
  public Making choose(MepElement element, Section section, List<Layer> layers, boolean duct) {
    FittingShape shape = FittingShape.of(element, section, duct, limits);
    return known.computeIfAbsent(new Key(shape, layers), key -> make(shape, layers));
  }

  /**
   * Lengths along the axes of an element.
   *
   * @param section bare section that decided the thickness
   * @param totalM thickness of insulation, metres; 0 where there is none
   */
  public Axes axes(MepElement element, Section section, boolean duct, double totalM) {
    return Axes.of(FittingShape.of(element, section, duct, limits), totalM);
  }

  private record Key(FittingShape shape, List<Layer> layers) {}

  private Making make(FittingShape shape, List<Layer> layers) {
    List<LayerMaking> made = new ArrayList<>();
    double belowM = 0;
    for (Layer layer : layers) {
      made.add(layer(shape, new LayerOn(layer, made.size() + 1, belowM)));
      belowM += layer.thicknessM();
    }
    List<String> widths =
        made.stream()
            .map(layer -> pack.assumes().get(layer.method().label()))
            .filter(Objects::nonNull)
            .distinct()
            .map(words -> filled(words, Map.of()))
            .toList();
    return new Making(made, shape.assumed(), widths);
  }

  private LayerMaking layer(FittingShape shape, LayerOn on) {
    CoverMaker maker = new CoverMaker(shape, on, limits);
    Set<String> facts = maker.facts();
    Method own = wanted.get(shape.form().label());
    if (own != null && maker.canMake(own)) {
      return making(shape, maker, own, "chosen in the settings", "methods", "settings", facts);
    }
    MakingPack.Rule rule = pack.rule(facts);
    Method method = Method.of(rule.method());
    String reason = filled(rule.reason(), maker.figures(method));
    return making(shape, maker, method, reason, rule.id(), rule.source(), facts);
  }

  private LayerMaking making(
      FittingShape shape,
      CoverMaker maker,
      Method method,
      String reason,
      String rule,
      String source,
      Set<String> facts) {
    Cover cover = maker.make(method);
    Making.Bonding bonding =
        method.isRemovable() ? Making.Bonding.ITSELF : pack.bondingRule(facts).bond();
    double bondedM2 = maker.bondedM2(bonding, cover);
    return new LayerMaking(method, reason, rule, source, bonding, bondedM2, cover);
  }

  private String filled(String template, Map<String, Double> figures) {
    String text = template;
    Map<String, Double> all = new HashMap<>(limits.values());
    all.putAll(figures);
    for (String name : all.keySet()) {
      if (text.contains("{" + name + "}")) {
        text = text.replace("{" + name + "}", plain(Objects.requireNonNull(all.get(name))));
      }
    }
    return text;
  }

  private static String plain(double figure) {
    String text = String.format(Locale.ROOT, "%.1f", figure);
    return text.endsWith(".0") ? text.substring(0, text.length() - 2) : text;
  }
}
