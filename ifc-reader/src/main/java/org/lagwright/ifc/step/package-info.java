/**
 * The bytes of an ISO 10303-21 file: first an index from instance number to place, then single
 * records decoded only when asked for, text last of all.
 *
 * <p>Knows: the syntax of exchange files, and what real files make of it. Must not know: IFC, what
 * any record means.
 *
 * <p>Start reading at {@link org.lagwright.ifc.step.StepFile}.
 */
@NullMarked
package org.lagwright.ifc.step;

import org.jspecify.annotations.NullMarked;
