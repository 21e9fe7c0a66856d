/**
 * Points, directions, frames, boxes and ends of bodies; coordinates, placements and items of bodies
 * as a file has them.
 *
 * <p>Knows: the placements and units of IFC. Must not know: what is drawn there.
 *
 * <p>Start reading at {@link org.lagwright.ifc.geometry.frame.Frame}.
 */
@NullMarked
package org.lagwright.ifc.geometry.frame;

import org.jspecify.annotations.NullMarked;
