package org.lagwright.ifc.extract.draft;

import java.util.List;
import org.jspecify.annotations.Nullable;
import org.lagwright.ifc.model.ExistingInsulation;
import org.lagwright.ifc.model.Measured;
import org.lagwright.ifc.model.Section;

/**
 * What has been decided so far about the measures of an element, as the methods of {@link Draft} of
 * the same names tell. Set by the one thread that has the element open.
 */
public final class Figures {

  public @Nullable Measured<Section> section;

  /** Insulation that was drawn into the body. */
  public @Nullable ExistingInsulation drawnInsulation;

  public @Nullable Measured<List<Section>> ends;
  public @Nullable String nominalSize;
  public @Nullable Measured<Double> lengthM;
  public @Nullable Measured<Double> angleDeg;
  public @Nullable Measured<Double> bendRadiusM;
  public @Nullable Measured<Double> eccentricityM;
  public @Nullable Measured<Double> branchLengthM;
}
