package org.lagwright.takeoff.clearance;

import org.lagwright.ifc.model.BuildingPart;
import org.lagwright.takeoff.TakenElement;

/**
 * An insulated element that goes through a part of the building in an opening, with its insulation.
 * No clash, but a place for a seal.
 *
 * @param marginM the least room between insulation and the box of the opening, metres
 */
public record Passage(TakenElement element, BuildingPart part, double marginM) {}
