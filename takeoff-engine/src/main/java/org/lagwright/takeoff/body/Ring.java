package org.lagwright.takeoff.body;

import org.jspecify.annotations.Nullable;
import org.lagwright.ifc.model.Section;

/**
 * The cross-section of a layer of insulation.
 *
 * @param outer its outer face; widths along u of the frame it lies in
 * @param inner its inner face, null where it is solid
 */
public record Ring(Section outer, @Nullable Section inner) {

  public Ring {
    if (inner != null && !(areaM2(outer) > areaM2(inner))) {
      throw new IllegalArgumentException("a ring is wider outside than inside");
    }
  }

  /**
   * A layer round a bare section.
   *
   * @param belowM thickness of the layers below it, metres
   * @param totalM thickness up to its outer face, metres
   */
  static Ring around(Section bare, double belowM, double totalM) {
    return new Ring(grown(bare, totalM), grown(bare, belowM));
  }

  /** A section larger by so much all round; corners stay square, as sheets are butted there. */
  static Section grown(Section section, double byM) {
    if (section instanceof Section.Rectangular r) {
      return new Section.Rectangular(r.widthM() + 2 * byM, r.heightM() + 2 * byM);
    }
    if (section instanceof Section.Oval o) {
      return new Section.Oval(o.widthM() + 2 * byM, o.heightM() + 2 * byM);
    }
    return new Section.Round(section.largestSideM() + 2 * byM);
  }

  /** Area of insulation, square metres. */
  public double areaM2() {
    return areaM2(outer) - (inner == null ? 0 : areaM2(inner));
  }

  private static double areaM2(Section section) {
    if (section instanceof Section.Rectangular r) {
      return r.widthM() * r.heightM();
    }
    if (section instanceof Section.Oval o) {
      double smallM = o.smallestSideM();
      return Math.PI / 4 * smallM * smallM + smallM * (o.largestSideM() - smallM);
    }
    return Math.PI / 4 * section.largestSideM() * section.largestSideM();
  }

  /** True where both faces are of one shape, so that a thickness describes it. */
  public boolean isEven() {
    return inner != null && inner.getClass() == outer.getClass();
  }

  /** The ring half way to another one of the same shapes. */
  Ring meanWith(Ring other) {
    Section a = inner;
    Section b = other.inner;
    return new Ring(mean(outer, other.outer), a == null || b == null ? null : mean(a, b));
  }

  private static Section mean(Section a, Section b) {
    if (a instanceof Section.Rectangular r && b instanceof Section.Rectangular s) {
      return new Section.Rectangular(
          (r.widthM() + s.widthM()) / 2, (r.heightM() + s.heightM()) / 2);
    }
    if (a instanceof Section.Oval o && b instanceof Section.Oval p) {
      return new Section.Oval((o.widthM() + p.widthM()) / 2, (o.heightM() + p.heightM()) / 2);
    }
    return new Section.Round((a.largestSideM() + b.largestSideM()) / 2);
  }
}
