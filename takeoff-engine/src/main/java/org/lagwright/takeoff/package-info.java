/**
 * From measured models to a takeoff: the entrance, the result and its trace.
 *
 * <p>Knows: the result as users see it. Must not know: IFC records, spreadsheets, files. The only
 * package of the reader that may be used here and below is {@code org.lagwright.ifc.model}.
 *
 * <p>Start reading at {@link org.lagwright.takeoff.Takeoff}.
 */
@NullMarked
package org.lagwright.takeoff;

import org.jspecify.annotations.NullMarked;
