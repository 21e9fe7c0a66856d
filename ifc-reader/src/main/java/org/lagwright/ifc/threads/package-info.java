/**
 * Work spread over the processors, with results that do not depend on how many there are.
 *
 * <p>Knows: threads. Must not know: what the work is.
 *
 * <p>Start reading at {@link org.lagwright.ifc.threads.Workers}.
 */
@NullMarked
package org.lagwright.ifc.threads;

import org.jspecify.annotations.NullMarked;
