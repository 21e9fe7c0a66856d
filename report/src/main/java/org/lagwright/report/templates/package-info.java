/**
 * Templates at full size: PDF on A4 and A3 in tiles, SVG and DXF.
 *
 * <p>Knows: paper, lines, text. Must not know: how a piece gets its shape, which method is chosen.
 *
 * <p>Start reading at {@link org.lagwright.report.templates.TemplateBook}.
 */
@NullMarked
package org.lagwright.report.templates;

import org.jspecify.annotations.NullMarked;
