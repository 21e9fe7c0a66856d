/**
 * Saturation and dew point of moist air. Pure functions.
 *
 * <p>Knows: temperatures and relative humidity. Must not know: insulation.
 *
 * <p>Start reading at {@link org.lagwright.takeoff.moistair.MoistAir}.
 */
@NullMarked
package org.lagwright.takeoff.moistair;

import org.jspecify.annotations.NullMarked;
