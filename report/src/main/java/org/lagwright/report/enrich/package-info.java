/**
 * The enriched model: the file as it was, and behind it a covering for each layer of insulation on
 * each element, with body, material, quantities and one set of properties.
 *
 * <p>Knows: which records of IFC show insulation, in each schema. Must not know: how any number was
 * decided, where bodies lie, how the file is copied.
 *
 * <p>Start reading at {@link org.lagwright.report.enrich.Enrichment}.
 */
@NullMarked
package org.lagwright.report.enrich;

import org.jspecify.annotations.NullMarked;
