/**
 * How thick: each demand with its source, the governing one, and the stock build-up that meets it.
 *
 * <p>Knows: sections, temperatures, air, materials, rules. Must not know: IFC, names of services.
 *
 * <p>Start reading at {@link org.lagwright.takeoff.thickness.ThicknessChooser}.
 */
@NullMarked
package org.lagwright.takeoff.thickness;

import org.jspecify.annotations.NullMarked;
