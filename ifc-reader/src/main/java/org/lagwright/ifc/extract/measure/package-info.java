/**
 * How big, how long, what form: the candidates for each figure, their plausibility, the one that
 * counts, and what is told of the others.
 *
 * <p>Knows: elements, their neighbours, and what texts say. Must not know: coverings, places.
 *
 * <p>Start reading at {@link org.lagwright.ifc.extract.measure.SegmentMeasurer}.
 */
@NullMarked
package org.lagwright.ifc.extract.measure;

import org.jspecify.annotations.NullMarked;
