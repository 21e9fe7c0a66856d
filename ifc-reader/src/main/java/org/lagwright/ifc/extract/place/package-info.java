/**
 * Where an element is: storey, space, height above the floor, outdoors or not.
 *
 * <p>Knows: the spatial structure and the bodies of spaces. Must not know: sizes.
 *
 * <p>Start reading at {@link org.lagwright.ifc.extract.place.PlaceReader}.
 */
@NullMarked
package org.lagwright.ifc.extract.place;

import org.jspecify.annotations.NullMarked;
