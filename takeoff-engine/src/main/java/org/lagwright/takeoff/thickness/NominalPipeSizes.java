package org.lagwright.takeoff.thickness;

import java.util.Comparator;
import java.util.List;
import org.lagwright.takeoff.pack.PackInfo;
import org.lagwright.takeoff.pack.PackReader;

/** Nominal sizes of steel pipe and copper tube by outside diameter. */
record NominalPipeSizes(String id, String version, String source, String status, List<Size> sizes) {

  NominalPipeSizes {
    sizes = List.copyOf(sizes);
    if (sizes.isEmpty()) {
      throw new IllegalArgumentException("sizes must not be empty.");
    }
  }

  /**
   * One size.
   *
   * @param nps nominal pipe size, inches
   * @param dn nominal diameter
   * @param outsideDiameterMm outside diameter, millimetres
   */
  record Size(double nps, int dn, double outsideDiameterMm) {}

  static NominalPipeSizes bundled() {
    return PackReader.readBundled(
        NominalPipeSizes.class, "nominal-pipe-sizes.yaml", NominalPipeSizes.class);
  }

  /**
   * The size whose outside diameter is nearest, the larger of two equally near. Plastic pipes get
   * the size of steel or copper they come nearest to.
   */
  Size nearest(double outsideDiameterM) {
    double outsideMm = outsideDiameterM * 1000;
    return sizes.stream()
        .min(
            Comparator.<Size>comparingDouble(s -> Math.abs(s.outsideDiameterMm() - outsideMm))
                .thenComparing(Comparator.comparingDouble(Size::nps).reversed()))
        .orElseThrow();
  }

  PackInfo info() {
    return new PackInfo(id, version, source, status);
  }
}
