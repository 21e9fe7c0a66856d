/**
 * From records to elements: one small class per question. What is it, how big, how long, where,
 * what flows in it, what is it connected to, what covers it.
 *
 * <p>Knows: IFC relations and what exporters make of them. Must not know: insulation rules.
 *
 * <p>Start reading at {@link org.lagwright.ifc.extract.ModelExtractor}.
 */
@NullMarked
package org.lagwright.ifc.extract;

import org.jspecify.annotations.NullMarked;
