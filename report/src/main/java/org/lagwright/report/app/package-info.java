/**
 * The one use case: models in, takeoff out, files written. Command line and local page both call
 * it.
 *
 * <p>Knows: files and folders, which models a server holds, the order of the steps. Must not know:
 * options, exit codes, how a number is decided.
 *
 * <p>Start reading at {@link org.lagwright.report.app.TakeoffJob}.
 */
@NullMarked
package org.lagwright.report.app;

import org.jspecify.annotations.NullMarked;
