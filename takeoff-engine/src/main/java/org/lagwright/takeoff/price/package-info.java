/**
 * Money: the user's price list on the order, hours times their rate, and what comes on top.
 *
 * <p>Knows: the order, hours, percentages. Must not know: models, thicknesses, how hours came
 * about. No price ships with the program and none is invented.
 *
 * <p>Start reading at {@link org.lagwright.takeoff.price.Price}.
 */
@NullMarked
package org.lagwright.takeoff.price;

import org.jspecify.annotations.NullMarked;
