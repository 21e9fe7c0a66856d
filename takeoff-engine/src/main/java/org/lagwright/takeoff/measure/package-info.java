/**
 * How much: lengths, outer areas and volumes of insulation, sizes in words, and methods of
 * measurement, each a pure function of the same geometric truth.
 *
 * <p>Knows: sections, thickness, forms. Must not know: services, why a thickness was chosen, money.
 *
 * <p>Start reading at {@link org.lagwright.takeoff.measure.QuantityMeasurer}; methods, at {@link
 * org.lagwright.takeoff.measure.Measurement}.
 */
@NullMarked
package org.lagwright.takeoff.measure;

import org.jspecify.annotations.NullMarked;
