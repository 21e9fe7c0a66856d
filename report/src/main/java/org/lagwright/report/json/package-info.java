/**
 * The file {@code takeoff.json} for other programs.
 *
 * <p>Knows: the names and units of the file, fixed by the schema beside this package. Must not
 * know: files, the command line, how a number is decided.
 *
 * <p>Start reading at {@link org.lagwright.report.json.TakeoffJson}.
 */
@NullMarked
package org.lagwright.report.json;

import org.jspecify.annotations.NullMarked;
