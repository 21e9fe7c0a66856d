/**
 * Shows a takeoff: workbook, JSON, command line.
 *
 * <p>Knows: words and forms in which results are shown. Must not know: how a number is decided.
 * This package itself holds what all outputs share; start reading at {@link
 * org.lagwright.report.Words}.
 */
@NullMarked
package org.lagwright.report;

import org.jspecify.annotations.NullMarked;
