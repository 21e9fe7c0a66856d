/**
 * Heat flow through layers on pipes, ducts and flat surfaces, and how warm the surface gets. Pure
 * functions.
 *
 * <p>Knows: lengths, temperatures, conductivities, emissivities. Must not know: materials, rules,
 * stock. A heat flow counts positive from the inside to the air.
 *
 * <p>Start reading at {@link org.lagwright.takeoff.heat.Body}, then {@link
 * org.lagwright.takeoff.heat.AmbientAir}.
 */
@NullMarked
package org.lagwright.takeoff.heat;

import org.jspecify.annotations.NullMarked;
