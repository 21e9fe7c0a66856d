/**
 * Fittings: which way of making suits each element and layer, and the pieces it takes.
 *
 * <p>Knows: bends, branches, reducers, bodies in the line, ducts; the rules of making. Must not
 * know: services, rules of thickness, paper, money.
 *
 * <p>Start reading at {@link org.lagwright.takeoff.fitting.MakingChooser}; shapes and their flat
 * patterns are in {@code fitting.pattern}.
 */
@NullMarked
package org.lagwright.takeoff.fitting;

import org.jspecify.annotations.NullMarked;
