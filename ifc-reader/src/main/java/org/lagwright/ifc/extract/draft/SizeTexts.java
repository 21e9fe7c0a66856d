package org.lagwright.ifc.extract.draft;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.lagwright.ifc.extract.text.DnInText;
import org.lagwright.ifc.extract.text.InchSizes;
import org.lagwright.ifc.extract.text.PropertyLengths;
import org.lagwright.ifc.extract.text.PropertyNames;
import org.lagwright.ifc.extract.text.Quotations;
import org.lagwright.ifc.extract.text.SizeLists;
import org.lagwright.ifc.extract.text.Sizes;
import org.lagwright.ifc.model.Evidence;
import org.lagwright.ifc.model.Property;
import org.lagwright.ifc.model.Section;

/** Texts of an element in which people write its size: its names and properties called size. */
public final class SizeTexts {

  /** A text, without the marks of quotations, and where it stands. */
  public record Text(String value, Evidence evidence) {
    public Text {
      value = Quotations.unmarked(value);
    }
  }

  private SizeTexts() {}

  /** Width and height of a duct from properties, else the sides that a text gives. */
  static Optional<Section> sides(List<Property> properties, Names names, double lengthUnitM) {
    Optional<Double> width = side(properties, PropertyNames.Role.WIDTH, lengthUnitM);
    Optional<Double> height = side(properties, PropertyNames.Role.HEIGHT, lengthUnitM);
    if (width.isPresent() && height.isPresent()) {
      return Optional.of(new Section.Rectangular(width.get(), height.get()));
    }
    List<String> texts = new ArrayList<>();
    for (Property p : PropertyNames.listOf(properties, PropertyNames.Role.SIZE)) {
      texts.add(p.text());
    }
    texts.addAll(names.all());
    for (String text : texts) {
      Optional<Section> sides = BareSizes.sides(text, lengthUnitM);
      if (sides.isPresent()) {
        return sides;
      }
    }
    return Optional.empty();
  }

  private static Optional<Double> side(
      List<Property> properties, PropertyNames.Role role, double lengthUnitM) {
    for (Property p : PropertyNames.listOf(properties, role)) {
      Optional<Double> sizeM = PropertyLengths.sizeM(p, lengthUnitM);
      if (sizeM.isPresent()) {
        return sizeM;
      }
    }
    return Optional.empty();
  }

  /**
   * Properties first, as they hold the size and nothing else; the own name last. A straight piece
   * has one size: what names several of them tells nothing of it. Descriptions and tags count only
   * where no body and no other text tells a size.
   */
  public static List<Text> of(Draft draft) {
    boolean one = draft.isSegment();
    List<Text> texts = new ArrayList<>(4);
    for (Property p : PropertyNames.listOf(draft.properties(), PropertyNames.Role.SIZE)) {
      boolean text = p.measure() == null || !p.measure().contains("LENGTHMEASURE");
      if (text && !(one && SizeLists.isIn(p.text()))) {
        texts.add(new Text(p.text(), p.evidence()));
      }
    }
    for (String name : draft.names().all()) {
      if (!(one && SizeLists.isIn(name))) {
        texts.add(new Text(name, new Evidence(draft.step(), "name", name)));
      }
    }
    List<String> described = draft.names().described();
    if (!described.isEmpty() && !mayHold(texts)) {
      for (String text : described) {
        if (!(one && SizeLists.isIn(text))) {
          texts.add(new Text(text, new Evidence(draft.step(), "description or tag", text)));
        }
      }
    }
    return texts;
  }

  private static boolean mayHold(List<Text> texts) {
    for (Text text : texts) {
      if (mayHold(text.value())) {
        return true;
      }
    }
    return false;
  }

  /** True if a text may tell a size. */
  static boolean mayHold(String text) {
    return DnInText.next(text, 0) != null
        || Sizes.multiplies(text)
        || Sizes.mayHoldDiameter(text)
        || !InchSizes.in(text).isEmpty();
  }
}
