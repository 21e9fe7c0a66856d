/**
 * Hours of work: norms, factors, where and at which step of the trade they fall.
 *
 * <p>Knows: hours per metre, square metre and cubic metre, equivalent lengths of fittings, heights
 * and neighbours of elements. Must not know: how a service or a thickness was found; money.
 *
 * <p>Start reading at {@link org.lagwright.takeoff.labour.LabourBook}.
 */
@NullMarked
package org.lagwright.takeoff.labour;

import org.jspecify.annotations.NullMarked;
