/**
 * What changed between two revisions of a model, element by element, and what that means in
 * quantities and hours. Knows two finished takeoffs and changes neither; knows nothing of files.
 * Start reading at {@link org.lagwright.takeoff.compare.Comparison}.
 */
@NullMarked
package org.lagwright.takeoff.compare;

import org.jspecify.annotations.NullMarked;
