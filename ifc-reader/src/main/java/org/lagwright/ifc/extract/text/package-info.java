/**
 * What texts say by themselves: sizes, angles, thicknesses, temperatures, kinds and forms in the
 * words of several languages, names of properties, units, and the tables of pipes.
 *
 * <p>Knows: the words and tables of the trade, and units. Must not know: elements, bodies, or
 * anything that is decided about them.
 *
 * <p>Start reading at {@link org.lagwright.ifc.extract.text.Sizes}.
 */
@NullMarked
package org.lagwright.ifc.extract.text;

import org.jspecify.annotations.NullMarked;
