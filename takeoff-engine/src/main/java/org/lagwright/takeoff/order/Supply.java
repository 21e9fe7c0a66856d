package org.lagwright.takeoff.order;

import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import org.lagwright.takeoff.material.MaterialFamily;
import org.lagwright.takeoff.pack.SourceStatus;

/**
 * What an item is, without its quantity.
 *
 * @param materialId insulation it belongs to, null where it is for all
 * @param boreM bore, metres, 0 where it has none
 * @param thicknessM thickness, metres, 0 where it has none
 * @param pack how it is sold
 * @param rule how its quantity comes about
 * @param source of rule and figures
 */
record Supply(
    Goods goods,
    String description,
    String unit,
    @Nullable String materialId,
    double boreM,
    double thicknessM,
    PackSize pack,
    String rule,
    String source,
    SourceStatus status) {

  private static final PackSize SINGLE = new PackSize("piece", 1);

  Supply(Goods goods, String description, String unit) {
    this(goods, description, unit, null, 0, 0, SINGLE, "", "", SourceStatus.VERIFIED);
  }

  /** Insulation of a family, as its stock has it. */
  static Supply ofStock(
      Goods goods,
      String description,
      String unit,
      MaterialFamily material,
      double boreM,
      double thicknessM,
      PackSize pack,
      String rule) {
    return new Supply(
        goods,
        description,
        unit,
        material.id(),
        boreM,
        thicknessM,
        pack,
        rule,
        "stock: " + material.stock().source(),
        SourceStatus.weakest(List.of(material.stock().status())));
  }

  Supply of(String material) {
    return new Supply(
        goods, description, unit, material, boreM, thicknessM, pack, rule, source, status);
  }

  Supply sized(double bore, double thickness) {
    return new Supply(
        goods, description, unit, materialId, bore, thickness, pack, rule, source, status);
  }

  /** Sold in packs of so much; the name shows the number as it is written. */
  Supply pack(String name, double written, double perWritten) {
    PackSize size = new PackSize(name.replace("%s", ItemBook.plain(written)), written * perWritten);
    return packed(size);
  }

  Supply packed(PackSize size) {
    return new Supply(
        goods, description, unit, materialId, boreM, thicknessM, size, rule, source, status);
  }

  Supply by(String text) {
    return new Supply(
        goods, description, unit, materialId, boreM, thicknessM, pack, text, source, status);
  }

  Supply from(String otherSource, SourceStatus otherStatus) {
    String joined =
        Stream.of(source, otherSource)
            .filter(text -> !text.isEmpty())
            .distinct()
            .collect(Collectors.joining("; "));
    SourceStatus weakest = SourceStatus.weakest(List.of(status, otherStatus));
    return new Supply(
        goods, description, unit, materialId, boreM, thicknessM, pack, rule, joined, weakest);
  }

  /** With the sources of figures, whose names in the rule give way to their values. */
  Supply figures(OrderPack figures, String... names) {
    Supply with = this;
    String text = rule;
    for (String name : names) {
      OrderPack.Figure figure = figures.figure(name);
      text = text.replace("{" + name + "}", ItemBook.plain(figure.value()));
      if (!with.source.contains(figure.source())) {
        with = with.from(figure.source(), figure.status());
      } else {
        with = with.from("", figure.status());
      }
    }
    return with.by(text);
  }
}
