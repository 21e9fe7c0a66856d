/**
 * How much: lengths, outer areas and volumes of insulation, and sizes in words.
 *
 * <p>Knows: sections, thickness, forms. Must not know: services, rules, money.
 *
 * <p>Start reading at {@link org.lagwright.takeoff.measure.QuantityMeasurer}.
 */
@NullMarked
package org.lagwright.takeoff.measure;

import org.jspecify.annotations.NullMarked;
