/**
 * Frames, profiles, solids and meshes of an IFC file, and how to measure them: how big across, how
 * long, which bend, where the open ends are.
 *
 * <p>Knows: the geometry resource of IFC and solid geometry. Must not know: property sets, systems,
 * names, insulation; it never weighs geometry against properties.
 *
 * <p>Start reading at {@link org.lagwright.ifc.geometry.ShapeMeasurer}.
 */
@NullMarked
package org.lagwright.ifc.geometry;

import org.jspecify.annotations.NullMarked;
