/**
 * Holds files against the standard and against other programs, with code of its own: what the
 * product reads and writes is judged by something that shares nothing with it.
 *
 * <p>Start reading at {@link org.lagwright.testmodels.check.SchemaCheck}.
 */
@NullMarked
package org.lagwright.testmodels.check;

import org.jspecify.annotations.NullMarked;
