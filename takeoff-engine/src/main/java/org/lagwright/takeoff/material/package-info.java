/**
 * Generic families of insulation: conductivity by mean temperature, service range, what is stocked.
 *
 * <p>Knows: figures of materials with their sources. Must not know: brands, pipes, rules.
 *
 * <p>Start reading at {@link org.lagwright.takeoff.material.MaterialPack}.
 */
@NullMarked
package org.lagwright.takeoff.material;

import org.jspecify.annotations.NullMarked;
