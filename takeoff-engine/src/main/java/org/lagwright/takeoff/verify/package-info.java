/**
 * What the models already show as insulated, held against what the takeoff requires. Knows the
 * result of a takeoff and nothing of how it came about; changes nothing in it. Start reading at
 * {@link org.lagwright.takeoff.verify.Coverage}.
 */
@NullMarked
package org.lagwright.takeoff.verify;

import org.jspecify.annotations.NullMarked;
