/**
 * How ready models are for a takeoff: what they carry as it was asked for, what had to be worked
 * out, what is missing, by whom. Knows the measured model and one pack of requirements, which the
 * request for designers is made from too. Must not know takeoffs, files or outputs. Start reading
 * at {@link org.lagwright.takeoff.readiness.Readiness}.
 */
@NullMarked
package org.lagwright.takeoff.readiness;

import org.jspecify.annotations.NullMarked;
