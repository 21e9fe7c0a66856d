/**
 * Data of the trade as files: rules, services, materials, sizes. Loaded strictly, each row with its
 * source.
 *
 * <p>Knows: YAML and CSV, file, line and column of what is wrong. Must not know: what the data
 * mean.
 *
 * <p>Start reading at {@link org.lagwright.takeoff.pack.PackReader}.
 */
@NullMarked
package org.lagwright.takeoff.pack;

import org.jspecify.annotations.NullMarked;
