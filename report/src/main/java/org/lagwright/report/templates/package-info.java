/**
 * Templates at full size: PDF on A4 and A3 in tiles, SVG and DXF; and the sheets for the site that
 * name them.
 *
 * <p>Knows: paper, lines, text. Must not know: how a piece gets its shape, which method is chosen.
 *
 * <p>Start reading at {@link org.lagwright.report.templates.TemplateBook}, for the sheets of the
 * site at {@link org.lagwright.report.templates.SiteSheets}.
 */
@NullMarked
package org.lagwright.report.templates;

import org.jspecify.annotations.NullMarked;
