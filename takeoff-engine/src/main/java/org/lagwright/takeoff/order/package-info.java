/**
 * What to buy: stock pieces and how to cut them.
 *
 * <p>Knows: stock lengths, saw cuts, packing. Must not know: services, heat, how pieces are shaped.
 *
 * <p>Start reading at {@link org.lagwright.takeoff.order.CuttingPlanner}.
 */
@NullMarked
package org.lagwright.takeoff.order;

import org.jspecify.annotations.NullMarked;
