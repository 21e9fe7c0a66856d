/**
 * One element as it was read, and what has been decided about it so far: its names, kind, body,
 * ports, and figures.
 *
 * <p>Knows: bodies, ports, properties. Must not know: neighbours, nor which of several candidates
 * counts.
 *
 * <p>Start reading at {@link org.lagwright.ifc.extract.draft.Draft}.
 */
@NullMarked
package org.lagwright.ifc.extract.draft;

import org.jspecify.annotations.NullMarked;
