/**
 * Curves and paths: lines, arcs, B-splines, alignments, and fits of points to planes.
 *
 * <p>Knows: the curves of IFC. Must not know: what runs along them.
 *
 * <p>Start reading at {@link org.lagwright.ifc.geometry.curve.Curves}.
 */
@NullMarked
package org.lagwright.ifc.geometry.curve;

import org.jspecify.annotations.NullMarked;
