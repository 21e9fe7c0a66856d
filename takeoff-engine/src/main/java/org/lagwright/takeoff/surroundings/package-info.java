/**
 * Which air surrounds an element: what the names of spaces and storeys tell of it.
 *
 * <p>Knows: words for plant rooms, shafts, voids, garages, soil in several languages. Must not
 * know: services, thickness.
 *
 * <p>Start reading at {@link org.lagwright.takeoff.surroundings.LocationWords}.
 */
@NullMarked
package org.lagwright.takeoff.surroundings;

import org.jspecify.annotations.NullMarked;
