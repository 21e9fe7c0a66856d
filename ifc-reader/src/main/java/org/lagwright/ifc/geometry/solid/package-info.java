/**
 * Each kind of body that IFC draws: extruded, revolved, swept, clipped, primitive, of faces.
 *
 * <p>Knows: the solids of IFC. Must not know: elements, mapped items.
 *
 * <p>Start reading at {@link org.lagwright.ifc.geometry.solid.Extrusions}.
 */
@NullMarked
package org.lagwright.ifc.geometry.solid;

import org.jspecify.annotations.NullMarked;
