/**
 * What is connected to what: by ports, by ends that touch, at the sides of mains, by parts of
 * brackets.
 *
 * <p>Knows: elements as they were read. Must not know: how sizes are chosen.
 *
 * <p>Start reading at {@link org.lagwright.ifc.extract.graph.TouchingEnds}.
 */
@NullMarked
package org.lagwright.ifc.extract.graph;

import org.jspecify.annotations.NullMarked;
