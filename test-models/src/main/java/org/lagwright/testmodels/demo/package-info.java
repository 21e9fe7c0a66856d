/**
 * The invented Alder Quay ferry terminal: its design as lines of pieces, the same design as IFC in
 * three schemas, and every quantity that follows from the design in closed form.
 *
 * <p>Knows pipes, ducts and rooms of one invented building. Must not read IFC. Start reading at
 * {@link org.lagwright.testmodels.demo.AlderQuay}.
 */
@NullMarked
package org.lagwright.testmodels.demo;

import org.jspecify.annotations.NullMarked;
