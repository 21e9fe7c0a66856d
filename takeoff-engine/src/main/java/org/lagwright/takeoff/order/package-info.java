/**
 * What to buy: tubes, sections and sheets with a plan how to cut them, and what holds and closes
 * them.
 *
 * <p>Knows: pieces, stock, packs, cutting, consumption. Must not know: why an element is as thick
 * as it is, hours, money.
 *
 * <p>Start reading at {@link org.lagwright.takeoff.order.OrderMaker}; how cuts are planned, at
 * {@link org.lagwright.takeoff.order.CuttingPlanner}.
 */
@NullMarked
package org.lagwright.takeoff.order;

import org.jspecify.annotations.NullMarked;
