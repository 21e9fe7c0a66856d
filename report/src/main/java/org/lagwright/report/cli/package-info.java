/**
 * The command line: options, exit codes, messages.
 *
 * <p>Knows: what the user types and reads. Must not know: how a number is decided.
 */
@NullMarked
package org.lagwright.report.cli;

import org.jspecify.annotations.NullMarked;
