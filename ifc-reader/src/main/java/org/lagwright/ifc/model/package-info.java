/**
 * What the reader hands on: a measured model of pipes, ducts, fittings, valves and what hangs on
 * them. Immutable values in SI units, each with the place in the file it came from.
 *
 * <p>Knows: the words of the building services trade and of IFC. Must not know: STEP records,
 * geometry, insulation. The takeoff engine sees this package and no other of the reader.
 *
 * <p>Start reading at {@link org.lagwright.ifc.model.MepModel}.
 */
@NullMarked
package org.lagwright.ifc.model;

import org.jspecify.annotations.NullMarked;
