/**
 * Where insulation does not fit: insulated envelopes against each other, against bare neighbours
 * and against the building. Knows the result of a takeoff and the wanted gaps; changes nothing in
 * it, and knows nothing of outputs. Start reading at {@link
 * org.lagwright.takeoff.clearance.Clearance}.
 */
@NullMarked
package org.lagwright.takeoff.clearance;

import org.jspecify.annotations.NullMarked;
