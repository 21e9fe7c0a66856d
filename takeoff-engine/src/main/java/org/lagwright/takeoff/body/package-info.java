/**
 * Insulation as bodies in space: hollow prisms, turned and tapered bodies, and bodies of flat faces
 * for what is cut at an angle; layer by layer, from the places where an element ends.
 *
 * <p>Knows: ends and sections of elements, what a takeoff chose for them. Must not know: how a body
 * is written or drawn, services, prices. It changes no quantity.
 *
 * <p>Start reading at {@link org.lagwright.takeoff.body.ElementBodies}.
 */
@NullMarked
package org.lagwright.takeoff.body;

import org.jspecify.annotations.NullMarked;
