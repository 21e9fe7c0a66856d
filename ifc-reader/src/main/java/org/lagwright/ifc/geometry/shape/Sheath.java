package org.lagwright.ifc.geometry.shape;

import org.lagwright.ifc.model.Measured;
import org.lagwright.ifc.model.Section;

/**
 * A shell around a straight body that fits it without a gap, as insulation does.
 *
 * @param inner section of what lies in the shell
 * @param outer outside of the shell
 * @param share part of the length of the body that the shell covers, above 0, up to 1
 */
public record Sheath(Measured<Section> inner, Section outer, double share) {}
