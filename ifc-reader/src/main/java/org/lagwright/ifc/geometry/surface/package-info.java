/**
 * Faces and surfaces: flat, cylinder, cone, torus, B-spline, and pieces of them.
 *
 * <p>Knows: the surfaces of IFC. Must not know: what bodies they bound.
 *
 * <p>Start reading at {@link org.lagwright.ifc.geometry.surface.SurfaceReader}.
 */
@NullMarked
package org.lagwright.ifc.geometry.surface;

import org.jspecify.annotations.NullMarked;
