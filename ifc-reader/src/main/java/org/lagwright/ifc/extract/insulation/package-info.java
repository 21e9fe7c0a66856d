/**
 * What covers an element already: coverings that are related, part of it, beside it or around it,
 * and what is stated.
 *
 * <p>Knows: elements, coverings, layers of materials. Must not know: insulation rules.
 *
 * <p>Start reading at {@link org.lagwright.ifc.extract.insulation.InsulationReader}.
 */
@NullMarked
package org.lagwright.ifc.extract.insulation;

import org.jspecify.annotations.NullMarked;
