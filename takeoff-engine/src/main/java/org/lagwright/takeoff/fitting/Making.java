package org.lagwright.takeoff.fitting;

import java.util.List;
import java.util.stream.Collectors;

/**
 * How one element is covered, layer by layer.
 *
 * @param layers the innermost first
 * @param assumed dimensions that nothing told, in words with their figures; empty where all were
 *     read
 * @param assumedWidths widths of bodies and joints that no model tells, in words; empty where the
 *     methods need none
 */
public record Making(List<LayerMaking> layers, List<String> assumed, List<String> assumedWidths) {

  public Making {
    layers = List.copyOf(layers);
    assumed = List.copyOf(assumed);
    assumedWidths = List.copyOf(assumedWidths);
    if (layers.isEmpty()) {
      throw new IllegalArgumentException("something without a layer needs no making");
    }
  }

  /**
   * How one layer is made.
   *
   * @param method the way
   * @param reason why this way, with its figures
   * @param rule id of the rule that chose it
   * @param source where the rule comes from
   * @param bonding where the adhesive goes
   * @param bondedAreaM2 area glued to what lies below, one coat, square metres
   * @param cover pieces, area and volume; without pieces where it is cut on site
   */
  public record LayerMaking(
      Method method,
      String reason,
      String rule,
      String source,
      Bonding bonding,
      double bondedAreaM2,
      Cover cover) {}

  /** Where the adhesive goes besides seams and joints. */
  public enum Bonding {
    /** Seams and joints only. */
    JOINTS("seams and joints"),
    /** Also undersides of flat surfaces. */
    UNDERSIDES("seams, joints and undersides"),
    /** The whole face. */
    WHOLE_FACE("seams, joints and the whole face"),
    /** Its own pieces only; straps close it, nothing holds it to what is beside. */
    ITSELF("its own joints, closed with straps"),
    /** Held by wire, bands or pins. */
    NONE("no adhesive");

    private final String words;

    Bonding(String words) {
      this.words = words;
    }

    /** In words. */
    public String words() {
      return words;
    }
  }

  /** The pieces of all layers. */
  public List<Piece> pieces() {
    return layers.stream().flatMap(layer -> layer.cover().pieces().stream()).toList();
  }

  /** True where adhesive goes somewhere. */
  public boolean isGlued() {
    return layers.stream().anyMatch(layer -> layer.bonding() != Bonding.NONE);
  }

  /** True where every layer has its pieces. */
  public boolean isMeasured() {
    return layers.stream().noneMatch(layer -> layer.cover().pieces().isEmpty());
  }

  /** Outer surface of the outermost layer, square metres. */
  public double outerAreaM2() {
    return layers.get(layers.size() - 1).cover().outerAreaM2();
  }

  /** Volume of all layers, cubic metres. */
  public double volumeM3() {
    return layers.stream().mapToDouble(layer -> layer.cover().volumeM3()).sum();
  }

  /** The methods in words, one for equal layers. */
  public String inWords() {
    return layers.stream()
        .map(layer -> layer.method().words())
        .distinct()
        .collect(Collectors.joining("; then "));
  }

  /** The reasons in words, one for equal layers. */
  public String reasons() {
    return layers.stream().map(LayerMaking::reason).distinct().collect(Collectors.joining("; "));
  }
}
