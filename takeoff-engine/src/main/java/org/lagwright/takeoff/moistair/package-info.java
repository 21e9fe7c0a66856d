/**
 * Saturation and dew point of moist air, saturation temperature of steam. Pure functions.
 *
 * <p>Knows: temperatures and relative humidity. Must not know: insulation.
 *
 * <p>Start reading at {@link org.lagwright.takeoff.moistair.MoistAir}.
 */
@NullMarked
package org.lagwright.takeoff.moistair;

import org.jspecify.annotations.NullMarked;
