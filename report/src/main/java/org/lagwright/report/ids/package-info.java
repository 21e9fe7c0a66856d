/**
 * What models must carry, as an IDS file for designers. Knows the requirements of the engine;
 * decides none. Must not know models or takeoffs. Start reading at {@link
 * org.lagwright.report.ids.IdsFile}.
 */
@NullMarked
package org.lagwright.report.ids;

import org.jspecify.annotations.NullMarked;
