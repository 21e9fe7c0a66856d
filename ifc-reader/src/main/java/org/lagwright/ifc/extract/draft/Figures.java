package org.lagwright.ifc.extract.draft;

import java.util.List;
import org.jspecify.annotations.Nullable;
import org.lagwright.ifc.model.ExistingInsulation;
import org.lagwright.ifc.model.Measured;
import org.lagwright.ifc.model.Section;

/**
 * What has been decided so far about the measures of an element, null where nothing is. {@link
 * Draft} tells of it; it is set by the one thread that has the element open.
 */
public final class Figures {

  private @Nullable Measured<Section> section;
  private @Nullable ExistingInsulation drawnInsulation;
  private @Nullable Measured<List<Section>> ends;
  private @Nullable String nominalSize;
  private @Nullable Measured<Double> lengthM;
  private @Nullable Measured<Double> angleDeg;
  private @Nullable Measured<Double> bendRadiusM;
  private @Nullable Measured<Double> eccentricityM;
  private @Nullable Measured<Double> branchLengthM;

  @Nullable Measured<Section> section() {
    return section;
  }

  /** Sets its section. */
  public void setSection(@Nullable Measured<Section> now) {
    section = now;
  }

  @Nullable ExistingInsulation drawnInsulation() {
    return drawnInsulation;
  }

  /** Sets insulation that was drawn into the body. */
  public void setDrawnInsulation(@Nullable ExistingInsulation now) {
    drawnInsulation = now;
  }

  @Nullable Measured<List<Section>> ends() {
    return ends;
  }

  /** Sets the sections of its ends. */
  public void setEnds(@Nullable Measured<List<Section>> now) {
    ends = now;
  }

  @Nullable String nominalSize() {
    return nominalSize;
  }

  /** Sets its nominal size, in the words of the trade. */
  public void setNominalSize(@Nullable String now) {
    nominalSize = now;
  }

  @Nullable Measured<Double> lengthM() {
    return lengthM;
  }

  /** Sets its length. */
  public void setLengthM(@Nullable Measured<Double> now) {
    lengthM = now;
  }

  @Nullable Measured<Double> angleDeg() {
    return angleDeg;
  }

  /** Sets the angle of a bend or branch. */
  public void setAngleDeg(@Nullable Measured<Double> now) {
    angleDeg = now;
  }

  @Nullable Measured<Double> bendRadiusM() {
    return bendRadiusM;
  }

  /** Sets the radius of the axis of a bend. */
  public void setBendRadiusM(@Nullable Measured<Double> now) {
    bendRadiusM = now;
  }

  @Nullable Measured<Double> eccentricityM() {
    return eccentricityM;
  }

  /** Sets how far the axes of the ends of a reducer lie apart. */
  public void setEccentricityM(@Nullable Measured<Double> now) {
    eccentricityM = now;
  }

  @Nullable Measured<Double> branchLengthM() {
    return branchLengthM;
  }

  /** Sets the distance from the axis of the run to the end of a branch. */
  public void setBranchLengthM(@Nullable Measured<Double> now) {
    branchLengthM = now;
  }
}
