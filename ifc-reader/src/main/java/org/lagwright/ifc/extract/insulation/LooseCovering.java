package org.lagwright.ifc.extract.insulation;

import org.lagwright.ifc.geometry.frame.Box;
import org.lagwright.ifc.model.ElementKey;

/**
 * A covering that names nothing it covers, or what is called insulation and may be one.
 *
 * @param reach all that it may lie around has its axis in there, in metres
 * @param withoutHost true of a covering for which its own file holds nothing that it covers
 */
public record LooseCovering(ElementKey key, Box reach, boolean withoutHost) {}
