/**
 * Exact flat developments of single pieces of insulation: what a piece looks like before it is bent
 * round the pipe, how large it is, how long its edges are.
 *
 * <p>Knows: elementary geometry, metres and radians. Must not know: models, materials, services,
 * paper.
 *
 * <p>Conventions: a tube runs along its axis; in its cross-section +x is the heel of a bend or the
 * side of a branch that faces the acute angle, and z lies across. Girths are stepped by arc length,
 * never by chord.
 *
 * <p>Start reading at {@link org.lagwright.takeoff.fitting.pattern.PieceShape}.
 */
@NullMarked
package org.lagwright.takeoff.fitting.pattern;

import org.jspecify.annotations.NullMarked;
