/**
 * Frames, profiles, solids and meshes of an IFC file, and how to measure them: how big across, how
 * long, which bend, where the open ends are.
 *
 * <p>Knows: the geometry resource of IFC and solid geometry. Must not know: property sets, systems,
 * names, insulation; it never weighs geometry against properties.
 *
 * <p>In the order in which they build on each other: {@link org.lagwright.ifc.geometry.frame},
 * {@link org.lagwright.ifc.geometry.curve}, {@link org.lagwright.ifc.geometry.profile}, {@link
 * org.lagwright.ifc.geometry.shape}, {@link org.lagwright.ifc.geometry.surface}, {@link
 * org.lagwright.ifc.geometry.mesh}, {@link org.lagwright.ifc.geometry.solid}, and this package,
 * which puts the items of a body together, finds what is coaxial, and bounds regions.
 *
 * <p>Start reading at {@link org.lagwright.ifc.geometry.ShapeMeasurer}.
 */
@NullMarked
package org.lagwright.ifc.geometry;

import org.jspecify.annotations.NullMarked;
