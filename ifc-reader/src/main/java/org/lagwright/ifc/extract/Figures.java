package org.lagwright.ifc.extract;

import java.util.List;
import org.jspecify.annotations.Nullable;
import org.lagwright.ifc.model.ExistingInsulation;
import org.lagwright.ifc.model.Measured;
import org.lagwright.ifc.model.Section;

/** What has been decided so far about the measures of an element. */
final class Figures {

  @Nullable Measured<Section> section;

  /** Insulation that was drawn into the body. */
  @Nullable ExistingInsulation drawnInsulation;

  @Nullable Measured<List<Section>> ends;
  @Nullable String nominalSize;
  @Nullable Measured<Double> lengthM;
  @Nullable Measured<Double> angleDeg;
  @Nullable Measured<Double> bendRadiusM;
  @Nullable Measured<Double> eccentricityM;
  @Nullable Measured<Double> branchLengthM;
}
