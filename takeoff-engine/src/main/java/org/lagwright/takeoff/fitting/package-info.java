/**
 * Fittings: how long their centre line is, and what area and volume of insulation follows from it.
 *
 * <p>Knows: bends, reducers, bodies in the line. Must not know: services, thickness rules.
 *
 * <p>Start reading at {@link org.lagwright.takeoff.fitting.CentreLine}.
 */
@NullMarked
package org.lagwright.takeoff.fitting;

import org.jspecify.annotations.NullMarked;
