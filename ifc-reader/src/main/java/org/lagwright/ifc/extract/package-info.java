/**
 * From records to elements: reads all that is in one file, has it measured, and makes elements of
 * it. Each question has a package of its own; in the order in which they build on each other:
 *
 * <ul>
 *   <li>{@link org.lagwright.ifc.extract.text}: what do texts say
 *   <li>{@link org.lagwright.ifc.extract.property}: what does the file say about a record
 *   <li>{@link org.lagwright.ifc.extract.draft}: what is one element, before it is measured
 *   <li>{@link org.lagwright.ifc.extract.graph}: what is it connected to
 *   <li>{@link org.lagwright.ifc.extract.measure}: how big, how long, what form
 *   <li>{@link org.lagwright.ifc.extract.place}: where is it
 *   <li>{@link org.lagwright.ifc.extract.insulation}: what covers it
 *   <li>{@link org.lagwright.ifc.extract.join}: several files as one model, on top of this package
 * </ul>
 *
 * <p>Knows: IFC relations and what exporters make of them. Must not know: insulation rules.
 *
 * <p>Start reading at {@link org.lagwright.ifc.extract.ModelExtractor}.
 */
@NullMarked
package org.lagwright.ifc.extract;

import org.jspecify.annotations.NullMarked;
